package org.sawfly.strength;

import java.util.List;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;
import org.sawfly.strength.RearMasses.Mass;

/**
 * The first frequency at which the boom swings with all it carries.
 *
 * <p>Found by inverse iteration (Stodola's method; Timoshenko, Young and Weaver, Vibration Problems in Engineering, 4th ed.
 * 1974): a shape is taken, loaded with its own inertia {@code m w}, bent by it as a cantilever held where it leaves the
 * pod, and so on until it repeats itself; then {@code omega^2 = (w, M w)/(w, M y)}, Rayleigh's quotient, y the bent shape. Rotary inertia of
 * tails counts. Tails behind the boom's end go on stiff.
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
    private final double end;
    private final int count;
    private final double[] x;
    private final double[] mass;
    private final double[] turning;
    private final double[][] deflectionOfForce;
    private final double[][] slopeOfForce;
    private final double[][] slopeOfMoment;

    private BoomSwing(Boom boom, double heldX, List<Mass> masses, Plane plane) {
        this.tube = BoomTube.of(boom);
        this.held = heldX;
        this.end = boom.endX();
        this.count = masses.size();
        this.x = new double[count];
        this.mass = new double[count];
        this.turning = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = masses.get(i).place().x();
            mass[i] = masses.get(i).mass();
            Inertia inertia = masses.get(i).inertia();
            turning[i] = plane == Plane.SIDE ? inertia.izz() : inertia.iyy();
        }
        this.deflectionOfForce = new double[count][count];
        this.slopeOfForce = new double[count][count];
        this.slopeOfMoment = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < count; k++) {
                flexibility(i, k);
            }
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

    private void flexibility(int i, int k) {
        double at = Math.max(x[i], end);
        double load = Math.max(x[k], end);
        double past = at - x[i];
        double loadPast = load - x[k];
        double slopeForce = tube.slopeOfForce(held, load, at);
        double slopeMoment = tube.slopeOfMoment(held, Math.max(load, at), Math.max(load, at));
        double deflection = tube.deflectionOfForce(held, load, at);
        double deflectionMoment = tube.slopeOfForce(held, at, load);
        slopeOfForce[i][k] = slopeForce + loadPast * slopeMoment;
        slopeOfMoment[i][k] = slopeMoment;
        deflectionOfForce[i][k] = deflection + loadPast * deflectionMoment + past * slopeOfForce[i][k];
    }

    private double frequency(Mass rest, Plane plane) {
        double[] y = new double[count];
        double[] slope = new double[count];
        for (int i = 0; i < count; i++) {
            double s = held - x[i];
            y[i] = s * s;
            slope[i] = 2 * s;
        }
        double before = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] w = y.clone();
            double[] turn = slope.clone();
            double frontEnergy = rest == null ? 0 : release(rest, plane, w, turn);
            double[] bent = new double[count];
            double[] bentSlope = new double[count];
            double work = 0;
            double energy = frontEnergy;
            for (int i = 0; i < count; i++) {
                for (int k = 0; k < count; k++) {
                    bent[i] += deflectionOfForce[i][k] * mass[k] * w[k] + slopeOfForce[k][i] * turning[k] * turn[k];
                    bentSlope[i] += slopeOfForce[i][k] * mass[k] * w[k] + slopeOfMoment[i][k] * turning[k] * turn[k];
                }
            }
            for (int i = 0; i < count; i++) {
                work += mass[i] * w[i] * bent[i] + turning[i] * turn[i] * bentSlope[i];
                energy += mass[i] * w[i] * w[i] + turning[i] * turn[i] * turn[i];
            }
            double square = energy / work;
            double largest = Math.abs(bent[0]);
            for (int i = 0; i < count; i++) {
                largest = Math.max(largest, Math.abs(bent[i]));
            }
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
            double s = held - x[i];
            m0 += mass[i];
            m1 += mass[i] * s;
            m2 += mass[i] * s * s + turning[i];
            p0 += mass[i] * w[i];
            p1 += mass[i] * s * w[i] + turning[i] * turn[i];
        }
        double determinant = m0 * m2 - m1 * m1;
        double rise = -(p0 * m2 - p1 * m1) / determinant;
        double tilt = -(p1 * m0 - p0 * m1) / determinant;
        for (int i = 0; i < count; i++) {
            w[i] += rise + tilt * (held - x[i]);
            turn[i] += tilt;
        }
        double atRest = rise + tilt * restPlace;
        return rest.mass() * atRest * atRest + restTurning * tilt * tilt;
    }
}
