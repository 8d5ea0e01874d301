package org.sawfly.math;

/**
 * One direction of a smooth table made of parabolas, which asks for three neighbours where {@link CubicAxis} asks for four: a
 * quadratic B-spline through given values at the knots, its pieces joined half way between knots (de Boor, A Practical Guide
 * to Splines, 1978, chapter IX). Value and slope are continuous. The spline has a coefficient at every knot, made from the
 * values once by {@link #coefficients}; directions multiply.
 *
 * <p>Open axes hold their end values with slope zero; closed ones repeat. Immutable; looking up allocates nothing.
 */
public final class QuadraticAxis {
    private static final int BINS_A_KNOT = 4;
    private static final int SWEEPS = 35;

    private final int count;
    private final boolean closed;
    private final double period;
    /** Where piece i begins; one more for the end. */
    private final double[] begins;

    private final double[] perWidth;
    /** Shares of the neighbours before and after: h/(h + h_before), h/(h + h_after). */
    private final double[] before;

    private final double[] after;
    /** Weights of the neighbours' coefficients at the knot itself. */
    private final double[] atKnotBefore;

    private final double[] atKnotAfter;
    private final int[] bins;
    private final double binsPerUnit;

    private QuadraticAxis(double[] knots, double period) {
        this.count = knots.length;
        this.closed = period > 0;
        this.period = period;
        this.begins = new double[count + 1];
        this.perWidth = new double[count];
        this.before = new double[count];
        this.after = new double[count];
        this.atKnotBefore = new double[count];
        this.atKnotAfter = new double[count];
        for (int i = 1; i < count; i++) {
            if (!(knots[i] > knots[i - 1])) {
                throw new IllegalArgumentException("knots must increase: knot " + i + " is " + knots[i]);
            }
            begins[i] = 0.5 * (knots[i - 1] + knots[i]);
        }
        begins[0] = closed ? 0.5 * (knots[count - 1] - period + knots[0]) : knots[0];
        begins[count] = closed ? begins[0] + period : knots[count - 1];
        for (int i = 0; i < count; i++) {
            double width = width(i);
            perWidth[i] = width > 0 ? 1 / width : 0;
            before[i] = width > 0 ? width / (width + width(i - 1)) : 0;
            after[i] = width > 0 ? width / (width + width(i + 1)) : 0;
            double t = fraction(knots[i], i);
            atKnotBefore[i] = weightBefore(i, t);
            atKnotAfter[i] = weightAfter(i, t);
        }
        double span = Math.max(begins[count] - begins[0], Double.MIN_NORMAL);
        this.bins = new int[BINS_A_KNOT * count + 1];
        this.binsPerUnit = BINS_A_KNOT * count / span;
        int piece = 0;
        for (int b = 0; b < bins.length; b++) {
            while (piece < count - 1 && begins[piece + 1] <= begins[0] + b / binsPerUnit) {
                piece++;
            }
            bins[b] = piece;
        }
    }

    /** An open axis; one knot makes a constant. */
    public static QuadraticAxis open(double... knots) {
        if (knots.length == 0) {
            throw new IllegalArgumentException("an axis needs at least one knot");
        }
        return new QuadraticAxis(knots, 0);
    }

    /** An axis that repeats after a period. */
    public static QuadraticAxis closed(double period, double... knots) {
        if (knots.length < 3 || !(knots[knots.length - 1] - knots[0] < period)) {
            throw new IllegalArgumentException("a closed axis needs at least 3 knots within its period " + period);
        }
        return new QuadraticAxis(knots, period);
    }

    private double width(int i) {
        int piece = closed ? Math.floorMod(i, count) : Math.min(Math.max(i, 0), count - 1);
        return begins[piece + 1] - begins[piece];
    }

    /** Number of knots and of coefficients. */
    public int size() {
        return count;
    }

    /** The place brought into the period of a closed axis, or to the nearer end of an open one. */
    public double wrap(double x) {
        if (x >= begins[0] && x < begins[count]) {
            return x;
        }
        if (!closed) {
            return x < begins[0] ? begins[0] : begins[count];
        }
        double r = x - period * Math.floor((x - begins[0]) / period);
        return r < begins[count] ? r : begins[0];
    }

    /** The piece in which a wrapped place lies. */
    public int piece(double x) {
        int i = bins[(int) ((x - begins[0]) * binsPerUnit)];
        while (i < count - 1 && x >= begins[i + 1]) {
            i++;
        }
        return i;
    }

    /** Place within a piece, 0 to 1. */
    public double fraction(double x, int piece) {
        return (x - begins[piece]) * perWidth[piece];
    }

    /** Weight of the coefficient before the piece's own; the piece's own has what is left of one. */
    public double weightBefore(int piece, double t) {
        return (1 - t) * (1 - t) * before[piece];
    }

    /** Weight of the coefficient after the piece's own. */
    public double weightAfter(int piece, double t) {
        return t * t * after[piece];
    }

    /** Index of the coefficient before a piece's own. */
    public int indexBefore(int piece) {
        return piece > 0 ? piece - 1 : closed ? count - 1 : 0;
    }

    /** Index of the coefficient after a piece's own. */
    public int indexAfter(int piece) {
        return piece < count - 1 ? piece + 1 : closed ? 0 : count - 1;
    }

    /**
     * Turns values at the knots into coefficients, in place.
     *
     * @param values value of knot i at {@code values[from + i * stride]}
     */
    public void coefficients(double[] values, int from, int stride) {
        if (closed) {
            sweep(values, from, stride);
        } else {
            eliminate(values, from, stride);
        }
    }

    /** Between the ends, whose coefficients are their values, a system of three bands (Thomas). */
    private void eliminate(double[] values, int from, int stride) {
        double[] share = new double[count];
        for (int i = 1; i < count - 1; i++) {
            int own = from + i * stride;
            double pivot = 1 - atKnotBefore[i] - atKnotAfter[i] - atKnotBefore[i] * share[i - 1];
            share[i] = atKnotAfter[i] / pivot;
            values[own] = (values[own] - atKnotBefore[i] * values[own - stride]) / pivot;
        }
        for (int i = count - 2; i > 0; i--) {
            values[from + i * stride] -= share[i] * values[from + (i + 1) * stride];
        }
    }

    /** On a closed axis by sweeps (Gauss and Seidel), each of which leaves a third of what is missing. */
    private void sweep(double[] values, int from, int stride) {
        double[] wanted = new double[count];
        for (int i = 0; i < count; i++) {
            wanted[i] = values[from + i * stride];
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int i = 0; i < count; i++) {
                double rest = wanted[i]
                        - atKnotBefore[i] * values[from + indexBefore(i) * stride]
                        - atKnotAfter[i] * values[from + indexAfter(i) * stride];
                values[from + i * stride] = rest / (1 - atKnotBefore[i] - atKnotAfter[i]);
            }
        }
    }
}
