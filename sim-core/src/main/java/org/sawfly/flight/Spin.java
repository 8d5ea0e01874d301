package org.sawfly.flight;

/**
 * The steady last part of the spin, just before the hand opens.
 *
 * @param rate turning rate W, magnitude [rad/s]
 * @param radius from the axis of the spin to the CG, R [m]
 * @param load sideways load at the CG in multiples of gravity, W^2 R / g [1]
 * @param pegRadial force of the fingers on the peg, inwards along the radius [N]
 * @param pegAlong force of the fingers on the peg along the path [N]
 * @param trail by which the glider trails the line of the arm, at the peg, lambda' [rad]
 * @param noseOutward angle of the nose outward of the path, at the CG, lambda - mu [rad]
 * @param finAngle angle of the air at the fin on the bent boom, magnitude [rad]
 * @param finOutward force of the air on the fin, outward positive [N]
 */
public record Spin(
        double rate,
        double radius,
        double load,
        double pegRadial,
        double pegAlong,
        double trail,
        double noseOutward,
        double finAngle,
        double finOutward) {}
