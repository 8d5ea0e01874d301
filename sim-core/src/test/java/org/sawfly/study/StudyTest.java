package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.flight.Demo;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.Scenario;
import org.sawfly.flight.Thrower;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.CgSetting;
import org.sawfly.glider.FinScale;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.motion.Axes;

/** Studies of the demo glider with its changes made in code; through files they are tested with the commands. */
class StudyTest {
    private static final Workbench BENCH = new Workbench();
    private static final String CUT = "cut_mm";
    private static final String FIN = "fin";
    private static final String FULL_SPIN = "full_spin";

    /** 33 m/s over the ground with a full-spin release, or the usual throw of the demo thrower. */
    private static Scenario scenario(List<Setting> settings) {
        Glider glider = Demo.GLIDER;
        Thrower thrower = Demo.thrower(Hand.RIGHT);
        for (Setting setting : settings) {
            double value = Double.parseDouble(setting.value());
            switch (setting.path()) {
                case CUT ->
                    glider = value == 0
                            ? glider
                            : BoomCut.atRearEnd(value / 1000, 0.0005).apply(glider);
                case FIN -> glider = new FinScale(value).apply(glider);
                case FULL_SPIN ->
                    thrower = new Thrower(Hand.RIGHT, Double.NaN, 33, Double.NaN, value, 0.72, 3, 2, 0.75);
                default -> throw new IllegalArgumentException(setting.path());
            }
        }
        var plain = Demo.launch(Hand.RIGHT, Demo.CALM);
        var launch = new org.sawfly.flight.Launch(
                plain.name(),
                thrower,
                plain.preset(),
                plain.climbAngle(),
                plain.pushOver(),
                plain.releaseHeight(),
                plain.releaseClimb(),
                plain.weather());
        return new Scenario(
                glider,
                Demo.GLIDER,
                Demo.GLIDER,
                new RebalanceRule(RebalanceRule.Keep.MARGIN, List.of(CgSetting.Means.NOSE_LEAD), Double.NaN),
                launch,
                Demo.SETTINGS,
                PresetRule.FROM_NEW_CRUISE,
                Corrections.NONE,
                Axes.PITCH_YAW);
    }

    private static double top(Setting... settings) {
        return BENCH.answer(scenario(List.of(settings))).outcome().top().height();
    }

    private static double cost(int cut, Setting... throwing) {
        Setting[] all = java.util.Arrays.copyOf(throwing, throwing.length + 1);
        all[throwing.length] = Setting.of(CUT, cut);
        return top(throwing) - top(all);
    }

    /** Bands for the demo glider at the usual throw, the first swing 15 degrees: common practice, no source. */
    @Test
    void whatACutCosts() {
        assertThat(cost(40)).isBetween(0.0, 0.5);
        assertThat(cost(80)).isBetween(0.1, 1.1);
    }

    /** A bad release makes a shorter boom dearer. */
    @Test
    void aCutCostsMoreAtTheFullSpin() {
        Setting spin = Setting.of(FULL_SPIN, 20);
        assertThat(cost(40, spin)).isGreaterThan(cost(40));
        assertThat(cost(80, spin)).isGreaterThan(cost(80)).isGreaterThan(cost(40, spin));
    }

    /** Bands for the demo glider at 33 m/s and the full spin rate: common practice, no source. */
    @Test
    void whatAFinCostsAtTheFullSpin() {
        Setting spin = Setting.of(FULL_SPIN, 20);
        double today = top(spin);
        assertThat(top(spin, Setting.of(FIN, 1.25)) - today).isBetween(1.4 / 1.5, 1.4 * 1.5);
        assertThat(today - top(spin, Setting.of(FIN, 0.75))).isBetween(2.3 / 1.5, 2.3 * 1.5);
    }

    @Test
    void sweepsAreSmooth() {
        List<Double> tops = new ArrayList<>();
        List<Double> settled = new ArrayList<>();
        for (int cut = 1; cut <= 80; cut++) {
            var outcome = BENCH.answer(scenario(List.of(Setting.of(CUT, cut)))).outcome();
            tops.add(outcome.top().height());
            settled.add(outcome.settled().height());
        }
        assertThat(largestSecondDifference(tops)).isLessThan(0.003);
        assertThat(largestSecondDifference(settled)).isLessThan(0.003);
    }

    private static double largestSecondDifference(List<Double> y) {
        return IntStream.range(1, y.size() - 1)
                .mapToDouble(i -> Math.abs(y.get(i - 1) - 2 * y.get(i) + y.get(i + 1)))
                .max()
                .orElseThrow();
    }

    /** A lighter and a heavier glider from the same arm: common practice, no source. */
    @Test
    void launchHeightIsFlatOverMass() {
        List<Double> tops = new ArrayList<>();
        for (double grams = 220; grams <= 320; grams += 20) {
            double more = grams / 1000 - 0.2314;
            Glider heavier = Demo.GLIDER.withCorrection(
                    new org.sawfly.glider.Correction(more, new org.sawfly.math.Vec3(-0.069 * more, 0, 0)));
            Scenario s = scenario(List.of());
            tops.add(BENCH.answer(new Scenario(
                            heavier,
                            s.today(),
                            s.calibratedWith(),
                            new RebalanceRule(RebalanceRule.Keep.NOTHING, List.of(), Double.NaN),
                            s.launch(),
                            s.settings(),
                            s.presetRule(),
                            s.corrections(),
                            s.axes()))
                    .outcome()
                    .top()
                    .height());
        }
        double spread = tops.stream().mapToDouble(x -> x).max().orElseThrow()
                - tops.stream().mapToDouble(x -> x).min().orElseThrow();
        assertThat(spread).isLessThan(1.5);
    }

    @Test
    void sameRowsForAnyNumberOfThreads() {
        Vary vary = new Vary(
                BENCH,
                StudyTest::scenario,
                List.of(new Axis(CUT, List.of(0.0, 15.0, 30.0, 45.0)), new Axis(FIN, List.of(0.9, 1.1))));
        assertThat(vary.rows()).isEqualTo(8);
        List<List<String>> runs = new ArrayList<>();
        for (int threads : new int[] {1, 2, 5}) {
            List<String> rows = new ArrayList<>();
            vary.run(
                    threads,
                    0,
                    row -> rows.add(row.index() + " " + row.values() + " "
                            + row.answered().result().outcome().top()),
                    () -> false);
            runs.add(rows);
        }
        assertThat(runs.get(1)).isEqualTo(runs.get(0));
        assertThat(runs.get(2)).isEqualTo(runs.get(0));
        assertThat(runs.get(0)).hasSize(8);
    }

    /** Two throws on one bench: the margin at launch is that of each one's own speed, whatever was asked before. */
    @Test
    void theMarginAtLaunchBelongsToTheThrow() {
        Scenario soft = thrown(20);
        Scenario hard = thrown(40);
        Workbench shared = new Workbench();
        double slow = shared.answer(soft).margins().boomHeld();
        double fast = shared.answer(hard).margins().boomHeld();
        assertThat(fast).isEqualTo(BENCH.answer(hard).margins().boomHeld());
        // 1/(1 + q k): 1/held - 1 goes with the square of the speed
        assertThat((1 / fast - 1) / (1 / slow - 1)).isCloseTo(4, within(0.4));
    }

    private static Scenario thrown(double speed) {
        Scenario s = scenario(List.of());
        var l = s.launch();
        var launch = new org.sawfly.flight.Launch(
                l.name(),
                new Thrower(Hand.RIGHT, Double.NaN, speed, Double.NaN, 8, 0.72, 3, 2, 0.75),
                l.preset(),
                l.climbAngle(),
                l.pushOver(),
                l.releaseHeight(),
                l.releaseClimb(),
                l.weather());
        return new Scenario(
                s.glider(),
                s.today(),
                s.calibratedWith(),
                s.rebalance(),
                launch,
                s.settings(),
                s.presetRule(),
                s.corrections(),
                s.axes());
    }

    @Test
    void aRunCanBeStoppedAfterAWholeRow() {
        List<Integer> seen = new ArrayList<>();
        Vary vary = new Vary(BENCH, StudyTest::scenario, List.of(new Axis(CUT, List.of(0.0, 10.0, 20.0, 30.0))));
        vary.run(2, 0, row -> seen.add(row.index()), () -> seen.size() == 2);
        assertThat(seen).containsExactly(0, 1);
    }

    @Test
    void tooManyRowsAreRefusedWithTheirNumber() {
        List<Double> many = java.util.Collections.nCopies(2000, 1.0);
        assertThatThrownBy(
                        () -> new Vary(BENCH, StudyTest::scenario, List.of(new Axis(CUT, many), new Axis(FIN, many))))
                .hasMessageContaining("4000000");
    }

    @Test
    void aVersionThatCannotBeBuiltGivesItsReasonBesideTheOthers() {
        Map<String, Answered> answers = Compare.run(
                BENCH, StudyTest::scenario, Map.of("today", List.of(), "too short", List.of(Setting.of(CUT, 5000))));
        assertThat(answers.get("today").flew()).isTrue();
        assertThat(answers.get("too short").flew()).isFalse();
        assertThat(answers.get("too short").ended()).isNotBlank();
    }

    @Test
    void reliefsAreGainsAndTheWagIsWorthMoreThanATenthOfTheTails() {
        Scenario scenario = scenario(List.of());
        Map<Relief.Of, Double> gains = Relief.gains(BENCH, scenario, BENCH.answer(scenario));
        assertThat(gains.values()).allMatch(gain -> gain > -0.05);
        assertThat(gains.get(Relief.Of.WING_PROFILE)).isBetween(0.3, 1.5);
        assertThat(gains.get(Relief.Of.WAG)).isCloseTo(0.9, within(0.8));
    }
}
