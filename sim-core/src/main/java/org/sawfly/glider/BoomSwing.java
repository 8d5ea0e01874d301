package org.sawfly.glider;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.sawfly.glider.RearMasses.Mass;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quadrature;
import org.sawfly.math.Vec3;

/**
 * The first frequency at which the boom swings with all it carries.
 *
 * <p>Found by inverse iteration (Stodola's method; Timoshenko, Young and Weaver, Vibration Problems in Engineering, 4th ed.
 * 1974): a shape is taken, loaded with its own inertia {@code m w}, bent by it as a cantilever held where it leaves the
 * pod, and so on until it repeats itself; then {@code omega^2 = (w, M w)/(w, M y)}, Rayleigh's quotient, y the bent shape.
 * Rotary inertia of tails counts. Tails behind the boom's end go on stiff.
 *
 * <p>In flight the rest of the glider is not held: it moves and turns by so much that momentum and angular momentum stay
 * nought, {@code w = h + phi (x - x_0) + y}. This is the quicker swing, because the rest gives way.
 */
public final class BoomSwing {
    private static final int MOST_PASSES = 200;
    private static final double SETTLED = 1e-12;

    /** In which plane. */
    public enum Plane {
        SIDE,
        VERTICAL
    }

    private final BoomTube tube;
    private final double held;
    private final int count;
    /** Of every mass, those further out later: distance behind the place it is held at, mass, inertia. */
    private final double[] s, mass, turning;
    /** Ends of the pieces of boom between masses and steps of its stiffness, from the place it is held at. */
    private final double[] ends;
    /** In which piece, or behind the last, every mass sits. */
    private final int[] piece;

    private BoomSwing(Boom boom, double heldX, List<Mass> masses, Plane plane) {
        this.tube = BoomTube.of(boom);
        this.held = heldX;
        List<Mass> sorted = masses.stream()
                .filter(one -> one.place().x() < heldX)
                .sorted(Comparator.comparingDouble(one -> -one.place().x()))
                .toList();
        this.count = sorted.size();
        this.s = new double[count];
        this.mass = new double[count];
        this.turning = new double[count];
        this.piece = new int[count];
        double toFront = boom.frontX() - heldX;
        SortedSet<Double> places = new TreeSet<>();
        for (double step : tube.breaks(heldX, boom.endX())) {
            places.add(step - toFront);
        }
        double end = heldX - boom.endX();
        for (int i = 0; i < count; i++) {
            Mass one = sorted.get(i);
            s[i] = heldX - one.place().x();
            mass[i] = one.mass();
            turning[i] =
                    plane == Plane.SIDE ? one.inertia().izz() : one.inertia().iyy();
            places.add(Math.min(s[i], end));
        }
        this.ends = places.stream().mapToDouble(Double::doubleValue).toArray();
        for (int i = 0; i < count; i++) {
            piece[i] = Arrays.binarySearch(ends, Math.min(s[i], end));
        }
    }

    /** Frequency with the rest of the glider held fast on the bench [Hz]. */
    public static double held(Glider glider, Plane plane) {
        return held(glider, glider.boom().frontX(), plane);
    }

    /** The same, held at a place x, build axes [m]: where the pod or the wing holds it. */
    public static double held(Glider glider, double heldX, Plane plane) {
        return held(glider.boom(), heldX, RearMasses.of(glider).all(), plane);
    }

    /** The same of a boom with any masses, its own among them. */
    static double held(Boom boom, double heldX, List<Mass> masses, Plane plane) {
        return new BoomSwing(boom, heldX, masses, plane).frequency(null, plane);
    }

    /**
     * What is left of a bend as a swing when the load that made it goes evenly within a time, {@code |sin(pi t f)|/(pi t f)}
     * (response of an undamped oscillator to a ramp; Timoshenko, Young and Weaver, Vibration Problems in Engineering, 4th ed.
     * 1974, section 1.12, from memory, derived anew in the tests).
     *
     * @param time in which the load goes [s]
     * @param frequency of the swing; none is left of an infinite one [Hz]
     * @return of the bend [1]
     */
    public static double leftAfter(double time, double frequency) {
        double angle = Math.PI * time * frequency;
        if (angle == Double.POSITIVE_INFINITY) {
            return 0;
        }
        return angle == 0 ? 1 : Math.abs(Math.sin(angle)) / angle;
    }

    /** Frequency in flight, where the rest of the glider gives way [Hz]. */
    public static double inFlight(Glider glider, Plane plane) {
        List<Mass> masses = RearMasses.of(glider).all();
        MassProperties whole = MassProperties.of(glider);
        double front = whole.mass();
        Vec3 moment = whole.cg().times(whole.mass());
        Inertia inertia = whole.inertia().plus(Inertia.ofPoint(whole.mass(), whole.cg()));
        for (Mass m : masses) {
            front -= m.mass();
            moment = moment.minus(m.place().times(m.mass()));
            inertia = inertia.minus(m.inertia()).minus(Inertia.ofPoint(m.mass(), m.place()));
        }
        Vec3 cg = moment.times(1 / front);
        Inertia about = inertia.minus(Inertia.ofPoint(front, cg));
        return inFlight(glider.boom(), masses, new Mass(front, cg, about), plane);
    }

    /** The same of a boom with any masses, its own among them, on a rest that is free to move. */
    static double inFlight(Boom boom, List<Mass> masses, Mass rest, Plane plane) {
        return new BoomSwing(boom, boom.frontX(), masses, plane).frequency(rest, plane);
    }

    private double frequency(Mass rest, Plane plane) {
        double[] y = new double[count];
        double[] slope = new double[count];
        for (int i = 0; i < count; i++) {
            y[i] = s[i] * s[i];
            slope[i] = 2 * s[i];
        }
        double before = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] w = y.clone();
            double[] turn = slope.clone();
            double energy = rest == null ? 0 : release(rest, plane, w, turn);
            double[] bent = new double[count];
            double[] bentSlope = new double[count];
            bend(w, turn, bent, bentSlope);
            double work = 0;
            double largest = 0;
            for (int i = 0; i < count; i++) {
                work += mass[i] * w[i] * bent[i] + turning[i] * turn[i] * bentSlope[i];
                energy += mass[i] * w[i] * w[i] + turning[i] * turn[i] * turn[i];
                largest = Math.max(largest, Math.abs(bent[i]));
            }
            double square = energy / work;
            for (int i = 0; i < count; i++) {
                y[i] = bent[i] / largest;
                slope[i] = bentSlope[i] / largest;
            }
            if (Math.abs(square - before) < SETTLED * square) {
                break;
            }
            before = square;
        }
        return Math.sqrt(before) / (2 * Math.PI);
    }

    /**
     * Bends the boom by the inertia of a shape. Outside s the loads {@code m w} and moments {@code J turn} sum to a bending moment
     * {@code Q - P s}; curvature is that over EI, summed from where the boom is held.
     */
    private void bend(double[] w, double[] turn, double[] bent, double[] bentSlope) {
        double p = 0;
        double q = 0;
        for (int i = 0; i < count; i++) {
            p += mass[i] * w[i];
            q += mass[i] * w[i] * s[i] + turning[i] * turn[i];
        }
        double from = 0;
        double y = 0;
        double slope = 0;
        int next = 0;
        for (int k = 0; k < ends.length; k++) {
            double to = ends[k];
            double rise = slope * (to - from);
            for (int g = 0; g < Quadrature.POINTS; g++) {
                double at = Quadrature.point(g, from, to);
                double turned = Quadrature.weight(g, from, to) * (q - p * at) / tube.stiffness(held - at);
                slope += turned;
                rise += turned * (to - at);
            }
            y += rise;
            from = to;
            for (; next < count && piece[next] == k; next++) {
                bent[next] = y + slope * (s[next] - to);
                bentSlope[next] = slope;
                p -= mass[next] * w[next];
                q -= mass[next] * w[next] * s[next] + turning[next] * turn[next];
            }
        }
    }

    /**
     * Lets the rest of the glider go along: adds its motion to shape and slope so that momentum and angular momentum vanish.
     * Slopes are d(shape)/d(distance behind the place it is held at).
     *
     * @return what the rest adds to the sum of mass times motion squared
     */
    private double release(Mass rest, Plane plane, double[] w, double[] turn) {
        double restTurning =
                plane == Plane.SIDE ? rest.inertia().izz() : rest.inertia().iyy();
        double restPlace = held - rest.place().x();
        double m0 = rest.mass();
        double m1 = rest.mass() * restPlace;
        double m2 = rest.mass() * restPlace * restPlace + restTurning;
        double p0 = 0;
        double p1 = 0;
        for (int i = 0; i < count; i++) {
            m0 += mass[i];
            m1 += mass[i] * s[i];
            m2 += mass[i] * s[i] * s[i] + turning[i];
            p0 += mass[i] * w[i];
            p1 += mass[i] * s[i] * w[i] + turning[i] * turn[i];
        }
        double determinant = m0 * m2 - m1 * m1;
        double rise = -(p0 * m2 - p1 * m1) / determinant;
        double tilt = -(p1 * m0 - p0 * m1) / determinant;
        for (int i = 0; i < count; i++) {
            w[i] += rise + tilt * s[i];
            turn[i] += tilt;
        }
        double atRest = rise + tilt * restPlace;
        return rest.mass() * atRest * atRest + restTurning * tilt * tilt;
    }
}
