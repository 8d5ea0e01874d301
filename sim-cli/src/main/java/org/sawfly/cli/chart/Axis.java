package org.sawfly.cli.chart;

import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/**
 * An axis with evenly spaced ticks.
 *
 * @param title name and unit: "launch height, m"
 * @param low lower end, in the unit of the title
 * @param high upper end, above the lower one
 * @param step distance of the ticks, which stand at its multiples; infinite for none
 * @param downward whether it grows downward, as for sink
 * @param lowWords words at the lower end; empty for none
 * @param highWords words at the upper end; empty for none
 * @param ruler a second scale under the ticks; null for none
 */
public record Axis(
        String title,
        double low,
        double high,
        double step,
        boolean downward,
        String lowWords,
        String highWords,
        Ruler ruler) {
    private static final int MOST_TICKS = 12;
    private static final int MOST_DECIMALS = 6;

    /** Checks that the axis has an extent. */
    public Axis {
        if (!(high > low) || !(step > 0) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException(title + ": no axis from " + low + " to " + high + " by " + step);
        }
    }

    /**
     * A second scale, such as frames of a film against time.
     *
     * @param perUnit small ticks in one unit of the axis
     * @param every number stands at every so many small ticks
     * @param words what the numbers count
     */
    public record Ruler(double perUnit, int every, String words) {}

    /** From one given end to the other, with a tick step that suits. */
    public static Axis fixed(String title, double low, double high) {
        return new Axis(title, low, high, niceStep(high - low, MOST_TICKS), false, "", "", null);
    }

    /** Around the values, at least so wide, so that a small change looks small; ends on ticks. NaN is passed over. */
    public static Axis around(String title, double leastRange, double... values) {
        return around(title, MOST_TICKS / 2, leastRange, values);
    }

    private static Axis around(String title, int most, double leastRange, double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Double.isFinite(value) ? Math.min(low, value) : low;
            high = Double.isFinite(value) ? Math.max(high, value) : high;
        }
        if (low > high) {
            low = 0;
            high = Math.max(leastRange, 1);
        }
        double range = Math.max(high - low, leastRange);
        if (range <= 1e-9 * Math.abs(high) || range == 0) {
            range = high == 0 ? 1 : Math.abs(high) / 5;
        }
        double step = niceStep(range, most);
        double start = step * Math.floor((low + high - range) / 2 / step + 1e-9);
        double end = step * Math.ceil((low + high + range) / 2 / step - 1e-9);
        return new Axis(title, start, end, step, false, "", "", null);
    }

    /** As {@link #around(String, double, double...)}, titled by a quantity, with few ticks for a low panel. */
    public static Axis low(Quantity<?> quantity, double leastRange, double... values) {
        return around(quantity.title(), MOST_TICKS / 3, leastRange, values);
    }

    /** The same axis with its own tick step. */
    public Axis every(double ownStep) {
        return new Axis(title, low, high, ownStep, downward, lowWords, highWords, ruler);
    }

    /** The same axis without ticks, for what is drawn and not measured. */
    public Axis bare() {
        return every(Double.POSITIVE_INFINITY);
    }

    /** The same axis growing downward. */
    public Axis down() {
        return new Axis(title, low, high, step, true, lowWords, highWords, ruler);
    }

    /** The same axis with words at its ends. */
    public Axis words(String atLow, String atHigh) {
        return new Axis(title, low, high, step, downward, atLow, atHigh, ruler);
    }

    /** The same axis with a second scale. */
    public Axis with(Ruler second) {
        return new Axis(title, low, high, step, downward, lowWords, highWords, second);
    }

    /** Whether a value lies on it. */
    boolean holds(double value) {
        double slack = 1e-9 * (high - low);
        return value >= low - slack && value <= high + slack;
    }

    /** Where the ticks stand. */
    double[] ticks() {
        if (Double.isInfinite(step)) {
            return new double[0];
        }
        long first = (long) Math.ceil(low / step - 1e-6);
        long last = (long) Math.floor(high / step + 1e-6);
        double[] ticks = new double[(int) Math.max(0, last - first + 1)];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = (first + i) * step;
        }
        return ticks;
    }

    /** The number at a tick, with the decimals the step needs; words at both ends take the place of the sign. */
    String label(double tick) {
        int decimals = 0;
        while (decimals < MOST_DECIMALS && Math.abs(Numbers.rounded(step, decimals) - step) > 1e-9 * step) {
            decimals++;
        }
        boolean bothInWords = !lowWords.isEmpty() && !highWords.isEmpty();
        return Numbers.fixed(bothInWords ? Math.abs(tick) : tick, decimals);
    }

    /** The smallest of 1, 2, 5, 10, ... that gives at most so many steps. */
    static double niceStep(double range, int most) {
        double unit = Math.pow(10, Math.floor(Math.log10(range / most)));
        for (double factor : new double[] {1, 2, 5, 10}) {
            if (range / (factor * unit) <= most * (1 + 1e-9)) {
                return factor * unit;
            }
        }
        return 10 * unit;
    }
}
