package org.sawfly.aero;

import org.sawfly.air.Standard;
import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

/**
 * Mass and inertia that decide the acceleration a tail feels, with the air carried along at standard density.
 *
 * @param mass [kg]
 * @param inertia about the CG [kg m2]
 * @param airY air carried along y [kg]
 * @param airZ air carried along z [kg]
 * @param airPitch about y [kg m2]
 * @param airYaw about z [kg m2]
 */
record Inertial(double mass, Inertia inertia, double airY, double airZ, double airPitch, double airYaw) {

    /** Mass that moves up and down, air included [kg]. */
    double verticalMass(Motion m) {
        return mass + carried(m) * airZ;
    }

    /** Mass that moves sideways, air included [kg]. */
    double sideMass(Motion m) {
        return mass + carried(m) * airY;
    }

    /** Inertia in pitch, air included [kg m2]. */
    double pitching(Motion m) {
        return inertia.iyy() + carried(m) * airPitch;
    }

    /** Inertia in yaw, air included [kg m2]. */
    double yawing(Motion m) {
        return inertia.izz() + carried(m) * airYaw;
    }

    private static double carried(Motion m) {
        return m.density / Standard.DENSITY;
    }

    /**
     * Specific force along z at a place under the loads so far: {@code [Fz + m_z ((omega x v)_z - g_z)]/(m + m_z)} at the CG, plus
     * {@code omega' x r + omega x (omega x r)} [m/s2].
     */
    double verticalAcceleration(Motion m, Loads rest, Vec3 place) {
        double x = place.x();
        double carriedAir = carried(m) * airZ;
        double atCg = (rest.fz + carriedAir * (m.p * m.v - m.q * m.u - m.gz)) / verticalMass(m);
        double pitching =
                (rest.my + (inertia.izz() - inertia.ixx()) * m.p * m.r + inertia.ixz() * (m.r * m.r - m.p * m.p))
                        / pitching(m);
        return atCg - pitching * x + m.p * m.r * x - (m.p * m.p + m.q * m.q) * place.z();
    }

    /** The same along y. */
    double sideAcceleration(Motion m, Loads rest, Vec3 place) {
        double x = place.x();
        double carriedAir = carried(m) * airY;
        double atCg = (rest.fy + carriedAir * (m.r * m.u - m.p * m.w - m.gy)) / sideMass(m);
        double yawing = (rest.mz + (inertia.ixx() - inertia.iyy()) * m.p * m.q - inertia.ixz() * m.q * m.r) / yawing(m);
        return atCg + yawing * x + m.q * (m.p * x + m.r * place.z());
    }
}
