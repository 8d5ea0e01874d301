package org.sawfly.aero;

import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicAxis.Ends;
import org.sawfly.quantity.Unit;

/**
 * Where the tables of surfaces have their knots: a degree apart where sections are attached, half a degree in the dead zone of
 * tails, coarse beyond 40 degrees. Speeds are even in a logarithm that stays finite at rest, {@code ln(V^2 + V0^2)/2}.
 */
final class SurfaceKnots {
    /** Speed at which the lift slopes of the sections are taken [m/s]. */
    static final double SLOPE_SPEED = 10;

    private static final double TURN = 2 * Math.PI;
    /** Speed that rounds the logarithm off [m/s]. */
    private static final double LOWEST_SPEED = 2;

    private static final double[] WING_ANGLES = {
        0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 28, 32, 36, 40, 50, 60, 75, 90, 105, 120, 135,
        150, 165
    };
    private static final double[] TAIL_ANGLES = {
        0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 30, 35, 40, 50, 70, 90, 110, 130, 150, 165
    };
    static final SurfaceKnots WING = new SurfaceKnots(
            circle(WING_ANGLES), new double[] {1, 2.5, 5, 8, 12, 20, 35, 60}, degrees(-20, -12, -6, 0, 6, 12, 20));
    static final SurfaceKnots TAIL = new SurfaceKnots(
            circle(TAIL_ANGLES), new double[] {1, 3, 6, 10, 16, 28, 50}, degrees(-25, -12, -6, -3, 0, 3, 6, 12, 25));

    private final double[] angles;
    private final double[] speeds;
    private final double[] flaps;

    private SurfaceKnots(double[] angles, double[] speeds, double[] flaps) {
        this.angles = angles;
        this.speeds = speeds;
        this.flaps = flaps;
    }

    SurfaceKnots withoutFlap() {
        return new SurfaceKnots(angles, speeds, new double[] {0});
    }

    /** Both signs of the angles [deg], and half a turn, from minus half a turn on [rad]. */
    private static double[] circle(double[] side) {
        int n = side.length;
        double[] all = new double[2 * n];
        all[0] = -0.5 * TURN;
        for (int i = 0; i < n; i++) {
            all[n + i] = Unit.DEGREE.toSi(side[i]);
            if (i > 0) {
                all[n - i] = -all[n + i];
            }
        }
        return all;
    }

    private static double[] degrees(double... values) {
        double[] si = new double[values.length];
        for (int i = 0; i < si.length; i++) {
            si[i] = Unit.DEGREE.toSi(values[i]);
        }
        return si;
    }

    /** Place on the speed axis for the square of a speed [m2/s2]. */
    static double speedPlace(double speedSquare) {
        return 0.5 * Math.log(speedSquare + LOWEST_SPEED * LOWEST_SPEED);
    }

    CubicAxis angleAxis() {
        return CubicAxis.periodic(TURN, angles);
    }

    /** The axis of {@link #speedPlace}. */
    CubicAxis speedAxis() {
        double[] places = new double[speeds.length];
        for (int j = 0; j < places.length; j++) {
            places[j] = speedPlace(speeds[j] * speeds[j]);
        }
        return CubicAxis.of(Ends.LINE, places);
    }

    CubicAxis flapAxis() {
        return CubicAxis.of(Ends.LINE, flaps);
    }

    int angles() {
        return angles.length;
    }

    int speeds() {
        return speeds.length;
    }

    int flaps() {
        return flaps.length;
    }

    int size() {
        return angles.length * speeds.length * flaps.length;
    }

    int node(int i, int j, int k) {
        return (i * speeds.length + j) * flaps.length + k;
    }

    double angle(int i) {
        return angles[i];
    }

    double speed(int j) {
        return speeds[j];
    }

    double flap(int k) {
        return flaps[k];
    }
}
