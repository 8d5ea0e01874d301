package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.flight.Demo;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.PushOver;
import org.sawfly.math.Minimum;
import org.sawfly.motion.Axes;

class BestTest {
    private static final FlightPlan PLAN = Demo.plan(33, 10, Axes.PITCH_YAW);

    private static double height(FlightPlan plan) {
        return Flight.fly(plan).settled().height();
    }

    @Test
    void theBestPushIsNotBeatenAndFlat() {
        FlightPlan best = Best.push(PLAN);
        double top = height(best);
        assertThat(top).isGreaterThanOrEqualTo(height(PLAN));
        double at = best.launch().pushOver().speedRatio();
        double step = 1 / PLAN.craft().cruise().speed();
        for (double ratio : new double[] {at - step, at + step}) {
            double beside = height(PLAN.withPush(new PushOver(ratio, Double.NaN)));
            assertThat(beside).isLessThanOrEqualTo(top + 1e-3);
            assertThat(beside).as("1 m/s beside it costs little").isCloseTo(top, within(0.15));
        }
    }

    @Test
    void theBestPresetIsNotBeatenByAnyOther() {
        double top = height(Best.preset(PLAN));
        for (double more = -0.1; more <= 0.1; more += 0.02) {
            double other = height(PLAN.withPreset(PLAN.presetElevator() + more));
            assertThat(Double.isNaN(other) ? 0 : other).isLessThan(top + 0.01);
        }
    }

    @Test
    void aHollowBehindAStepIsFound() {
        List<Double> asked = new ArrayList<>();
        double at = Minimum.scanned(
                x -> {
                    asked.add(x);
                    return x > 0.7 ? 0 : -1 - Math.pow(x - 0.62, 2) * -4;
                },
                0,
                1,
                9,
                1e-9);
        assertThat(at).isCloseTo(0.62, within(1e-6));
        assertThat(asked).allMatch(x -> x >= 0 && x <= 1);
    }

    @Test
    void theLeastAtAnEndIsFound() {
        assertThat(Minimum.scanned(x -> x, 2, 5, 7, 1e-9)).isCloseTo(2, within(1e-6));
        assertThat(Minimum.scanned(x -> -x, 2, 5, 7, 1e-9)).isCloseTo(5, within(1e-6));
    }
}
