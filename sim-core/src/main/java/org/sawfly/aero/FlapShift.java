package org.sawfly.aero;

import org.sawfly.math.AxisPlace;
import org.sawfly.math.CubicAxis;
import org.sawfly.section.Section;

/**
 * What the flap of a tail does, as a shift of its angle of attack, over flap angle and place on the speed axis. Taken from the
 * section itself: the shift is the lift the flap adds at zero angle over the section's slope (so it contains whatever
 * effectiveness the section's data have), with the drag and the moment that come on top of those at the shifted angle.
 * A surface that turns as a whole shifts by its own angle.
 *
 * <p>Immutable, allocation-free.
 */
final class FlapShift {
    static final int ANGLE = 0;
    static final int DRAG = 1;
    static final int MOMENT = 2;
    static final int CHANNELS = 3;

    /** Largest flap angle of the table [rad]; beyond it nothing is added. */
    private static final double LARGEST = Math.PI / 6;

    private static final int FLAPS = 13;
    private static final int SPEEDS = 6;
    /** Speeds of the table [m/s], each so many times the one before. */
    private static final double SLOWEST = 2;

    private static final double STEP = 1.9;
    /** Slope is taken over plus and minus this angle [rad], which bridges the dead zone of thin tail sections. */
    private static final double REACH = Math.PI / 45;

    private final boolean whole;
    private final CubicAxis flaps;
    private final CubicAxis speeds;
    private final double[] values;

    private FlapShift(boolean whole, CubicAxis flaps, CubicAxis speeds, double[] values) {
        this.whole = whole;
        this.flaps = flaps;
        this.speeds = speeds;
        this.values = values;
    }

    /**
     * Prepares the table.
     *
     * @param flapChord flap chord over chord [1]; 1 for a surface that turns as a whole
     * @param chord mean chord [m]
     * @param viscosity kinematic viscosity of the air in which the speeds are meant [m2/s]
     */
    static FlapShift of(Section section, double flapChord, double chord, double viscosity) {
        CubicAxis flaps = CubicAxis.uniform(CubicAxis.Ends.FLAT, -LARGEST, LARGEST, FLAPS);
        double[] places = new double[SPEEDS];
        for (int j = 0; j < SPEEDS; j++) {
            places[j] = SurfaceKnots.speedPlace(speed(j) * speed(j));
        }
        CubicAxis speeds = CubicAxis.of(CubicAxis.Ends.FLAT, places);
        double[] values = new double[FLAPS * SPEEDS * CHANNELS];
        double[] plain = new double[3];
        double[] turned = new double[3];
        for (int j = 0; j < SPEEDS; j++) {
            double reynolds = speed(j) * chord / viscosity;
            Section neutral = section.prepared(reynolds, 0);
            neutral.at(REACH, reynolds, 0, plain);
            double up = plain[0];
            neutral.at(-REACH, reynolds, 0, plain);
            double slope = Math.max((up - plain[0]) / (2 * REACH), 1);
            neutral.at(0, reynolds, 0, plain);
            double zero = plain[0];
            for (int i = 0; i < FLAPS; i++) {
                section.at(0, reynolds, flaps.knot(i), turned);
                double shift = (turned[0] - zero) / slope;
                neutral.at(shift, reynolds, 0, plain);
                int at = (i * SPEEDS + j) * CHANNELS;
                values[at + ANGLE] = shift;
                values[at + DRAG] = turned[1] - plain[1];
                values[at + MOMENT] = turned[2] - plain[2];
            }
        }
        return new FlapShift(flapChord >= 1, flaps, speeds, values);
    }

    /** The flap of a surface that is its own mirror image: shift and moment odd, drag even in the flap angle. */
    FlapShift mirrored() {
        double[] mean = new double[values.length];
        int row = SPEEDS * CHANNELS;
        for (int i = 0; i < FLAPS; i++) {
            for (int k = 0; k < row; k++) {
                double sign = k % CHANNELS == DRAG ? 1 : -1;
                mean[i * row + k] = 0.5 * (values[i * row + k] + sign * values[(FLAPS - 1 - i) * row + k]);
            }
        }
        return new FlapShift(whole, flaps, speeds, mean);
    }

    private static double speed(int j) {
        return SLOWEST * Math.pow(STEP, j);
    }

    /** Places found for one flow; scratch. */
    static final class Lookup {
        private final AxisPlace flap = new AxisPlace();
        private final AxisPlace speed = new AxisPlace();
    }

    /** Fills {@code out} with shift [rad], drag and moment added [1]; a neutral flap, which is a knot, adds nothing. */
    void at(double flap, double speedPlace, Lookup lookup, double[] out) {
        if (whole || flap == 0) {
            out[ANGLE] = flap;
            out[DRAG] = 0;
            out[MOMENT] = 0;
            return;
        }
        AxisPlace f = lookup.flap;
        AxisPlace s = lookup.speed;
        flaps.locate(flap, f);
        speeds.locate(speedPlace, s);
        int n0 = f.n0 * SPEEDS;
        int n1 = f.n1 * SPEEDS;
        int n2 = f.n2 * SPEEDS;
        int n3 = f.n3 * SPEEDS;
        for (int c = 0; c < CHANNELS; c++) {
            out[c] = f.w0 * atFlap(n0, s, c)
                    + f.w1 * atFlap(n1, s, c)
                    + f.w2 * atFlap(n2, s, c)
                    + f.w3 * atFlap(n3, s, c);
        }
    }

    private double atFlap(int row, AxisPlace s, int c) {
        double[] v = values;
        return s.w0 * v[(row + s.n0) * CHANNELS + c]
                + s.w1 * v[(row + s.n1) * CHANNELS + c]
                + s.w2 * v[(row + s.n2) * CHANNELS + c]
                + s.w3 * v[(row + s.n3) * CHANNELS + c];
    }
}
