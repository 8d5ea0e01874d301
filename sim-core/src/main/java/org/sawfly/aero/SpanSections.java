package org.sawfly.aero;

import java.util.Arrays;
import org.sawfly.math.CubicAxis;
import org.sawfly.section.Section;
import org.sawfly.section.SectionTable;

/**
 * Sections of the strips of one surface: those of root and tip mixed in proportion to the distance from the root, at the
 * strip's own Reynolds number V c/nu and its own flap angle, which is the flap's times the share of the strip it covers.
 */
final class SpanSections {
    private static final double TURN = 2 * Math.PI;
    private static final int CHANNELS = 3;
    /** Steps of a turn in which a section that is not a table is sampled. */
    private static final int SAMPLES = 240;
    /** Lift slope is taken between minus and plus this angle [rad], which bridges the dead zone of thin tail sections. */
    private static final double SLOPE_REACH = 0.07;
    /** Slope is kept within these, whatever the table says, so that the vortex system stays well posed [1/rad]. */
    private static final double LEAST_SLOPE = 3;

    private static final double LARGEST_SLOPE = 8;

    private final Section root;
    private final Section tip;
    private final double[] toTip;
    private final double[] flapShares;
    private final double[] chords;
    private final double viscosity;
    private final boolean onTable;
    private final double[] alphas;
    private final CubicAxis axis;
    private final double[] first = new double[CHANNELS];
    private final double[] second = new double[CHANNELS];

    /**
     * Sections of given strips.
     *
     * @param toTip weight of the tip's section, 0..1, by strip
     * @param flapShares share of the strip the flap covers, 0..1
     * @param chords [m]
     * @param viscosity kinematic viscosity [m2/s]
     */
    SpanSections(Section root, Section tip, double[] toTip, double[] flapShares, double[] chords, double viscosity) {
        this.root = root;
        this.tip = tip;
        this.toTip = toTip;
        this.flapShares = flapShares;
        this.chords = chords;
        this.viscosity = viscosity;
        this.onTable = sameTables(root, tip);
        this.alphas = onTable ? ((SectionTable) root).grid().alphas() : even();
        this.axis = CubicAxis.periodic(TURN, alphas);
    }

    /** The same sections with scratch of their own, for another thread. */
    SpanSections copy() {
        return new SpanSections(root, tip, toTip, flapShares, chords, viscosity);
    }

    /** Whether both are tables on the same angles: then a polar is the table itself. */
    private static boolean sameTables(Section root, Section tip) {
        return root instanceof SectionTable a
                && tip instanceof SectionTable b
                && (a == b || Arrays.equals(a.grid().alphas(), b.grid().alphas()));
    }

    private static double[] even() {
        double[] even = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            even[i] = -0.5 * TURN + TURN * i / SAMPLES;
        }
        return even;
    }

    /** Lift slope of every strip at this speed, flap neutral [1/rad]. */
    double[] slopes(double speed) {
        double[] slopes = new double[chords.length];
        for (int i = 0; i < slopes.length; i++) {
            at(i, -SLOPE_REACH, speed, 0);
            double low = first[0];
            at(i, SLOPE_REACH, speed, 0);
            double slope = (first[0] - low) / (2 * SLOPE_REACH);
            slopes[i] = Math.min(Math.max(slope, LEAST_SLOPE), LARGEST_SLOPE);
        }
        return slopes;
    }

    /** cl, cd, cm over the angle of attack for every strip, at one speed [m/s] and flap angle [rad]. */
    StripPolars polars(double speed, double flap) {
        double[][] values = new double[chords.length][CHANNELS * alphas.length];
        double[] other = new double[CHANNELS * alphas.length];
        for (int i = 0; i < chords.length; i++) {
            double reynolds = speed * chords[i] / viscosity;
            double angle = flap * flapShares[i];
            sample(root, reynolds, angle, values[i]);
            if (tip != root) {
                sample(tip, reynolds, angle, other);
                for (int k = 0; k < other.length; k++) {
                    values[i][k] += toTip[i] * (other[k] - values[i][k]);
                }
            }
        }
        return new StripPolars(axis, values);
    }

    private void sample(Section section, double reynolds, double angle, double[] values) {
        if (onTable) {
            ((SectionTable) section).polar(reynolds, angle, values);
            return;
        }
        Section prepared = section.prepared(reynolds, angle);
        for (int k = 0; k < alphas.length; k++) {
            prepared.at(alphas[k], reynolds, angle, second);
            System.arraycopy(second, 0, values, CHANNELS * k, CHANNELS);
        }
    }

    private void at(int strip, double alpha, double speed, double flap) {
        double reynolds = speed * chords[strip] / viscosity;
        double angle = flap * flapShares[strip];
        root.at(alpha, reynolds, angle, first);
        if (tip != root) {
            tip.at(alpha, reynolds, angle, second);
            for (int c = 0; c < CHANNELS; c++) {
                first[c] += toTip[strip] * (second[c] - first[c]);
            }
        }
    }
}
