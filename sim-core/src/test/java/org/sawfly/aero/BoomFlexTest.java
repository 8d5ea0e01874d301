package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.Correction;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Part;
import org.sawfly.glider.Plover;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.math.Vec3;

/** The closed forms of a uniform tube loaded at its end; and what a soft boom does. */
class BoomFlexTest {
    private static final double EI = 20;
    private static final double LENGTH = 0.6;
    private static final double TUBE_MASS = 0.012;
    private static final double TAIL_MASS = 0.014;

    private static Glider uniform() {
        Glider plover = Plover.glider();
        double front = -0.1;
        double radius = 0.006;
        BoomStiffness stiffness = new BoomStiffness.OfMaterial(2 * EI / (TUBE_MASS / LENGTH * radius * radius));
        Boom boom = new Boom(TUBE_MASS, front, front - LENGTH, 0.012, 2 * radius, 2 * radius, stiffness, Map.of());
        Tailplane t = plover.tailplane();
        Fin f = plover.fin();
        return new Glider(
                "uniform tube",
                plover.wing(),
                new Tailplane(0, t.planform(), t.x(), t.z(), 0, t.section(), 0.4),
                new Fin(0, f.above(), f.below(), f.x(), f.z(), f.section(), 0.4),
                boom,
                plover.pod(),
                Map.of("all of the tail", Part.fixed(TAIL_MASS, new Vec3(front - LENGTH, 0, 0.012))),
                plover.noseLead(),
                Correction.NONE);
    }

    @Test
    void a_uniform_tube_bends_as_the_closed_form_says() {
        BoomFlex flex = BoomFlex.at(uniform(), -0.1 - LENGTH, 1);
        double force = LENGTH * LENGTH / (2 * EI);
        assertThat(flex.force()).isCloseTo(force, within(1e-9));
        assertThat(flex.moment()).isCloseTo(LENGTH / EI, within(1e-9));
        assertThat(flex.inertia()).isCloseTo(force * (TAIL_MASS + TUBE_MASS / 3), within(1e-9));
    }

    /** A boom that begins ahead of the wing's balance point carries the tails, not the wing, however heavy that is. */
    @Test
    void the_wing_does_not_hang_on_the_boom() {
        Glider plover = Plover.glider();
        Boom b = plover.boom();
        Boom early = new Boom(
                b.mass(), -0.02, b.endX(), b.z(), b.frontDiameter(), b.endDiameter(), b.stiffness(), b.holes());
        Glider light = plover.withBoom(early);
        Wing w = light.wing();
        Wing lead = new Wing(10 * w.mass(), w.planform(), w.dihedral(), w.root(), w.tip(), w.flaperon(), w.peg());
        Glider heavy = new Glider(
                light.name(),
                lead,
                light.tailplane(),
                light.fin(),
                light.boom(),
                light.pod(),
                light.parts(),
                light.noseLead(),
                light.correction());
        assertThat(BoomFlex.at(heavy, -0.66, 1)).isEqualTo(BoomFlex.at(light, -0.66, 1));
    }

    @Test
    void a_stiffer_boom_bends_less_in_proportion() {
        BoomFlex once = BoomFlex.at(uniform(), -0.6, 1);
        BoomFlex stiff = BoomFlex.at(uniform(), -0.6, 1.25);
        assertThat(stiff.force()).isCloseTo(once.force() / 1.25, within(1e-15));
        assertThat(stiff.inertia()).isCloseTo(once.inertia() / 1.25, within(1e-15));
    }

    @Test
    void held_the_tail_loses_and_in_free_flight_inertia_gives_it_back() {
        BoomFlex flex = BoomFlex.at(uniform(), -0.1 - LENGTH, 1);
        double tail = 667 * 0.0191 * 3.8;
        double held = flex.held(tail);
        assertThat(held).isCloseTo(1 / (1 + tail * LENGTH * LENGTH / (2 * EI)), within(1e-12));
        assertThat(flex.free(tail, 667 * 0.21 * 5, 0.23, 0.3)).isGreaterThan(held);
        assertThat(flex.held(0)).isEqualTo(1);
    }
}
