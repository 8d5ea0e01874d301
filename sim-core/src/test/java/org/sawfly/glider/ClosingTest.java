package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.math.Vec3;

class ClosingTest {
    private final Glider plover = Plover.glider();

    @ParameterizedTest
    @CsvSource({"0.2314, -0.069", "0.240, -0.072", "0.225, -0.064", "0.2314, -0.073"})
    void with_known_lead_mass_and_cg_become_what_was_measured(double mass, double cgX) {
        Glider closed = closing(mass, cgX).withKnownLead(plover);
        MassProperties whole = MassProperties.of(closed);
        assertThat(whole.mass()).isCloseTo(mass, within(1e-15));
        assertThat(whole.cg().x()).isCloseTo(cgX, within(1e-15));
        assertThat(whole.cg().z()).isCloseTo(MassProperties.of(plover).cg().z(), within(1e-15));
        assertThat(closed.noseLead()).isEqualTo(plover.noseLead());
        assertThat(closing(mass, cgX).withKnownLead(closed)).isEqualTo(closed);
    }

    @Test
    void the_demo_glider_needs_next_to_no_correction() {
        Correction correction = closing(0.2314, -0.069).withKnownLead(plover).correction();
        assertThat(correction.mass()).isCloseTo(0, within(1e-9));
        assertThat(correction.moment().x()).isCloseTo(0, within(0.2314 * 0.0001));
    }

    @Test
    void assumed_lead_is_found_again_from_mass_and_cg() {
        MassProperties whole = MassProperties.of(plover);
        Glider unknown = plover.withNoseLead(0.005);
        Glider closed = closing(whole.mass(), whole.cg().x()).withAssumedLead(unknown);
        assertThat(closed.noseLead().mass()).isCloseTo(0.0139, within(1e-15));
        assertThat(closed.correction().mass()).isCloseTo(0, within(1e-15));
        Glider byMass = new Closing(OptionalDouble.of(whole.mass()), OptionalDouble.empty()).withAssumedLead(unknown);
        assertThat(byMass.noseLead().mass()).isCloseTo(0.0139, within(1e-15));
        Glider byCg =
                new Closing(OptionalDouble.empty(), OptionalDouble.of(whole.cg().x())).withAssumedLead(unknown);
        assertThat(byCg.noseLead().mass()).isCloseTo(0.0139, within(1e-15));
    }

    @Test
    void assumed_lead_meets_mass_and_cg_even_when_the_parts_are_off() {
        MassProperties whole = MassProperties.of(closing(0.238, -0.070).withAssumedLead(plover));
        assertThat(whole.mass()).isCloseTo(0.238, within(1e-15));
        assertThat(whole.cg().x()).isCloseTo(-0.070, within(1e-15));
    }

    @Test
    void impossible_lead_names_the_two_numbers_that_disagree() {
        assertThatThrownBy(() -> closing(0.2314, -0.020).withAssumedLead(plover))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("231.4 g")
                .hasMessageContaining("20 mm behind")
                .hasMessageContaining("at most 40 g");
        assertThatThrownBy(() -> closing(0.2314, -0.100).withAssumedLead(plover))
                .hasMessageContaining("taken out");
        assertThatThrownBy(() -> closing(0.2314, 0.300).withAssumedLead(plover))
                .hasMessageContaining("ahead of the CG");
        assertThatThrownBy(() -> closing(Double.NaN, -0.07)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_weighed_assembly_agrees_afterwards_and_the_change_is_reported() {
        Weighing weighing = new Weighing(Set.of("pod", "boom"), 0.0433, OptionalDouble.of(-0.092));
        Weighing.Result result = weighing.applyTo(plover);
        Glider after = result.glider();
        double mass = after.pod().mass() + after.boom().mass();
        double x = (after.pod().mass() * 0.076
                        + after.boom().mass()
                                * BoomTube.of(after.boom()).whole().cg().x())
                / mass;
        assertThat(mass).isCloseTo(0.0433, within(1e-15));
        assertThat(x).isCloseTo(-0.092, within(1e-15));
        assertThat(result.added().get("pod")).isCloseTo(after.pod().mass() - 0.0285, within(1e-15));
        assertThat(result.added().get("boom")).isCloseTo(after.boom().mass() - 0.0148, within(1e-15));
    }

    @Test
    void without_a_balance_point_the_parts_change_in_proportion() {
        Weighing weighing = new Weighing(Set.of("wing", "wing servos and leads"), 0.1319, OptionalDouble.empty());
        Glider after = weighing.applyTo(plover).glider();
        assertThat(after.wing().mass() / 0.114).isCloseTo(0.1319 / 0.1256, within(1e-12));
        assertThat(after.parts().get("wing servos and leads").mass() / 0.0116)
                .isCloseTo(0.1319 / 0.1256, within(1e-12));
    }

    @Test
    void a_single_part_is_moved_to_its_balance_point_and_a_surface_is_not() {
        Glider after = new Weighing(Set.of("pod"), 0.030, OptionalDouble.of(0.070))
                .applyTo(plover)
                .glider();
        assertThat(after.pod().mass()).isEqualTo(0.030);
        assertThat(after.pod().cgX()).isEqualTo(0.070);
        Glider battery = new Weighing(Set.of("battery"), 0.0152, OptionalDouble.of(0.190))
                .applyTo(plover)
                .glider();
        assertThat(battery.parts().get("battery").place().x()).isEqualTo(0.190);
        assertThatThrownBy(() -> new Weighing(Set.of("wing"), 0.114, OptionalDouble.of(-0.05)).applyTo(plover))
                .hasMessageContaining("follows from its shape");
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Weighing(Set.of("keel"), 0.1, OptionalDouble.empty()).applyTo(plover))
                .hasMessageContaining("strings and springs");
        assertThatThrownBy(() -> new Weighing(Set.of("pod", "boom"), 0.0433, OptionalDouble.of(0.07)).applyTo(plover))
                .hasMessageContaining("Maybe a part is missing");
        assertThatThrownBy(() -> new Weighing(Set.of("pod", "boom"), 0.433, OptionalDouble.empty()).applyTo(plover))
                .isInstanceOf(DesignException.class);
    }

    @Test
    void a_body_swung_on_two_strings_shows_its_inertia() {
        // The equation of motion itself: I t'' = -m g b^2/L t has the period 2 pi sqrt(I L/(m g b^2)).
        double inertia = 0.0283;
        double period = 2 * Math.PI * Math.sqrt(inertia * 1.5 / (0.2314 * 9.80665 * 0.2 * 0.2));
        Bifilar swing = new Bifilar(Bifilar.Axis.YAW, 0.2314, 0.2, 1.5, period);
        assertThat(swing.swungInertia()).isCloseTo(inertia, within(1e-15));
        Glider swung = swing.applyTo(plover, 0.0003);
        assertThat(MassProperties.of(swung).inertia().izz()).isCloseTo(0.0280, within(1e-15));
        assertThat(MassProperties.of(swung).inertia().ixx())
                .isEqualTo(MassProperties.of(plover).inertia().ixx());
        assertThat(MassProperties.of(swung).cg())
                .isEqualTo(new Vec3(
                        MassProperties.of(plover).cg().x(),
                        0,
                        MassProperties.of(plover).cg().z()));
        assertThatThrownBy(() -> swing.applyTo(plover, 0.05)).isInstanceOf(DesignException.class);
    }

    private static Closing closing(double mass, double cgX) {
        return new Closing(OptionalDouble.of(mass), OptionalDouble.of(cgX));
    }
}
