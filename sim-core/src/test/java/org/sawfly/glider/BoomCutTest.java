package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

class BoomCutTest {
    private static final double ROUNDING = 1e-14;

    private final Glider plover = Plover.glider();

    @Test
    void a_boom_cut_at_the_rear_end_equals_one_built_short() {
        double cut = 0.040;
        Glider sawn = BoomCut.atRearEnd(cut, 0).apply(plover);
        // Built short: the same wall and taper, 632 of 672 mm long, everything on its end 40 mm further forward
        double end = 0.017 - 0.0085 * 632 / 672;
        double mass = 0.0148 * (0.017 + end) * 632 / ((0.017 + 0.0085) * 672);
        BoomStiffness stiffness =
                new BoomStiffness.OfMaterial(BoomTube.of(plover.boom()).specificModulus());
        Boom boom = new Boom(mass, -0.118, -0.750, 0.012, 0.017, end, stiffness, Map.of());
        Map<String, Part> parts = new LinkedHashMap<>(plover.parts());
        parts.put("tailplane mount", Part.fixed(0.0011, new Vec3(-0.624, 0, 0.012)));
        parts.put("glue and cloth", Part.fixed(0.0009, new Vec3(-0.695, 0, 0.012)));
        parts.put(
                "strings and springs",
                new Part(0.0009 * 820 / 860, new Vec3(-0.340, 0, 0.012), Part.Mount.ALONG_BOOM, 0, 0));
        Glider built = plover.withBoom(boom)
                .withParts(parts)
                .withTails(plover.tailplane().forward(cut), plover.fin().forward(cut));
        assertSame(MassProperties.of(sawn), MassProperties.of(built));
        for (double x = -0.12; x > -0.75; x -= 0.03) {
            assertThat(BoomTube.of(sawn.boom()).stiffness(x))
                    .isCloseTo(BoomTube.of(boom).stiffness(x), withinPercentage(1e-10));
        }
    }

    @Test
    void what_is_left_of_the_boom_is_as_stiff_as_it_was() {
        BoomTube before = BoomTube.of(plover.boom());
        BoomTube rear =
                BoomTube.of(BoomCut.atRearEnd(0.06, 0.0005).apply(plover).boom());
        assertThat(rear.stiffness(-0.4)).isCloseTo(before.stiffness(-0.4), withinPercentage(1e-10));
        BoomTube front = BoomTube.of(new BoomCut(BoomCut.Where.FRONT_END, 0, 0.06, 0.0005, true)
                .apply(plover)
                .boom());
        assertThat(front.stiffness(-0.34)).isCloseTo(before.stiffness(-0.4), withinPercentage(1e-10));
        assertThat(front.massPerLength(-0.34)).isCloseTo(before.massPerLength(-0.4), withinPercentage(1e-10));
    }

    @Test
    void two_cuts_of_twenty_are_one_of_forty() {
        BoomCut twenty = BoomCut.atRearEnd(0.020, 0);
        assertSame(
                MassProperties.of(twenty.apply(twenty.apply(plover))),
                MassProperties.of(BoomCut.atRearEnd(0.040, 0).apply(plover)));
    }

    @Test
    void the_grams_add_up_wherever_the_boom_is_cut() {
        for (BoomCut cut : List.of(
                BoomCut.atRearEnd(0.040, 0.0005),
                new BoomCut(BoomCut.Where.FRONT_END, 0, 0.040, 0.0005, true),
                new BoomCut(BoomCut.Where.MIDDLE, -0.430, 0.040, 0.0021, true))) {
            Glider after = cut.apply(plover);
            double strings = 0.0009 * 40 / 860;
            double expected = 0.2314 - cut.offcut(plover).mass() - strings + cut.jointMass();
            assertThat(MassProperties.of(after).mass()).isCloseTo(expected, within(ROUNDING));
            assertThat(after.boom().length()).isCloseTo(plover.boom().length() - 0.040, within(ROUNDING));
            assertThat(after.fin().x()).isCloseTo(plover.fin().x() + 0.040, within(ROUNDING));
            assertThat(after.tailplane().x()).isCloseTo(plover.tailplane().x() + 0.040, within(ROUNDING));
        }
    }

    /** Glue and cloth are under the fin, where the boom leaves the pod, or round the cut; by hand, 40 mm off. */
    @Test
    void the_joint_is_where_the_boom_is_joined() {
        assertThat(joint(BoomCut.atRearEnd(0.040, 0.0005))).isCloseTo(-0.722 + 0.040 - 0.036, within(ROUNDING));
        assertThat(joint(new BoomCut(BoomCut.Where.FRONT_END, 0, 0.040, 0.0005, true)))
                .isCloseTo(-0.118, within(ROUNDING));
        assertThat(joint(new BoomCut(BoomCut.Where.MIDDLE, -0.430, 0.040, 0.0005, true)))
                .isCloseTo(-0.430, within(ROUNDING));
    }

    private double joint(BoomCut cut) {
        Part joint = cut.apply(plover).parts().get("new joint");
        assertThat(joint.mass()).isEqualTo(0.0005);
        return joint.place().x();
    }

    @Test
    void the_front_end_weighs_more_than_the_rear_end() {
        double front = new BoomCut(BoomCut.Where.FRONT_END, 0, 0.04, 0, true)
                .offcut(plover)
                .mass();
        double rear = BoomCut.atRearEnd(0.04, 0).offcut(plover).mass();
        assertThat(front).isCloseTo(0.04 * 0.0148 / 0.672 / 12.75 * 16.747, withinPercentage(0.01));
        assertThat(rear).isCloseTo(0.04 * 0.0148 / 0.672 / 12.75 * 8.753, withinPercentage(0.01));
    }

    @Test
    void the_new_end_is_thicker_by_the_taper_and_a_front_cut_leaves_a_thinner_front() {
        Boom rear = BoomCut.atRearEnd(0.0672, 0).apply(plover).boom();
        assertThat(rear.endDiameter()).isCloseTo(0.00935, within(1e-15));
        Boom front = new BoomCut(BoomCut.Where.FRONT_END, 0, 0.0672, 0, true)
                .apply(plover)
                .boom();
        assertThat(front.frontDiameter()).isCloseTo(0.01615, within(1e-15));
        assertThat(front.endDiameter()).isEqualTo(0.0085);
    }

    @Test
    void holes_stay_move_or_vanish() {
        Map<String, BoomHole> rear =
                BoomCut.atRearEnd(0.150, 0).apply(plover).boom().holes();
        assertThat(rear).containsOnlyKeys("elevator string");
        assertThat(rear.get("elevator string").x()).isEqualTo(-0.585);
        Map<String, BoomHole> middle = new BoomCut(BoomCut.Where.MIDDLE, -0.570, 0.040, 0, true)
                .apply(plover)
                .boom()
                .holes();
        assertThat(middle).containsOnlyKeys("rudder string");
        assertThat(middle.get("rudder string").x()).isCloseTo(-0.628, within(ROUNDING));
    }

    @Test
    void ten_millimetres_off_with_half_a_gram_of_joint_needs_more_lead_at_the_same_cg() {
        Glider cut = BoomCut.atRearEnd(0.010, 0.0005).apply(plover);
        double cg = MassProperties.of(plover).cg().x();
        Glider balanced = new CgSetting(cg, List.of(CgSetting.Means.NOSE_LEAD)).apply(cut);
        assertThat(balanced.noseLead().mass()).isGreaterThan(plover.noseLead().mass());
        Glider clean = new CgSetting(cg, List.of(CgSetting.Means.NOSE_LEAD))
                .apply(BoomCut.atRearEnd(0.010, 0).apply(plover));
        assertThat(clean.noseLead().mass()).isLessThan(plover.noseLead().mass());
    }

    @Test
    void without_length_nothing_happens_and_no_joint_is_made() {
        assertThat(BoomCut.atRearEnd(0, 0.0005).apply(plover)).isSameAs(plover);
    }

    @Test
    void a_cut_longer_than_the_boom_is_refused_with_the_bound() {
        assertThatThrownBy(() -> BoomCut.atRearEnd(0.9, 0.0005).apply(plover))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("a cut of 900 mm")
                .hasMessageContaining("at most 522 mm");
        assertThatThrownBy(() -> new BoomCut(BoomCut.Where.MIDDLE, -0.430, 0.3, 0, true).apply(plover))
                .hasMessageContaining("at most 210 mm");
        assertThatThrownBy(() -> new BoomCut(BoomCut.Where.MIDDLE, -0.05, 0.01, 0, true).apply(plover))
                .hasMessageContaining("begins 118 mm behind");
        assertThatThrownBy(() -> BoomCut.atRearEnd(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_tailplane_that_stays_leaves_only_its_room_for_the_fin() {
        BoomCut little = new BoomCut(BoomCut.Where.REAR_END, 0, 0.010, 0, false);
        Glider after = little.apply(plover);
        assertThat(after.tailplane()).isEqualTo(plover.tailplane());
        assertThat(after.fin().x()).isCloseTo(plover.fin().x() + 0.010, within(ROUNDING));
        assertThat(TailClearance.gap(after.tailplane(), after.fin(), TailClearance.FULL_THROW))
                .isBetween(0.0, 0.003);
        assertThatThrownBy(() -> new BoomCut(BoomCut.Where.REAR_END, 0, 0.040, 0, false).apply(plover))
                .hasMessageContaining("meets the tailplane");
    }

    private static void assertSame(MassProperties a, MassProperties b) {
        assertThat(a.mass()).isCloseTo(b.mass(), within(ROUNDING));
        assertThat(a.cg().minus(b.cg()).norm()).isCloseTo(0, within(ROUNDING));
        Inertia difference = a.inertia().minus(b.inertia());
        assertThat(new Vec3(difference.ixx(), difference.iyy(), difference.izz()).norm())
                .isCloseTo(0, within(ROUNDING));
        assertThat(difference.ixz()).isCloseTo(0, within(ROUNDING));
    }
}
