package org.sawfly.math;

import java.util.Arrays;

/**
 * One direction of a smooth table: increasing knots and, for any place between them, the weights of the (at most four)
 * neighbouring knots.
 *
 * <p>Between two knots the value is the Hermite cubic whose end slopes are those of the parabola through each knot and
 * its two neighbours (on even knots: Catmull and Rom, "A class of local interpolating splines", 1974). The result is
 * continuous with its first derivative, and passes through the knots; parabolas are reproduced exactly. Weights of several
 * axes multiply, so tables of two and three directions are as smooth.
 *
 * <p>Immutable; nothing is allocated after construction.
 */
public final class CubicAxis {
    /** What happens beyond the first and the last knot. Both choices keep the first derivative continuous. */
    public enum Ends {
        /** The straight line with the slope at the end knot. */
        LINE,
        /** The value of the end knot is held; to stay smooth, the slope there is made zero. */
        FLAT
    }

    private static final int BUCKETS_A_CELL = 4;

    private final double[] knots;
    private final double period;
    private final boolean flat;
    private final int cells;
    private final int[] nodes;
    private final double[] polynomials;
    private final int[] buckets;
    private final double bucketsPerUnit;

    private CubicAxis(double[] knots, double period, Ends ends) {
        this.period = period;
        this.flat = ends == Ends.FLAT;
        int n = knots.length;
        boolean closed = period > 0;
        this.knots = closed ? Arrays.copyOf(knots, n + 1) : knots.clone();
        if (closed) {
            this.knots[n] = knots[0] + period;
        }
        for (int i = 0; i < this.knots.length; i++) {
            if (!Double.isFinite(this.knots[i]) || (i > 0 && this.knots[i] <= this.knots[i - 1])) {
                throw new IllegalArgumentException("knots must be finite and increasing: knot " + i + " is "
                        + this.knots[i] + (i > 0 ? " after " + this.knots[i - 1] : ""));
            }
        }
        this.cells = Math.max(this.knots.length - 1, 1);
        this.nodes = new int[4 * cells];
        this.polynomials = new double[16 * cells];
        if (n == 1) {
            polynomials[0] = 1;
        } else {
            for (int i = 0; i < cells; i++) {
                prepare(i, n, closed);
            }
        }
        double span = Math.max(this.knots[this.knots.length - 1] - this.knots[0], Double.MIN_NORMAL);
        this.buckets = new int[BUCKETS_A_CELL * cells + 1];
        this.bucketsPerUnit = BUCKETS_A_CELL * cells / span;
        int cell = 0;
        for (int b = 0; b < buckets.length; b++) {
            while (cell < cells - 1 && this.knots[cell + 1] <= this.knots[0] + b / bucketsPerUnit) {
                cell++;
            }
            buckets[b] = cell;
        }
    }

    /**
     * An axis with the given knots.
     *
     * @param ends what happens beyond the knots
     * @param knots increasing; one knot makes a constant, two a straight line (or an S between FLAT ends)
     */
    public static CubicAxis of(Ends ends, double... knots) {
        if (knots.length == 0) {
            throw new IllegalArgumentException("an axis needs at least one knot");
        }
        return new CubicAxis(knots, 0, ends);
    }

    /** An axis of evenly spaced knots from {@code first} to {@code last}, both included. */
    public static CubicAxis uniform(Ends ends, double first, double last, int count) {
        double[] knots = new double[count];
        for (int i = 0; i < count; i++) {
            knots[i] = count == 1 ? first : first + (last - first) * i / (count - 1);
        }
        return of(ends, knots);
    }

    /**
     * An axis that closes on itself: the value at {@code x + period} is that at {@code x}.
     *
     * @param period length after which everything repeats, in the unit of the knots
     * @param knots at least four, increasing, within one period; the first is not repeated at the end
     */
    public static CubicAxis periodic(double period, double... knots) {
        if (knots.length < 4 || !(knots[knots.length - 1] - knots[0] < period)) {
            throw new IllegalArgumentException("a closed axis needs at least 4 knots within its period " + period);
        }
        return new CubicAxis(knots, period, Ends.LINE);
    }

    /** Number of knots, that is of values the axis asks for. */
    public int size() {
        return period > 0 || knots.length == 1 ? cells : cells + 1;
    }

    /** Place of knot {@code i}. */
    public double knot(int i) {
        return knots[i];
    }

    /** The place brought into the period of a closed axis; unchanged on an open one. */
    public double wrap(double x) {
        if (period > 0 && !(x >= knots[0] && x < knots[cells])) {
            double r = x - period * Math.floor((x - knots[0]) / period);
            return r < knots[cells] ? r : knots[0];
        }
        return x;
    }

    /** The interval in which {@code x} (wrapped) lies; the first or the last one beyond the ends. */
    public int cell(double x) {
        int bucket = (int) ((x - knots[0]) * bucketsPerUnit);
        int i = buckets[Math.min(Math.max(bucket, 0), buckets.length - 1)];
        while (i < cells - 1 && x >= knots[i + 1]) {
            i++;
        }
        return i;
    }

    /** Place within the cell, 0 at its left knot and 1 at its right one; outside 0..1 only beyond LINE ends. */
    public double fraction(double x, int cell) {
        if (knots.length == 1) {
            return 0;
        }
        double t = (x - knots[cell]) / (knots[cell + 1] - knots[cell]);
        return flat && !(t >= 0 && t <= 1) ? Math.min(Math.max(t, 0), 1) : t;
    }

    /** Index of the {@code k}-th of the four knots that count in this cell, k = 0..3. */
    public int node(int cell, int k) {
        return nodes[4 * cell + k];
    }

    /** Weight of the {@code k}-th of the four knots at fraction {@code t}. */
    public double weight(int cell, int k, double t) {
        int p = 16 * cell + 4 * k;
        double[] c = polynomials;
        if (t >= 0 && t <= 1) {
            return c[p] + t * (c[p + 1] + t * (c[p + 2] + t * c[p + 3]));
        }
        return beyond(p, t);
    }

    /** Finds the knots and the weights of any place. */
    public void locate(double place, AxisPlace out) {
        double x = wrap(place);
        int i = cell(x);
        double t = fraction(x, i);
        if (i != out.cell) {
            out.cell = i;
            out.n0 = nodes[4 * i];
            out.n1 = nodes[4 * i + 1];
            out.n2 = nodes[4 * i + 2];
            out.n3 = nodes[4 * i + 3];
        }
        int p = 16 * i;
        double[] c = polynomials;
        if (t >= 0 && t <= 1) {
            out.w0 = c[p] + t * (c[p + 1] + t * (c[p + 2] + t * c[p + 3]));
            out.w1 = c[p + 4] + t * (c[p + 5] + t * (c[p + 6] + t * c[p + 7]));
            out.w2 = c[p + 8] + t * (c[p + 9] + t * (c[p + 10] + t * c[p + 11]));
            out.w3 = c[p + 12] + t * (c[p + 13] + t * (c[p + 14] + t * c[p + 15]));
        } else {
            out.w0 = beyond(p, t);
            out.w1 = beyond(p + 4, t);
            out.w2 = beyond(p + 8, t);
            out.w3 = beyond(p + 12, t);
        }
    }

    /** The straight line through the nearer end of the cell. */
    private double beyond(int p, double t) {
        double[] c = polynomials;
        double end = t < 0 ? 0 : 1;
        double value = c[p] + end * (c[p + 1] + c[p + 2] + c[p + 3]);
        double slope = c[p + 1] + end * (2 * c[p + 2] + 3 * c[p + 3]);
        return value + (t - end) * slope;
    }

    /** Derivative of that weight with the place x [1/unit of the knots]; zero beyond FLAT ends. */
    public double weightSlope(int cell, int k, double t) {
        if (knots.length == 1) {
            return 0;
        }
        int p = 16 * cell + 4 * k;
        double[] c = polynomials;
        double s = Math.min(Math.max(t, 0), 1);
        return (c[p + 1] + s * (2 * c[p + 2] + s * 3 * c[p + 3])) / (knots[cell + 1] - knots[cell]);
    }

    /** Cubic polynomials of the four weights of cell i. */
    private void prepare(int i, int n, boolean closed) {
        int first = closed ? i - 1 : Math.max(0, Math.min(i - 1, n - 4));
        double width = knots[i + 1] - knots[i];
        double[] left = new double[4];
        double[] right = new double[4];
        slope(i, first, n, closed, width, left);
        slope(i + 1, first, n, closed, width, right);
        for (int k = 0; k < 4; k++) {
            int knot = first + k;
            nodes[4 * i + k] = closed ? Math.floorMod(knot, n) : Math.min(knot, n - 1);
            double f0 = knot == i ? 1 : 0;
            double f1 = knot == i + 1 ? 1 : 0;
            int p = 16 * i + 4 * k;
            polynomials[p] = f0;
            polynomials[p + 1] = left[k];
            polynomials[p + 2] = 3 * (f1 - f0) - 2 * left[k] - right[k];
            polynomials[p + 3] = 2 * (f0 - f1) + left[k] + right[k];
        }
    }

    /** Weights (from knot {@code first} on) that give the slope at a knot, times the width of the cell. */
    private void slope(int at, int first, int n, boolean closed, double width, double[] weights) {
        boolean end = !closed && (at == 0 || at == n - 1);
        if (end && flat) {
            return;
        }
        if (n == 2) {
            weights[0] = -1;
            weights[1] = 1;
            return;
        }
        int middle = closed ? at : Math.max(1, Math.min(at, n - 2));
        double a = place(middle - 1, n);
        double b = place(middle, n);
        double c = place(middle + 1, n);
        double x = place(at, n);
        weights[middle - 1 - first] += width * (2 * x - b - c) / ((a - b) * (a - c));
        weights[middle - first] += width * (2 * x - a - c) / ((b - a) * (b - c));
        weights[middle + 1 - first] += width * (2 * x - a - b) / ((c - a) * (c - b));
    }

    private double place(int i, int n) {
        return period > 0 ? knots[Math.floorMod(i, n)] + period * Math.floorDiv(i, n) : knots[i];
    }
}
