package org.sawfly.motion;

import org.sawfly.aero.Motion;

/** What the pilot, or whoever flies, asks for. Called in every evaluation of the right-hand side: smooth, no allocation. */
public interface Controls {
    /**
     * Writes where the servos are asked to go.
     *
     * @param t time [s]
     * @param state see {@link StateLayout}
     * @param motion through the air, rates and servo positions filled in
     * @param commands elevator, camber, aileron, rudder [rad]
     */
    void command(double t, double[] state, Motion motion, double[] commands);

    /**
     * Roll rate prescribed with {@link Axes#PITCH_YAW}, none unless said otherwise [rad/s]; may depend on time, place and
     * attitude only. Who says otherwise says how it changes, too.
     */
    default double rollRate(double t, double[] state) {
        return 0;
    }

    /**
     * Time derivative of {@link #rollRate} along the flight [rad/s2]. The state's roll rate is the prescribed one here.
     */
    default double rollAcceleration(double t, double[] state) {
        return 0;
    }
}
