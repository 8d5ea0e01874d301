package org.sawfly.aero;

import org.sawfly.math.CubicAxis;

/**
 * cl, cd and cm of every strip over the angle of attack at one speed and flap angle: the curves of {@link CubicAxis} through
 * given values, as the coefficients of a cubic in each cell, which makes value and slope cheap. Immutable.
 */
final class StripPolars {
    private static final int CHANNELS = 3;

    private final CubicAxis axis;
    private final double[] cubics;
    private final double[] widths;
    private final int cells;

    /**
     * Curves through given values.
     *
     * @param values by strip: cl, cd, cm at knot i from {@code 3 i} on
     */
    StripPolars(CubicAxis axis, double[]... values) {
        this.axis = axis;
        int n = axis.size();
        this.cells = axis.cell(axis.knot(n - 1)) + 1;
        this.widths = new double[cells];
        this.cubics = new double[4 * CHANNELS * cells * values.length];
        for (int cell = 0; cell < cells; cell++) {
            widths[cell] = axis.knot(cell + 1) - axis.knot(cell);
            prepare(cell, values);
        }
    }

    private void prepare(int cell, double[][] values) {
        double width = widths[cell];
        double[] toEnd = new double[4];
        double[] toSlope = new double[4];
        double[] toEndSlope = new double[4];
        double[] toStart = new double[4];
        for (int k = 0; k < 4; k++) {
            toStart[k] = axis.weight(cell, k, 0);
            toEnd[k] = axis.weight(cell, k, 1);
            toSlope[k] = axis.weightSlope(cell, k, 0);
            toEndSlope[k] = axis.weightSlope(cell, k, 1);
        }
        for (int strip = 0; strip < values.length; strip++) {
            for (int c = 0; c < CHANNELS; c++) {
                double start = 0;
                double end = 0;
                double startSlope = 0;
                double endSlope = 0;
                for (int k = 0; k < 4; k++) {
                    double value = values[strip][CHANNELS * axis.node(cell, k) + c];
                    start += toStart[k] * value;
                    end += toEnd[k] * value;
                    startSlope += toSlope[k] * value;
                    endSlope += toEndSlope[k] * value;
                }
                startSlope *= width;
                endSlope *= width;
                int at = place(strip, cell, c);
                cubics[at] = start;
                cubics[at + 1] = startSlope;
                cubics[at + 2] = 3 * (end - start) - 2 * startSlope - endSlope;
                cubics[at + 3] = 2 * (start - end) + startSlope + endSlope;
            }
        }
    }

    private int place(int strip, int cell, int channel) {
        return 4 * ((strip * cells + cell) * CHANNELS + channel);
    }

    /** cl and its slope [1/rad] at an angle of attack [rad]. */
    void lift(int strip, double alpha, double[] out) {
        double x = axis.wrap(alpha);
        int cell = axis.cell(x);
        double t = axis.fraction(x, cell);
        int at = place(strip, cell, 0);
        double[] c = cubics;
        out[0] = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
        out[1] = (c[at + 1] + t * (2 * c[at + 2] + t * 3 * c[at + 3])) / widths[cell];
    }

    /** cl, cd and cm at an angle of attack [rad]. */
    void at(int strip, double alpha, double[] out) {
        double x = axis.wrap(alpha);
        int cell = axis.cell(x);
        double t = axis.fraction(x, cell);
        int at = place(strip, cell, 0);
        double[] c = cubics;
        for (int k = 0; k < CHANNELS; k++, at += 4) {
            out[k] = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
        }
    }
}
