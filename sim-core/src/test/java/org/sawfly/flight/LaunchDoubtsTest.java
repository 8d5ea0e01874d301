package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sawfly.glider.Hand;
import org.sawfly.motion.Axes;

class LaunchDoubtsTest {
    private static final double SMALL = Math.toRadians(2);

    private static Outcome fly(LaunchDoubts doubts, Hand hand, FlightLog log) {
        Launch launch = Demo.launch(hand, Demo.CALM).with(doubts);
        FlightPlan plan = Demo.plan(Demo.craft(), launch, 34, 8, Axes.PITCH_YAW);
        return log == null ? Flight.fly(plan) : Flight.fly(plan, log);
    }

    @Test
    void noneChangesNothing() {
        Launch meant = Demo.launch(Hand.RIGHT, Demo.CALM);
        assertThat(meant.doubts()).isEqualTo(LaunchDoubts.NONE);
        assertThat(fly(new LaunchDoubts(0, 0, 0, 0, 0, 0), Hand.RIGHT, null).top())
                .isEqualTo(Flight.fly(Demo.plan(Demo.craft(), meant, 34, 8, Axes.PITCH_YAW))
                        .top());
    }

    /** Outward is to the right of the path for a right-hander: the wind then comes from the left, beta below 0. */
    @ParameterizedTest
    @EnumSource(Hand.class)
    void noseOutTurnsTheReleaseOutward(Hand hand) {
        double sign = hand == Hand.RIGHT ? -1 : 1;
        double meant = fly(LaunchDoubts.NONE, hand, null).release().beta();
        double out = fly(new LaunchDoubts(SMALL, 0, 0, 0, 0, 0), hand, null)
                .release()
                .beta();
        assertThat(out - meant).isCloseTo(sign * SMALL, within(1e-12));
    }

    @Test
    void presetUpHoldsTheElevatorHigher() {
        FlightLog meant = new FlightLog();
        FlightLog up = new FlightLog();
        fly(LaunchDoubts.NONE, Hand.RIGHT, meant);
        fly(new LaunchDoubts(0, 0, SMALL, 0, 0, 0), Hand.RIGHT, up);
        double before = meant.rows().get(0).elevator();
        assertThat(up.rows().get(0).elevator()).isCloseTo(before - SMALL, within(1e-9));
        assertThat(up.rows().get(30).pathAngle())
                .isGreaterThan(meant.rows().get(30).pathAngle());
    }

    @Test
    void steeperClimbsSteeper() {
        FlightLog meant = new FlightLog();
        FlightLog steep = new FlightLog();
        fly(LaunchDoubts.NONE, Hand.RIGHT, meant);
        fly(new LaunchDoubts(0, SMALL, 0, 0, 0, 0), Hand.RIGHT, steep);
        assertThat(steep.rows().get(120).pathAngle() - meant.rows().get(120).pathAngle())
                .isBetween(0.4 * SMALL, 1.5 * SMALL);
    }

    @Test
    void aFasterPushOverComesEarlierAndALatePresetEndsLater() {
        FlightLog meant = new FlightLog();
        FlightLog fast = new FlightLog();
        FlightLog late = new FlightLog();
        fly(LaunchDoubts.NONE, Hand.RIGHT, meant);
        fly(new LaunchDoubts(0, 0, 0, 1, 0, 0), Hand.RIGHT, fast);
        fly(new LaunchDoubts(0, 0, 0, 0, 0.1, 0), Hand.RIGHT, late);
        assertThat(pushOver(fast)).isBetween(pushOver(meant) - 0.15, pushOver(meant) - 0.05);
        Launch launch = Demo.launch(Hand.RIGHT, Demo.CALM);
        int end = (int) Math.round(launch.presetEnd() / FlightLog.INTERVAL);
        assertThat(late.rows().get(end + 9).elevator())
                .isCloseTo(late.rows().get(0).elevator(), within(1e-4));
        assertThat(meant.rows().get(end + 9).elevator())
                .isNotCloseTo(meant.rows().get(0).elevator(), within(1e-3));
        assertThat(launch.with(new LaunchDoubts(0, 0, 0, 0, -9, 0)).presetEnd()).isZero();
    }

    @Test
    void bankAddsToTheBankOfTheLaunch() {
        Launch launch = Demo.launch(Hand.RIGHT, Demo.CALM).with(new LaunchDoubts(0, 0, 0, 0, 0, SMALL));
        assertThat(launch.releaseBank()).isEqualTo(SMALL);
    }

    /** The glide ends 5.6 s after the push-over began. */
    private static double pushOver(FlightLog log) {
        return log.rows().get(log.rows().size() - 1).time() - 5.6;
    }
}
