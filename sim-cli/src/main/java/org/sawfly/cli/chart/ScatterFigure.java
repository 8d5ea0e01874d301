package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/**
 * Launch heights of many throws: how many of a hundred end in each metre, and how many reach a height at least. Today's are
 * grey with a full edge, a version's have a dashed edge.
 */
public final class ScatterFigure {
    private static final double OF_ALL = 100;
    private static final double WIDE = 30;
    private static final double NARROW = 5;
    private static final int STEPS = 200;

    private ScatterFigure() {}

    /** The heights of one glider's throws, in the unit of the quantity; NaN for none. */
    public record Heights(String name, double[] all) {
        /** Takes a copy, in order, of those there are. */
        public Heights {
            all = Arrays.stream(all).filter(Double::isFinite).sorted().toArray();
        }

        @Override
        public double[] all() {
            return all.clone();
        }
    }

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param caption what else is to be said
     * @param foot glider, date, settings
     * @param height names the horizontal axis
     * @param shown today's first
     */
    public static Figure of(String title, String caption, String foot, Quantity<?> height, List<Heights> shown) {
        double[] every =
                shown.stream().flatMapToDouble(one -> Arrays.stream(one.all)).toArray();
        double low = Math.floor(Arrays.stream(every).min().orElse(0)) - 1;
        double high = Math.ceil(Arrays.stream(every).max().orElse(1)) + 1;
        double width = high - low > WIDE ? 2 : high - low > NARROW ? 1 : 0.5;
        Axis x = Axis.fixed(height.title(), low, high);
        List<Series> bars = new ArrayList<>();
        List<Series> reached = new ArrayList<>();
        List<Mark> middles = new ArrayList<>();
        double most = 1;
        for (int i = 0; i < shown.size(); i++) {
            double[] all = shown.get(i).all;
            if (all.length == 0) {
                continue;
            }
            double[][] outline = outline(all, low, high, width);
            most = Math.max(most, Arrays.stream(outline[1]).max().orElse(0));
            if (i == 0) {
                bars.add(new Series.Ribbon(outline[0], new double[outline[0].length], outline[1], Hue.SCATTER, ""));
            }
            bars.add(new Series.Line(outline[0], outline[1], Hue.HEIGHT, Stroke.ofLine(i), ""));
            reached.add(reached(shown.get(i), low, high, Stroke.ofLine(i)));
            double middle = all[all.length / 2];
            middles.add(new Mark.Upright(
                    middle, shown.get(i).name() + ": half above " + Numbers.fixed(middle, height.decimals())));
        }
        String per = "of 100 throws, in each " + (width == 1 ? "metre" : Numbers.shortest(width, 1) + " m");
        Panel first = new Panel(x, Axis.around(per, 1, 0, most), bars, middles, 1);
        Panel second =
                new Panel(x, Axis.fixed("of 100 throws, so many reach it at least", 0, OF_ALL), reached, List.of(), 1);
        return new Figure(title, caption, foot, List.of(first, second));
    }

    /** The edge of the bars, as a line that goes up and down at their ends. */
    private static double[][] outline(double[] all, double low, double high, double width) {
        int bars = (int) Math.ceil((high - low) / width - 1e-9);
        double[] count = new double[bars];
        for (double one : all) {
            count[Math.min(bars - 1, (int) ((one - low) / width))] += OF_ALL / all.length;
        }
        double[] x = new double[2 * bars];
        double[] y = new double[2 * bars];
        for (int i = 0; i < bars; i++) {
            x[2 * i] = low + i * width;
            x[2 * i + 1] = Math.min(high, low + (i + 1) * width);
            y[2 * i] = count[i];
            y[2 * i + 1] = count[i];
        }
        return new double[][] {x, y};
    }

    private static Series reached(Heights heights, double low, double high, Stroke stroke) {
        double[] x = new double[STEPS + 1];
        double[] y = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double at = low + (high - low) * i / STEPS;
            x[i] = at;
            y[i] = OF_ALL * Arrays.stream(heights.all).filter(one -> one >= at).count() / heights.all.length;
        }
        return new Series.Line(x, y, Hue.HEIGHT, stroke, heights.name());
    }
}
