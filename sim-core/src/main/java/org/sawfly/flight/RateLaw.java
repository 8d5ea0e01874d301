package org.sawfly.flight;

import org.sawfly.math.SmoothStep;

/**
 * How the pilot reaches a turning rate with one control: by the deflection that would reach it in a given time, so that every
 * glider answers alike as far as its control reaches.
 *
 * <pre>
 * delta = rest + (rate - wanted) I / (T qbar K),   K = S l |C_delta|,   gain smoothly bounded,   delta smoothly limited
 * </pre>
 *
 * A positive deflection turns against a positive rate.
 */
final class RateLaw {
    /** Below this airspeed the gain grows no further [m/s]. */
    private static final double SLOWEST = 3;

    private final double gainTimesPressure;
    private final double largestGain;
    private final double limit;

    /**
     * For a control.
     *
     * @param inertia about its axis [kg m2]
     * @param power its moment per deflection over the dynamic pressure, K [m3/rad]
     * @param time in which a rate is to be reached [s]
     * @param largestGain deflection per rate, never more [s]
     * @param limit largest deflection [rad]
     */
    RateLaw(double inertia, double power, double time, double largestGain, double limit) {
        this.gainTimesPressure = inertia / (time * power);
        this.largestGain = largestGain;
        this.limit = limit;
    }

    /**
     * Deflection [rad].
     *
     * @param rest deflection without any rate to correct [rad]
     * @param excess rate less the rate wanted [rad/s]
     * @param speed airspeed [m/s]
     * @param density [kg/m3]
     */
    double deflection(double rest, double excess, double speed, double density) {
        // smooth, and never below what SLOWEST gives: V^2 -> sqrt(V^4 + SLOWEST^4)
        double v2 = speed * speed;
        double pressure = 0.5 * density * Math.sqrt(v2 * v2 + SLOWEST * SLOWEST * SLOWEST * SLOWEST);
        double gain = gainTimesPressure / pressure;
        double bounded = gain / (1 + gain / largestGain);
        return SmoothStep.between(-limit, limit, rest + bounded * excess);
    }
}
