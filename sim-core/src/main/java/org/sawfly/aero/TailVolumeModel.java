package org.sawfly.aero;

import org.sawfly.air.Standard;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.CubicGrid1;
import org.sawfly.math.Vec3;

/**
 * The fast model: five elements - right and left half of the wing, tailplane, fin, and pod with boom - each at its own
 * velocity {@code v + omega x r}, with coefficients of the surface alone from tables made once by strips. The wing acts on the
 * tails through downwash (lagged by the way to the tail) and sidewash, the boom by its bending.
 *
 * <p>No stability derivative enters: they are differences of these forces. What a half wing sees of the other are two
 * ratios: of what turns the circulation of the two halves, V (alpha - alpha0), the mean counts in full, half the difference by
 * {@link WingWake#oddRatio()} where sideslip makes it and by {@link WingWake#turningRatio()} where turning does.
 * Left out: ground effect, twist of the wing under load, the growth of circulation in time.
 *
 * <p>Immutable, shared between threads.
 */
public final class TailVolumeModel implements AeroModel {
    /** Speed at which attached slopes and the angle of stall are taken [m/s]. */
    private static final double USUAL = 10;
    /** [rad] */
    private static final double DEGREE = Math.PI / 2 / 90;

    private final Parts parts;
    private final Reference reference;
    private final ApparentMass apparent;
    private final double mass;

    /**
     * What an evaluator works with.
     *
     * @param wing both halves
     * @param tailplane with its boom
     * @param fin with its boom
     * @param bodies pod, boom and peg
     * @param wash downwash and sidewash
     * @param inertial masses for the boom's bending
     * @param corrections doubts about all this
     */
    record Parts(
            WingHalves wing,
            Tail tailplane,
            Tail fin,
            Bodies bodies,
            Wash wash,
            Inertial inertial,
            Corrections corrections) {}

    /**
     * The wing's two elements.
     *
     * @param right half
     * @param left half
     * @param oddRatio what opposite angles count against equal ones [1]
     * @param turningRatio the same of angles that grow outwards, as turning makes them [1]
     * @param slope of lift, attached [1/rad]
     * @param zeroLift angle of no lift by camber [rad]
     * @param twist incidence of the right half above the mean, and of the left below it [rad]
     */
    record WingHalves(
            Element right,
            Element left,
            double oddRatio,
            double turningRatio,
            double slope,
            CubicGrid1 zeroLift,
            double twist) {}

    private TailVolumeModel(Parts parts, Reference reference, ApparentMass apparent, double mass) {
        this.parts = parts;
        this.reference = reference;
        this.apparent = apparent;
        this.mass = mass;
    }

    /** The model of a glider. Tables that {@code models} has made before are taken from there. */
    public static TailVolumeModel of(Glider glider, MassProperties mass, Corrections corrections, Models models) {
        models.make(glider);
        Models.WingTables wingTables = models.wing(glider.wing());
        Vec3 cg = mass.cg();
        Surface wing = SurfaceOutlines.of(glider.wing());
        Surface tailplane = SurfaceOutlines.of(glider.tailplane());
        Surface fin = SurfaceOutlines.of(glider.fin());
        ApparentMass apparent =
                new ApparentMass(Standard.DENSITY, cg).add(wing).add(tailplane).add(fin);
        double[][] air = apparent.matrix();
        Parts parts = new Parts(
                halves(glider, wing, cg, wingTables, corrections.bench()),
                tailplane(glider, tailplane, cg, corrections, models),
                fin(glider, fin, cg, corrections, models),
                new Bodies(glider, cg, corrections.drag().bodies()),
                models.wash(glider),
                new Inertial(mass.mass(), mass.inertia(), air[1][1], air[2][2], air[4][4], air[5][5]),
                corrections);
        Reference reference = Reference.of(wing, glider.wing().dihedral(), cg.x());
        return new TailVolumeModel(parts, reference, apparent, mass.mass());
    }

    private static WingHalves halves(
            Glider glider, Surface wing, Vec3 cg, Models.WingTables tables, BenchErrors bench) {
        double outwards = Math.cos(glider.wing().dihedral());
        double up = Math.sin(glider.wing().dihedral());
        double x = wing.meanChordX() - 0.25 * wing.meanChord();
        double y = wing.areaRadius() * outwards;
        double half = 0.5 * wing.area();
        double cubed = 0.5 * Element.cubedChord(wing);
        Element right = new Element(
                half,
                wing.meanChord(),
                cubed,
                new Vec3(x, y, wing.meanZ()).minus(cg),
                new Vec3(0, up, outwards),
                new Vec3(0, outwards, -up),
                tables.grid());
        Element left = new Element(
                half,
                wing.meanChord(),
                cubed,
                new Vec3(x, -y, wing.meanZ()).minus(cg),
                new Vec3(0, -up, outwards),
                new Vec3(0, outwards, up),
                tables.grid());
        return new WingHalves(
                right,
                left,
                tables.wake().oddRatio(),
                tables.wake().turningRatio(),
                tables.grid().liftSlope(USUAL),
                tables.grid().zeroLift(USUAL),
                0.5 * bench.wingTwist());
    }

    private static Tail tailplane(Glider glider, Surface surface, Vec3 cg, Corrections corrections, Models models) {
        Tailplane tailplane = glider.tailplane();
        BenchErrors bench = corrections.bench();
        Vec3 place = quarterPoint(surface);
        Models.TailTables tables = models.tailplane(tailplane);
        Element element = new Element(
                surface.area(),
                surface.meanChord(),
                Element.cubedChord(surface),
                bench.onBoom(place, glider.boom().frontX()).minus(cg),
                BenchErrors.rolled(new Vec3(0, 0, 1), bench.tailplaneTilt()),
                BenchErrors.rolled(new Vec3(0, 1, 0), bench.tailplaneTilt()),
                tables.grid());
        return new Tail(
                element,
                tables.allMoving(),
                BoomFlex.at(glider, place.x(), corrections.boomStiffness()),
                bench.tailplaneIncidence() - tailplane.decalage(),
                tables.grid().liftSlope(USUAL),
                corrections.tailSlope(),
                1,
                1);
    }

    private static Tail fin(Glider glider, Surface surface, Vec3 cg, Corrections corrections, Models models) {
        Fin fin = glider.fin();
        BenchErrors bench = corrections.bench();
        Vec3 place = quarterPoint(surface);
        Models.TailTables tables = models.fin(fin);
        Element element = new Element(
                surface.area(),
                surface.meanChord(),
                Element.cubedChord(surface),
                bench.onBoom(place, glider.boom().frontX()).minus(cg),
                BenchErrors.rolled(new Vec3(0, 1, 0), bench.finTilt()),
                BenchErrors.rolled(new Vec3(0, 0, -1), bench.finTilt()),
                tables.grid());
        return new Tail(
                element,
                tables.allMoving(),
                BoomFlex.at(glider, place.x(), corrections.boomStiffness()),
                -bench.finSkew() - bench.boomSkew(),
                tables.grid().liftSlope(USUAL),
                corrections.tailSlope(),
                corrections.finBeyondStall(),
                Math.sin(tables.grid().stallAngle(USUAL)));
    }

    private static Vec3 quarterPoint(Surface surface) {
        return new Vec3(surface.meanChordX() - 0.25 * surface.meanChord(), 0, surface.meanZ());
    }

    @Override
    public AeroEvaluator evaluator() {
        return new TailVolumeEvaluator(parts);
    }

    @Override
    public Reference reference() {
        return reference;
    }

    @Override
    public double[][] apparentMass() {
        return apparent.matrix();
    }

    /** How the boom's bending turns the tailplane. */
    public BoomFlex tailplaneFlex() {
        return parts.tailplane().flex();
    }

    /** How the boom's bending turns the fin. */
    public BoomFlex finFlex() {
        return parts.fin().flex();
    }

    /** Lift slope of the wing alone at a speed, camber neutral, on its own area [1/rad]. */
    public double wingSlope(double speed) {
        return parts.wing().right().table().liftSlope(speed);
    }

    /**
     * Change of the wing's forward force coefficient (body axes, drag included) with the angle of attack, over one degree
     * either side [1/rad].
     *
     * @param alpha angle of attack [rad]
     * @param speed [m/s]
     * @param camber trailing edge down positive [rad]
     */
    public double wingForwardSlope(double alpha, double speed, double camber) {
        return (wingForward(alpha + DEGREE, speed, camber) - wingForward(alpha - DEGREE, speed, camber)) / (2 * DEGREE);
    }

    private double wingForward(double alpha, double speed, double camber) {
        double[] c = new double[CoefficientGrid.CHANNELS];
        parts.wing().right().table().at(alpha, SurfaceKnots.speedPlace(speed * speed), camber, c);
        DragFactors drag = parts.corrections().drag();
        return c[CoefficientGrid.LIFT] * Math.sin(alpha)
                - (drag.induced() * c[CoefficientGrid.INDUCED] + drag.wing() * c[CoefficientGrid.PROFILE])
                        * Math.cos(alpha);
    }

    /** Lift slope of the tailplane alone at a speed, on its own area [1/rad]. */
    public double tailplaneSlope(double speed) {
        return parts.tailplane().liftFactor()
                * parts.tailplane().element().table().liftSlope(speed);
    }

    /** Lift slope of the fin alone at a speed, on its own area [1/rad]. */
    public double finSlope(double speed) {
        return parts.fin().liftFactor() * parts.fin().element().table().liftSlope(speed);
    }

    /** Change of the downwash angle at the tailplane with the wing's angle of attack at a speed [1]. */
    public double downwashSlope(double speed) {
        return parts.corrections().downwash() * parts.wash().tailplane().value(0) * wingSlope(speed);
    }

    /** Held effectiveness of the tailplane on its boom at a speed and density, see {@link BoomFlex} [1]. */
    public double heldEffectiveness(double speed, double density) {
        return tailplaneFlex().held(tailplaneForcePerAngle(speed, density));
    }

    /** Effectiveness of the tailplane on its boom in free flight at a speed and density, see {@link BoomFlex} [1]. */
    public double freeEffectiveness(double speed, double density) {
        double wing = 0.5 * density * speed * speed * reference.area() * wingSlope(speed);
        return tailplaneFlex().free(tailplaneForcePerAngle(speed, density), wing, mass, downwashSlope(speed));
    }

    private double tailplaneForcePerAngle(double speed, double density) {
        double area = parts.tailplane().element().area();
        return 0.5 * density * speed * speed * area * tailplaneSlope(speed);
    }

    /** Height of the wing's mean chord over the CG as a place, down positive [m]. */
    public double wingHeight() {
        return parts.wing().right().place().z();
    }

    /** Slope of the pod's nose-up moment with the angle of attack over dynamic pressure, 2 (k2 - k1) volume [m3/rad]. */
    public double podMoment() {
        return parts.bodies().munkMoment();
    }
}
