package org.sawfly.math;

/**
 * Smooth curve through given values: cubic between the knots, continuous with its first derivative. One or more
 * functions of the same place ("channels") may lie side by side. Immutable, allocation-free; see {@link CubicAxis} for
 * the interpolation and what happens beyond the ends.
 */
public final class CubicGrid1 {
    private final CubicAxis axis;
    private final int channels;
    private final double[] values;

    /** A single function; {@code values[i]} belongs to knot i. */
    public CubicGrid1(CubicAxis axis, double[] values) {
        this(axis, 1, values);
    }

    /** Several functions; {@code values[i * channels + channel]} belongs to knot i. */
    public CubicGrid1(CubicAxis axis, int channels, double[] values) {
        CubicGrid3.check(values.length, channels, axis.size());
        this.axis = axis;
        this.channels = channels;
        this.values = values.clone();
    }

    /** Value of the first channel at x. */
    public double value(double x) {
        return channel(x, 0);
    }

    /** Derivative of the first channel with x. */
    public double slope(double x) {
        return channelSlope(x, 0);
    }

    /** All channels at x. */
    public void at(double place, double[] out) {
        double x = axis.wrap(place);
        int i = axis.cell(x);
        double t = axis.fraction(x, i);
        double w0 = axis.weight(i, 0, t);
        double w1 = axis.weight(i, 1, t);
        double w2 = axis.weight(i, 2, t);
        double w3 = axis.weight(i, 3, t);
        int n0 = axis.node(i, 0) * channels;
        int n1 = axis.node(i, 1) * channels;
        int n2 = axis.node(i, 2) * channels;
        int n3 = axis.node(i, 3) * channels;
        for (int c = 0; c < channels; c++) {
            out[c] = w0 * values[n0 + c] + w1 * values[n1 + c] + w2 * values[n2 + c] + w3 * values[n3 + c];
        }
    }

    private double channel(double place, int c) {
        double x = axis.wrap(place);
        int i = axis.cell(x);
        double t = axis.fraction(x, i);
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            sum += axis.weight(i, k, t) * values[axis.node(i, k) * channels + c];
        }
        return sum;
    }

    private double channelSlope(double place, int c) {
        double x = axis.wrap(place);
        int i = axis.cell(x);
        double t = axis.fraction(x, i);
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            sum += axis.weightSlope(i, k, t) * values[axis.node(i, k) * channels + c];
        }
        return sum;
    }
}
