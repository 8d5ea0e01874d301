package org.sawfly.motion;

import org.sawfly.aero.Loss;

/**
 * Where each number stands in the state of a flight, and how finely it is integrated. The only place that knows.
 *
 * <p>Earth axes north, east, down, origin on the ground under the thrower; body axes at the CG, x forward, y right, z down.
 */
public final class StateLayout {
    /** Place over the earth [m]; the height above the ground is minus {@code DOWN}. */
    public static final int NORTH = 0, EAST = 1, DOWN = 2;
    /** Velocity of the CG over the ground, body axes [m/s]. */
    public static final int U = 3, V = 4, W = 5;
    /** First of four: attitude as a quaternion, scalar first, body axes to earth axes [1]. */
    public static final int ATTITUDE = 6;
    /** Turning rates, body axes [rad/s]. */
    public static final int P = 10, Q = 11, R = 12;
    /** Lagged downwash velocity at the tailplane, down positive [m/s]. */
    public static final int DOWNWASH_LAG = 13;
    /** Where the servos stand [rad]; signs as in {@link org.sawfly.aero.Motion}. */
    public static final int ELEVATOR = 14, CAMBER = 15, AILERON = 16, RUDDER = 17;
    /** Slope of the swinging boom at the tailplane, up positive [rad], and its rate [rad/s]. */
    public static final int BOOM_UP = 18, BOOM_UP_RATE = 19;
    /** The same at the fin, to the right positive [rad], and its rate [rad/s]. */
    public static final int BOOM_RIGHT = 20, BOOM_RIGHT_RATE = 21;
    /** First of {@link Loss#COUNT}: energy lost by {@link Loss#ordinal()} since the start [J]. */
    public static final int LOSSES = 22;
    /** Energy taken out by whatever holds the roll rate to what is prescribed [J]. */
    public static final int ROLL_HOLD = LOSSES + Loss.COUNT;
    /** Energy taken out by the wind, negative where the wind brings some [J]. */
    public static final int WIND = ROLL_HOLD + 1;
    /** How many numbers a state has. */
    public static final int SIZE = WIND + 1;
    /** How many servos there are: elevator, camber, aileron, rudder in this order. */
    public static final int SERVOS = 4;

    private StateLayout() {}

    /** Error a step may leave in each number besides its relative share, for a relative tolerance of 1e-6. */
    public static double[] absoluteTolerance() {
        double[] tolerance = new double[SIZE];
        fill(tolerance, NORTH, U, 1e-4);
        fill(tolerance, U, ATTITUDE, 1e-4);
        fill(tolerance, ATTITUDE, P, 1e-5);
        fill(tolerance, P, DOWNWASH_LAG, 1e-3);
        fill(tolerance, DOWNWASH_LAG, ELEVATOR, 1e-3);
        fill(tolerance, ELEVATOR, LOSSES, 1e-4);
        // An explicit method pumps a quick swing up as far as its tolerance lets it: well below what a swing at release
        // has
        tolerance[BOOM_UP] = 3e-6;
        tolerance[BOOM_RIGHT] = 3e-6;
        tolerance[BOOM_UP_RATE] = 1e-3;
        tolerance[BOOM_RIGHT_RATE] = 1e-3;
        fill(tolerance, LOSSES, SIZE, 1e-3);
        return tolerance;
    }

    private static void fill(double[] values, int from, int to, double value) {
        for (int i = from; i < to; i++) {
            values[i] = value;
        }
    }
}
