package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.DragFactors;
import org.sawfly.aero.Loss;
import org.sawfly.glider.Hand;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.FixedStep;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.StateLayout;

class FlightTest {
    private static final double FULL_SPIN = 20;

    private static Outcome fly(double speed, double yawRate, Axes axes) {
        return Flight.fly(Demo.plan(speed, yawRate, axes));
    }

    /** Bands for the demo glider: common practice, no source. */
    @Test
    void plainThrowIsPlausible() {
        Outcome outcome = fly(33, 0, Axes.PITCH);
        assertThat(outcome.ended()).isEqualTo(Ended.SETTLED);
        assertThat(outcome.top().height()).isBetween(36.0, 44.0);
        assertThat(outcome.top().time()).isBetween(2.4, 3.4);
        assertThat(outcome.settled().ticked()).isTrue();
    }

    @Test
    void ordinaryWagCostsLittleAndTheFullSpinMuch() {
        double without = fly(33, 0, Axes.PITCH).top().height();
        double rate = ThrowSolver.solve(Demo.plan(33, 0, Axes.PITCH_YAW)).yawRate();
        Outcome ordinary = fly(33, rate, Axes.PITCH_YAW);
        assertThat(Math.toDegrees(ordinary.swing().first())).isBetween(10.0, 20.0);
        assertThat(without - ordinary.top().height()).isBetween(0.3, 1.5);
        double spin = ordinary.release().spin().rate();
        assertThat(spin).isCloseTo(FULL_SPIN, within(0.5));
        Outcome bad = fly(33, spin, Axes.PITCH_YAW);
        assertThat(without - bad.top().height()).isBetween(5.0, 10.0);
    }

    /** The full spin of a throw at speed V is (V - run-up)/R, R = 1.47 m: about 30 rad/s at 47 m/s. */
    @ParameterizedTest
    @CsvSource({"PITCH,0,42", "PITCH_YAW,30,47"})
    void sixtyMetresNeedThisSpeed(Axes axes, double rate, double speed) {
        double low = fly(speed - 3, rate, axes).top().height();
        double high = fly(speed + 3, rate, axes).top().height();
        assertThat(low).isLessThan(60);
        assertThat(high).isGreaterThan(60);
    }

    @ParameterizedTest
    @EnumSource(
            value = Axes.class,
            names = {"PITCH", "PITCH_YAW"})
    void ledgerCloses(Axes axes) {
        for (double rate : new double[] {0, 8, FULL_SPIN}) {
            EnergyLedger ledger = fly(33, rate, axes).ledger();
            assertThat(ledger.closure()).isCloseTo(0, within(1e-3));
            double sum = ledger.spent().values().stream().mapToDouble(x -> x).sum();
            assertThat(sum + ledger.heightWon() + ledger.speedLeft()).isCloseTo(ledger.start(), within(0.2));
        }
    }

    @Test
    void straightFlightPaysNothingForWag() {
        Outcome outcome = Flight.fly(Demo.plan(33, 0, Axes.PITCH), new FlightLog());
        assertThat(outcome.ledger().wag()).isCloseTo(0, within(0.02));
    }

    @Test
    void wagIsPaidForOverTheStraightFlight() {
        Outcome outcome = Flight.fly(Demo.plan(33, FULL_SPIN, Axes.PITCH_YAW), new FlightLog());
        assertThat(outcome.ledger().wag()).isBetween(10.0, 45.0);
        double straightFin = outcome.ledger().straight().get(Loss.FIN_PROFILE);
        assertThat(outcome.ledger().spent().get(Loss.FIN_PROFILE)).isGreaterThan(3 * straightFin);
    }

    @Test
    void handsMirror() {
        Craft craft = Demo.craft();
        Outcome right = Flight.fly(Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), 33, 8, Axes.PITCH_YAW));
        Craft other = Demo.craft(Mirror.of(Demo.GLIDER), Corrections.NONE);
        Outcome left = Flight.fly(Demo.plan(other, Demo.launch(Hand.LEFT, Demo.CALM), 33, 8, Axes.PITCH_YAW));
        assertThat(left.release().beta()).isCloseTo(-right.release().beta(), within(1e-12));
        assertThat(right.release().beta())
                .as("a right-hander's nose points outward, to the right")
                .isNegative();
        assertThat(left.top().height()).isCloseTo(right.top().height(), within(1e-9));
        assertThat(left.settled().height()).isCloseTo(right.settled().height(), within(1e-9));
        assertThat(left.swing().first()).isCloseTo(right.swing().first(), within(1e-9));
    }

    @Test
    void fixedAndAdaptiveStepsAgree() {
        FlightPlan plan = Demo.plan(33, 8, Axes.PITCH_YAW);
        Outcome adaptive = Flight.fly(plan);
        Outcome fixed = Flight.fly(new FlightPlan(
                plan.craft(),
                plan.launch(),
                plan.releaseSpeed(),
                plan.yawRate(),
                plan.presetElevator(),
                plan.axes(),
                () -> new FixedStep(FixedStep.USUAL_STEP, 100_000)));
        assertThat(fixed.top().height()).isCloseTo(adaptive.top().height(), within(0.02));
        assertThat(fixed.settled().height()).isCloseTo(adaptive.settled().height(), within(0.02));
    }

    /** Sensitivities a pilot would find plausible, within a factor 1.5: common practice, no source. */
    @Test
    void aMetreASecondIsTwoMetres() {
        double more = fly(34, 0, Axes.PITCH).top().height()
                - fly(33, 0, Axes.PITCH).top().height();
        assertThat(more).isBetween(2 / 1.5, 2 * 1.5);
    }

    @Test
    void headwindLiftsTheLaunch() {
        Weather windy = new Weather(1, 0, 288.15, 0);
        double calm = fly(33, 0, Axes.PITCH).top().height();
        Outcome outcome = Flight.fly(Demo.plan(Demo.craft(), Demo.launch(Hand.RIGHT, windy), 33, 0, Axes.PITCH));
        assertThat(outcome.top().height() - calm).isBetween(2 / 1.5, 2 * 1.5);
        assertThat(outcome.ledger().closure()).isCloseTo(0, within(1e-3));
    }

    @Test
    void tenPercentMoreProfileDragCostsAMetre() {
        Corrections more = new Corrections(new DragFactors(1.1, 1.1, 1, 1), 1, 1, 1, 1, 1, 0);
        Craft craft = Demo.craft(Demo.GLIDER, more);
        FlightPlan plan = Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), 34.5, 0, Axes.PITCH);
        double lost =
                fly(34.5, 0, Axes.PITCH).top().height() - Flight.fly(plan).top().height();
        assertThat(lost).isBetween(1 / 1.5, 1.5);
    }

    @Test
    void throwIsWorkedOutFromWhatWasSeen() {
        FlightPlan plan = Demo.plan(33, 0, Axes.PITCH_YAW);
        ThrowReference reference = ThrowSolver.solve(plan);
        Outcome seen = Flight.fly(plan.withRelease(reference.speed(), reference.yawRate()));
        assertThat(seen.top().height()).isCloseTo(41, within(1e-4));
        assertThat(Math.toDegrees(seen.swing().first())).isCloseTo(15, within(1e-3));
        assertThat(reference.speedOf(plan.craft(), plan.launch())).isCloseTo(reference.speed(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 3, 8, 15, 60, 100, 300})
    void anyReleaseEndsWithAReasonOrAnAnswer(double speed) {
        for (Axes axes : new Axes[] {Axes.PITCH, Axes.PITCH_YAW}) {
            Outcome outcome = fly(speed, 8, axes);
            if (outcome.ended() == Ended.SETTLED) {
                assertThat(outcome.settled().height()).isFinite();
                assertThat(outcome.top().height()).isFinite();
            } else {
                assertThat(outcome.settled().height()).isNaN();
            }
        }
    }

    /** A push-over so late that the glider stalls at the top is not settled after the usual time, but is 5 s later. */
    @Test
    void theTickIsGivenASecondLook() {
        Launch late = Demo.launch(Hand.RIGHT, Demo.CALM).with(new PushOver(Double.NaN, 2.9));
        Outcome outcome = Flight.fly(Demo.plan(Demo.craft(), late, 33, 0, Axes.PITCH));
        assertThat(outcome.stalledAtTop()).isTrue();
        assertThat(outcome.ended()).isEqualTo(Ended.SETTLED);
        assertThat(outcome.settled().ticked()).isTrue();
        assertThat(outcome.settled().height())
                .isLessThan(fly(33, 0, Axes.PITCH).settled().height() - 0.3);
    }

    /** Elevator down at the preset bends the path down again before the pilot pulls up: the top comes after that. */
    @Test
    void theTopIsTheHighestEndOfAClimb() {
        Launch plain = Demo.launch(Hand.RIGHT, Demo.CALM);
        Launch high = plain.with(new ReleasePath(15, plain.releaseClimb(), 0));
        FlightPlan down = new FlightPlan(Demo.craft(), high, 33, 0, 0.06, Axes.PITCH, Adaptive::usual);
        double[] dip = {Double.NaN};
        double[] highest = {0};
        double[] state = new double[StateLayout.SIZE];
        double[] rotation = new double[9];
        Flight.watch(down, step -> {
            step.at(step.end(), state);
            Kinematics.rotation(state, rotation);
            if (Double.isNaN(dip[0]) && Kinematics.climbRate(state, rotation) < 0) {
                dip[0] = step.end();
            }
            highest[0] = Math.max(highest[0], Kinematics.height(state));
        });
        Outcome outcome = Flight.fly(down);
        assertThat(outcome.top().time()).isGreaterThan(dip[0] + 1);
        assertThat(outcome.top().height()).isBetween(highest[0], highest[0] + 0.2);
    }

    @Test
    void droppedGliderHitsTheGround() {
        assertThat(fly(0, 0, Axes.PITCH).ended()).isEqualTo(Ended.GROUND);
    }
}
