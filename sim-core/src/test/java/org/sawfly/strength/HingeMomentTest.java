package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.air.Atmosphere;
import org.sawfly.flight.Demo;
import org.sawfly.flight.FlightPlan;
import org.sawfly.motion.Axes;
import org.sawfly.section.MeasuredFlap;
import org.sawfly.section.PlainFlap;

class HingeMomentTest {
    /** A quarter of the chord: tau .6090, Ch_alpha -.5653, Ch_delta -.9436 (Glauert, R&M 1095, recomputed). */
    private static final HingeMoment QUARTER = new HingeMoment(1e-4, 0.02, 0.06, PlainFlap.of(0.25));

    private static final double HIGH = 1e6;

    @Test
    void theory_at_high_reynolds_numbers() {
        double share = MeasuredFlap.share(HIGH);
        assertThat(share).isBetween(0.98, 1.0);
        double lift = 2 * Math.PI * 0.03;
        assertThat(QUARTER.at(600, lift, 0, HIGH))
                .isCloseTo(-share * 600 * 1e-4 * 0.5653 * 0.03, withinPercentage(0.02));
        // a deflection with the section's angle kept at nought: the lift it makes is 2 pi tau delta
        double delta = 0.1;
        assertThat(QUARTER.at(600, 2 * Math.PI * 0.6090 * delta, delta, HIGH))
                .isCloseTo(-share * 600 * 1e-4 * 0.9436 * delta, withinPercentage(0.05));
    }

    /** Measured on plain flaps: 0.73 of what they do at high Reynolds numbers at 60 000, 0.9 at 100 000. */
    @ParameterizedTest
    @CsvSource({"60000, 0.73, 0.03", "100000, 0.9, 0.03", "150000, 1.0, 0.04"})
    void the_measured_share(double reynolds, double share, double error) {
        assertThat(MeasuredFlap.share(reynolds)).isCloseTo(share, within(error));
    }

    @Test
    void the_air_pushes_back() {
        assertThat(QUARTER.at(600, 0.2, 0.1, HIGH)).isNegative();
        assertThat(QUARTER.at(600, -0.2, -0.1, HIGH)).isPositive();
        assertThat(QUARTER.left(0, 1e-2, HIGH)).isEqualTo(1);
        assertThat(QUARTER.left(600, 1e-2, HIGH)).isLessThan(QUARTER.left(100, 1e-2, HIGH));
        double moment = QUARTER.at(600, 0.2, 0.1, HIGH);
        double spring = HingeMoment.springTorque(moment, 2);
        assertThat(spring).isCloseTo(-2 * moment, within(1e-15));
        assertThat(HingeMoment.followsFrom(spring, moment, 30)).isCloseTo(30 * Math.sqrt(2), within(1e-12));
        assertThat(HingeMoment.stringPull(spring, moment, 0.008)).isCloseTo(-3 * moment / 0.008, within(1e-12));
    }

    @Test
    void a_tail_that_turns_as_a_whole_has_none() {
        HingeMoment whole = new HingeMoment(1e-4, 0.02, 0.06, null);
        assertThat(whole.at(600, 0.3, 0.1, HIGH)).isZero();
        assertThat(whole.left(600, 1, HIGH)).isEqualTo(1);
    }

    @Test
    void a_straight_tapered_elevator_has_its_closed_form() {
        HingeMoment elevator = HingeMoment.ofElevator(Demo.GLIDER);
        // Plover's tailplane: 72 to 59 over 114 mm, 59 to 32 over 48 mm, elevator 40 %; int c^2 = l (a^2 + a b + b^2)/3
        double inner = 0.114 * (72 * 72 + 72 * 59 + 59 * 59) / 3e6;
        double outer = 0.048 * (59 * 59 + 59 * 32 + 32 * 32) / 3e6;
        assertThat(elevator.squared()).isCloseTo(2 * 0.16 * (inner + outer), withinPercentage(1e-9));
        assertThat(HingeMoment.ofRudder(Demo.GLIDER).area())
                .isCloseTo(Demo.GLIDER.fin().area(), within(1e-15));
    }

    @Test
    void plover_at_release_and_in_a_fast_glide() {
        FlightPlan plan = Demo.plan(33, 8, Axes.PITCH_YAW);
        ControlLoads release = ControlLoads.atRelease(plan);
        ControlLoads glide = ControlLoads.gliding(plan.craft(), Atmosphere.STANDARD.at(0), 12);
        assertThat(release.elevatorDeflection()).as("preset up").isLessThan(glide.elevatorDeflection() + 0.05);
        assertThat(release.elevator())
                .as("the tailplane is pressed down: the elevator is pressed down")
                .isPositive();
        assertThat(release.rudder()).as("the fin is pushed to the left").isPositive();
        assertThat(Math.abs(glide.elevator())).isLessThan(Math.abs(release.elevator()));
        assertThat(glide.rudder()).isCloseTo(0, within(1e-6));
    }
}
