package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.file.ScenarioFile;
import org.sawfly.file.Settings;
import org.sawfly.flight.Scenario;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.statistics.Sample;

class PairedDrawsTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final ScenarioFile PLOVER =
            ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
    private static final Workbench BENCH = new Workbench();
    private static final List<Quantity<Result>> CATALOGUE = List.of(
            ResultQuantities.APEX_HEIGHT,
            ResultQuantities.NOSE_LEAD,
            ResultQuantities.NEUTRAL_POINT,
            ResultQuantities.STATIC_MARGIN);
    private static final List<Setting> CUT = Settings.parse("boom.cut_mm=40,rebalance.keep=margin", "--change");
    private static final List<List<Setting>> VERSIONS = List.of(List.of(), CUT);

    private static PairedDraws run(Draws draws, int threads) {
        return PairedDraws.run(BENCH, PLOVER, VERSIONS, CATALOGUE, draws, SeenInFlight.NOTHING, threads, () -> false);
    }

    /** All of what is usually uncertain. */
    private static final PairedDraws USUAL = run(new Draws(Uncertainties.USUAL, 64, 1), 2);

    private static Uncertainties only(Map<Uncertain, Double> halfWidths) {
        Map<Uncertain, Double> all = new EnumMap<>(Uncertain.class);
        for (Uncertain one : Uncertain.values()) {
            all.put(one, 0.0);
        }
        all.putAll(halfWidths);
        return new Uncertainties(all);
    }

    @Test
    void theUsualHeightIsTheSameInEveryDrawAndTheDifferenceIsNarrow() {
        PairedDraws paired = run(new Draws(PLOVER.uncertainties(), 32, 1), 2);
        assertThat(paired.count()).isEqualTo(32);
        assertThat(paired.missing(0, ResultQuantities.APEX_HEIGHT)).isZero();
        Spread today = paired.value(0, ResultQuantities.APEX_HEIGHT);
        assertThat(today.likely().low()).isCloseTo(41, within(1e-4));
        assertThat(today.likely().high()).isCloseTo(41, within(1e-4));
        Spread neutral = paired.value(0, ResultQuantities.NEUTRAL_POINT);
        assertThat(neutral.likely().high() - neutral.likely().low()).isBetween(4.0, 14.0);
        Spread change = paired.difference(1, ResultQuantities.NEUTRAL_POINT);
        assertThat(change.likely().high() - change.likely().low()).isLessThan(2);
        Spread height = paired.difference(1, ResultQuantities.APEX_HEIGHT);
        assertThat(height.likely().low()).isGreaterThan(-1.5);
        assertThat(height.likely().high()).isLessThan(0.5);
        Spread lead = paired.difference(1, ResultQuantities.NOSE_LEAD);
        assertThat(lead.median()).isBetween(-2.0, 0.0);
        assertThat(paired.differenceReasons(1, ResultQuantities.APEX_HEIGHT)).isNotEmpty();
    }

    @Test
    void anyNumberOfThreadsAndTheSameSeedGiveTheSame() {
        Spread one = run(new Draws(Uncertainties.USUAL, 6, 5), 1).difference(1, ResultQuantities.APEX_HEIGHT);
        Spread three = run(new Draws(Uncertainties.USUAL, 6, 5), 3).difference(1, ResultQuantities.APEX_HEIGHT);
        Spread other = run(new Draws(Uncertainties.USUAL, 6, 6), 2).difference(1, ResultQuantities.APEX_HEIGHT);
        assertThat(one).isEqualTo(three);
        assertThat(other).isNotEqualTo(one);
    }

    @Test
    void withoutUncertaintyThereIsNoRange() {
        PairedDraws paired = run(new Draws(only(Map.of()), 4, 1), 1);
        Spread height = paired.difference(1, ResultQuantities.APEX_HEIGHT);
        double plain = ResultQuantities.APEX_HEIGHT.value(BENCH.answer(PLOVER.with(CUT)))
                - ResultQuantities.APEX_HEIGHT.value(BENCH.answer(PLOVER.with(List.of())));
        assertThat(height.median()).isCloseTo(plain, within(1e-9));
        assertThat(height.likely().high() - height.likely().low()).isZero();
        assertThat(paired.differenceReasons(1, ResultQuantities.APEX_HEIGHT)).isEmpty();
    }

    @Test
    void theOnlyUncertaintyIsTheReason() {
        Draws draws = new Draws(only(Map.of(Uncertain.CG, 0.001)), 32, 1);
        PairedDraws paired = run(draws, 2);
        double[] off = new double[draws.count()];
        for (int i = 0; i < off.length; i++) {
            off[i] = draws.offsets(i)[Uncertain.CG.ordinal()];
        }
        Spread margin = paired.value(0, ResultQuantities.STATIC_MARGIN);
        // a neutral point a millimetre on: the elevator trims elsewhere, so it is not quite a millimetre of margin
        double perMillimetre = (marginAt(1) - marginAt(-1)) / 2;
        double chord = BENCH.answer(PLOVER.with(List.of())).margins().meanChord();
        assertThat(perMillimetre).isBetween(0.08 / chord, 0.11 / chord);
        double expected = 1000
                * perMillimetre
                * (Sample.of(off).quantile(0.95) - Sample.of(off).quantile(0.05));
        assertThat(margin.likely().high() - margin.likely().low()).isCloseTo(expected, within(0.03 * expected));
        assertThat(paired.reasons(0, ResultQuantities.STATIC_MARGIN))
                .first()
                .satisfies(reason -> assertThat(reason.of()).isEqualTo(Uncertain.CG))
                .satisfies(reason -> assertThat(reason.share()).isGreaterThan(0.85));
    }

    private static double marginAt(double millimetres) {
        Setting shift = Setting.of("correction.neutral_point_back_mm", millimetres);
        return ResultQuantities.STATIC_MARGIN.value(BENCH.answer(PLOVER.with(List.of(shift))));
    }

    @Test
    void everyDrawKeepsWhatTheFileSaysAndMultipliesIt() {
        ScenarioFile file = PLOVER;
        List<Setting> version = Settings.parse(
                "correction.drag_pct=120,correction.wing_drag_pct=90,correction.neutral_point_back_mm=2,"
                        + "thrower.first_swing_deg=20,throw_correction.late_s=0.05",
                "--change");
        Draws draws = new Draws(Uncertainties.USUAL, 16, 3);
        Draws.Base base = draws.base(file, version);
        for (int i = 0; i < draws.count(); i++) {
            double[] off = draws.offsets(i);
            Scenario drawn = file.with(base.settings(off));
            assertThat(drawn.corrections().drag().wing())
                    .isCloseTo(1.2 * 0.9 * (1 + off[Uncertain.DRAG.ordinal()]), within(1e-9));
            assertThat(drawn.corrections().drag().tails())
                    .isCloseTo(1.2 * (1 + off[Uncertain.DRAG.ordinal()]), within(1e-9));
            assertThat(drawn.corrections().neutralPointBack())
                    .isCloseTo(
                            0.002 + off[Uncertain.NEUTRAL_POINT.ordinal()] - off[Uncertain.CG.ordinal()], within(1e-9));
            assertThat(drawn.launch().thrower().firstSwing())
                    .isCloseTo(Math.toRadians(20) * (1 + off[Uncertain.FIRST_SWING.ordinal()]), within(1e-9));
            assertThat(drawn.launch().doubts().late()).isCloseTo(0.05 + off[Uncertain.TIMING.ordinal()], within(1e-9));
            assertThat(drawn.launch().doubts().noseOut()).isCloseTo(off[Uncertain.NOSE_OUT.ordinal()], within(1e-9));
        }
    }

    @Test
    void halfWidthsAreThoseOfTheMiddleNineTenths() {
        Draws draws = new Draws(Uncertainties.USUAL, 4096, 2);
        for (Uncertain one : Uncertain.values()) {
            double[] values = new double[draws.count()];
            for (int i = 0; i < values.length; i++) {
                values[i] = draws.offsets(i)[one.ordinal()];
            }
            Sample sample = Sample.of(values);
            // cutting at three deviations draws the ends in by half a percent
            assertThat(sample.quantile(0.95)).as("%s", one).isCloseTo(one.usual(), within(0.02 * one.usual()));
            assertThat(sample.quantile(0.05)).as("%s", one).isCloseTo(-one.usual(), within(0.02 * one.usual()));
            assertThat(sample.quantile(1)).isLessThanOrEqualTo(3.0001 * one.usual() / Draws.NINE_IN_TEN);
        }
    }

    @Test
    void numbersAreFoundByTheirKeys() {
        Draws none = new Draws(only(Map.of()), 1, 1);
        PairedDraws all = PairedDraws.run(
                BENCH, PLOVER, VERSIONS, ResultQuantities.ALL, none, SeenInFlight.NOTHING, 1, () -> false);
        assertThat(all.value(0, ResultQuantities.APEX_HEIGHT).median()).isCloseTo(41, within(1e-4));
    }

    /** The lead follows from parts and neutral point: nothing of the throw may be blamed, whatever chance brings together. */
    @Test
    void reasonsAreNotBorrowed() {
        assertThat(USUAL.differenceReasons(1, ResultQuantities.NOSE_LEAD))
                .isNotEmpty()
                .first()
                // a shift of both neutral points cancels; what the tailplane is worth decides how far a cut moves them
                .satisfies(reason -> assertThat(reason.of()).isEqualTo(Uncertain.TAIL_SLOPE));
        assertThat(USUAL.differenceReasons(1, ResultQuantities.NOSE_LEAD))
                .allSatisfy(reason -> assertThat(reason.of().of()).isEqualTo(Uncertain.Of.MODEL));
    }

    private static PairedDraws seen(SeenInFlight seen) {
        Draws draws = new Draws(Uncertainties.USUAL, 64, 1);
        return PairedDraws.run(BENCH, PLOVER, VERSIONS, CATALOGUE, draws, seen, 2, () -> false);
    }

    @Test
    void whatWasSeenInFlightNarrowsRanges() {
        SeenInFlight dive = new SeenInFlight(Double.NaN, SeenInFlight.Dive.PULLS_OUT_GENTLY, Double.NaN);
        PairedDraws gently = seen(dive);
        assertThat(USUAL.count()).isEqualTo(64);
        assertThat(gently.heeded()).isTrue();
        assertThat(gently.drawn()).isEqualTo(64);
        assertThat(gently.count()).isEqualTo(gently.agreeing()).isBetween(25, 63);
        assertThat(width(gently)).isLessThan(0.95 * width(USUAL));
    }

    @Test
    void whatContradictsTheFileIsLeftAside() {
        PairedDraws paired = seen(new SeenInFlight(Double.NaN, null, 1.5));
        assertThat(paired.heeded()).isFalse();
        assertThat(paired.agreeing()).isZero();
        assertThat(paired.count()).isEqualTo(64);
    }

    private static double width(PairedDraws paired) {
        Spread margin = paired.value(0, ResultQuantities.STATIC_MARGIN);
        return margin.likely().high() - margin.likely().low();
    }

    @Test
    void whatWasNotDrawnIsNotAnswered() {
        PairedDraws paired = run(new Draws(only(Map.of()), 1, 1), 1);
        assertThatThrownBy(() -> paired.value(0, ResultQuantities.IYY)).isInstanceOf(IllegalArgumentException.class);
    }
}
