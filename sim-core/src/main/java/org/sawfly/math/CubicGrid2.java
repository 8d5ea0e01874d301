package org.sawfly.math;

/**
 * Smooth surface through given values on a grid of two directions: cubic between the knots, continuous with its first
 * derivatives. Several functions ("channels") may lie side by side. Immutable, allocation-free; see {@link CubicAxis}.
 */
public final class CubicGrid2 {
    private final CubicAxis first;
    private final CubicAxis second;
    private final int channels;
    private final double[] values;

    /** A single function; {@code values[i * second.size() + j]} belongs to knots i and j. */
    public CubicGrid2(CubicAxis first, CubicAxis second, double[] values) {
        this(first, second, 1, values);
    }

    /** Several functions; {@code values[(i * second.size() + j) * channels + channel]} belongs to knots i and j. */
    public CubicGrid2(CubicAxis first, CubicAxis second, int channels, double[] values) {
        CubicGrid3.check(values.length, channels, first.size(), second.size());
        this.first = first;
        this.second = second;
        this.channels = channels;
        this.values = values.clone();
    }

    /** Value of the first channel. */
    public double value(double x, double y) {
        return sum(x, false, y, false, 0);
    }

    /** All channels at (x, y). */
    public void at(double x, double y, double[] out) {
        for (int c = 0; c < channels; c++) {
            out[c] = sum(x, false, y, false, c);
        }
    }

    /** Derivatives of all channels with the first place. */
    public void slopesFirst(double x, double y, double[] out) {
        for (int c = 0; c < channels; c++) {
            out[c] = sum(x, true, y, false, c);
        }
    }

    /** Derivatives of all channels with the second place. */
    public void slopesSecond(double x, double y, double[] out) {
        for (int c = 0; c < channels; c++) {
            out[c] = sum(x, false, y, true, c);
        }
    }

    private double sum(double placeX, boolean slopeX, double placeY, boolean slopeY, int c) {
        double x = first.wrap(placeX);
        double y = second.wrap(placeY);
        int i = first.cell(x);
        int j = second.cell(y);
        double s = first.fraction(x, i);
        double t = second.fraction(y, j);
        double v0 = slopeY ? second.weightSlope(j, 0, t) : second.weight(j, 0, t);
        double v1 = slopeY ? second.weightSlope(j, 1, t) : second.weight(j, 1, t);
        double v2 = slopeY ? second.weightSlope(j, 2, t) : second.weight(j, 2, t);
        double v3 = slopeY ? second.weightSlope(j, 3, t) : second.weight(j, 3, t);
        int n0 = second.node(j, 0) * channels + c;
        int n1 = second.node(j, 1) * channels + c;
        int n2 = second.node(j, 2) * channels + c;
        int n3 = second.node(j, 3) * channels + c;
        int row = second.size() * channels;
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            int at = first.node(i, k) * row;
            double u = slopeX ? first.weightSlope(i, k, s) : first.weight(i, k, s);
            sum += u * (v0 * values[at + n0] + v1 * values[at + n1] + v2 * values[at + n2] + v3 * values[at + n3]);
        }
        return sum;
    }
}
