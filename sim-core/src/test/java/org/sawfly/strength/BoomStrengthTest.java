package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.flight.Demo;
import org.sawfly.flight.FlightPlan;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomBuild;
import org.sawfly.glider.BoomHole;
import org.sawfly.glider.BoomSleeve;
import org.sawfly.glider.BoomSlot;
import org.sawfly.glider.BoomSplice;
import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.BoomWall;
import org.sawfly.glider.BoomWrap;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.SleeveStock;
import org.sawfly.motion.Axes;
import org.sawfly.strength.Reserve.Mode;

class BoomStrengthTest {
    private static final FlightPlan PLAN = plan(Demo.GLIDER);
    private static final BoomStrength PLOVER = BoomStrength.of(PLAN);

    private static FlightPlan plan(Glider glider) {
        return Demo.plan(
                Demo.craft(glider, Corrections.NONE), Demo.launch(Hand.RIGHT, Demo.CALM), 33, 8, Axes.PITCH_YAW);
    }

    private static Glider with(Map<String, BoomHole> holes, BoomBuild build) {
        Boom b = Demo.GLIDER.boom();
        return Demo.GLIDER.withBoom(new Boom(
                b.mass(),
                b.frontX(),
                b.endX(),
                b.z(),
                b.frontDiameter(),
                b.endDiameter(),
                b.stiffness(),
                holes,
                build));
    }

    private static Reserve named(BoomStrength strength, String name) {
        return strength.named().stream()
                .filter(r -> r.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plover_bears_its_ordinary_throw_and_its_weakest_spot_is_named() {
        Reserve weakest = PLOVER.weakest();
        assertThat(weakest.factor()).isBetween(1.5, 5.0);
        assertThat(PLOVER.all()).allMatch(r -> r.factor() >= weakest.factor());
        assertThat(PLOVER.named())
                .extracting(Reserve::name)
                .containsExactly("elevator string", "rudder string", "tailplane joint", "fin joint");
        assertThat(PLOVER.source()).startsWith("assumed");
    }

    @Test
    void stress_on_the_plain_tube_is_moment_over_modulus() {
        double x = Demo.GLIDER.boom().frontX();
        Reserve fibre = PLOVER.all().stream()
                .filter(r -> r.mode() == Mode.FIBRE)
                .findFirst()
                .orElseThrow();
        double bending = PLOVER.cases().at(fibre.worst(), x).bending();
        assertThat(fibre.asked())
                .isCloseTo(BoomTube.of(Demo.GLIDER.boom()).section(x).bendingStress(bending), within(1e-3));
        assertThat(PLOVER.bears(x) / bending)
                .isCloseTo(
                        PLOVER.all().stream()
                                .filter(r -> r.x() == x && r.name().isEmpty() && r.mode() != Mode.SHEAR)
                                .mapToDouble(Reserve::factor)
                                .min()
                                .orElseThrow(),
                        withinPercentage(1e-9));
    }

    @Test
    void a_hole_on_the_side_costs_what_the_factor_says_and_one_on_top_less() {
        double x = -0.3;
        Map<String, BoomHole> holes = new LinkedHashMap<>();
        holes.put("left", new BoomHole(x, 0.002, BoomHole.Side.LEFT));
        holes.put("right", new BoomHole(x, 0.002, BoomHole.Side.RIGHT));
        holes.put("top", new BoomHole(x, 0.002, BoomHole.Side.TOP));
        BoomStrength strength = BoomStrength.of(plan(with(holes, BoomBuild.PLAIN)));
        Reserve left = named(strength, "left");
        double stress = BoomTube.of(Demo.GLIDER.boom())
                .section(x)
                .bendingStress(strength.cases().at(left.worst(), x).bending());
        double factor = HoleFactor.of(WallMaterial.of(Demo.GLIDER.boom()));
        assertThat(factor).as("more than 3: fibre along").isBetween(4.0, 8.0);
        assertThat(left.asked()).isCloseTo(factor * stress, withinPercentage(5));
        assertThat(named(strength, "top").factor())
                .as("sideways bending leaves the top alone")
                .isGreaterThan(1.5 * left.factor());
        assertThat(named(strength, "right").factor()).isBetween(0.7 * left.factor(), 1.4 * left.factor());
    }

    @Test
    void a_slot_weakens_more_the_wider_it_is() {
        double before = Double.POSITIVE_INFINITY;
        for (double width : new double[] {0.001, 0.003, 0.006}) {
            Map<String, BoomSlot> slots = Map.of("slot", new BoomSlot(-0.3, -0.33, width, BoomHole.Side.LEFT));
            BoomStrength strength =
                    BoomStrength.of(plan(with(Map.of(), new BoomBuild(BoomWall.USUAL, slots, Map.of()))));
            double factor = named(strength, "slot").factor();
            assertThat(factor).isLessThan(before);
            before = factor;
        }
    }

    @Test
    void the_limit_is_the_speed_at_which_nothing_is_left() {
        BoomStrength.Limit limit = BoomStrength.limit(PLAN);
        assertThat(limit.speed()).isGreaterThan(33);
        Reserve there =
                BoomStrength.of(PLAN.withRelease(limit.speed(), PLAN.yawRate())).weakest();
        assertThat(there.factor()).isCloseTo(1, within(2e-3));
        assertThat(there.x()).isEqualTo(limit.first().x());
    }

    @Test
    void sawn_through_and_joined_by_a_perfect_sleeve_of_no_length_nothing_has_changed() {
        SleeveStock perfect = new SleeveStock(
                BoomSleeve.Fit.INSIDE, 0, 0.0005, 0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        Glider joined = new BoomSplice(-0.43, 0, perfect, 0).apply(Demo.GLIDER);
        assertThat(joined.boom().build().sleeves()).isNotEmpty();
        BoomStrength after = BoomStrength.of(plan(joined));
        assertThat(after.all()).isEqualTo(PLOVER.all());
        for (BoomSwing.Plane plane : BoomSwing.Plane.values()) {
            assertThat(BoomSwing.held(joined, plane))
                    .isCloseTo(BoomSwing.held(Demo.GLIDER, plane), withinPercentage(1e-6));
        }
    }

    @Test
    void a_splice_is_judged_by_its_sleeve_its_glue_and_its_ends() {
        SleeveStock plug = new SleeveStock(BoomSleeve.Fit.INSIDE, 0.06, 0.0006, 1550, 80e9, 400e6);
        BoomStrength strength = BoomStrength.of(plan(new BoomSplice(-0.43, 0.04, plug, 0.0003).apply(Demo.GLIDER)));
        Map<Mode, Integer> modes = new HashMap<>();
        strength.all().stream()
                .filter(r -> r.name().equals("splice"))
                .forEach(r -> modes.merge(r.mode(), 1, Integer::sum));
        assertThat(modes).containsOnlyKeys(Mode.STEP, Mode.SLEEVE, Mode.GLUE).containsEntry(Mode.STEP, 2);
        SleeveStock shorter = new SleeveStock(BoomSleeve.Fit.INSIDE, 0.03, 0.0006, 1550, 80e9, 400e6);
        BoomStrength less = BoomStrength.of(plan(new BoomSplice(-0.43, 0.04, shorter, 0.0003).apply(Demo.GLIDER)));
        assertThat(glue(less)).isLessThan(0.6 * glue(strength));
    }

    private static double glue(BoomStrength strength) {
        List<Reserve> all = strength.all();
        return all.stream()
                .filter(r -> r.mode() == Mode.GLUE)
                .findFirst()
                .orElseThrow()
                .factor();
    }

    @Test
    void a_wrap_relieves_the_tube_and_a_hole_under_it() {
        SleeveStock cloth = new SleeveStock(BoomSleeve.Fit.OUTSIDE, 0.03, 0.0003, 1550, 60e9, 300e6);
        Glider wrapped = new BoomWrap(-0.668, cloth, 0).apply(Demo.GLIDER);
        double mass = 1550 * 0.03 * Math.PI * (BoomTube.of(Demo.GLIDER.boom()).diameter(-0.668) + 0.0003) * 0.0003;
        assertThat(wrapped.parts().get("wrap").mass()).isCloseTo(mass, withinPercentage(1e-9));
        assertThat(named(BoomStrength.of(plan(wrapped)), "rudder string").factor())
                .isGreaterThan(1.3 * named(PLOVER, "rudder string").factor());
    }

    @Test
    void a_joint_under_a_force_off_its_middle() {
        // Closed form: rigid patch on an even bed
        MountBond bond = new MountBond(0.03, 0.01, 10e6, 3e6);
        assertThat(bond.shearStress(6, 0)).isCloseTo(6 / 0.0003, within(1e-6));
        double polar = 0.03 * 0.01 * (0.0009 + 0.0001) / 12;
        assertThat(bond.shearStress(0, 0.05)).isCloseTo(0.05 * Math.hypot(0.015, 0.005) / polar, within(1e-3));
        assertThat(bond.peelStress(-5, 0)).isZero();
        assertThat(bond.peelStress(3, 0.01)).isCloseTo(3 / 0.0003 + 6 * 0.01 / (0.03 * 0.0001), within(1e-3));
    }
}
