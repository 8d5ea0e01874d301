package org.sawfly.section;

import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicGrid3;

/**
 * Section coefficients on a grid over angle of attack (whole circle, closed), logarithm of Reynolds number and flap angle,
 * cubic between the knots and continuous with its first derivatives everywhere. Beyond the first and last Reynolds number
 * and flap angle the end values are held, and the slope towards them is zero there, so that holding makes no kink.
 *
 * <p>Immutable and free of allocation: one table serves any number of flights.
 */
public final class SectionTable implements Section {
    private static final int CHANNELS = 3;
    /** Knots nearer to each other than this are one when grids are joined [rad] or [1]. */
    private static final double SAME = 1e-6;

    private final SectionGrid grid;
    private final CubicGrid3 values;

    /**
     * A table of given values.
     *
     * @param values cl, cd, cm of angle i, Reynolds number j and flap angle k from {@code 3 ((i nRe + j) nFlap + k)} on
     */
    public SectionTable(SectionGrid grid, double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a section table must be finite, got " + value);
            }
        }
        this.grid = grid;
        this.values = new CubicGrid3(grid.alphaAxis(), grid.reynoldsAxis(), grid.flapAxis(), CHANNELS, values);
    }

    /** Any section put on a grid. */
    public static SectionTable of(Section section, SectionGrid grid) {
        double[] alphas = grid.alphas();
        double[] reynolds = grid.reynolds();
        double[] flaps = grid.flaps();
        double[] values = new double[CHANNELS * alphas.length * reynolds.length * flaps.length];
        double[] out = new double[CHANNELS];
        for (int j = 0; j < reynolds.length; j++) {
            for (int k = 0; k < flaps.length; k++) {
                Section run = section.prepared(reynolds[j], flaps[k]);
                for (int i = 0; i < alphas.length; i++) {
                    run.at(alphas[i], reynolds[j], flaps[k], out);
                    System.arraycopy(
                            out, 0, values, CHANNELS * ((i * reynolds.length + j) * flaps.length + k), CHANNELS);
                }
            }
        }
        return new SectionTable(grid, values);
    }

    /**
     * A table of measured or computed rows, in any order, one array a column. Every Reynolds number needs every flap
     * angle, with at least four angles of attack each; the angles may differ from run to run. What is missing of the whole
     * circle is completed from the separated plate, smoothly.
     *
     * @param reynolds Reynolds numbers [1]
     * @param flap flap angles [rad], trailing edge down positive
     * @param alpha angles of attack [rad], -pi to pi
     * @throws IllegalArgumentException if runs are missing or too short, or rows contradict each other
     */
    public static SectionTable fromRows(
            double[] reynolds, double[] flap, double[] alpha, double[] cl, double[] cd, double[] cm) {
        return new SectionRows(reynolds, flap, alpha, cl, cd, cm).table();
    }

    /**
     * The section between two others, as a station between root and tip has it: all coefficients mixed in proportion.
     *
     * @param t 0 gives {@code a}, 1 gives {@code b} [1]
     */
    public static SectionTable blend(SectionTable a, SectionTable b, double t) {
        if (!(t >= 0 && t <= 1)) {
            throw new IllegalArgumentException("t must lie between 0 and 1, got " + t);
        }
        SectionGrid grid = a.grid.sameAs(b.grid) ? a.grid : a.grid.joined(b.grid, SAME);
        double[] first = a.on(grid);
        double[] second = b.on(grid);
        for (int i = 0; i < first.length; i++) {
            first[i] += t * (second[i] - first[i]);
        }
        return new SectionTable(grid, first);
    }

    @Override
    public void at(double alpha, double reynolds, double flap, double[] out) {
        values.at(alpha, Math.log(reynolds), flap, out);
    }

    /**
     * cl, cd and cm at every angle of the table's grid, for one Reynolds number and flap angle; the table between them is
     * the smooth curve through these on a closed axis.
     *
     * @param out cl, cd, cm of the grid's angle i from {@code out[3 * i]} on
     */
    public void polar(double reynolds, double flap, double[] out) {
        values.alongFirst(Math.log(reynolds), flap, out);
    }

    /** The derivatives of cl, cd and cm with the angle of attack [1/rad]. */
    public void slopes(double alpha, double reynolds, double flap, double[] out) {
        values.slopesFirst(alpha, Math.log(reynolds), flap, out);
    }

    /**
     * Looks between the rows, along each direction, for a place where the drag is not above 0: the cubic swings there between
     * rows that differ much and stand far apart.
     *
     * @return angle [rad], Reynolds number [1] and flap angle [rad] of such a place, that of the least angle; empty if none
     */
    public double[] withoutDrag() {
        CubicAxis[] axes = {values.first(), values.second(), values.third()};
        int pairs = axes[1].size() * axes[2].size();
        double[] found = new double[0];
        for (int n = 0; n < axes[0].size() * pairs; n++) {
            int[] at = {n / pairs, n % pairs / axes[2].size(), n % axes[2].size()};
            for (int axis = 0; axis < axes.length; axis++) {
                double[] place = withoutDrag(axes, at, axis);
                if (place.length > 0 && (found.length == 0 || Math.abs(place[0]) < Math.abs(found[0]))) {
                    found = place;
                }
            }
        }
        return found;
    }

    /** The same from one knot to the next in one direction, at its quarters. */
    private double[] withoutDrag(CubicAxis[] axes, int[] at, int axis) {
        double[] place = {axes[0].knot(at[0]), axes[1].knot(at[1]), axes[2].knot(at[2])};
        double[] out = new double[CHANNELS];
        double from = place[axis];
        double width = at[axis] + 1 < axes[axis].size() ? axes[axis].knot(at[axis] + 1) - from : 0;
        for (double part = 0.25; width > 0 && part < 1; part += 0.25) {
            place[axis] = from + part * width;
            values.at(place[0], place[1], place[2], out);
            if (!(out[1] > 0)) {
                return new double[] {place[0], Math.exp(place[1]), place[2]};
            }
        }
        return new double[0];
    }

    public SectionGrid grid() {
        return grid;
    }

    private double[] on(SectionGrid other) {
        return grid == other ? values.values() : of(this, other).values.values();
    }
}
