package org.sawfly.math;

import java.util.Arrays;

/**
 * Smooth function of three places through given values on a grid: cubic between the knots, continuous with its first
 * derivatives. Several functions ("channels") lie side by side in one array, so that they share the search and the
 * weights. Immutable, allocation-free; see {@link CubicAxis}.
 */
public final class CubicGrid3 {
    private final CubicAxis first;
    private final CubicAxis second;
    private final CubicAxis third;
    private final int channels;
    private final double[] values;

    /**
     * Several functions on one grid.
     *
     * @param values value of channel c at knots i, j, k:
     *     {@code values[((i * second.size() + j) * third.size() + k) * channels + c]}; copied
     */
    public CubicGrid3(CubicAxis first, CubicAxis second, CubicAxis third, int channels, double[] values) {
        check(values.length, channels, first.size(), second.size(), third.size());
        this.first = first;
        this.second = second;
        this.third = third;
        this.channels = channels;
        this.values = values.clone();
    }

    static void check(int length, int channels, int... sizes) {
        int expected = channels;
        for (int size : sizes) {
            expected *= size;
        }
        if (channels < 1 || length != expected) {
            throw new IllegalArgumentException(
                    "the grid needs " + expected + " values for " + channels + " channels, got " + length);
        }
    }

    public CubicAxis first() {
        return first;
    }

    public CubicAxis second() {
        return second;
    }

    public CubicAxis third() {
        return third;
    }

    /** A copy of the values, laid out as in the constructor. */
    public double[] values() {
        return values.clone();
    }

    /** All channels at (x, y, z). */
    public void at(double x, double y, double z, double[] out) {
        evaluate(x, false, y, false, z, false, out);
    }

    /**
     * All channels at every knot of the first axis, at one place of the others: the values of the curve that is left when
     * those are fixed.
     *
     * @param out channel c at knot i goes to {@code out[i * channels + c]}
     */
    public void alongFirst(double placeY, double placeZ, double[] out) {
        double y = second.wrap(placeY);
        double z = third.wrap(placeZ);
        int j = second.cell(y);
        int l = third.cell(z);
        double s = second.fraction(y, j);
        double t = third.fraction(z, l);
        int strideX = second.size() * third.size() * channels;
        Arrays.fill(out, 0, first.size() * channels, 0);
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                double weight = second.weight(j, a, s) * third.weight(l, b, t);
                int at = (second.node(j, a) * third.size() + third.node(l, b)) * channels;
                for (int i = 0; weight != 0 && i < first.size(); i++) {
                    for (int c = 0; c < channels; c++) {
                        out[i * channels + c] += weight * values[at + i * strideX + c];
                    }
                }
            }
        }
    }

    /** Derivatives of all channels with the first place. */
    public void slopesFirst(double x, double y, double z, double[] out) {
        evaluate(x, true, y, false, z, false, out);
    }

    /** Derivatives of all channels with the second place. */
    public void slopesSecond(double x, double y, double z, double[] out) {
        evaluate(x, false, y, true, z, false, out);
    }

    /** Derivatives of all channels with the third place. */
    public void slopesThird(double x, double y, double z, double[] out) {
        evaluate(x, false, y, false, z, true, out);
    }

    private void evaluate(
            double placeX, boolean dx, double placeY, boolean dy, double placeZ, boolean dz, double[] out) {
        double x = first.wrap(placeX);
        double y = second.wrap(placeY);
        double z = third.wrap(placeZ);
        int i = first.cell(x);
        int j = second.cell(y);
        int l = third.cell(z);
        double r = first.fraction(x, i);
        double s = second.fraction(y, j);
        double t = third.fraction(z, l);
        int strideY = third.size() * channels;
        int strideX = second.size() * strideY;
        double u0 = dx ? first.weightSlope(i, 0, r) : first.weight(i, 0, r);
        double u1 = dx ? first.weightSlope(i, 1, r) : first.weight(i, 1, r);
        double u2 = dx ? first.weightSlope(i, 2, r) : first.weight(i, 2, r);
        double u3 = dx ? first.weightSlope(i, 3, r) : first.weight(i, 3, r);
        double v0 = dy ? second.weightSlope(j, 0, s) : second.weight(j, 0, s);
        double v1 = dy ? second.weightSlope(j, 1, s) : second.weight(j, 1, s);
        double v2 = dy ? second.weightSlope(j, 2, s) : second.weight(j, 2, s);
        double v3 = dy ? second.weightSlope(j, 3, s) : second.weight(j, 3, s);
        double w0 = dz ? third.weightSlope(l, 0, t) : third.weight(l, 0, t);
        double w1 = dz ? third.weightSlope(l, 1, t) : third.weight(l, 1, t);
        double w2 = dz ? third.weightSlope(l, 2, t) : third.weight(l, 2, t);
        double w3 = dz ? third.weightSlope(l, 3, t) : third.weight(l, 3, t);
        int x0 = first.node(i, 0) * strideX;
        int x1 = first.node(i, 1) * strideX;
        int x2 = first.node(i, 2) * strideX;
        int x3 = first.node(i, 3) * strideX;
        int y0 = second.node(j, 0) * strideY;
        int y1 = second.node(j, 1) * strideY;
        int y2 = second.node(j, 2) * strideY;
        int y3 = second.node(j, 3) * strideY;
        int z0 = third.node(l, 0) * channels;
        int z1 = third.node(l, 1) * channels;
        int z2 = third.node(l, 2) * channels;
        int z3 = third.node(l, 3) * channels;
        for (int c = 0; c < channels; c++) {
            out[c] = u0 * plane(x0 + c, y0, y1, y2, y3, v0, v1, v2, v3, z0, z1, z2, z3, w0, w1, w2, w3)
                    + u1 * plane(x1 + c, y0, y1, y2, y3, v0, v1, v2, v3, z0, z1, z2, z3, w0, w1, w2, w3)
                    + u2 * plane(x2 + c, y0, y1, y2, y3, v0, v1, v2, v3, z0, z1, z2, z3, w0, w1, w2, w3)
                    + u3 * plane(x3 + c, y0, y1, y2, y3, v0, v1, v2, v3, z0, z1, z2, z3, w0, w1, w2, w3);
        }
    }

    private double plane(
            int at,
            int y0,
            int y1,
            int y2,
            int y3,
            double v0,
            double v1,
            double v2,
            double v3,
            int z0,
            int z1,
            int z2,
            int z3,
            double w0,
            double w1,
            double w2,
            double w3) {
        if (third.size() == 1) {
            return w0 * (v0 * values[at + y0] + v1 * values[at + y1] + v2 * values[at + y2] + v3 * values[at + y3]);
        }
        return v0 * line(at + y0, z0, z1, z2, z3, w0, w1, w2, w3)
                + v1 * line(at + y1, z0, z1, z2, z3, w0, w1, w2, w3)
                + v2 * line(at + y2, z0, z1, z2, z3, w0, w1, w2, w3)
                + v3 * line(at + y3, z0, z1, z2, z3, w0, w1, w2, w3);
    }

    private double line(int at, int z0, int z1, int z2, int z3, double w0, double w1, double w2, double w3) {
        return w0 * values[at + z0] + w1 * values[at + z1] + w2 * values[at + z2] + w3 * values[at + z3];
    }
}
