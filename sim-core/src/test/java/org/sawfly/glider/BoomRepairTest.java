package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;

class BoomRepairTest {
    private final Glider plover = Plover.glider();
    private final BoomTube tube = BoomTube.of(plover.boom());

    private static SleeveStock plug(double length, double density) {
        return new SleeveStock(BoomSleeve.Fit.INSIDE, length, 0.0005, density, 80e9, 400e6);
    }

    private static BoomTube tube(Glider glider) {
        return BoomTube.of(glider.boom());
    }

    @Test
    void a_massless_plug_of_no_length_changes_nothing() {
        Glider joined = new BoomSplice(-0.43, 0, plug(0, 0), 0).apply(plover);
        assertThat(MassProperties.of(joined)).isEqualTo(MassProperties.of(plover));
        assertThat(tube(joined).deflectionOfForce(-0.168, -0.663, -0.663))
                .isEqualTo(tube.deflectionOfForce(-0.168, -0.663, -0.663));
        assertThat(joined.boom().endX()).isEqualTo(plover.boom().endX());
    }

    @Test
    void a_splice_is_the_cut_in_the_middle_and_its_sleeve() {
        Glider cut = new BoomCut(BoomCut.Where.MIDDLE, -0.43, 0.04, 0, true).apply(plover);
        Glider spliced = new BoomSplice(-0.43, 0.04, plug(0.06, 1550), 0.0004).apply(plover);
        assertThat(spliced.boom().endX()).isEqualTo(cut.boom().endX());
        TubeSection ring = tube(cut).section(spliced.boom().build().sleeves().get("splice"), -0.43);
        double mass = 0.0004 + 1550 * 0.06 * ring.area();
        assertThat(MassProperties.of(spliced).mass() - MassProperties.of(cut).mass())
                .isCloseTo(mass, within(1e-12));
        assertThat(spliced.parts().get("splice").place().x()).isCloseTo(-0.43, within(1e-15));
        assertThat(ring.outer()).isCloseTo(tube(cut).section(-0.43).inner(), within(1e-15));
    }

    /** Beam of three parts by hand: with a sleeve EI is higher between its ends and the slope is a sum of three integrals. */
    @Test
    void a_sleeve_stiffens_where_it_is() {
        double k = 0.02 * 0.012 * 0.012 / 8 / 0.7;
        Boom even = new Boom(0.02, 0, -0.7, 0, 0.012, 0.012, new BoomStiffness.OfMaterial(50 / k), Map.of());
        BoomSleeve sleeve = new BoomSleeve(BoomSleeve.Fit.OUTSIDE, -0.2, -0.3, Double.NaN, 0.0005, 60e9, 3e8);
        double more = 60e9 * new TubeSection(0.013, 0.012).secondMoment();
        BoomTube sleeved = BoomTube.of(even.withSleeve("wrap", sleeve));
        assertThat(sleeved.stiffness(-0.25)).isCloseTo(50 + more, withinPercentage(1e-9));
        assertThat(sleeved.stiffness(-0.35)).isCloseTo(50, withinPercentage(1e-9));
        // int (L - s) ds from a to b is ((L - a)^2 - (L - b)^2)/2
        double covered = (0.5 * 0.5 - 0.4 * 0.4) / 2;
        double all = 0.7 * 0.7 / 2;
        assertThat(sleeved.slopeOfForce(0, -0.7, -0.7))
                .isCloseTo((all - covered) / 50 + covered / (50 + more), withinPercentage(1e-9));
    }

    @Test
    void a_rigid_sleeve_does_not_bend() {
        SleeveStock rigid = new SleeveStock(
                BoomSleeve.Fit.OUTSIDE, 0.1, 0.0005, 0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        BoomTube stiff = tube(new BoomWrap(-0.4, rigid, 0).apply(plover));
        double front = stiff.slopeOfForce(-0.168, -0.663, -0.35);
        assertThat(stiff.slopeOfForce(-0.168, -0.663, -0.45)).isCloseTo(front, within(1e-12));
    }

    @Test
    void a_bend_test_holds_for_the_boom_as_it_is() {
        Boom b = plover.boom();
        BoomSleeve sleeve = new BoomSleeve(BoomSleeve.Fit.OUTSIDE, -0.4, -0.46, Double.NaN, 0.0004, 60e9, 3e8);
        BoomTube sleeved = BoomTube.of(b.withSleeve("old wrap", sleeve));
        assertThat(0.5 * 9.80665 * sleeved.deflectionOfForce(-0.168, -0.663, -0.663))
                .isCloseTo(0.0057, within(1e-9));
        assertThat(sleeved.specificModulus()).isLessThan(tube.specificModulus());
    }

    @Test
    void the_ring_weighs_what_the_boom_weighs() {
        double x = -0.4;
        double density = plover.boom().build().wall().density();
        assertThat(tube.section(x).area() * density).isCloseTo(tube.massPerLength(x), withinPercentage(1e-9));
        assertThat(tube.modulus()).isCloseTo(tube.specificModulus() * density, withinPercentage(1e-12));
        // Common practice, no source: walls of 0.25 to 0.4 mm
        assertThat(tube.section(x).wall()).isBetween(0.00025, 0.0004);
    }

    @Test
    void a_cut_takes_slots_and_sleeves_along() {
        Boom b = plover.boom();
        BoomSlot slot = new BoomSlot(-0.60, -0.62, 0.003, BoomHole.Side.TOP);
        BoomSleeve gone = new BoomSleeve(BoomSleeve.Fit.OUTSIDE, -0.42, -0.44, Double.NaN, 0.0004, 60e9, 3e8);
        BoomSleeve ahead = new BoomSleeve(BoomSleeve.Fit.OUTSIDE, -0.2, -0.25, Double.NaN, 0.0004, 60e9, 3e8);
        BoomBuild build = new BoomBuild(BoomWall.USUAL, Map.of("slot", slot), Map.of("gone", gone, "ahead", ahead));
        Glider glider = plover.withBoom(new Boom(
                b.mass(),
                b.frontX(),
                b.endX(),
                b.z(),
                b.frontDiameter(),
                b.endDiameter(),
                b.stiffness(),
                b.holes(),
                build));
        BoomBuild after = new BoomCut(BoomCut.Where.MIDDLE, -0.41, 0.05, 0, true)
                .apply(glider)
                .boom()
                .build();
        assertThat(after.slots().get("slot").frontX()).isCloseTo(-0.55, within(1e-15));
        assertThat(after.sleeves()).containsOnlyKeys("ahead");
    }

    @Test
    void repairs_off_the_boom_are_refused() {
        assertThatThrownBy(() -> new BoomSplice(-0.05, 0.01, plug(0.05, 1550), 0).apply(plover))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("50 mm behind");
        assertThatThrownBy(() -> new BoomWrap(-0.9, plug(0.05, 1550), 0).apply(plover))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("does not lie on the boom");
    }
}
