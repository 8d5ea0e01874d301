package org.sawfly.stability;

/**
 * A light aeroplane of the 1950s as a set of derivatives, turned into the two matrices of the linear equations in axes along
 * the path. Source: Nelson, Flight Stability and Automatic Control, 2nd ed. 1998, appendix B (data also in Teper, NASA
 * CR-96008); units foot, slug, second, radian.
 */
final class Navion {
    private static final double DENSITY = 0.002378;
    private static final double SPEED = 176;
    private static final double GRAVITY = 32.2;
    private static final double MASS = 2750 / GRAVITY;
    private static final double AREA = 184;
    private static final double SPAN = 33.4;
    private static final double CHORD = 5.7;
    private static final double PRESSURE = 0.5 * DENSITY * SPEED * SPEED;

    private Navion() {}

    /** Of u, w, q, nose elevation. */
    static double[][] longitudinal() {
        double force = PRESSURE * AREA / (MASS * SPEED);
        double xu = -2 * 0.05 * force;
        double zu = -2 * 0.41 * force;
        double xw = (0.41 - 0.33) * force;
        double zw = -(4.44 + 0.05) * force;
        double moment = PRESSURE * AREA * CHORD / 3000;
        double late = CHORD / (2 * SPEED);
        double mw = -0.683 * moment / SPEED;
        double mwDot = -4.36 * late * moment / SPEED;
        double mq = -9.96 * late * moment;
        return new double[][] {
            {xu, xw, 0, -GRAVITY},
            {zu, zw, SPEED, 0},
            {mwDot * zu, mw + mwDot * zw, mq + mwDot * SPEED, 0},
            {0, 0, 1, 0}
        };
    }

    /** Of v, p, r, bank. */
    static double[][] lateral() {
        double yv = -0.564 * PRESSURE * AREA / (MASS * SPEED);
        double roll = PRESSURE * AREA * SPAN / 1048;
        double yaw = PRESSURE * AREA * SPAN / 3530;
        double late = SPAN / (2 * SPEED);
        return new double[][] {
            {yv, 0, -SPEED, GRAVITY},
            {-0.074 * roll / SPEED, -0.410 * late * roll, 0.107 * late * roll, 0},
            {0.071 * yaw / SPEED, -0.0575 * late * yaw, -0.125 * late * yaw, 0},
            {0, 1, 0, 0}
        };
    }
}
