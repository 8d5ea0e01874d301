package org.sawfly.aero;

import org.sawfly.math.CubicAxis;

/**
 * Coefficients of one surface alone in still air over angle of attack (whole circle), place on the speed axis
 * ({@link SurfaceKnots#speedPlace}) and flap angle: smooth as {@link CubicAxis} makes it, four functions side by side. Immutable, allocation-free.
 *
 * <p>All refer to the surface's area and mean aerodynamic chord:
 *
 * <ul>
 *   <li>{@link #LIFT}: across the flow, towards the surface's positive side;
 *   <li>{@link #INDUCED}: along the flow, what the lift's inclination gives;
 *   <li>{@link #PROFILE}: along the flow, section drag;
 *   <li>{@link #MOMENT}: about the quarter point of the mean aerodynamic chord, nose towards positive lift.
 * </ul>
 */
final class CoefficientGrid {
    static final int LIFT = 0;
    static final int INDUCED = 1;
    static final int PROFILE = 2;
    static final int MOMENT = 3;
    static final int CHANNELS = 4;

    private static final double STALLED = 0.8;

    private final CubicAxis alphas;
    private final CubicAxis speeds;
    private final CubicAxis flaps;
    private final double[] values;

    /**
     * A grid of given values.
     *
     * @param alphas closed over one turn [rad]
     * @param speeds places of speeds in air of the standard viscosity at sea level
     * @param flaps flap angle [rad]; a single knot for a surface whose flap is not in the table
     * @param values channel c at knots i, j, k: {@code ((i nSpeeds + j) nFlaps + k) 4 + c}
     */
    CoefficientGrid(CubicAxis alphas, CubicAxis speeds, CubicAxis flaps, double[] values) {
        int expected = alphas.size() * speeds.size() * flaps.size() * CHANNELS;
        if (values.length != expected) {
            throw new IllegalArgumentException("the grid needs " + expected + " values, got " + values.length);
        }
        this.alphas = alphas;
        this.speeds = speeds;
        this.flaps = flaps;
        this.values = values.clone();
    }

    /**
     * The grid of a surface that is its own mirror image, flap neutral: lift and moment odd, drag even in the angle, to the
     * last bit. The angles must come in pairs of both signs, half a turn standing for itself.
     */
    CoefficientGrid mirrored() {
        int n = alphas.size();
        int row = values.length / n;
        double[] mean = new double[values.length];
        for (int i = 0; i < n; i++) {
            int image = i == 0 ? 0 : n - i;
            for (int k = 0; k < row; k++) {
                int channel = k % CHANNELS;
                double sign = channel == LIFT || channel == MOMENT ? -1 : 1;
                mean[i * row + k] = 0.5 * (values[i * row + k] + sign * values[image * row + k]);
            }
        }
        return new CoefficientGrid(alphas, speeds, flaps, mean);
    }

    /** Fills {@code out} with the four coefficients. */
    void at(double alpha, double place, double flap, double[] out) {
        double a = alphas.wrap(alpha);
        int i = alphas.cell(a);
        int j = speeds.cell(place);
        double r = alphas.fraction(a, i);
        double s = speeds.fraction(place, j);
        if (flaps.size() == 1) {
            neutral(i, r, j, s, out);
        } else {
            int l = flaps.cell(flap);
            flapped(i, r, j, s, l, flaps.fraction(flap, l), out);
        }
    }

    private void neutral(int i, double r, int j, double s, double[] out) {
        double s0 = speeds.weight(j, 0, s);
        double s1 = speeds.weight(j, 1, s);
        double s2 = speeds.weight(j, 2, s);
        double s3 = speeds.weight(j, 3, s);
        int m0 = speeds.node(j, 0) * CHANNELS;
        int m1 = speeds.node(j, 1) * CHANNELS;
        int m2 = speeds.node(j, 2) * CHANNELS;
        int m3 = speeds.node(j, 3) * CHANNELS;
        int perAngle = speeds.size() * CHANNELS;
        double lift = 0;
        double induced = 0;
        double profile = 0;
        double moment = 0;
        double[] v = values;
        for (int b = 0; b < 4; b++) {
            double w = alphas.weight(i, b, r);
            int base = alphas.node(i, b) * perAngle;
            int n0 = base + m0;
            int n1 = base + m1;
            int n2 = base + m2;
            int n3 = base + m3;
            lift += w * (s0 * v[n0] + s1 * v[n1] + s2 * v[n2] + s3 * v[n3]);
            induced += w * (s0 * v[n0 + 1] + s1 * v[n1 + 1] + s2 * v[n2 + 1] + s3 * v[n3 + 1]);
            profile += w * (s0 * v[n0 + 2] + s1 * v[n1 + 2] + s2 * v[n2 + 2] + s3 * v[n3 + 2]);
            moment += w * (s0 * v[n0 + 3] + s1 * v[n1 + 3] + s2 * v[n2 + 3] + s3 * v[n3 + 3]);
        }
        out[LIFT] = lift;
        out[INDUCED] = induced;
        out[PROFILE] = profile;
        out[MOMENT] = moment;
    }

    private void flapped(int i, double r, int j, double s, int l, double t, double[] out) {
        double f0 = flaps.weight(l, 0, t);
        double f1 = flaps.weight(l, 1, t);
        double f2 = flaps.weight(l, 2, t);
        double f3 = flaps.weight(l, 3, t);
        int m0 = flaps.node(l, 0) * CHANNELS;
        int m1 = flaps.node(l, 1) * CHANNELS;
        int m2 = flaps.node(l, 2) * CHANNELS;
        int m3 = flaps.node(l, 3) * CHANNELS;
        int perSpeed = flaps.size() * CHANNELS;
        int perAngle = speeds.size() * perSpeed;
        double a0 = alphas.weight(i, 0, r);
        double a1 = alphas.weight(i, 1, r);
        double a2 = alphas.weight(i, 2, r);
        double a3 = alphas.weight(i, 3, r);
        double lift = 0;
        double induced = 0;
        double profile = 0;
        double moment = 0;
        double[] v = values;
        for (int c = 0; c < 4; c++) {
            double third = speeds.weight(j, c, s);
            int atSpeed = speeds.node(j, c) * perSpeed;
            for (int b = 0; b < 4; b++) {
                double w = third * (b == 0 ? a0 : b == 1 ? a1 : b == 2 ? a2 : a3);
                int base = alphas.node(i, b) * perAngle + atSpeed;
                int n0 = base + m0;
                int n1 = base + m1;
                int n2 = base + m2;
                int n3 = base + m3;
                lift += w * (f0 * v[n0] + f1 * v[n1] + f2 * v[n2] + f3 * v[n3]);
                induced += w * (f0 * v[n0 + 1] + f1 * v[n1 + 1] + f2 * v[n2 + 1] + f3 * v[n3 + 1]);
                profile += w * (f0 * v[n0 + 2] + f1 * v[n1 + 2] + f2 * v[n2 + 2] + f3 * v[n3 + 2]);
                moment += w * (f0 * v[n0 + 3] + f1 * v[n1 + 3] + f2 * v[n2 + 3] + f3 * v[n3 + 3]);
            }
        }
        out[LIFT] = lift;
        out[INDUCED] = induced;
        out[PROFILE] = profile;
        out[MOMENT] = moment;
    }

    /** Lift slope between -4 and 4 degrees at a speed [m/s], flap 0 [1/rad]. */
    double liftSlope(double speed) {
        double[] out = new double[CHANNELS];
        double step = Math.PI / 45;
        double place = SurfaceKnots.speedPlace(speed * speed);
        at(step, place, 0, out);
        double up = out[LIFT];
        at(-step, place, 0, out);
        return (up - out[LIFT]) / (2 * step);
    }

    /**
     * Angle above zero at which lift has fallen to {@value #STALLED} of what the attached slope would give, at a speed
     * [m/s], flap 0 [rad]. (Lift of a short surface goes on growing beyond; it is no measure of stall.)
     */
    double stallAngle(double speed) {
        double[] out = new double[CHANNELS];
        double place = SurfaceKnots.speedPlace(speed * speed);
        double slope = liftSlope(speed);
        double step = Math.PI / 720;
        double alpha = Math.PI / 30;
        do {
            alpha += step;
            at(alpha, place, 0, out);
        } while (out[LIFT] > STALLED * slope * alpha && alpha < 0.5 * Math.PI);
        return alpha;
    }
}
