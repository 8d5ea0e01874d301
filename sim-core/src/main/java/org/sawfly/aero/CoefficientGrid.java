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
        int perSpeed = flaps.size() * CHANNELS;
        int perAngle = speeds.size() * perSpeed;
        double s0 = speeds.weight(j, 0, s);
        double s1 = speeds.weight(j, 1, s);
        double s2 = speeds.weight(j, 2, s);
        double s3 = speeds.weight(j, 3, s);
        int m0 = speeds.node(j, 0) * perSpeed;
        int m1 = speeds.node(j, 1) * perSpeed;
        int m2 = speeds.node(j, 2) * perSpeed;
        int m3 = speeds.node(j, 3) * perSpeed;
        double lift = 0;
        double induced = 0;
        double profile = 0;
        double moment = 0;
        int many = flaps.size() == 1 ? 1 : 4;
        int l = many == 1 ? 0 : flaps.cell(flap);
        double t = many == 1 ? 0 : flaps.fraction(flap, l);
        double[] v = values;
        for (int c = 0; c < many; c++) {
            double third = many == 1 ? 1 : flaps.weight(l, c, t);
            int atFlap = many == 1 ? 0 : flaps.node(l, c) * CHANNELS;
            for (int b = 0; b < 4; b++) {
                double w = third * alphas.weight(i, b, r);
                int base = alphas.node(i, b) * perAngle + atFlap;
                int n0 = base + m0;
                int n1 = base + m1;
                int n2 = base + m2;
                int n3 = base + m3;
                lift += w * (s0 * v[n0] + s1 * v[n1] + s2 * v[n2] + s3 * v[n3]);
                induced += w * (s0 * v[n0 + 1] + s1 * v[n1 + 1] + s2 * v[n2 + 1] + s3 * v[n3 + 1]);
                profile += w * (s0 * v[n0 + 2] + s1 * v[n1 + 2] + s2 * v[n2 + 2] + s3 * v[n3 + 2]);
                moment += w * (s0 * v[n0 + 3] + s1 * v[n1 + 3] + s2 * v[n2 + 3] + s3 * v[n3 + 3]);
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

    /** Angle of the first maximum of lift above zero at a speed [m/s], flap 0 [rad]. */
    double stallAngle(double speed) {
        double[] out = new double[CHANNELS];
        double place = SurfaceKnots.speedPlace(speed * speed);
        double step = Math.PI / 720;
        double last = Double.NEGATIVE_INFINITY;
        for (double alpha = 0; alpha < 0.5 * Math.PI; alpha += step) {
            at(alpha, place, 0, out);
            if (out[LIFT] < last) {
                return alpha - step;
            }
            last = out[LIFT];
        }
        return 0.25 * Math.PI;
    }
}
