package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.Loss;
import org.sawfly.aero.ModelChoice;
import org.sawfly.air.Standard;
import org.sawfly.flight.Demo;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Outcome;
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

    private Scenario scenario(Glider glider) {
        return new Scenario(
                glider,
                glider,
                glider,
                new RebalanceRule(RebalanceRule.Keep.NOTHING, List.of(), Double.NaN),
                Demo.launch(Hand.RIGHT, Demo.CALM),
                Demo.SETTINGS,
                PresetRule.FROM_NEW_CRUISE,
                Corrections.NONE,
                Axes.PITCH);
    }

    private SoftBoom of(Scenario scenario) {
        return SoftBoom.of(bench, scenario, bench.answer(scenario));
    }

    /** The demo glider with a boom of another modulus [m2/s2]. */
    private static Glider boom(double specificModulus) {
        Boom b = Demo.GLIDER.boom();
        return Demo.GLIDER.withBoom(new Boom(
                b.mass(),
                b.frontX(),
                b.endX(),
                b.z(),
                b.frontDiameter(),
                b.endDiameter(),
                new BoomStiffness.OfMaterial(specificModulus),
                Map.of()));
    }

    @Test
    void re_setting_the_preset_gives_most_of_it_back() {
        Scenario soft = scenario(boom(17e6));
        SoftBoom found = of(soft);
        // Common practice, no source: 0.7 to 1.5 m at an even EI of 20 to 10 N m2; this one is as soft as 11
        assertThat(found.cost()).isBetween(0.7, 2.0);
        assertThat(found.givenBack()).isEqualTo(found.asIsBest() - found.asIs()).isPositive();
        assertThat(found.costAtBest()).isPositive().isLessThan(0.5 * found.cost());
        SoftBoom strips = of(soft.flown(soft.flying().by(ModelChoice.STRIP)));
        assertThat(found.cost()).isCloseTo(strips.cost(), within(0.03));
        assertThat(found.costAtBest()).isCloseTo(strips.costAtBest(), within(0.03));
    }

    /** What is left at the best preset is the elevator's drag: on the soft boom it has to stand further up for the same turn. */
    @Test
    void what_is_left_is_drag_of_the_tailplane() {
        Scenario scenario = scenario(boom(17e6));
        FlightPlan plan = bench.answer(scenario).plan();
        FlightPlan best = Best.preset(plan);
        FlightPlan stiff = Best.preset(SoftBoom.unbending(bench, scenario, plan));
        assertThat(best.presetElevator()).isLessThan(stiff.presetElevator() - Math.toRadians(1));
        Outcome soft = Flight.fly(best);
        double drag = lost(soft, Loss.TAILPLANE_PROFILE) - lost(Flight.fly(stiff), Loss.TAILPLANE_PROFILE);
        double weight = plan.craft().mass().mass() * Standard.GRAVITY;
        double left = of(scenario).costAtBest();
        assertThat(drag / weight).isBetween(0.7 * left, 1.5 * left);
    }

    private static double lost(Outcome outcome, Loss loss) {
        return outcome.ledger().spent().get(loss);
    }

    @Test
    void a_stiff_boom_costs_nothing() {
        SoftBoom found = of(scenario(boom(1e14)));
        assertThat(found.cost()).isCloseTo(0, within(1e-3));
        assertThat(found.costAtBest()).isCloseTo(0, within(2e-3));
    }
}
