package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.Inertia;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Trim;

/** The fast model of the demo glider: bands of common practice (no source) and closed forms. */
class TailVolumeModelTest {
    private static final Models MODELS = new Models();
    private static final Glider GLIDER = Plover.glider();
    private static final MassProperties MASS = MassProperties.of(GLIDER);
    private static final TailVolumeModel MODEL = of(GLIDER, Corrections.NONE);
    private static final double DENSITY = 1.225;

    private static TailVolumeModel of(Glider glider, Corrections corrections) {
        return TailVolumeModel.of(glider, MassProperties.of(glider), corrections, MODELS);
    }

    private static Corrections corrected(double neutralPointBack, double downwash, double tailSlope) {
        return new Corrections(DragFactors.NONE, tailSlope, 1, downwash, 1, 1, neutralPointBack);
    }

    private static AirSample air() {
        AirSample air = new AirSample();
        air.density = DENSITY;
        air.kinematicViscosity = 1.4607e-5;
        air.gravity = 9.80665;
        return air;
    }

    private static Loads at(AeroModel model, double speed, double alpha, double elevator) {
        Motion m = AeroModelContract.calm();
        m.u = speed * Math.cos(alpha);
        m.w = speed * Math.sin(alpha);
        m.elevator = elevator;
        AeroEvaluator evaluator = model.evaluator();
        m.downwashLag = evaluator.settledDownwash(m);
        Loads loads = new Loads();
        evaluator.evaluate(m, loads);
        return loads;
    }

    /** Behind the wing's root leading edge [m], between two angles of attack, the boom bending as it will. */
    private static double neutralPoint(TailVolumeModel model, double speed, double from, double to) {
        Loads low = at(model, speed, from, 0);
        Loads high = at(model, speed, to, 0);
        return (high.my - low.my) / (high.fz - low.fz) - model.reference().cgX();
    }

    @Test
    void reference_lengths_are_those_of_the_outline() {
        Reference r = MODEL.reference();
        assertThat(r.area())
                .isCloseTo(
                        2
                                * GLIDER.wing().planform().area()
                                * Math.cos(GLIDER.wing().dihedral()),
                        within(1e-6));
        assertThat(r.meanChord()).isCloseTo(GLIDER.wing().planform().meanChord(), within(1e-9));
        assertThat(r.meanChordX()).isCloseTo(-GLIDER.wing().planform().meanChordBack(), within(1e-9));
    }

    @Test
    void slopes_lie_where_finite_wings_have_them() {
        double aspect = MODEL.reference().span()
                * MODEL.reference().span()
                / MODEL.reference().area();
        double elliptic = 2 * Math.PI * aspect / (aspect + 2);
        assertThat(MODEL.wingSlope(20)).isBetween(0.85 * elliptic, 1.05 * elliptic);
        assertThat(MODEL.tailplaneSlope(20)).isBetween(3.0, 4.6);
        assertThat(MODEL.finSlope(20)).isBetween(2.3, 4.0);
        double far = 2 * MODEL.wingSlope(20) / (Math.PI * aspect);
        assertThat(MODEL.downwashSlope(20)).isBetween(0.8 * far, 1.25 * far);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 5.5, 6, 8, 10, 12})
    void it_glides_with_little_elevator(double speed) {
        Glide glide = new Trim(MODEL, MASS.mass(), air()).atSpeed(0.02, speed);
        assertThat(Math.toDegrees(glide.elevator())).isBetween(-6.0, 6.0);
        assertThat(glide.sink()).isPositive();
    }

    @Test
    void best_glide_and_least_sink_are_those_of_its_kind() {
        Trim trim = new Trim(MODEL, MASS.mass(), air());
        double least = Double.POSITIVE_INFINITY;
        double best = 0;
        for (double camber : new double[] {0, 0.05}) {
            for (double speed = 5; speed < 9; speed += 0.25) {
                Glide glide = trim.atSpeed(camber, speed);
                least = Math.min(least, glide.sink());
                best = Math.max(best, glide.ratio());
            }
        }
        assertThat(least).isBetween(0.24, 0.34);
        assertThat(best).isBetween(14.0, 20.0);
    }

    @Test
    void derivatives_are_those_of_its_kind() {
        double u = 20;
        double pressureArea = 0.5 * DENSITY * u * u * MODEL.reference().area();
        double chord = MODEL.reference().meanChord();
        double span = MODEL.reference().span();
        Motion m = AeroModelContract.calm();
        m.u = u;
        m.w = 0.02 * u;
        AeroEvaluator evaluator = MODEL.evaluator();
        m.downwashLag = evaluator.settledDownwash(m);
        Loads base = new Loads();
        evaluator.evaluate(m, base);
        Loads moved = new Loads();
        m.q = 0.5;
        evaluator.evaluate(m, moved);
        m.q = 0;
        assertThat((moved.my - base.my) / (pressureArea * chord * 0.5 * chord / (2 * u)))
                .isBetween(-20.0, -6.0);
        m.v = 0.1 * u;
        evaluator.evaluate(m, moved);
        m.v = 0;
        double volume = finVolume();
        assertThat((moved.mz - base.mz) / (pressureArea * span * 0.1))
                .as("fin volume times slope, less the pod and the fin's own yielding")
                .isBetween(0.75 * volume * MODEL.finSlope(u), 1.1 * volume * MODEL.finSlope(u));
        assertThat((moved.mx - base.mx) / (pressureArea * span * 0.1)).isBetween(-0.2, -0.06);
        m.p = 1;
        evaluator.evaluate(m, moved);
        assertThat((moved.mx - base.mx) / (pressureArea * span * span / (2 * u)))
                .isBetween(-0.65, -0.4);
    }

    private static double finVolume() {
        Surface fin = SurfaceOutlines.of(GLIDER.fin());
        double arm = MODEL.reference().cgX() - (fin.meanChordX() - 0.25 * fin.meanChord());
        return fin.area() * arm / (MODEL.reference().area() * MODEL.reference().span());
    }

    /** At a speed at which the tail has left the dead zone of thin symmetric sections; with a rigid boom. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.02, 0.03})
    void the_neutral_point_lies_at_40_to_48_percent_of_the_chord(double alpha) {
        TailVolumeModel rigid = of(GLIDER, new Corrections(DragFactors.NONE, 1, 1, 1, 1e9, 1, 0));
        double place = neutralPoint(rigid, 25, alpha - 0.005, alpha + 0.005);
        Reference r = rigid.reference();
        assertThat((place + r.meanChordX()) / r.meanChord()).isBetween(0.40, 0.48);
    }

    @Test
    void a_shifted_neutral_point_is_shifted_by_just_that() {
        double plain = neutralPoint(MODEL, 10, 0.03, 0.031);
        double back = neutralPoint(of(GLIDER, corrected(0.003, 1, 1)), 10, 0.03, 0.031);
        // The boom feels the turning that the added moment gives, hence not to rounding.
        assertThat(back - plain).isCloseTo(0.003, within(5e-5));
    }

    @Test
    void more_downwash_moves_the_neutral_point_forward_and_a_steeper_tail_back() {
        double plain = neutralPoint(MODEL, 20, 0.01, 0.02);
        assertThat(neutralPoint(of(GLIDER, corrected(0, 1.15, 1)), 20, 0.01, 0.02))
                .isLessThan(plain);
        assertThat(neutralPoint(of(GLIDER, corrected(0, 1, 1.07)), 20, 0.01, 0.02))
                .isGreaterThan(plain);
    }

    @Test
    void drag_factors_act_where_they_say() {
        Loads plain = at(MODEL, 12, 0.03, 0);
        DragFactors factors = new DragFactors(2, 3, 4, 1);
        Loads more = at(of(GLIDER, new Corrections(factors, 1, 1, 1, 1, 1, 0)), 12, 0.03, 0);
        assertThat(power(more, Loss.WING_PROFILE)).isCloseTo(2 * power(plain, Loss.WING_PROFILE), within(1e-9));
        assertThat(power(more, Loss.TAILPLANE_PROFILE) / power(plain, Loss.TAILPLANE_PROFILE))
                .isCloseTo(3, within(0.05));
        assertThat(power(more, Loss.FIN_PROFILE)).isCloseTo(3 * power(plain, Loss.FIN_PROFILE), within(1e-3));
        assertThat(power(more, Loss.BODIES)).isCloseTo(4 * power(plain, Loss.BODIES), within(1e-9));
    }

    private static double power(Loads loads, Loss loss) {
        return loads.power[loss.ordinal()];
    }

    @Test
    void beyond_stall_the_fin_pushes_as_much_more_as_asked() {
        Motion m = AeroModelContract.calm();
        m.u = 10;
        m.v = 12;
        Loads plain = new Loads();
        MODEL.evaluator().evaluate(m, plain);
        Loads more = new Loads();
        of(GLIDER, new Corrections(DragFactors.NONE, 1, 1.2, 1, 1, 1, 0))
                .evaluator()
                .evaluate(m, more);
        assertThat(more.mz).isGreaterThan(plain.mz);
        m.v = 0.5;
        MODEL.evaluator().evaluate(m, plain);
        of(GLIDER, new Corrections(DragFactors.NONE, 1, 1.2, 1, 1, 1, 0))
                .evaluator()
                .evaluate(m, more);
        assertThat(more.mz).isEqualTo(plain.mz);
    }

    /** The boom softened to EI 20: what the closed forms say, held and free, is what the model's forces show. */
    @Test
    void a_soft_boom_takes_from_the_elevator_what_the_held_effectiveness_says() {
        Glider soft = withBoom(20);
        TailVolumeModel model = of(soft, Corrections.NONE);
        TailVolumeModel stiff = of(soft, new Corrections(DragFactors.NONE, 1, 1, 1, 1e6, 1, 0));
        double held = model.heldEffectiveness(33, DENSITY);
        assertThat(held).isBetween(0.6, 0.78);
        assertThat(model.freeEffectiveness(33, DENSITY)).isBetween(1.05, 1.5);
        assertThat(stiff.heldEffectiveness(33, DENSITY)).isCloseTo(1, within(1e-5));
        // Too heavy for any acceleration it is held; too inert to turn, it is pulled up.
        double rigid = liftOfTailplane(stiff);
        assertThat(liftOfTailplane(moving(soft, 1e6)) / rigid).isCloseTo(held, within(0.03));
        assertThat(liftOfTailplane(moving(soft, 1)) / rigid)
                .isCloseTo(model.freeEffectiveness(33, DENSITY), within(0.05));
    }

    /** Its gain from one degree of angle of attack at 33 m/s. */
    private static double liftOfTailplane(TailVolumeModel model) {
        return at(model, 33, 0.03, 0).tailplaneForce - at(model, 33, 0.03 - Math.toRadians(1), 0).tailplaneForce;
    }

    /** A glider too inert to turn, its mass so many times as large. */
    private static TailVolumeModel moving(Glider glider, double times) {
        MassProperties real = MassProperties.of(glider);
        Inertia i = real.inertia();
        Inertia inert = new Inertia(1e6 * i.ixx(), 1e6 * i.iyy(), 1e6 * i.izz(), 0, 0, 0);
        MassProperties mass = new MassProperties(times * real.mass(), real.cg(), inert);
        return TailVolumeModel.of(glider, mass, Corrections.NONE, MODELS);
    }

    private static Glider withBoom(double stiffness) {
        Boom b = GLIDER.boom();
        double arm = 0.495;
        BoomStiffness test = new BoomStiffness.OfBendTest(-0.168, -0.663, 5, 5 * arm * arm * arm / (3 * stiffness));
        Boom boom = new Boom(b.mass(), b.frontX(), b.endX(), b.z(), b.frontDiameter(), b.endDiameter(), test, Map.of());
        return new Glider(
                "soft",
                GLIDER.wing(),
                GLIDER.tailplane(),
                GLIDER.fin(),
                boom,
                GLIDER.pod(),
                GLIDER.parts(),
                GLIDER.noseLead(),
                GLIDER.correction());
    }

    @Test
    void an_all_moving_tailplane_turns_by_its_whole_angle() {
        Tailplane t = GLIDER.tailplane();
        Tailplane whole = new Tailplane(t.mass(), t.planform(), t.x(), t.z(), t.decalage(), t.section(), 1);
        Tailplane turned = new Tailplane(t.mass(), t.planform(), t.x(), t.z(), t.decalage() - 0.05, t.section(), 1);
        double byElevator = at(of(with(whole), Corrections.NONE), 20, 0.02, 0.05).my;
        double byDecalage = at(of(with(turned), Corrections.NONE), 20, 0.02, 0).my;
        assertThat(byElevator).isCloseTo(byDecalage, within(1e-12));
    }

    private static Glider with(Tailplane tailplane) {
        return new Glider(
                "other tailplane",
                GLIDER.wing(),
                tailplane,
                GLIDER.fin(),
                GLIDER.boom(),
                GLIDER.pod(),
                GLIDER.parts(),
                GLIDER.noseLead(),
                GLIDER.correction());
    }

    @Test
    void tables_are_made_once_and_give_the_same_bits() {
        Loads first = at(MODEL, 9, 0.04, 0.01);
        Loads again = at(TailVolumeModel.of(GLIDER, MASS, Corrections.NONE, new Models()), 9, 0.04, 0.01);
        assertThat(List.of(first.fx, first.fz, first.my)).isEqualTo(List.of(again.fx, again.fz, again.my));
        assertThat(MODELS.wing(GLIDER.wing()))
                .isSameAs(MODELS.wing(Plover.glider().wing()));
    }
}
