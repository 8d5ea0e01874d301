package org.sawfly.flight;

import org.sawfly.glider.Glider;
import org.sawfly.glider.Planform;

/**
 * Deflections as a builder measures them, in length at the root trailing edge, and as angles: s = c_f sin(delta), c_f the
 * chord of the moving part behind its hinge at the root. A surface that turns as a whole turns about a quarter of its
 * chord (common practice, no source), so that only three quarters of it count.
 *
 * @param elevatorChord behind the hinge at the root [m]
 * @param flaperonChord behind the hinge at the root [m]
 * @param rudderChord behind the hinge at the root [m]
 */
public record Deflections(double elevatorChord, double flaperonChord, double rudderChord) {
    /** Chord behind the hinge of a surface that turns as a whole, over its chord [1]. */
    private static final double WHOLE_BEHIND_HINGE = 0.75;

    /** Those of a glider. */
    public static Deflections of(Glider glider) {
        return new Deflections(
                rootChord(glider.tailplane().planform())
                        * behindHinge(glider.tailplane().elevatorChord()),
                rootChord(glider.wing().planform())
                        * behindHinge(glider.wing().flaperon().chordFraction()),
                rootChord(glider.fin().above()) * behindHinge(glider.fin().rudderChord()));
    }

    private static double behindHinge(double chordFraction) {
        return chordFraction < 1 ? chordFraction : WHOLE_BEHIND_HINGE;
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
