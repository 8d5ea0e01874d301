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

    public int channels() {
        return channels;
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
        for (int c = 0; c < channels; c++) {
            out[c] = 0;
        }
        double w0 = dz ? third.weightSlope(l, 0, t) : third.weight(l, 0, t);
        double w1 = dz ? third.weightSlope(l, 1, t) : third.weight(l, 1, t);
        double w2 = dz ? third.weightSlope(l, 2, t) : third.weight(l, 2, t);
        double w3 = dz ? third.weightSlope(l, 3, t) : third.weight(l, 3, t);
        int n0 = third.node(l, 0) * channels;
        int n1 = third.node(l, 1) * channels;
        int n2 = third.node(l, 2) * channels;
        int n3 = third.node(l, 3) * channels;
        boolean single = third.size() == 1;
        for (int a = 0; a < 4; a++) {
            double u = dx ? first.weightSlope(i, a, r) : first.weight(i, a, r);
            int atX = first.node(i, a) * strideX;
            for (int b = 0; b < 4; b++) {
                double v = u * (dy ? second.weightSlope(j, b, s) : second.weight(j, b, s));
                int at = atX + second.node(j, b) * strideY;
                for (int c = 0; c < channels; c++) {
                    int q = at + c;
                    out[c] += single
                            ? v * w0 * values[q]
                            : v
                                    * (w0 * values[q + n0]
                                            + w1 * values[q + n1]
                                            + w2 * values[q + n2]
                                            + w3 * values[q + n3]);
                }
            }
        }
    }
}
