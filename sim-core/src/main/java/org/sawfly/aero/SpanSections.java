package org.sawfly.aero;

import org.sawfly.section.Section;

/**
 * Sections of the strips of one surface: those of root and tip mixed in proportion to the distance from the root, at the
 * strip's own Reynolds number V c/nu and its own flap angle, which is the flap's times the share of the strip it covers.
 */
final class SpanSections {
    private static final int CHANNELS = 3;
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
