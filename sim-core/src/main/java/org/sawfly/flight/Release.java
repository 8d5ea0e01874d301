package org.sawfly.flight;

/**
 * The moment the tip has slid off the fingers.
 *
 * @param speed of the CG over the ground [m/s]
 * @param yawRate left, magnitude [rad/s]
 * @param alpha angle of attack: 1 g of lift [rad]
 * @param beta sideslip, positive when the wind comes from the right [rad]
 * @param spin the spin before it
 */
public record Release(double speed, double yawRate, double alpha, double beta, Spin spin) {}
