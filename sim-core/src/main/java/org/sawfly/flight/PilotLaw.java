package org.sawfly.flight;

import org.sawfly.math.SmoothStep;

/**
 * How the pilot holds a nose attitude with the elevator: asks for a pitch rate in proportion to what is missing, and for
 * the deflection that would reach that rate in a tenth of a second, so that every glider answers alike as far as its
 * elevator reaches.
 *
 * <pre>
 * q_c = k L tanh((theta_c - theta) / (L T))          L = 6, T = 0.15 s, k = 1 rad/s
 * delta = delta_trim + (q - q_c) Iyy / (0.10 s  qbar S c |Cm_delta|)     gain at most 1 s, trailing edge down positive
 * </pre>
 */
final class PilotLaw {
    private static final double RATE_LIMIT = 6;
    private static final double ATTITUDE_TIME = 0.15;
    private static final double RATE_TIME = 0.10;
    private static final double LARGEST_GAIN = 1;
    /** Below this airspeed the gain grows no further [m/s]. */
    private static final double SLOWEST = 3;

    private final double gainTimesPressure;
    private final double limit;

    /**
     * For a craft.
     *
     * @param pitchInertia Iyy [kg m2]
     * @param elevatorPower S c |Cm_delta| [m3/rad]
     * @param limit largest deflection [rad]
     */
    PilotLaw(double pitchInertia, double elevatorPower, double limit) {
        this.gainTimesPressure = pitchInertia / (RATE_TIME * elevatorPower);
        this.limit = limit;
    }

    /**
     * Elevator deflection [rad, trailing edge down positive].
     *
     * @param trim elevator of the trimmed glide [rad]
     * @param wantedNose nose elevation asked for [rad]
     * @param nose nose elevation [rad]
     * @param pitchRate q [rad/s]
     * @param speed airspeed [m/s]
     * @param density [kg/m3]
     */
    double elevator(double trim, double wantedNose, double nose, double pitchRate, double speed, double density) {
        double wantedRate = RATE_LIMIT * Math.tanh((wantedNose - nose) / (RATE_LIMIT * ATTITUDE_TIME));
        // smooth, and never below what SLOWEST gives: V^2 -> sqrt(V^4 + SLOWEST^4)
        double v2 = speed * speed;
        double pressure = 0.5 * density * Math.sqrt(v2 * v2 + SLOWEST * SLOWEST * SLOWEST * SLOWEST);
        double gain = gainTimesPressure / pressure;
        double bounded = gain / (1 + gain / LARGEST_GAIN);
        return SmoothStep.between(-limit, limit, trim + bounded * (pitchRate - wantedRate));
    }
}
