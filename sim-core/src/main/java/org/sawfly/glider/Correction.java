package org.sawfly.glider;

import org.sawfly.math.Vec3;

/**
 * What the scale and the balance showed beyond the sum of the parts: mass and moment of mass. Where it sits is not known,
 * so it is not a point: a moment may remain where the mass agrees. It carries no inertia about the CG, the least it can
 * have.
 *
 * @param mass to be added to the parts, negative when they weigh too much [kg]
 * @param moment of mass about the wing's root leading edge, build axes [kg m]
 */
public record Correction(double mass, Vec3 moment) {
    /** Nothing to correct. */
    public static final Correction NONE = new Correction(0, Vec3.ZERO);

    public Correction {
        Check.finite(mass, "the mass of the correction [kg]");
        Check.finite(moment.x(), "the moment of the correction [kg m]");
        Check.finite(moment.y(), "the moment of the correction to the side [kg m]");
        Check.finite(moment.z(), "the moment of the correction in height [kg m]");
    }
}
