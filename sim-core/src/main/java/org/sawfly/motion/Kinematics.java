package org.sawfly.motion;

import org.sawfly.aero.Motion;
import org.sawfly.math.Quaternion;

/**
 * Angles and speeds read from a state or from the motion through the air. Rotation matrices are nine numbers by rows, body
 * axes to earth axes.
 */
public final class Kinematics {
    private Kinematics() {}

    /** Writes the rotation matrix of a state. */
    public static void rotation(double[] state, double[] matrix) {
        Quaternion.toMatrix(state, StateLayout.ATTITUDE, matrix);
    }

    /** Height above the ground under the thrower [m]. */
    public static double height(double[] state) {
        return -state[StateLayout.DOWN];
    }

    /**
     * Elevation of the nose above the horizon [rad]. In the plane of the throw it is counted through the vertical, over 90 deg
     * means on the back; but across that plane it would say 90 deg of a nose on the horizon. Whatever the heading, it ends at 90 deg.
     *
     * @param rotation body to earth
     * @param heading of the throw, clockwise from north [rad]
     * @param free 0 in the plane of the throw, 1 whatever the heading, between them smooth [1]
     */
    public static double noseElevation(double[] rotation, double heading, double free) {
        double along = rotation[0] * Math.cos(heading) + rotation[3] * Math.sin(heading);
        double level = Math.sqrt(rotation[0] * rotation[0] + rotation[3] * rotation[3]);
        return Math.atan2(-rotation[6], along + free * (level - along));
    }

    /** Speed through the air [m/s]. */
    public static double airspeed(Motion motion) {
        return Math.sqrt(motion.u * motion.u + motion.v * motion.v + motion.w * motion.w);
    }

    /** Angle of attack, wind from below positive [rad]. */
    public static double alpha(Motion motion) {
        return Math.atan2(motion.w, motion.u);
    }

    /** Sideslip, wind from the right positive [rad]. */
    public static double beta(Motion motion) {
        return Math.atan2(motion.v, Math.sqrt(motion.u * motion.u + motion.w * motion.w));
    }

    /** Speed over the ground [m/s]. */
    public static double groundSpeed(double[] state) {
        double u = state[StateLayout.U];
        double v = state[StateLayout.V];
        double w = state[StateLayout.W];
        return Math.sqrt(u * u + v * v + w * w);
    }

    /** Rate of climb over the ground, up positive [m/s]. */
    public static double climbRate(double[] state, double[] rotation) {
        return -(rotation[6] * state[StateLayout.U]
                + rotation[7] * state[StateLayout.V]
                + rotation[8] * state[StateLayout.W]);
    }

    /**
     * Direction of the path over the ground, clockwise from north; 0 straight up or at rest [rad].
     *
     * @param rotation of the state is written here
     */
    public static double heading(double[] state, double[] rotation) {
        rotation(state, rotation);
        double north = rotation[0] * state[StateLayout.U]
                + rotation[1] * state[StateLayout.V]
                + rotation[2] * state[StateLayout.W];
        double east = rotation[3] * state[StateLayout.U]
                + rotation[4] * state[StateLayout.V]
                + rotation[5] * state[StateLayout.W];
        return Math.atan2(east, north);
    }

    /** Angle of the path over the ground above the horizon, climbing positive; 0 at rest [rad]. */
    public static double pathAngle(double[] state, double[] rotation) {
        double north = rotation[0] * state[StateLayout.U]
                + rotation[1] * state[StateLayout.V]
                + rotation[2] * state[StateLayout.W];
        double east = rotation[3] * state[StateLayout.U]
                + rotation[4] * state[StateLayout.V]
                + rotation[5] * state[StateLayout.W];
        return Math.atan2(climbRate(state, rotation), Math.sqrt(north * north + east * east));
    }
}
