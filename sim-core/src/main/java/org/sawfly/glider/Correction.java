package org.sawfly.glider;

import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

/**
 * What scale, balance and swinging showed beyond the sum of the parts. Where a missing mass sits is not known, so it is
 * not a point: a moment may remain where the mass agrees, and mass and moment bring no inertia about the CG with them.
 *
 * @param mass to be added to the parts, negative when they weigh too much [kg]
 * @param moment of mass about the wing's root leading edge, build axes [kg m]
 * @param inertia to be added about the CG, what swinging showed [kg m2]
 */
public record Correction(double mass, Vec3 moment, Inertia inertia) {
    /** Nothing to correct. */
    public static final Correction NONE = new Correction(0, Vec3.ZERO);

    public Correction {
        Check.finite(mass, "the mass of the correction [kg]");
        Check.finite(moment.x(), "the moment of the correction [kg m]");
        Check.finite(moment.y(), "the moment of the correction to the side [kg m]");
        Check.finite(moment.z(), "the moment of the correction in height [kg m]");
        Check.finite(inertia.ixx(), "the roll inertia of the correction [kg m2]");
        Check.finite(inertia.iyy(), "the pitch inertia of the correction [kg m2]");
        Check.finite(inertia.izz(), "the yaw inertia of the correction [kg m2]");
    }

    /** Mass and moment alone. */
    public Correction(double mass, Vec3 moment) {
        this(mass, moment, Inertia.ZERO);
    }
}
