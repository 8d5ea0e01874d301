package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.flight.Demo;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.motion.Axes;

class SoftBoomTest {
    private final Workbench bench = new Workbench();

    private SoftBoom of(Glider glider) {
        Scenario scenario = new Scenario(
                glider,
                glider,
                glider,
                new RebalanceRule(RebalanceRule.Keep.NOTHING, List.of(), Double.NaN),
                Demo.launch(Hand.RIGHT, Demo.CALM),
                Demo.SETTINGS,
                PresetRule.FROM_NEW_CRUISE,
                Corrections.NONE,
                Axes.PITCH);
        return SoftBoom.of(bench, scenario, bench.answer(scenario));
    }

    @Test
    void re_setting_the_preset_gives_most_of_it_back() {
        Boom b = Demo.GLIDER.boom();
        Boom soft = new Boom(
                b.mass(),
                b.frontX(),
                b.endX(),
                b.z(),
                b.frontDiameter(),
                b.endDiameter(),
                new BoomStiffness.OfMaterial(17e6),
                Map.of());
        SoftBoom found = of(Demo.GLIDER.withBoom(soft));
        // Common practice, no source: 0.7 to 1.5 m at an even EI of 20 to 10 N m2; this one is as soft as 11
        assertThat(found.cost()).isBetween(0.7, 2.0);
        assertThat(found.givenBack()).isEqualTo(found.asIsBest() - found.asIs()).isPositive();
        assertThat(found.costAtBest()).as("nothing worth a word is left").isLessThan(0.1);
    }

    @Test
    void a_stiff_boom_costs_nothing() {
        Boom b = Demo.GLIDER.boom();
        Boom stiff = new Boom(
                b.mass(),
                b.frontX(),
                b.endX(),
                b.z(),
                b.frontDiameter(),
                b.endDiameter(),
                new BoomStiffness.OfMaterial(1e14),
                Map.of());
        SoftBoom found = of(Demo.GLIDER.withBoom(stiff));
        assertThat(found.cost()).isCloseTo(0, within(1e-3));
        assertThat(found.costAtBest()).isCloseTo(0, within(2e-3));
    }
}
