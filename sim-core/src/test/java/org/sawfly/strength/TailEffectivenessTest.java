package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.flight.Demo;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Part;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

class TailEffectivenessTest {
    private static final double DENSITY = 1.2;

    private static TailEffectiveness of(Glider glider, double speed) {
        MassProperties mass = MassProperties.of(glider);
        TailVolumeModel model = TailVolumeModel.of(glider, mass, Corrections.NONE, Demo.MODELS);
        return TailEffectiveness.of(glider, mass, model, speed, DENSITY);
    }

    /** A uniform boom with everything that it carries at its very end, where both tails have their quarter points. */
    private static Glider uniform(double stiffness) {
        Glider g = Demo.GLIDER;
        double end = -0.7;
        Tailplane t = g.tailplane();
        Fin f = g.fin();
        Tailplane tailplane = new Tailplane(
                0,
                t.planform(),
                end + t.planform().quarterPointBack(),
                t.z(),
                t.decalage(),
                t.section(),
                t.elevatorChord());
        Fin fin = new Fin(0, f.above(), f.below(), end + f.quarterPointBack(), f.z(), f.section(), f.rudderChord());
        double mass = 0.014;
        double d = 0.012;
        double length = 0.6;
        double specific = stiffness * 8 * length / (mass * d * d);
        Boom boom = new Boom(mass, end + length, end, 0.012, d, d, new BoomStiffness.OfMaterial(specific), Map.of());
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("at the end", Part.fixed(0.015, new Vec3(end, 0, 0.012)));
        parts.put("ahead", Part.fixed(0.06, new Vec3(0.12, 0, 0)));
        return g.withTails(tailplane, fin).withBoom(boom).withParts(parts);
    }

    /** {@code 1/(1 + q S a L^2/2EI)} and the same times {@code 1 + (L^2/2EI)(m_t + mu L/3) q S a_w/(m (1 - d eps/d alpha))}. */
    @ParameterizedTest
    @CsvSource({"20, 33", "20, 10", "60, 40"})
    void a_uniform_boom_has_a_closed_form(double stiffness, double speed) {
        Glider glider = uniform(stiffness);
        MassProperties mass = MassProperties.of(glider);
        TailVolumeModel model = TailVolumeModel.of(glider, mass, Corrections.NONE, Demo.MODELS);
        assertThat(BoomTube.of(glider.boom()).stiffness(-0.3)).isCloseTo(stiffness, withinPercentage(1e-9));
        double pressure = 0.5 * DENSITY * speed * speed;
        double perForce = 0.6 * 0.6 / (2 * stiffness);
        double tailplane = pressure * 2 * glider.tailplane().planform().area() * model.tailplaneSlope(speed);
        double fin = pressure * glider.fin().area() * model.finSlope(speed);
        TailEffectiveness found = of(glider, speed);
        double held = 1 / (1 + tailplane * perForce);
        assertThat(found.tailplaneHeld()).isCloseTo(held, withinPercentage(0.01));
        double wing = pressure * model.reference().area() * model.wingSlope(speed);
        double inertia = perForce * (0.015 + 0.014 / 3);
        assertThat(found.tailplaneFree())
                .isCloseTo(
                        held * (1 + inertia * wing / (mass.mass() * (1 - model.downwashSlope(speed)))),
                        withinPercentage(0.01));
        assertThat(found.finHeld()).isCloseTo(1 / (1 + fin * perForce), withinPercentage(0.01));
        double arm = -0.7 - mass.cg().x();
        double relief = inertia * (1 / mass.mass() + arm * arm / mass.inertia().izz());
        assertThat(found.finFree()).isCloseTo(1 / (1 + fin * (perForce - relief)), withinPercentage(0.01));
    }

    @Test
    void it_falls_with_speed_held_and_hardly_in_free_flight() {
        TailEffectiveness slow = of(Demo.GLIDER, 5);
        TailEffectiveness fast = of(Demo.GLIDER, 35);
        assertThat(slow.tailplaneHeld()).isGreaterThan(0.99);
        assertThat(fast.tailplaneHeld()).isBetween(0.5, 0.95);
        assertThat(fast.finHeld()).isBetween(0.5, 0.97);
        assertThat(fast.tailplaneFree()).isGreaterThan(fast.tailplaneHeld());
        assertThat(fast.finFree()).isGreaterThan(fast.finHeld());
    }

    /** What the flown fin gains from a degree of sideslip at 33 m/s, over what it gains on a rigid boom: held, and free. */
    @Test
    void the_flown_fin_yields_as_the_closed_forms_say() {
        Glider soft = uniform(20);
        TailEffectiveness closed = of(soft, 33);
        MassProperties mass = MassProperties.of(soft);
        Inertia i = mass.inertia();
        MassProperties held = new MassProperties(
                1e6 * mass.mass(), mass.cg(), new Inertia(1e6 * i.ixx(), 1e6 * i.iyy(), 1e6 * i.izz(), 0, 0, 0));
        double rigid = finForce(soft, mass, Corrections.NONE.withBoomStiffness(1e6));
        assertThat(finForce(soft, held, Corrections.NONE) / rigid).isCloseTo(closed.finHeld(), within(0.02));
        assertThat(finForce(soft, mass, Corrections.NONE) / rigid).isCloseTo(closed.finFree(), within(0.02));
        assertThat(closed.finFree() - closed.finHeld()).as("inertia counts").isGreaterThan(0.05);
    }

    private static double finForce(Glider glider, MassProperties mass, Corrections corrections) {
        AeroEvaluator evaluator =
                TailVolumeModel.of(glider, mass, corrections, Demo.MODELS).evaluator();
        Motion m = new Motion();
        m.density = DENSITY;
        m.kinematicViscosity = 1.46e-5;
        m.u = 33;
        double[] forces = new double[2];
        for (int k = 0; k < 2; k++) {
            m.v = 33 * Math.tan(Math.toRadians(3 + k));
            Loads loads = new Loads();
            evaluator.evaluate(m, loads);
            forces[k] = loads.finForce;
        }
        return forces[1] - forces[0];
    }
}
