package org.sawfly.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.sawfly.cli.Runs;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Scenario;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.strength.BoomStrength;
import org.sawfly.strength.ControlLoads;
import org.sawfly.strength.TailEffectiveness;
import org.sawfly.study.Answered;
import org.sawfly.study.Axis;
import org.sawfly.study.BoomLook;
import org.sawfly.study.Compare;
import org.sawfly.study.Draws;
import org.sawfly.study.Knob;
import org.sawfly.study.Limit;
import org.sawfly.study.Optimiser;
import org.sawfly.study.PairedDraws;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Scenarios;
import org.sawfly.study.SeenInFlight;
import org.sawfly.study.Sensitivity;
import org.sawfly.study.Setting;
import org.sawfly.study.SoftBoom;
import org.sawfly.study.Squareness;
import org.sawfly.study.StopWhen;
import org.sawfly.study.Straying;
import org.sawfly.study.Throws;
import org.sawfly.study.TryFirst;
import org.sawfly.study.Tune;
import org.sawfly.study.Tuned;
import org.sawfly.study.Vary;
import org.sawfly.study.Workbench;

/** What compare and vary say: every number also in JSON, and the grams add up as printed. */
class CommandAnswersTest {
    private static final Pattern GRAMS = Pattern.compile("([0-9.]+) (out|in)[,.]");

    private final Workbench bench = new Workbench();
    private final ScenarioFile plover =
            ScenarioFile.open(Path.of(Runs.scenario("plover.yaml")), Path.of(Runs.scenario("club.yaml")));

    private Answer compared(String label, List<Setting> changes) {
        return compared(label, changes, 0);
    }

    private Answer compared(String label, List<Setting> changes, int draws) {
        List<Setting> all = new ArrayList<>(changes);
        all.add(new Setting("rebalance.keep", "margin"));
        all.add(new Setting("rebalance.with", "[nose_lead]"));
        Result today = bench.answer(plover.with(List.of()));
        Scenario scenario = plover.with(all);
        Answered answered =
                Compare.run(bench, plover, java.util.Map.of(label, all)).get(label);
        Version version = new Version(label, changes, scenario.rebalance(), answered, TryFirst.of(bench, scenario));
        return CompareAnswer.of(
                new CompareAnswer.Asked(ChangeWords.of(changes), scenario),
                today,
                List.of(version),
                Map.of(),
                draws == 0 ? null : sure(List.of(all), draws));
    }

    private HowSure sure(List<List<Setting>> versions, int draws) {
        List<List<Setting>> all = new ArrayList<>(List.of(List.of()));
        all.addAll(versions);
        return new HowSure(
                PairedDraws.run(
                        bench,
                        plover,
                        all,
                        HowSure.TOLD,
                        new Draws(plover.uncertainties(), draws, 3),
                        SeenInFlight.NOTHING,
                        2,
                        () -> false),
                3);
    }

    @Test
    void everyNumberOfARangeIsInJson() {
        TextNumbers.assertAllInJson(compared("cut 40", List.of(new Setting("boom.cut_mm", "40")), 24));
        TextNumbers.assertAllInJson(compared("fin x 1.4", List.of(new Setting("fin.scale_area", "1.4")), 24));
    }

    @Test
    void everyNumberOfACompareIsInJson() {
        TextNumbers.assertAllInJson(compared("cut 40", List.of(new Setting("boom.cut_mm", "40"))));
        TextNumbers.assertAllInJson(compared("fin x 1.2", List.of(new Setting("fin.scale_area", "1.2"))));
    }

    @Test
    void everyNumberOfBoomAndToleranceIsInJson() {
        Scenario scenario = plover.with(List.of());
        Result result = bench.answer(scenario);
        List<Setting> changes = List.of(new Setting("boom.splice.behind_mm", "430"));
        Result changed = bench.answer(plover.with(changes));
        BoomLook look = BoomLook.of(changed);
        List<TailEffectiveness> tails = new ArrayList<>();
        for (double speed = 0; speed < 50; speed += 10) {
            tails.add(look.effectiveness(scenario.corrections(), bench.models(), speed));
        }
        TextNumbers.assertAllInJson(BoomAnswer.of(
                new Case(changes, plover.with(changes), changed),
                new BoomAnswer.Looked(
                        look,
                        BoomLook.of(result),
                        BoomStrength.limit(changed.plan()),
                        SoftBoom.of(bench, plover.with(changes), changed),
                        tails,
                        tails)));
        List<Sensitivity> errors = new Squareness(bench, scenario, result).all(0.5, 0.01, 2);
        TextNumbers.assertAllInJson(
                ToleranceAnswer.of(new Case(List.of(), scenario, result), errors, Straying.all(bench, scenario, 2)));
    }

    @Test
    void everyNumberOfATuningIsInJson() {
        Case today = new Case(List.of(), plover.with(List.of()), bench.answer(plover.with(List.of())));
        Tune.Aim aim = new Tune.Aim(ResultQuantities.SETTLED_HEIGHT, 0.2);
        List<Limit> limits = List.of(new Limit(ResultQuantities.STATIC_MARGIN, new Band(2.5, 12)));
        Tuned tuned = new Tune(bench, plover, List.of(), aim, limits)
                .run(List.of(new Knob("climb_deg", "climb", 60, 50, 70)), Optimiser.smooth(20));
        TextNumbers.assertAllInJson(
                TuneAnswer.of(today, new TuneAnswer.Asked(aim, limits, plover::valueToday, true), tuned));
    }

    @Test
    void everyNumberOfASheetIsInJson() {
        Result today = bench.answer(plover.with(List.of()));
        for (Setting change : List.of(
                new Setting("boom.cut_mm", "40"),
                new Setting("boom.splice", "{behind_mm: 430, takes_out_mm: 20}"),
                new Setting("boom.wrap", "{behind_mm: 430}"))) {
            List<Setting> changes = List.of(change);
            Scenario scenario = plover.with(changes);
            Answered answered =
                    Compare.run(bench, plover, java.util.Map.of("it", changes)).get("it");
            Version version = new Version("it", changes, scenario.rebalance(), answered, java.util.Optional.empty());
            Result result = answered.result();
            SheetAnswer.Controls controls = new SheetAnswer.Controls(
                    ControlLoads.atRelease(result.plan()),
                    ControlLoads.gliding(
                            result.plan().craft(),
                            result.plan().launch().weather().ground(),
                            12));
            TextNumbers.assertAllInJson(SheetAnswer.of(today, version, BoomLook.of(today), controls));
        }
    }

    @Test
    void theGramsAddUpAsPrinted() {
        for (int cut = 5; cut <= 80; cut += 5) {
            Answer answer = compared("cut", List.of(new Setting("boom.cut_mm", String.valueOf(cut))));
            String text = TextWriter.write(answer).replace("\n  ", " ");
            String grams = text.substring(text.indexOf("The grams:"), text.indexOf("Half a gram"));
            double sum = 0;
            Matcher matcher = GRAMS.matcher(grams);
            while (matcher.find()) {
                double amount = Double.parseDouble(matcher.group(1));
                sum += matcher.group(2).equals("in") ? amount : -amount;
            }
            Fields change = answer.results().section("changes").section("cut");
            double printed = (Double) change.entries().get("mass_g");
            assertThat(Numbers.rounded(sum, 3)).as("cut %d: %s", cut, grams).isEqualTo(printed);
        }
    }

    @Test
    void everyNumberOfASweepIsInJson() {
        TextNumbers.assertAllInJson(varied("boom.cut_mm", List.of(0.0, 20.0, 40.0, 60.0), 0));
        TextNumbers.assertAllInJson(varied("ready_to_fly.cg_mm", List.of(62.0, 70.0, 74.0), 69));
    }

    @Test
    void everyNumberOfASweepWithRangesIsInJson() {
        TextNumbers.assertAllInJson(varied("ready_to_fly.cg_mm", List.of(64.0, 70.0, 74.0), 69, 20));
    }

    @Test
    void everyNumberOfManyThrowsIsInJson() {
        Scenario scenario = plover.with(List.of());
        Case today = new Case(List.of(), scenario, bench.answer(scenario));
        List<Setting> forward = List.of(new Setting("ready_to_fly.cg_mm", "62"));
        Case version = new Case(forward, plover.with(forward), bench.answer(plover.with(forward)));
        Throws.Drawn drawn = new Throws.Drawn(32, 2, 2);
        Throws now = Throws.of(today.result(), plover.throwScatter(List.of()), drawn);
        Throws then = Throws.of(version.result(), now.deviations(), drawn);
        TextNumbers.assertAllInJson(ScatterAnswer.of(new ScatterAnswer.Asked(today, today, 2, false), now, null));
        TextNumbers.assertAllInJson(ScatterAnswer.of(new ScatterAnswer.Asked(today, version, 2, false), now, then));
    }

    @Test
    void aSweepFreeToRollSaysWhereTheLaunchGoes() {
        List<Setting> free = List.of(new Setting("axes", "all"), new Setting("model", "strip"));
        Scenarios scenarios = settings -> {
            List<Setting> all = new ArrayList<>(free);
            all.addAll(settings);
            return plover.with(all);
        };
        List<Double> values = List.of(0.8, 1.0, 1.2);
        Vary vary = new Vary(bench, scenarios, List.of(new Axis("fin.scale_area", values)));
        VaryRows rows = new VaryRows(vary.rows());
        vary.run(2, 0, row -> rows.add(VaryRow.of(row, null)), () -> false);
        VaryAnswer.Asked asked = new VaryAnswer.Asked(
                "plover",
                List.of(new VariedAxis("fin.scale_area", values, "3 values", 1)),
                StopWhen.NEVER,
                scenarios.with(List.of()));
        Answer answer = VaryAnswer.of(asked, rows, bench.answer(scenarios.with(List.of())), null);
        TextNumbers.assertAllInJson(answer);
        assertThat(TextNumbers.textWithoutCautions(answer)).contains("leans", " L ", "to the left");
    }

    private Answer varied(String path, List<Double> values, double today) {
        return varied(path, values, today, 0);
    }

    private Answer varied(String path, List<Double> values, double today, int draws) {
        Axis axis = new Axis(path, values);
        Vary vary = new Vary(bench, plover, List.of(axis));
        VaryRows rows = new VaryRows(vary.rows());
        HowSure sure = draws == 0
                ? null
                : sure(IntStream.range(0, vary.rows()).mapToObj(vary::settings).toList(), draws);
        vary.run(2, 0, row -> rows.add(VaryRow.of(row, sure)), () -> false);
        Scenario scenario = plover.with(List.of(Setting.of(path, values.get(0))));
        StopWhen stop = new StopWhen(0.03, Double.NaN, 0.02, Math.toRadians(25));
        VaryAnswer.Asked asked = new VaryAnswer.Asked(
                "plover", List.of(new VariedAxis(path, values, values.size() + " values", today)), stop, scenario);
        return VaryAnswer.of(asked, rows, bench.answer(plover.with(List.of())), sure);
    }

    @Test
    void rowsReadBackFromTheirLine() {
        Vary vary = new Vary(bench, plover, List.of(new Axis("boom.cut_mm", List.of(0.0, 12.5))));
        vary.run(
                1,
                0,
                row -> {
                    VaryRow made = VaryRow.of(row, null);
                    assertThat(VaryRow.parse(
                                    Rows.csvLine(made.cells()), 1, made.cells().size()))
                            .isEqualTo(made);
                },
                () -> false);
        VaryRow none = new VaryRow(List.of(3.0), "no, \"none\" of it", false, new double[made()]);
        assertThat(VaryRow.parse(Rows.csvLine(none.cells()), 1, none.cells().size()))
                .isEqualTo(none);
        assertThat(VaryRow.parse("1,settled\n", 1, none.cells().size())).isNull();
    }

    private static int made() {
        return org.sawfly.study.ResultQuantities.ALL.size();
    }
}
