package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.sawfly.math.Vec3;
import org.sawfly.quantity.Numbers;

class BalanceTest {
    private final Glider plover = Plover.glider();
    private final Balance balance = Balance.of(plover);

    @Test
    void the_lines_add_up_to_the_whole() {
        double mass = 0;
        double moment = 0;
        for (Balance.Row row : balance.rows()) {
            mass += row.mass();
            moment += row.mass() * row.x();
        }
        assertThat(mass).isCloseTo(balance.total().mass(), within(1e-15));
        assertThat(moment / mass).isCloseTo(balance.total().cg().x(), within(1e-15));
        assertThat(balance.rows())
                .extracting(Balance.Row::name)
                .startsWith("wing", "tailplane")
                .endsWith("nose lead");
    }

    @Test
    void a_gram_costs_just_the_lead_that_keeps_the_balance() {
        double x = -0.757;
        double gram = 0.001;
        Glider heavier = plover.withPart("glue", Part.fixed(gram, new Vec3(x, 0, 0)));
        Glider balanced = heavier.withNoseLead(plover.noseLead().mass() + gram * balance.leadPerMass(x));
        assertThat(MassProperties.of(balanced).cg().x())
                .isCloseTo(balance.total().cg().x(), within(1e-15));
        // Common practice, no source: one gram at the tail costs 2 to 2.5 g of lead
        assertThat(balance.leadPerMass(x)).isBetween(2.0, 2.5);
        assertThat(balance.leadPerMass(plover.noseLead().place().x())).isCloseTo(-1, within(1e-15));
    }

    @Test
    void lead_for_a_cg_brings_it_there() {
        for (double cg = -0.076; cg < -0.06; cg += 0.002) {
            Glider leaded = plover.withNoseLead(balance.leadFor(cg));
            assertThat(MassProperties.of(leaded).cg().x()).isCloseTo(cg, within(1e-15));
        }
        assertThat(balance.leadFor(-0.068)).isGreaterThan(balance.leadFor(-0.070));
    }

    @Test
    void sliding_the_battery_moves_the_cg_and_saves_lead_in_proportion() {
        Part battery = plover.parts().get("battery");
        Glider slid = plover.withPart("battery", battery.slid(0.008));
        double shift = MassProperties.of(slid).cg().x() - balance.total().cg().x();
        assertThat(shift).isCloseTo(0.008 * balance.cgPerSlide(battery), within(1e-15));
        double lead = Balance.of(slid).leadFor(balance.total().cg().x());
        assertThat(plover.noseLead().mass() - lead)
                .isCloseTo(0.008 * balance.leadSavedPerSlide(battery), within(1e-15));
        assertThat(slid.parts().get("battery").slideForward()).isEqualTo(0);
        assertThat(slid.parts().get("battery").slideBack()).isCloseTo(0.023, within(1e-15));
    }

    @Test
    void a_cg_is_set_with_the_battery_first_and_lead_for_the_rest() {
        List<CgSetting.Means> both = List.of(CgSetting.Means.BATTERY, CgSetting.Means.NOSE_LEAD);
        Glider little = new CgSetting(-0.0687, both).apply(plover);
        assertThat(MassProperties.of(little).cg().x()).isCloseTo(-0.0687, within(1e-12));
        assertThat(little.noseLead().mass()).isCloseTo(plover.noseLead().mass(), within(1e-12));
        Glider much = new CgSetting(-0.062, both).apply(plover);
        assertThat(MassProperties.of(much).cg().x()).isCloseTo(-0.062, within(1e-12));
        assertThat(much.parts().get("battery").place().x()).isCloseTo(0.213, within(1e-15));
        assertThat(much.noseLead().mass()).isGreaterThan(plover.noseLead().mass());
    }

    @Test
    void more_lead_out_than_there_is_in_is_refused_with_the_amount_and_another_way() {
        CgSetting far = new CgSetting(-0.095, List.of(CgSetting.Means.NOSE_LEAD));
        double lack = -balance.leadFor(-0.095);
        assertThat(lack).isPositive();
        String grams = Numbers.shortest(lack * 1000, 1);
        assertThatThrownBy(() -> far.apply(plover))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining(grams + " g more")
                .hasMessageContaining("13.9 g")
                .hasMessageContaining("Maybe battery can move back by");
        CgSetting battery = new CgSetting(-0.062, List.of(CgSetting.Means.BATTERY));
        assertThatThrownBy(() -> battery.apply(plover)).hasMessageContaining("too far back");
    }

    /** The message rounds to a tenth of a millimetre of a battery of 15.2 g. */
    @Test
    void moving_back_what_the_message_names_makes_up_for_the_lead() {
        double wanted = -0.095;
        Throwable refused =
                catchThrowable(() -> new CgSetting(wanted, List.of(CgSetting.Means.NOSE_LEAD)).apply(plover));
        Matcher named =
                Pattern.compile("Maybe battery can move back by ([0-9.]+) mm").matcher(refused.getMessage());
        assertThat(named.find()).as(refused.getMessage()).isTrue();
        double back = Double.parseDouble(named.group(1)) / 1000;
        Glider moved = plover.withNoseLead(0)
                .withPart("battery", plover.parts().get("battery").forward(-back));
        assertThat(MassProperties.of(moved).cg().x()).isCloseTo(wanted, within(0.0001 * 0.0152 / 0.2314));
    }
}
