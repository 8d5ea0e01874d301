package org.sawfly.aero;

import org.sawfly.math.AxisPlace;
import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicGrid1;

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

    /** So many knots of speed and flap count at any place, and follow one another. */
    private static final int LEAST_KNOTS = 4;

    private static final double STALLED = 0.8;

    private final CubicAxis alphas;
    private final CubicAxis speeds;
    private final CubicAxis flaps;
    private final double[] values;
    private final boolean neutral;
    private final int perSpeed;
    private final int speedCount;
    private final int flapCount;

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
        if (speeds.size() < LEAST_KNOTS || flaps.size() != 1 && flaps.size() < LEAST_KNOTS) {
            throw new IllegalArgumentException("the grid needs " + LEAST_KNOTS + " speeds and one or " + LEAST_KNOTS
                    + " flap angles at least, got " + speeds.size() + " and " + flaps.size());
        }
        this.alphas = alphas;
        this.speeds = speeds;
        this.flaps = flaps;
        this.values = values.clone();
        this.neutral = flaps.size() == 1;
        this.perSpeed = flaps.size() * CHANNELS;
        this.speedCount = speeds.size();
        this.flapCount = flaps.size();
    }

    /**
     * The grid of a surface that is its own mirror image: lift and moment odd, drag even in the angles of flow and flap, to the
     * last bit. Both must come in pairs of both signs, half a turn standing for itself.
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
                int flap = k % perSpeed / CHANNELS;
                int other = k + (flaps.size() - 1 - 2 * flap) * CHANNELS;
                mean[i * row + k] = 0.5 * (values[i * row + k] + sign * values[image * row + other]);
            }
        }
        return new CoefficientGrid(alphas, speeds, flaps, mean);
    }

    /**
     * What has been found for one flow: place in speed and flap angle, and the coefficients at the four angles around the last
     * one asked for. Kept as long as neither changes. When a flap angle stays, the whole grid is brought to it. All of which
     * alters no result.
     */
    static final class Lookup {
        /** Flows in a row after which a flap angle is taken to stay. */
        private static final int STAYS = 4;

        private final AxisPlace angle = new AxisPlace();
        private final AxisPlace speed = new AxisPlace();
        private final AxisPlace flap = new AxisPlace();
        private final double[] around = new double[4 * CHANNELS];
        private double speedPlace = Double.NaN;
        private double flapAngle = Double.NaN;
        private int blended = -1;
        private int same;
        private double[] atFlap;
    }

    /** Takes place on the speed axis and flap angle. */
    void flow(double speedPlace, double flapAngle, Lookup lookup) {
        if (speedPlace != lookup.speedPlace) {
            lookup.speedPlace = speedPlace;
            lookup.blended = -1;
            speeds.locate(speedPlace, lookup.speed);
        }
        if (neutral) {
            return;
        }
        if (flapAngle != lookup.flapAngle) {
            lookup.flapAngle = flapAngle;
            lookup.blended = -1;
            lookup.same = 0;
            flaps.locate(flapAngle, lookup.flap);
        } else if (++lookup.same == Lookup.STAYS) {
            bringToFlap(lookup);
        }
    }

    private void bringToFlap(Lookup lookup) {
        int nodes = values.length / perSpeed;
        if (lookup.atFlap == null) {
            lookup.atFlap = new double[nodes * CHANNELS];
        }
        AxisPlace f = lookup.flap;
        double[] v = values;
        for (int node = 0; node < nodes; node++) {
            int base = node * perSpeed;
            for (int c = 0; c < CHANNELS; c++) {
                lookup.atFlap[node * CHANNELS + c] = f.w0 * v[base + f.n0 * CHANNELS + c]
                        + f.w1 * v[base + f.n1 * CHANNELS + c]
                        + f.w2 * v[base + f.n2 * CHANNELS + c]
                        + f.w3 * v[base + f.n3 * CHANNELS + c];
            }
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

    /**
     * Another function over the same knots, at the place of the last coefficients; of a surface whose flap is in the table.
     *
     * @param nodes value at knots i, j, k: {@code (i nSpeeds + j) nFlaps + k}
     */
    double at(double[] nodes, Lookup lookup) {
        AxisPlace p = lookup.angle;
        int n = lookup.speed.n0 * flapCount + lookup.flap.n0;
        int perAngle = speedCount * flapCount;
        return p.w0 * plane(nodes, n + p.n0 * perAngle, 1, lookup)
                + p.w1 * plane(nodes, n + p.n1 * perAngle, 1, lookup)
                + p.w2 * plane(nodes, n + p.n2 * perAngle, 1, lookup)
                + p.w3 * plane(nodes, n + p.n3 * perAngle, 1, lookup);
    }

    /** Coefficients at one knot of the angle. */
    private void blend(int knot, Lookup lookup, int at) {
        double[] out = lookup.around;
        if (neutral || lookup.same >= Lookup.STAYS) {
            double[] v = neutral ? values : lookup.atFlap;
            AxisPlace s = lookup.speed;
            int n = (knot * speedCount + s.n0) * CHANNELS;
            out[at] = line(v, n, CHANNELS, s);
            out[at + 1] = line(v, n + 1, CHANNELS, s);
            out[at + 2] = line(v, n + 2, CHANNELS, s);
            out[at + 3] = line(v, n + 3, CHANNELS, s);
            return;
        }
        int n = ((knot * speedCount + lookup.speed.n0) * flapCount + lookup.flap.n0) * CHANNELS;
        out[at] = plane(values, n, CHANNELS, lookup);
        out[at + 1] = plane(values, n + 1, CHANNELS, lookup);
        out[at + 2] = plane(values, n + 2, CHANNELS, lookup);
        out[at + 3] = plane(values, n + 3, CHANNELS, lookup);
    }

    /** Over speed and flap angle from the first knots that count on; a flap's knots lie {@code stride} apart. */
    private double plane(double[] v, int at, int stride, Lookup lookup) {
        AxisPlace s = lookup.speed;
        AxisPlace f = lookup.flap;
        int row = flapCount * stride;
        return s.w0 * line(v, at, stride, f)
                + s.w1 * line(v, at + row, stride, f)
                + s.w2 * line(v, at + 2 * row, stride, f)
                + s.w3 * line(v, at + 3 * row, stride, f);
    }

    /** Along one axis: the four knots that count follow one another. */
    private static double line(double[] v, int at, int stride, AxisPlace place) {
        return place.w0 * v[at]
                + place.w1 * v[at + stride]
                + place.w2 * v[at + 2 * stride]
                + place.w3 * v[at + 3 * stride];
    }

    /** Fills {@code out} with the four coefficients. */
    void at(double alpha, double speedPlace, double flap, double[] out) {
        Lookup lookup = new Lookup();
        flow(speedPlace, flap, lookup);
        at(alpha, lookup, out);
    }

    /** Lift coefficient at a knot, counted as the values are. */
    double lift(int node) {
        return values[CHANNELS * node + LIFT];
    }

    /** Angle of no lift by flap angle, by the attached slope from the lift at no angle, at a speed [m/s]. */
    CubicGrid1 zeroLift(double speed) {
        double[] out = new double[CHANNELS];
        double[] zero = new double[flaps.size()];
        for (int k = 0; k < zero.length; k++) {
            at(0, SurfaceKnots.speedPlace(speed * speed), flaps.knot(k), out);
            zero[k] = -out[LIFT] / liftSlope(speed);
        }
        return new CubicGrid1(flaps, zero);
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
