package org.sawfly.glider;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quadrature;
import org.sawfly.math.Roots;
import org.sawfly.math.Vec3;

/**
 * The boom as a beam: a thin tapered tube of one wall thickness all along.
 *
 * <p>With distance s behind the front end, diameter {@code d(s)} runs straight from front to end, mass per length is
 * {@code mu(s) = k d(s)} (one wall), and bending stiffness {@code EI(s) = (E/rho) mu d^2/8}: for a thin ring of density
 * rho {@code mu = rho pi d t} and {@code I = pi d^3 t/8} (Timoshenko, Strength of Materials, part I, 3rd ed. 1955, on
 * thin rings). With the outer diameter for d this is some 5 to 8 % too stiff for a usual wall, within what is known of
 * E/rho. A bend test sets the one factor E/rho: cantilever from the place it is held at, deflection at the weight
 * {@code F int (s_F - s)^2/EI ds}. A piece cut off at an end leaves a boom that obeys the same k and E/rho. Ahead of the
 * front end, inside the pod, the tube goes on with its front diameter.
 *
 * <p>Sleeves and wraps add their own EI where they cover the tube, as if grown together with it; their mass is a part of
 * the glider and not of the tube. A bend test holds for the boom as it is, sleeves and all.
 *
 * <p>Places are build axes x, forward positive. A force across the boom bends it towards where it points; slopes and
 * deflections are positive that way and per unit of load.
 */
public final class BoomTube {
    private static final int PANELS = 32;
    /** Bounds of the specific modulus looked for [N m/kg]: rubber and ten times steel. */
    private static final double SOFTEST = 1e3;

    private static final double STIFFEST = 1e10;

    private final Boom boom;
    /** Those with a length. */
    private final List<BoomSleeve> sleeves;

    private final double massFactor;
    private final double specificModulus;

    private BoomTube(Boom boom) {
        this.boom = boom;
        sleeves = boom.build().sleeves().values().stream()
                .filter(sleeve -> sleeve.length() > 0)
                .toList();
        massFactor = boom.mass() / (0.5 * (boom.frontDiameter() + boom.endDiameter()) * boom.length());
        specificModulus = specificModulus(boom.stiffness());
    }

    /** The tube of a boom; refuses a bend test with its weight behind the boom's end. */
    public static BoomTube of(Boom boom) {
        return new BoomTube(boom);
    }

    /** E/rho that the boom really has [N m/kg]: as given, or as its bend test showed. */
    public double specificModulus() {
        return specificModulus;
    }

    /** Outer diameter at x [m]. */
    public double diameter(double x) {
        return diameterAt(boom.frontX() - x);
    }

    /** Mass per length at x [kg/m]. */
    public double massPerLength(double x) {
        return massFactor * diameter(x);
    }

    /** Bending stiffness EI at x, sleeves included [N m2]. */
    public double stiffness(double x) {
        return stiffnessAt(boom.frontX() - x, specificModulus);
    }

    /** Bending stiffness EI of the tube alone at x [N m2]. */
    public double bareStiffness(double x) {
        return specificModulus * stiffnessOverModulus(boom.frontX() - x);
    }

    /** The tube's ring at x: the wall as measured, or such that the ring weighs what the tube weighs there. */
    public TubeSection section(double x) {
        double outer = diameter(x);
        double measured = boom.build().wall().thickness();
        if (!Double.isNaN(measured)) {
            return TubeSection.ofWall(outer, measured);
        }
        double area = massPerLength(x) / boom.build().wall().density();
        double inside = outer * outer - 4 * area / Math.PI;
        return new TubeSection(outer, Math.sqrt(Math.max(0, inside)));
    }

    /** A sleeve's ring at x: on the tube or inside it. */
    public TubeSection section(BoomSleeve sleeve, double x) {
        TubeSection tube = section(x);
        return switch (sleeve.fit()) {
            case OUTSIDE -> new TubeSection(tube.outer() + 2 * sleeve.wall(), tube.outer());
            case INSIDE -> TubeSection.ofWall(tube.inner(), sleeve.wall());
        };
    }

    /** Young's modulus along the tube that goes with the stiffness and the density [Pa]. */
    public double modulus() {
        return specificModulus * boom.build().wall().density();
    }

    /** The whole tube. */
    public MassProperties whole() {
        return piece(boom.frontX(), boom.endX());
    }

    /** The piece from one place back to another [m]: its mass, balance point and inertia. */
    public MassProperties piece(double fromX, double toX) {
        double a = boom.frontX() - fromX;
        double b = boom.frontX() - toX;
        double mass = massFactor * Quadrature.integral(this::diameterAt, a, b);
        if (mass == 0) {
            return new MassProperties(0, new Vec3(fromX, 0, boom.z()), Inertia.ZERO);
        }
        double centre = massFactor * Quadrature.integral(s -> diameterAt(s) * s, a, b) / mass;
        double along = massFactor * Quadrature.integral(s -> diameterAt(s) * (s - centre) * (s - centre), a, b);
        double aboutAxis = 0.25 * massFactor * Quadrature.integral(s -> Math.pow(diameterAt(s), 3), a, b);
        double across = along + 0.5 * aboutAxis;
        return new MassProperties(
                mass, new Vec3(boom.frontX() - centre, 0, boom.z()), new Inertia(aboutAxis, across, across, 0, 0, 0));
    }

    /** Slope at x when held at heldX, per force across at forceX [rad/N]. */
    public double slopeOfForce(double heldX, double forceX, double x) {
        double force = boom.frontX() - forceX;
        return bend(heldX, Math.max(forceX, x), s -> force - s);
    }

    /** Deflection at x when held at heldX, per force across at forceX [m/N]. */
    public double deflectionOfForce(double heldX, double forceX, double x) {
        double force = boom.frontX() - forceX;
        double at = boom.frontX() - x;
        return bend(heldX, Math.max(forceX, x), s -> (force - s) * (at - s));
    }

    /** Slope at x when held at heldX, per moment at momentX that turns the end the same way [rad/(N m)]. */
    public double slopeOfMoment(double heldX, double momentX, double x) {
        return bend(heldX, Math.max(momentX, x), s -> 1);
    }

    /** Slope at x when held at heldX, per acceleration [rad/(m/s2)] that the boom's own mass resists, forces as inertia. */
    public double slopeOfOwnMass(double heldX, double x) {
        return bend(heldX, x, this::momentOfMassBehind);
    }

    /** First moment of the boom's mass behind s about s, int mu (t - s) dt [kg m]. */
    private double momentOfMassBehind(double s) {
        double rest = boom.length() - s;
        double taper = (boom.endDiameter() - boom.frontDiameter()) / boom.length();
        return massFactor * rest * rest * (diameterAt(s) / 2 + taper * rest / 3);
    }

    /** Integral of moment/EI from the place it is held at back to x. */
    private double bend(double heldX, double x, DoubleUnaryOperator moment) {
        return bend(specificModulus, heldX, x, moment);
    }

    private double bend(double modulus, double heldX, double x, DoubleUnaryOperator moment) {
        if (x >= heldX) {
            return 0;
        }
        double sum = 0;
        double from = boom.frontX() - heldX;
        for (double to : breaks(heldX, x)) {
            sum += Quadrature.integral(s -> moment.applyAsDouble(s) / stiffnessAt(s, modulus), from, to, PANELS);
            from = to;
        }
        return sum;
    }

    /** Where the stiffness steps behind the place it is held at, up to x, as distances behind the front end. */
    SortedSet<Double> breaks(double heldX, double x) {
        TreeSet<Double> places = new TreeSet<>();
        for (BoomSleeve sleeve : sleeves) {
            for (double end : new double[] {sleeve.frontX(), sleeve.endX()}) {
                if (end < heldX && end > x) {
                    places.add(boom.frontX() - end);
                }
            }
        }
        places.add(boom.frontX() - x);
        return places;
    }

    private double stiffnessAt(double s, double modulus) {
        double sum = modulus * stiffnessOverModulus(s);
        if (!sleeves.isEmpty()) {
            double x = boom.frontX() - s;
            for (BoomSleeve sleeve : sleeves) {
                if (sleeve.covers(x)) {
                    sum += sleeve.modulus() * section(sleeve, x).secondMoment();
                }
            }
        }
        return sum;
    }

    private double diameterAt(double s) {
        return boom.frontDiameter() + (boom.endDiameter() - boom.frontDiameter()) * Math.max(0, s) / boom.length();
    }

    private double stiffnessOverModulus(double s) {
        double d = diameterAt(s);
        return massFactor * d * d * d / 8;
    }

    private double specificModulus(BoomStiffness stiffness) {
        if (stiffness instanceof BoomStiffness.OfMaterial material) {
            return material.specificModulus();
        }
        BoomStiffness.OfBendTest test = (BoomStiffness.OfBendTest) stiffness;
        if (test.hungX() < boom.endX()) {
            throw new IllegalArgumentException("the weight of the bend test must hang on the boom, not behind its end");
        }
        double hung = boom.frontX() - test.hungX();
        DoubleUnaryOperator moment = s -> (hung - s) * (hung - s);
        if (sleeves.isEmpty()) {
            return test.force() * bend(1, test.heldX(), test.hungX(), moment) / test.deflection();
        }
        double perForce = test.deflection() / test.force();
        if (bend(STIFFEST, test.heldX(), test.hungX(), moment) > perForce
                || bend(SOFTEST, test.heldX(), test.hungX(), moment) < perForce) {
            throw new IllegalArgumentException("no boom of these diameters with these sleeves moves by "
                    + Words.length(test.deflection()) + " in the bend test");
        }
        double log = Roots.between(
                l -> bend(Math.exp(l), test.heldX(), test.hungX(), moment) - perForce,
                Math.log(SOFTEST),
                Math.log(STIFFEST),
                1e-13);
        return Math.exp(log);
    }
}
