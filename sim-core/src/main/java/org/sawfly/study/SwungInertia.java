package org.sawfly.study;

import org.sawfly.aero.ApparentMass;
import org.sawfly.glider.Bifilar;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;

/**
 * An inertia found by swinging the glider on two strings, with its uncertainty. {@code I = m g b^2 T^2/(4 pi^2 L)} is a
 * product of powers, so the relative uncertainties add in squares, {@code (dI/I)^2 = (dm/m)^2 + (2 db/b)^2 + (2 dT/T)^2 +
 * (dL/L)^2} (Taylor, An Introduction to Error Analysis, 2nd ed. 1997, chapter 3); the air carried along, known to a part of
 * itself, is taken off and its uncertainty added in squares.
 *
 * @param swung what swung, glider and air [kg m2]
 * @param air carried along [kg m2]
 * @param doubt of the glider's own inertia [kg m2]
 * @param parts the same inertia from the glider's parts [kg m2]
 */
public record SwungInertia(double swung, double air, double doubt, double parts) {
    /** How well the carried air is known [1]; thin-plate theory against round edges, no source. */
    public static final double AIR_DOUBT = 0.15;

    /**
     * How well each measure is known, each half width in its own unit.
     *
     * @param mass [kg]
     * @param apart of half the distance between the strings [m]
     * @param length [m]
     * @param period [s]
     */
    public record Doubts(double mass, double apart, double length, double period) {}

    /** From one swing of a glider. */
    public static SwungInertia of(Glider glider, Bifilar swing, Doubts doubts) {
        MassProperties mass = MassProperties.of(glider);
        int row = 3 + swing.axis().ordinal();
        double air = ApparentMass.of(glider, mass.cg()).matrix()[row][row];
        double swung = swing.swungInertia();
        double relative = Math.sqrt(square(doubts.mass() / swing.mass())
                + square(2 * doubts.apart() / swing.halfDistance())
                + square(doubts.length() / swing.length())
                + square(2 * doubts.period() / swing.period()));
        double parts =
                switch (swing.axis()) {
                    case ROLL -> mass.inertia().ixx();
                    case PITCH -> mass.inertia().iyy();
                    case YAW -> mass.inertia().izz();
                };
        return new SwungInertia(swung, air, Math.hypot(relative * swung, AIR_DOUBT * air), parts);
    }

    /** The glider's own inertia [kg m2]. */
    public double inertia() {
        return swung - air;
    }

    private static double square(double x) {
        return x * x;
    }
}
