package org.sawfly.motion;

/**
 * A servo as it is flown: goes to its command as a first-order lag, up to a greatest speed. With x the speed the lag asks
 * for over the greatest, the speed is x / (1 + x^4)^(1/4) of the greatest: the lag itself up to half of it, smooth
 * everywhere. Time and speed: common practice, no source.
 */
final class Servo {
    /** Time constant of the lag [s]. */
    static final double TIME_CONSTANT = 0.040;
    /** Greatest speed, 200 degrees a second [rad/s]. */
    static final double GREATEST_SPEED = 200.0 / 360.0 * 2 * Math.PI;

    private Servo() {}

    /** Speed of a servo [rad/s] at a position on its way to a command [rad]. */
    static double speed(double position, double command) {
        double asked = (command - position) / TIME_CONSTANT;
        double x = asked / GREATEST_SPEED;
        double square = x * x;
        return asked / Math.sqrt(Math.sqrt(1 + square * square));
    }
}
