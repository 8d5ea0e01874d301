package org.sawfly.aero;

import org.sawfly.math.AxisPlace;
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

    /**
     * What has been found for one flow: place in speed and flap angle, and the coefficients at the four angles around the last
     * one asked for. Kept as long as neither changes, which alters no result.
     */
    static final class Lookup {
        private final AxisPlace angle = new AxisPlace();
        private final AxisPlace speed = new AxisPlace();
        private final AxisPlace flap = new AxisPlace();
        private final double[] around = new double[4 * CHANNELS];
        private double speedPlace = Double.NaN;
        private double flapAngle = Double.NaN;
        private int blended = -1;
    }

    /** Takes place on the speed axis and flap angle. */
    void flow(double speedPlace, double flapAngle, Lookup lookup) {
        if (speedPlace != lookup.speedPlace) {
            lookup.speedPlace = speedPlace;
            lookup.blended = -1;
            speeds.locate(speedPlace, lookup.speed);
        }
        if (flapAngle != lookup.flapAngle) {
            lookup.flapAngle = flapAngle;
            lookup.blended = -1;
            flaps.locate(flapAngle, lookup.flap);
        }
    }

    /** Fills {@code out} with the four coefficients at an angle in the flow taken before. */
    void at(double alpha, Lookup lookup, double[] out) {
        AxisPlace p = lookup.angle;
        alphas.locate(alpha, p);
        double[] v = lookup.around;
        if (p.cell != lookup.blended) {
            lookup.blended = p.cell;
            blend(p.n0, lookup, 0);
            blend(p.n1, lookup, CHANNELS);
            blend(p.n2, lookup, 2 * CHANNELS);
            blend(p.n3, lookup, 3 * CHANNELS);
        }
        out[LIFT] = p.w0 * v[0] + p.w1 * v[4] + p.w2 * v[8] + p.w3 * v[12];
        out[INDUCED] = p.w0 * v[1] + p.w1 * v[5] + p.w2 * v[9] + p.w3 * v[13];
        out[PROFILE] = p.w0 * v[2] + p.w1 * v[6] + p.w2 * v[10] + p.w3 * v[14];
        out[MOMENT] = p.w0 * v[3] + p.w1 * v[7] + p.w2 * v[11] + p.w3 * v[15];
    }

    /** Coefficients at one knot of the angle. */
    private void blend(int knot, Lookup lookup, int at) {
        AxisPlace s = lookup.speed;
        AxisPlace f = lookup.flap;
        int perSpeed = flaps.size() * CHANNELS;
        int base = knot * speeds.size() * perSpeed;
        double[] out = lookup.around;
        if (flaps.size() == 1) {
            line(base, s.n0 * CHANNELS, s.n1 * CHANNELS, s.n2 * CHANNELS, s.n3 * CHANNELS, s, 1, out, at, true);
            return;
        }
        int m0 = f.n0 * CHANNELS;
        int m1 = f.n1 * CHANNELS;
        int m2 = f.n2 * CHANNELS;
        int m3 = f.n3 * CHANNELS;
        line(base + s.n0 * perSpeed, m0, m1, m2, m3, f, s.w0, out, at, true);
        line(base + s.n1 * perSpeed, m0, m1, m2, m3, f, s.w1, out, at, false);
        line(base + s.n2 * perSpeed, m0, m1, m2, m3, f, s.w2, out, at, false);
        line(base + s.n3 * perSpeed, m0, m1, m2, m3, f, s.w3, out, at, false);
    }

    /** Four knots along one axis, times a factor, set or added. */
    private void line(
            int base, int m0, int m1, int m2, int m3, AxisPlace p, double factor, double[] out, int at, boolean first) {
        double[] v = values;
        int n0 = base + m0;
        int n1 = base + m1;
        int n2 = base + m2;
        int n3 = base + m3;
        double w0 = factor * p.w0;
        double w1 = factor * p.w1;
        double w2 = factor * p.w2;
        double w3 = factor * p.w3;
        double lift = w0 * v[n0] + w1 * v[n1] + w2 * v[n2] + w3 * v[n3];
        double induced = w0 * v[n0 + 1] + w1 * v[n1 + 1] + w2 * v[n2 + 1] + w3 * v[n3 + 1];
        double profile = w0 * v[n0 + 2] + w1 * v[n1 + 2] + w2 * v[n2 + 2] + w3 * v[n3 + 2];
        double moment = w0 * v[n0 + 3] + w1 * v[n1 + 3] + w2 * v[n2 + 3] + w3 * v[n3 + 3];
        out[at] = first ? lift : out[at] + lift;
        out[at + 1] = first ? induced : out[at + 1] + induced;
        out[at + 2] = first ? profile : out[at + 2] + profile;
        out[at + 3] = first ? moment : out[at + 3] + moment;
    }

    /** Fills {@code out} with the four coefficients. */
    private void at(double alpha, double speedPlace, double flap, double[] out) {
        Lookup lookup = new Lookup();
        flow(speedPlace, flap, lookup);
        at(alpha, lookup, out);
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
