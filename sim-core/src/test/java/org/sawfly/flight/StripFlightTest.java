package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.DragFactors;
import org.sawfly.aero.ModelChoice;
import org.sawfly.aero.StripsOf;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.CgSetting;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.MassProperties;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Trim;
import org.sawfly.stability.NeutralPoint;

/** Flights with the strip model, and with the whole motion after release. */
class StripFlightTest {
    private static final int[][] REFINED = {{20, 6, 6}, {40, 12, 12}, {80, 24, 24}};

    private static Craft craft(Glider glider, ModelChoice choice) {
        return Craft.of(glider, Corrections.NONE, Demo.MODELS, choice, Demo.SETTINGS, Demo.CALM.ground());
    }

    private static FlightPlan plan(Craft craft, double yawRate, Axes axes) {
        return Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), 33, yawRate, axes);
    }

    @Test
    void more_strips_do_not_move_the_launch() {
        double last = Double.NaN;
        for (int[] n : REFINED) {
            AeroModel model = StripsOf.model(Demo.GLIDER, Corrections.NONE, Demo.MODELS, n[0], n[1], n[2]);
            Craft usual = craft(Demo.GLIDER, ModelChoice.STRIP);
            Craft craft = new Craft(
                    Demo.GLIDER,
                    usual.mass(),
                    model,
                    usual.deflections(),
                    new Trim(model, usual.mass().mass(), Craft.sample(Demo.CALM.ground()))
                            .atLift(usual.cruiseCamber(), Craft.CRUISE_LIFT),
                    usual.cruiseCamber(),
                    usual.power());
            double top = Flight.fly(plan(craft, 12, Axes.PITCH_YAW)).top().height();
            if (!Double.isNaN(last)) {
                assertThat(top).as("%d strips", n[0]).isCloseTo(last, within(0.2));
            }
            last = top;
        }
    }

    @Test
    void more_strips_do_not_move_the_neutral_point() {
        Corrections rigid = new Corrections(DragFactors.NONE, 1, 1, 1, 1e6, 1, 0);
        double last = Double.NaN;
        for (int[] n : REFINED) {
            AeroModel model = StripsOf.model(Demo.GLIDER, rigid, Demo.MODELS, n[0], n[1], n[2]);
            double point =
                    NeutralPoint.of(model, Demo.CALM.ground(), 0, NeutralPoint.USUAL_LIFT, NeutralPoint.USUAL_SPEED);
            if (!Double.isNaN(last)) {
                assertThat(point).as("%d strips", n[0]).isCloseTo(last, within(0.0003));
            }
            last = point;
        }
    }

    @ParameterizedTest
    @EnumSource(ModelChoice.class)
    void the_ledger_closes_in_the_whole_motion(ModelChoice choice) {
        for (double rate : new double[] {0, 8, 20}) {
            Outcome outcome = Flight.fly(plan(craft(Demo.GLIDER, choice), rate, Axes.ALL));
            assertThat(outcome.ended()).isEqualTo(Ended.SETTLED);
            assertThat(outcome.ledger().closure()).isCloseTo(0, within(1e-3));
            assertThat(outcome.ledger().rollHold()).isZero();
        }
    }

    @Test
    void hands_mirror_in_the_whole_motion() {
        Outcome right =
                Flight.fly(Demo.plan(craft(Demo.GLIDER, ModelChoice.STRIP), banked(Hand.RIGHT), 33, 8, Axes.ALL));
        Outcome left = Flight.fly(
                Demo.plan(craft(Mirror.of(Demo.GLIDER), ModelChoice.STRIP), banked(Hand.LEFT), 33, 8, Axes.ALL));
        assertThat(left.top().height()).isCloseTo(right.top().height(), within(1e-6));
        assertThat(left.settled().height()).isCloseTo(right.settled().height(), within(1e-6));
        assertThat(left.swing().first()).isCloseTo(right.swing().first(), within(1e-6));
        Course one = right.top().course();
        Course other = left.top().course();
        assertThat(other.rolled()).isCloseTo(-one.rolled(), within(1e-6));
        assertThat(other.slant()).isCloseTo(-one.slant(), within(1e-6));
        assertThat(other.heading()).isCloseTo(-one.heading(), within(1e-5));
        assertThat(other.drift()).isCloseTo(-one.drift(), within(1e-5));
        assertThat(one.drift())
                .as("a right-hander's low left tip takes it to the left")
                .isLessThan(-1);
        Spin spin = right.release().spin();
        assertThat(left.release().spin().finOutward()).isCloseTo(spin.finOutward(), within(1e-9));
        assertThat(left.release().spin().trail()).isCloseTo(spin.trail(), within(1e-9));
    }

    /** Without yaw at release and without a spin that sets the nose aside the whole motion stays in its plane. */
    @Test
    void without_any_yaw_the_whole_motion_is_the_motion_in_pitch() {
        Launch l = Demo.launch(Hand.RIGHT, Demo.CALM);
        Thrower t = l.thrower();
        Thrower straight =
                new Thrower(Hand.RIGHT, 41, Double.NaN, Double.NaN, 0, t.reach(), 33, t.heightScatter(), t.armMass());
        Launch launch = new Launch(
                l.name(),
                straight,
                l.preset(),
                l.climbAngle(),
                l.pushOver(),
                l.releaseHeight(),
                l.releaseClimb(),
                l.weather());
        Craft craft = Evened.of(craft(Demo.GLIDER, ModelChoice.STRIP));
        Outcome pitch = Flight.fly(Demo.plan(craft, launch, 33, 0, Axes.PITCH));
        for (Axes axes : new Axes[] {Axes.PITCH_YAW, Axes.ALL}) {
            Outcome outcome = Flight.fly(Demo.plan(craft, launch, 33, 0, axes));
            assertThat(outcome.top().height()).isCloseTo(pitch.top().height(), within(2e-3));
            assertThat(outcome.top().course().drift()).isCloseTo(0, within(1e-3));
            assertThat(outcome.top().course().rolled()).isCloseTo(0, within(1e-4));
        }
    }

    /** The roll that is told is the roll rate summed up: the log, by another rule and other steps, says the same. */
    @Test
    void the_roll_after_release_is_that_of_the_log() {
        FlightLog log = new FlightLog();
        Outcome outcome =
                Flight.fly(Demo.plan(craft(Demo.GLIDER, ModelChoice.STRIP), banked(Hand.RIGHT), 33, 12, Axes.ALL), log);
        double most = 0;
        for (FlightLog.Row row : log.rows()) {
            boolean further = row.time() <= 1 && Math.abs(row.side().rolled()) > Math.abs(most);
            most = further ? row.side().rolled() : most;
        }
        assertThat(outcome.top().course().rolled()).isCloseTo(most, within(0.005));
        FlightLog.Row top = log.rows().get((int) Math.round(outcome.top().time() / FlightLog.INTERVAL));
        assertThat(top.side().drift()).isCloseTo(outcome.top().course().drift(), within(0.1));
    }

    private static Launch banked(Hand hand) {
        Launch l = Demo.launch(hand, Demo.CALM);
        return new Launch(
                l.name(),
                l.thrower(),
                l.preset(),
                l.climbAngle(),
                l.pushOver(),
                l.releaseHeight(),
                l.releaseClimb(),
                Math.toRadians(8),
                l.weather());
    }

    /** Second differences over a cut in steps of a millimetre, all held together but for the cut. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 20})
    void a_sweep_is_smooth_in_the_whole_motion(double rate) {
        double[] before = null;
        double[] last = null;
        double cg = MassProperties.of(Demo.GLIDER).cg().x();
        CgSetting sameCg = new CgSetting(cg, List.of(CgSetting.Means.BATTERY, CgSetting.Means.NOSE_LEAD));
        for (int millimetres = 30; millimetres < 44; millimetres++) {
            Glider cut = sameCg.apply(BoomCut.atRearEnd(millimetres * 1e-3, 0).apply(Demo.GLIDER));
            Outcome outcome = Flight.fly(plan(craft(cut, ModelChoice.STRIP), rate, Axes.ALL));
            double[] heights = {outcome.top().height(), outcome.settled().height()};
            for (int i = 0; i < 2 && before != null; i++) {
                assertThat(heights[i] - 2 * last[i] + before[i])
                        .as("number %d at %d mm", i, millimetres)
                        .isCloseTo(0, within(0.003));
            }
            before = last;
            last = heights;
        }
    }

    /** The full spin turns the launch off by more than a right angle: the pilot still sees the horizon. */
    @Test
    void a_launch_that_turns_off_far_settles() {
        Outcome outcome = Flight.fly(plan(craft(Demo.GLIDER, ModelChoice.STRIP), 20, Axes.ALL));
        assertThat(Math.abs(outcome.top().course().heading())).isGreaterThan(Math.toRadians(90));
        assertThat(outcome.settled().ticked()).isTrue();
        assertThat(outcome.settled().transitionLoss()).isCloseTo(0, within(0.3));
    }

    @Test
    void each_control_can_be_left_alone() {
        FlightPlan plan = plan(craft(Demo.GLIDER, ModelChoice.STRIP), 8, Axes.ALL);
        double all = Flight.fly(plan).settled().height();
        double noAileron = Flight.fly(plan.withSteering(new Steering(true, true, false)))
                .settled()
                .height();
        double noRudder = Flight.fly(plan.withSteering(new Steering(true, false, true)))
                .settled()
                .height();
        assertThat(noAileron).isNotEqualTo(all);
        assertThat(noRudder).isNotEqualTo(all);
        // hands off, with the elevator where it trims the glide, a launch goes over on its back
        assertThat(Flight.fly(plan.withSteering(Steering.NONE)).ended()).isEqualTo(Ended.INVERTED);
    }

    /** A release with the held tip low or high and no controls but the elevator turns out of the plane of the throw. */
    @Test
    void bank_at_release_costs_height() {
        Craft craft = craft(Demo.GLIDER, ModelChoice.STRIP);
        double level = Flight.fly(plan(craft, 8, Axes.ALL)).top().height();
        double banked = Flight.fly(Demo.plan(craft, banked(Hand.RIGHT), 33, 8, Axes.ALL))
                .top()
                .height();
        assertThat(Math.abs(banked - level)).isBetween(0.01, 3.0);
    }
}
