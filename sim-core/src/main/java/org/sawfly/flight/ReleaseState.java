package org.sawfly.flight;

import org.sawfly.math.Quaternion;
import org.sawfly.motion.StateLayout;

/**
 * The state in which a flight begins: on the path over the ground that the launch names, banked about the path
 * through the air, turned by alpha and beta against it, rates {@code r0 (-sin alpha, 0, cos alpha)}.
 */
final class ReleaseState {
    private ReleaseState() {}

    /** Airspeed at release [m/s] for a speed over the ground along a climbing path into a wind [m/s]. */
    static double airspeed(double speed, double climb, double wind) {
        double level = speed * Math.cos(climb) + wind;
        double up = speed * Math.sin(climb);
        return Math.hypot(level, up);
    }

    /**
     * Writes the state.
     *
     * @param launch where it starts
     * @param release how
     * @param wind against the throw at the release height [m/s]
     * @param deflections elevator, camber, aileron, rudder [rad]
     * @param state where to write
     */
    static void write(Launch launch, Release release, double wind, double[] deflections, double[] state) {
        double level = release.speed() * Math.cos(launch.releaseClimb());
        double up = release.speed() * Math.sin(launch.releaseClimb());
        double airPath = level + wind == 0 && up == 0 ? launch.releaseClimb() : Math.atan2(up, level + wind);
        double[] rotation = bodyToEarth(
                airPath, launch.thrower().hand().yawSign() * launch.releaseBank(), release.alpha(), release.beta());
        Quaternion.fromAngles(
                Quaternion.roll(rotation),
                Quaternion.pitch(rotation),
                Quaternion.yaw(rotation),
                state,
                StateLayout.ATTITUDE);
        state[StateLayout.NORTH] = 0;
        state[StateLayout.EAST] = 0;
        state[StateLayout.DOWN] = -launch.releaseHeight();
        state[StateLayout.U] = rotation[0] * level - rotation[6] * up;
        state[StateLayout.V] = rotation[1] * level - rotation[7] * up;
        state[StateLayout.W] = rotation[2] * level - rotation[8] * up;
        double turn = launch.thrower().hand().yawSign() * release.yawRate();
        state[StateLayout.P] = -turn * Math.sin(release.alpha());
        state[StateLayout.Q] = 0;
        state[StateLayout.R] = turn * Math.cos(release.alpha());
        System.arraycopy(deflections, 0, state, StateLayout.ELEVATOR, StateLayout.SERVOS);
    }

    /** Rotation from body to earth axes, by rows: sum of the air path's axes in earth axes times the same in body axes. */
    static double[] bodyToEarth(double airPath, double bank, double alpha, double beta) {
        double cg = Math.cos(airPath);
        double sg = Math.sin(airPath);
        double ca = Math.cos(alpha);
        double sa = Math.sin(alpha);
        double cb = Math.cos(beta);
        double sb = Math.sin(beta);
        double cosBank = Math.cos(bank);
        double sinBank = Math.sin(bank);
        double[][] earth = {{cg, 0, -sg}, {sinBank * sg, cosBank, sinBank * cg}, {cosBank * sg, -sinBank, cosBank * cg}
        };
        double[][] body = {{ca * cb, sb, sa * cb}, {-ca * sb, cb, -sa * sb}, {-sa, 0, ca}};
        double[] rotation = new double[9];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                for (int axis = 0; axis < 3; axis++) {
                    rotation[3 * i + k] += earth[axis][i] * body[axis][k];
                }
            }
        }
        return rotation;
    }
}
