package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.Corrections;
import org.sawfly.glider.FinScale;
import org.sawfly.glider.Hand;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.StateLayout;

/** What a flight is said to have come to, worked out anew from its states; and the reasons why there may be no answer. */
class SettledTest {
    private static final double G = 9.80665;

    /** Time, height and airspeed of a moment, in still air. */
    private record Seen(double time, double height, double speed) {}

    private static List<Seen> watched(FlightPlan plan, List<Outcome> to) {
        List<Seen> seen = new ArrayList<>();
        double[] state = new double[StateLayout.SIZE];
        to.add(Flight.watch(plan, step -> {
            for (int i = 1; i <= 20; i++) {
                double t = i == 20 ? step.end() : step.start() + i * (step.end() - step.start()) / 20;
                step.at(t, state);
                seen.add(new Seen(t, Kinematics.height(state), Kinematics.groundSpeed(state)));
            }
        }));
        return seen;
    }

    /**
     * The settled height, 5.6 s after the push-over that begins at 2.7 times the trimmed speed: h + (V^2 - Vg^2)/(2 g) + w (t
     * - t_top). The transition costs what the energy height at the top is above it; then the still air carries.
     */
    @Test
    void theDefinitionHolds() {
        for (double rate : new double[] {0, 8}) {
            FlightPlan plan = Demo.plan(33, rate, rate == 0 ? Axes.PITCH : Axes.PITCH_YAW);
            List<Outcome> outcomes = new ArrayList<>();
            List<Seen> seen = watched(plan, outcomes);
            Outcome outcome = outcomes.get(0);
            Settled settled = outcome.settled();
            Top top = outcome.top();
            Glide glide = plan.craft().cruise();
            double glideEnergy = glide.speed() * glide.speed() / (2 * G);
            Seen last = seen.get(seen.size() - 1);
            double height = last.height()
                    + last.speed() * last.speed() / (2 * G)
                    - glideEnergy
                    + glide.sink() * (last.time() - top.time());
            assertThat(settled.height()).isCloseTo(height, within(1e-9));
            double atTop = top.height() + top.speed() * top.speed() / (2 * G) - glideEnergy;
            assertThat(settled.transitionLoss()).isCloseTo(atTop - height, within(1e-9));
            assertThat(settled.straightTime()).isCloseTo(top.time() + height / glide.sink(), within(1e-9));
            assertThat(settled.circlingTime()).isCloseTo(top.time() + height / (1.2 * glide.sink()), within(1e-9));
            double pushed = last.time() - 5.6;
            for (Seen moment : seen) {
                double excess = moment.speed() - 2.7 * glide.speed();
                assertThat(moment.time() < pushed - 1e-6 ? excess : 1)
                        .as("at %s s, pushed over at %s s", moment.time(), pushed)
                        .isPositive();
            }
            Seen begins = seen.stream()
                    .filter(moment -> moment.time() > pushed - 1e-6)
                    .findFirst()
                    .orElseThrow();
            assertThat(begins.speed()).isCloseTo(2.7 * glide.speed(), within(1e-4));
            assertThat(seen.stream().mapToDouble(Seen::height).max().orElseThrow())
                    .isCloseTo(top.height(), within(1e-3));
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 40, 1, SWAPPED_ENDS", "33, 25, 0.25, SWAPPED_ENDS", "33, 8, 0.25, INVERTED", "0, 0, 1, GROUND"})
    void aFlightThatGoesWrongHasItsReason(double speed, double rate, double fin, Ended reason) {
        Craft craft = Demo.craft(new FinScale(fin).apply(Demo.GLIDER), Corrections.NONE);
        Outcome outcome = Flight.fly(Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), speed, rate, Axes.PITCH_YAW));
        assertThat(outcome.ended()).isEqualTo(reason);
        assertThat(outcome.settled()).isEqualTo(Settled.NONE);
    }

    /** A pilot who waits on a flat path until it has all but stopped waits longer than 8 s. */
    @Test
    void aPushThatNeverComesIsNamed() {
        Launch plain = Demo.launch(Hand.RIGHT, Demo.CALM);
        Launch flat = new Launch(
                plain.name(),
                plain.thrower(),
                plain.preset(),
                Math.toRadians(20),
                new PushOver(0.5, Double.NaN),
                plain.releaseHeight(),
                plain.releaseClimb(),
                plain.weather());
        Outcome outcome = Flight.fly(Demo.plan(Demo.craft(), flat, 33, 0, Axes.PITCH));
        assertThat(outcome.ended()).isEqualTo(Ended.NO_TOP);
    }
}
