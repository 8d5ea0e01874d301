package org.sawfly.flight;

import org.sawfly.glider.Glider;
import org.sawfly.glider.Planform;

/**
 * Deflections as a builder measures them, in length at the root trailing edge, and as angles: s = c_f sin(delta), c_f the
 * chord of the moving part at the root.
 *
 * @param elevatorChord at the root [m]
 * @param flaperonChord at the root [m]
 * @param rudderChord at the root [m]
 */
public record Deflections(double elevatorChord, double flaperonChord, double rudderChord) {
    /** Those of a glider. */
    public static Deflections of(Glider glider) {
        return new Deflections(
                rootChord(glider.tailplane().planform()) * glider.tailplane().elevatorChord(),
                rootChord(glider.wing().planform()) * glider.wing().flaperon().chordFraction(),
                rootChord(glider.fin().above()) * glider.fin().rudderChord());
    }

    private static double rootChord(Planform planform) {
        return planform.stations().get(0).chord();
    }

    /** Angle [rad] of a deflection [m] of a part with this chord [m], at most 60 degrees' worth. */
    public static double angle(double deflection, double chord) {
        double sine = deflection / chord;
        return Math.asin(Math.max(-0.87, Math.min(0.87, sine)));
    }

    /** Deflection [m] at the trailing edge of an angle [rad]. */
    public static double deflection(double angle, double chord) {
        return chord * Math.sin(angle);
    }
}
