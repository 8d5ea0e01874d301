package org.sawfly.glider;

import org.sawfly.air.Standard;
import org.sawfly.math.Inertia;

/**
 * The whole glider swung on two strings of equal length, turning to and fro about the upright axis through its CG.
 *
 * <p>Turned by t the strings lean by {@code b t/L} and pull back with {@code m g b (b t/L)}, so that
 * {@code I = m g b^2 T^2/(4 pi^2 L)} for small swings, b half the distance, L the length, T the period (Jardin and
 * Mueller, Optimized Measurements of UAV Mass Moment of Inertia with a Bifilar Pendulum, AIAA 2007-6822). The air that the
 * wing carries along swings with it and is taken off.
 *
 * @param axis body axis that hung upright
 * @param mass of what was swung [kg]
 * @param halfDistance between the strings, half [m]
 * @param length of the strings [m]
 * @param period of one full swing to and fro [s]
 */
public record Bifilar(Axis axis, double mass, double halfDistance, double length, double period) {
    /** Body axis of an inertia. */
    public enum Axis {
        ROLL,
        PITCH,
        YAW
    }

    public Bifilar {
        Check.positive(mass, "the mass of what was swung [kg]");
        Check.positive(halfDistance, "half the distance between the strings [m]");
        Check.positive(length, "the length of the strings [m]");
        Check.positive(period, "the time of a swing [s]");
    }

    /** What swung, glider and carried air [kg m2]. */
    public double swungInertia() {
        double turn = period / (2 * Math.PI);
        return mass * Standard.GRAVITY * halfDistance * halfDistance * turn * turn / length;
    }

    /** As this one, with the period in which that much inertia, the air's among it, swings [kg m2]. */
    public Bifilar swinging(double inertia) {
        double turn = Math.sqrt(inertia * length / (mass * Standard.GRAVITY)) / halfDistance;
        return new Bifilar(axis, mass, halfDistance, length, 2 * Math.PI * turn);
    }

    /**
     * The glider with its correction set so that it has the inertia that was swung.
     *
     * @param parts the glider as its parts and the scale have it
     * @param carriedAir inertia of the air carried along about that axis [kg m2]
     */
    public Glider applyTo(Glider parts, double carriedAir) {
        double inertia = swungInertia() - carriedAir;
        if (!(inertia > 0)) {
            throw new DesignException(
                    "the swinging shows less inertia than the air alone has: check the time of a swing,"
                            + " the strings' length and their distance");
        }
        Inertia now = MassProperties.of(parts).inertia();
        Inertia added =
                switch (axis) {
                    case ROLL -> new Inertia(inertia - now.ixx(), 0, 0, 0, 0, 0);
                    case PITCH -> new Inertia(0, inertia - now.iyy(), 0, 0, 0, 0);
                    case YAW -> new Inertia(0, 0, inertia - now.izz(), 0, 0, 0);
                };
        Correction old = parts.correction();
        return parts.withCorrection(
                new Correction(old.mass(), old.moment(), old.inertia().plus(added)));
    }
}
