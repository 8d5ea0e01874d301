package org.sawfly.aero;

import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Glider;

/**
 * The boom's first swing in one plane, as a tail on it feels it. With theta_s the slope under the loads of the moment
 * ({@link BoomFlex}, inertia of the free glider included),
 *
 * <pre>  theta'' = omega^2 (theta_s - theta) - 2 zeta omega theta'</pre>
 *
 * Derivation: one shape q on a body that is free to move, {@code M a + c q'' = F}, {@code m q'' + c a + k q = Q}. Without a:
 * {@code (m - c c/M) q'' + k q = Q - (c/M) F}. The right side over k is the slope under load with the relief of the body's own
 * acceleration, and {@code k/(m - c c/M)} is the square of the frequency in flight, where the rest of the glider gives way
 * ({@link BoomSwing#inFlight}). So the body's own equations stay those of a rigid one, written for mean axes, which carry
 * the momentum of the whole (Milne, Dynamics of the Deformable Aeroplane, 1964, from memory). Against these the tail moves by
 * {@code travel theta'}, the share {@code (m - c c/M)/m} of what it does against the pod; that the pod itself turns against them is left
 * out.
 *
 * @param flex the tail under load
 * @param frequency omega/(2 pi), in flight; infinite for a boom that follows at once [Hz]
 * @param travel way of the tail against its normal for a slope, in flight [m/rad]
 */
record BoomMode(BoomFlex flex, double frequency, double travel) {
    /** Damping of a composite tube with its joints; common practice, no source [1]. */
    private static final double DAMPING = 0.02;
    /** A boom that swings faster than this follows its load within the steps of a flight [Hz]. */
    private static final double FASTEST = 200;

    /**
     * The mode of a glider in a plane.
     *
     * @param flex of the tail whose plane it is
     * @param stiffnessFactor on EI [1]
     */
    static BoomMode of(Glider glider, BoomSwing.Plane plane, BoomFlex flex, double stiffnessFactor) {
        double factor = Math.sqrt(stiffnessFactor);
        double free = BoomSwing.inFlight(glider, plane);
        if (!(free * factor < FASTEST)) {
            return new BoomMode(flex, Double.POSITIVE_INFINITY, 0);
        }
        double share = BoomSwing.held(glider, plane) / free;
        return new BoomMode(flex, free * factor, share * share * flex.travel());
    }

    /** Whether it takes its time. */
    boolean swings() {
        return frequency < Double.POSITIVE_INFINITY;
    }

    /**
     * Second derivative of the slope [rad/s2].
     *
     * @param settled slope under the loads of the moment [rad]
     * @param slope as it is [rad]
     * @param rate of it [rad/s]
     */
    double acceleration(double settled, double slope, double rate) {
        double angular = 2 * Math.PI * frequency;
        return angular * (angular * (settled - slope) - 2 * DAMPING * rate);
    }
}
