package org.sawfly.strength;

import org.sawfly.math.Vec3;

/**
 * What one cross-section of the boom carries for the part behind it. With forces P and moments N on that part, inertia as
 * forces and moments against the acceleration, at x_i ahead of the section (so negative) and z_i below the boom's axis:
 *
 * <pre>
 * bending to the right   sum(-x_i P_y) - sum(N_z)            positive when what hangs there is pushed to the right
 * bending upwards        sum( x_i P_z) - sum(z_i P_x) - sum(N_y)   positive when it is pushed upwards
 * twist                  sum(-z_i P_y) + sum(N_x)            positive right wing down
 * </pre>
 *
 * and the sums of P_y (right) and -P_z (up) as forces across.
 */
final class LoadSum {
    private double right;
    private double up;
    private double twist;
    private double across;
    private double lift;

    /** A force [N] and a moment [N m] on the part behind. */
    void add(double ahead, double below, Vec3 force, Vec3 moment) {
        right -= ahead * force.y() + moment.z();
        up += ahead * force.z() - below * force.x() - moment.y();
        twist += moment.x() - below * force.y();
        across += force.y();
        lift -= force.z();
    }

    BoomLoad load() {
        return new BoomLoad(right, up, twist, across, lift);
    }
}
