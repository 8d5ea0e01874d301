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

    private static final double STALLED = 0.8;

    private final CubicAxis alphas;
    private final CubicAxis speeds;
    private final CubicAxis flaps;
    private final double[] values;
    private final boolean neutral;
    private final int perSpeed;
    private final int speedCount;

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
        this.neutral = flaps.size() == 1;
        this.perSpeed = flaps.size() * CHANNELS;
        this.speedCount = speeds.size();
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

    /** Coefficients at one knot of the angle. */
    private void blend(int knot, Lookup lookup, int at) {
        AxisPlace s = lookup.speed;
        double[] out = lookup.around;
        if (neutral || lookup.same >= Lookup.STAYS) {
            double[] v = neutral ? values : lookup.atFlap;
            int base = knot * speedCount;
            int n0 = (base + s.n0) * CHANNELS;
            int n1 = (base + s.n1) * CHANNELS;
            int n2 = (base + s.n2) * CHANNELS;
            int n3 = (base + s.n3) * CHANNELS;
            out[at] = s.w0 * v[n0] + s.w1 * v[n1] + s.w2 * v[n2] + s.w3 * v[n3];
            out[at + 1] = s.w0 * v[n0 + 1] + s.w1 * v[n1 + 1] + s.w2 * v[n2 + 1] + s.w3 * v[n3 + 1];
            out[at + 2] = s.w0 * v[n0 + 2] + s.w1 * v[n1 + 2] + s.w2 * v[n2 + 2] + s.w3 * v[n3 + 2];
            out[at + 3] = s.w0 * v[n0 + 3] + s.w1 * v[n1 + 3] + s.w2 * v[n2 + 3] + s.w3 * v[n3 + 3];
            return;
        }
        int base = knot * speedCount * perSpeed;
        out[at] = 0;
        out[at + 1] = 0;
        out[at + 2] = 0;
        out[at + 3] = 0;
        add(base + s.n0 * perSpeed, lookup.flap, s.w0, out, at);
        add(base + s.n1 * perSpeed, lookup.flap, s.w1, out, at);
        add(base + s.n2 * perSpeed, lookup.flap, s.w2, out, at);
        add(base + s.n3 * perSpeed, lookup.flap, s.w3, out, at);
    }

    /** Adds a share of the coefficients at one knot of angle and speed. */
    private void add(int base, AxisPlace f, double share, double[] out, int at) {
        double[] v = values;
        int n0 = base + f.n0 * CHANNELS;
        int n1 = base + f.n1 * CHANNELS;
        int n2 = base + f.n2 * CHANNELS;
        int n3 = base + f.n3 * CHANNELS;
        out[at] += share * (f.w0 * v[n0] + f.w1 * v[n1] + f.w2 * v[n2] + f.w3 * v[n3]);
        out[at + 1] += share * (f.w0 * v[n0 + 1] + f.w1 * v[n1 + 1] + f.w2 * v[n2 + 1] + f.w3 * v[n3 + 1]);
        out[at + 2] += share * (f.w0 * v[n0 + 2] + f.w1 * v[n1 + 2] + f.w2 * v[n2 + 2] + f.w3 * v[n3 + 2]);
        out[at + 3] += share * (f.w0 * v[n0 + 3] + f.w1 * v[n1 + 3] + f.w2 * v[n2 + 3] + f.w3 * v[n3 + 3]);
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
