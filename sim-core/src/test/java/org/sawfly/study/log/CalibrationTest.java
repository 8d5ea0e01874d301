package org.sawfly.study.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Scenario;
import org.sawfly.quantity.Band;
import org.sawfly.study.Result;
import org.sawfly.study.Uncertainties;
import org.sawfly.study.Workbench;

class CalibrationTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    static final FlightModel PLOVER = model();
    private static final double[] AS_HELD = new double[PLOVER.held().size()];

    private static FlightModel model() {
        ScenarioFile file = ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
        Workbench bench = new Workbench();
        Scenario scenario = file.with(List.of());
        Result result = bench.answer(scenario);
        return new FlightModel(bench, scenario, result, Uncertainties.USUAL);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 10, 20, 50})
    void withoutNoiseTheThrowComesBack(double rate) {
        HeightLog log = MadeLog.of(
                new DoubleUnaryOperator[] {PLOVER.flight(34, 1.15, AS_HELD), PLOVER.flight(36.5, 1.15, AS_HELD)},
                Calibration.IN_HAND,
                rate,
                0,
                0,
                null);
        Calibrated found = new Calibration(PLOVER).fit(List.of(log));
        assertThat(found.drag().value()).isCloseTo(1.15, within(0.005 * 1.15));
        assertThat(found.throwsFitted()).hasSize(2);
        assertThat(found.throwsFitted().get(0).speed().value()).isCloseTo(34, within(0.005 * 34));
        assertThat(found.throwsFitted().get(1).speed().value()).isCloseTo(36.5, within(0.005 * 36.5));
        assertThat(found.noise()).isLessThan(0.01);
        assertThat(found.skipped()).isEmpty();
    }

    @Test
    void speedAndDragGoTogether() {
        HeightLog log = MadeLog.of(
                new DoubleUnaryOperator[] {PLOVER.flight(35, 1, AS_HELD)}, 1.2, 10, 0.2, 0, new SplittableRandom(4));
        Calibrated found = new Calibration(PLOVER).fit(List.of(log));
        assertThat(found.correlation()).isGreaterThan(0.7);
        assertThat(found.noise()).isCloseTo(0.2, within(0.07));
        Estimate speed = found.throwsFitted().get(0).speed();
        assertThat(speed.carried()).isGreaterThan(0.1);
        double top = PLOVER.height(speed.value(), found.drag().value());
        double wagFree = PLOVER.wagFreeSpeed(top, found.drag().value());
        assertThat(wagFree).isLessThan(speed.value()).isGreaterThan(speed.value() - 3);
    }

    /** With what is held just as it is held, only the noise of the samples is left to be wrong about. */
    @Test
    void noiseAloneIsCoveredAsStated() {
        int cases = 10;
        int inside = 0;
        for (int i = 0; i < cases; i++) {
            SplittableRandom random = new SplittableRandom(100 + i);
            double speed = 31 + 6 * random.nextDouble();
            double drag = 0.85 + 0.3 * random.nextDouble();
            Calibrated found = fit(speed, drag, AS_HELD, Calibration.IN_HAND, 10, random);
            inside += found.drag().withoutHeld().contains(drag) ? 1 : 0;
        }
        assertThat(inside).isBetween(7, 10);
    }

    /** The 200 cases at each rate are run by CalibrationLong; these few are a taste of them. */
    @Test
    void truthLiesWithinTheStatedRange() {
        Coverage coverage = Coverage.of(PLOVER, 10, 8, 7);
        assertThat(coverage.speeds()).as("%s", coverage).isBetween(6, 8);
        assertThat(coverage.drags()).as("%s", coverage).isBetween(6, 8);
    }

    static Calibrated fit(
            double speed, double drag, double[] off, double inHand, double rate, SplittableRandom random) {
        HeightLog log = MadeLog.of(
                new DoubleUnaryOperator[] {PLOVER.flight(speed, drag, off)}, inHand, rate, 0.25, 0.02, random);
        return new Calibration(PLOVER).fit(List.of(log));
    }

    @Test
    void whatCannotBeFittedSaysWhy() {
        Function<double[], HeightLog> still = heights -> {
            double[] times = new double[heights.length];
            for (int i = 0; i < times.length; i++) {
                times[i] = 0.1 * i;
            }
            return new HeightLog("quiet.csv", times, heights);
        };
        assertThatThrownBy(() -> new Calibration(PLOVER).fit(List.of(still.apply(new double[300]))))
                .isInstanceOf(NoFitException.class)
                .hasMessageContaining("no throw in it");
        HeightLog rocket = MadeLog.of(
                new DoubleUnaryOperator[] {t -> Math.max(0, 1.2 + 70 * t - 12 * t * t)}, 1.2, 10, 0, 0, null);
        assertThatThrownBy(() -> new Calibration(PLOVER).fit(List.of(rocket)))
                .isInstanceOf(NoFitException.class)
                .hasMessageContaining("does not look like");
    }

    @Test
    void aHoleInTheClimbLeavesTheThrowOut() {
        HeightLog whole = MadeLog.of(
                new DoubleUnaryOperator[] {PLOVER.flight(35, 1, AS_HELD), PLOVER.flight(35, 1, AS_HELD)},
                1.2,
                10,
                0,
                0,
                null);
        double hole = whole.times()[0] + MadeLog.QUIET + 1.2;
        int[] kept = java.util.stream.IntStream.range(0, whole.times().length)
                .filter(i -> whole.times()[i] < hole || whole.times()[i] > hole + 1.5)
                .toArray();
        double[] times =
                java.util.Arrays.stream(kept).mapToDouble(i -> whole.times()[i]).toArray();
        double[] heights = java.util.Arrays.stream(kept)
                .mapToDouble(i -> whole.heights()[i])
                .toArray();
        Calibrated found = new Calibration(PLOVER).fit(List.of(new HeightLog("holes.csv", times, heights)));
        assertThat(found.throwsFitted()).hasSize(1);
        assertThat(found.skipped()).singleElement().asString().contains("samples are missing in the climb");
    }

    @Test
    void bandsAreOrdered() {
        Estimate estimate = new Estimate(35, 0.2, 0.5, 20, false);
        Band narrow = estimate.withoutHeld();
        assertThat(narrow.high() - 35).isCloseTo(1.7247 * 0.2, within(1e-4));
        assertThat(estimate.likely().high()).isGreaterThan(narrow.high());
        Band factors = new Estimate(2, 0.1, 0.2, 20, true).likely();
        assertThat(factors.low() * factors.high()).isCloseTo(4, within(1e-12));
    }
}
