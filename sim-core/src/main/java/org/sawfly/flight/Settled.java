package org.sawfly.flight;

/**
 * What is left of the height once the glider glides. A definition rather than an event, so that it changes smoothly: 5.6
 * s after the push-over began, height + (V^2 - V_g^2)/(2 g) + w_g (t - t_top), with the trimmed speed V_g and sink w_g.
 *
 * @param height [m]
 * @param transitionLoss energy height at the top less the settled height [m]
 * @param ticked the flight did look settled: energy height falls at the trimmed sink, angles small
 * @param straightTime still-air time from the hand, gliding straight [s]
 * @param circlingTime the same in circles, 20 % more sink [s]
 */
public record Settled(double height, double transitionLoss, boolean ticked, double straightTime, double circlingTime) {
    /** Sink in circles over sink straight on [1]; common practice, no source. */
    public static final double CIRCLING = 1.2;

    /** There is none. */
    public static final Settled NONE = new Settled(Double.NaN, Double.NaN, false, Double.NaN, Double.NaN);
}
