package org.sawfly.cli.answer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.file.LogFile;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Scenario;
import org.sawfly.study.Result;
import org.sawfly.study.Uncertainties;
import org.sawfly.study.Workbench;
import org.sawfly.study.log.Calibrated;
import org.sawfly.study.log.Calibration;
import org.sawfly.study.log.FlightModel;
import org.sawfly.study.log.GlideSink;
import org.sawfly.study.log.LoggedLaunch;
import org.sawfly.study.statistics.Verdict;
import org.sawfly.study.statistics.Verdict.Launched;

/** Every number that the answers about logs show is in their JSON. */
class LogAnswersTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final Path BEFORE = SCENARIOS.resolve("logs/plover-before.csv");
    private static final Path AFTER = SCENARIOS.resolve("logs/plover-after.csv");

    private static VerdictAnswer.Side side(String name, Path log, int most, int first, double windier) {
        List<LoggedLaunch> found = LoggedLaunch.of(LogFile.read(List.of(log)).get(0));
        List<VerdictAnswer.Entry> entries = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            double time = first < 0 ? Double.NaN : first + 2 * i;
            double wind = windier < 0 ? Double.NaN : windier + i % 3;
            entries.add(new VerdictAnswer.Entry(
                    found.get(i), new Launched(found.get(i).height(), time, wind)));
        }
        return new VerdictAnswer.Side(name, List.of(log.toString()), entries);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 8})
    void ofAVerdict(int launches) {
        for (int first : new int[] {-1, 0, 50}) {
            for (double windier : new double[] {-1, 0.5}) {
                VerdictAnswer.Side a = side("A", BEFORE, launches, first, windier);
                VerdictAnswer.Side b = side("B", AFTER, launches, first < 0 ? -1 : 1, windier < 0 ? -1 : 1);
                TextNumbers.assertAllInJson(VerdictAnswer.of(a, b, Verdict.of(a.launched(), b.launched())));
                TextNumbers.assertAllInJson(VerdictAnswer.of(b, a, Verdict.of(b.launched(), a.launched())));
            }
        }
        VerdictAnswer.Side a = side("A", BEFORE, launches, 0, -1);
        TextNumbers.assertAllInJson(VerdictAnswer.of(a, a, Verdict.of(a.launched(), a.launched())));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void ofACalibration(boolean gliding) {
        ScenarioFile file = ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
        Workbench bench = new Workbench();
        Scenario scenario = file.with(List.of());
        Result result = bench.answer(scenario);
        FlightModel model = new FlightModel(bench, scenario, result, Uncertainties.USUAL);
        Calibrated fit = new Calibration(model).fit(LogFile.read(List.of(BEFORE)));
        List<GlideSink> sinks = fit.throwsFitted().stream()
                .map(one ->
                        gliding ? GlideSink.of(one.logged().log(), one.logged().launch()) : GlideSink.of(List.of()))
                .toList();
        double height = model.height(fit.meanSpeed().value(), fit.drag().value());
        double wagFree = model.wagFreeSpeed(height, fit.drag().value());
        TextNumbers.assertAllInJson(CalibrateAnswer.of(
                new Case(List.of(), scenario, result),
                List.of(BEFORE),
                new CalibrateAnswer.Found(fit, height, wagFree, sinks),
                Uncertainties.USUAL));
    }
}
