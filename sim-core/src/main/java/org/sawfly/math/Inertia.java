package org.sawfly.math;

/**
 * A symmetric inertia tensor about some point in axes x forward, y right, z down [kg m2]. The products are the positive
 * integrals, {@code ixz = sum m x z}, so that the matrix carries them with a minus sign (Etkin and Reid, Dynamics of
 * Flight, 3rd ed. 1996, section 4.3).
 *
 * @param ixx about x [kg m2]
 * @param iyy about y [kg m2]
 * @param izz about z [kg m2]
 * @param ixy product, sum of m x y [kg m2]
 * @param ixz product, sum of m x z [kg m2]
 * @param iyz product, sum of m y z [kg m2]
 */
public record Inertia(double ixx, double iyy, double izz, double ixy, double ixz, double iyz) {
    /** No inertia. */
    public static final Inertia ZERO = new Inertia(0, 0, 0, 0, 0, 0);

    /** Sum of two tensors about the same point. */
    public Inertia plus(Inertia o) {
        return new Inertia(ixx + o.ixx, iyy + o.iyy, izz + o.izz, ixy + o.ixy, ixz + o.ixz, iyz + o.iyz);
    }

    /** This tensor less another about the same point. */
    public Inertia minus(Inertia o) {
        return new Inertia(ixx - o.ixx, iyy - o.iyy, izz - o.izz, ixy - o.ixy, ixz - o.ixz, iyz - o.iyz);
    }

    /** Angular momentum [kg m2/s] of a body turning at omega [rad/s]. */
    public Vec3 times(Vec3 omega) {
        return new Vec3(
                ixx * omega.x() - ixy * omega.y() - ixz * omega.z(),
                -ixy * omega.x() + iyy * omega.y() - iyz * omega.z(),
                -ixz * omega.x() - iyz * omega.y() + izz * omega.z());
    }

    /** The tensor of a point mass m [kg] at place r [m] (the parallel-axes term). */
    public static Inertia ofPoint(double m, Vec3 r) {
        return new Inertia(
                m * (r.y() * r.y() + r.z() * r.z()),
                m * (r.x() * r.x() + r.z() * r.z()),
                m * (r.x() * r.x() + r.y() * r.y()),
                m * r.x() * r.y(),
                m * r.x() * r.z(),
                m * r.y() * r.z());
    }
}
