package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TailChangesTest {
    private static final double THROW = TailClearance.FULL_THROW;

    private final Glider plover = Plover.glider();

    @Test
    void a_smaller_tailplane_keeps_its_shape_and_its_arm() {
        Tailplane old = plover.tailplane();
        Tailplane now = new TailplaneScale(0.85).apply(plover).tailplane();
        assertThat(now.planform().area()).isCloseTo(0.85 * old.planform().area(), within(1e-15));
        assertThat(now.mass()).isCloseTo(0.85 * 0.0064, within(1e-15));
        assertThat(now.x() - now.planform().quarterPointBack())
                .isCloseTo(old.x() - old.planform().quarterPointBack(), within(1e-15));
        assertThat(now.x()).isLessThan(old.x());
        assertThat(new TailplaneScale(0.85, OptionalDouble.of(0.0052))
                        .apply(plover)
                        .tailplane()
                        .mass())
                .isEqualTo(0.0052);
    }

    @Test
    void a_larger_fin_keeps_its_shape_its_arm_and_its_share_below_the_boom() {
        Fin old = plover.fin();
        Fin now = new FinScale(1.25).apply(plover).fin();
        assertThat(now.area()).isCloseTo(1.25 * old.area(), within(1e-15));
        assertThat(now.mass()).isCloseTo(1.25 * 0.0069, within(1e-15));
        assertThat(now.below().area() / now.area()).isCloseTo(old.below().area() / old.area(), within(1e-12));
        assertThat(now.x() - now.quarterPointBack()).isCloseTo(old.x() - old.quarterPointBack(), within(1e-15));
    }

    @Test
    void scaling_by_one_changes_nothing_and_there_and_back_leads_home() {
        assertThat(new TailplaneScale(1).apply(plover)).isEqualTo(plover);
        Glider home = new FinScale(1 / 1.3).apply(new FinScale(1.3).apply(plover));
        assertThat(home.fin().x()).isCloseTo(plover.fin().x(), within(1e-15));
        assertThat(home.fin().mass()).isCloseTo(plover.fin().mass(), within(1e-15));
        assertThatThrownBy(() -> new FinScale(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void another_boom_takes_the_tails_along() {
        Boom longer =
                new Boom(0.0155, -0.118, -0.820, 0.012, 0.017, 0.0085, new BoomStiffness.OfMaterial(55e6), Map.of());
        Glider after = new BoomReplacement(longer).apply(plover);
        assertThat(after.fin().x()).isCloseTo(-0.752, within(1e-15));
        assertThat(after.tailplane().x()).isCloseTo(-0.670, within(1e-15));
        assertThat(after.parts().get("glue and cloth").place().x()).isCloseTo(-0.765, within(1e-15));
        assertThat(after.parts().get("battery")).isEqualTo(plover.parts().get("battery"));
        assertThat(after.parts().get("strings and springs").mass()).isCloseTo(0.0009 * 890 / 860, within(1e-15));
        Boom stub = new Boom(0.002, -0.118, -0.200, 0.012, 0.017, 0.016, new BoomStiffness.OfMaterial(55e6), Map.of());
        assertThatThrownBy(() -> new BoomReplacement(stub).apply(plover)).hasMessageContaining("too short");
    }

    @Test
    void between_elevator_and_fin_there_is_the_room_that_the_bench_shows() {
        // Trailing edge 712 mm behind, fin's leading edge at 14 mm height 722 + 12 x 14/75 = 724.24 mm
        assertThat(TailClearance.gap(plover.tailplane(), plover.fin(), 0)).isCloseTo(0.01224, within(1e-15));
        // Turned up or down the elevator becomes shorter but meets the fin at another height
        assertThat(TailClearance.gap(plover.tailplane(), plover.fin(), THROW)).isBetween(0.0115, 0.01224);
    }

    @Test
    void the_gap_shrinks_by_what_the_fin_comes_forward_until_both_overlap() {
        double gap = TailClearance.gap(plover.tailplane(), plover.fin(), THROW);
        assertThat(TailClearance.gap(plover.tailplane(), plover.fin().forward(0.010), THROW))
                .isCloseTo(gap - 0.010, within(1e-15));
        assertThat(TailClearance.gap(plover.tailplane(), plover.fin().forward(0.030), THROW))
                .isNegative();
        assertThat(TailClearance.gap(plover.tailplane(), plover.fin().forward(0.100), THROW))
                .isNegative();
    }

    @Test
    void a_fin_ahead_of_the_tailplane_needs_room_for_its_rudder() {
        Fin ahead = plover.fin().forward(0.722 - 0.560);
        double straight = TailClearance.gap(plover.tailplane(), ahead, 0);
        // At 14 mm height: leading edge 2.24 mm back, chord 72 - 14 x 14/75 = 69.387 mm
        assertThat(straight).isCloseTo(0.640 - 0.560 - 0.00224 - 0.0693867, within(1e-7));
        assertThat(TailClearance.gap(plover.tailplane(), ahead, THROW)).isCloseTo(straight, within(1e-12));
    }

    @Test
    void a_tailplane_above_the_fin_never_meets_it() {
        Tailplane t = plover.tailplane();
        Tailplane high =
                new Tailplane(t.mass(), t.planform(), t.x(), -0.3, t.decalage(), t.section(), t.elevatorChord());
        assertThat(TailClearance.gap(high, plover.fin(), THROW)).isEqualTo(Double.POSITIVE_INFINITY);
    }
}
