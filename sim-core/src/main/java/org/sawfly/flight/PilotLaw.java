package org.sawfly.flight;

/**
 * How the pilot holds a nose attitude with the elevator: asks for a pitch rate in proportion to what is missing, and for
 * the deflection that would reach that rate in a tenth of a second ({@link RateLaw}).
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

    private final RateLaw law;

    /**
     * For a craft.
     *
     * @param pitchInertia Iyy [kg m2]
     * @param elevatorPower S c |Cm_delta| [m3/rad]
     * @param limit largest deflection [rad]
     */
    PilotLaw(double pitchInertia, double elevatorPower, double limit) {
        this.law = new RateLaw(pitchInertia, elevatorPower, RATE_TIME, LARGEST_GAIN, limit);
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
        return law.deflection(trim, pitchRate - wantedRate, speed, density);
    }
}
