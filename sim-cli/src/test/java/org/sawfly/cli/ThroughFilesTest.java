package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Deflections;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Setting;
import org.sawfly.study.Workbench;

/** The main job from the demo files to its numbers: what has to hold of any cut, and what a builder would find plausible. */
class ThroughFilesTest {
    private static final Workbench BENCH = new Workbench();
    private static final ScenarioFile PLOVER = open("plover.yaml");
    private static final Result TODAY = answer();
    private static final String LEAD_ONLY = "rebalance.with=[nose_lead]";

    @TempDir
    private Path folder;

    private static ScenarioFile open(String name) {
        return ScenarioFile.open(Path.of(Runs.scenario(name)), Path.of(Runs.scenario("club.yaml")));
    }

    private static Result answer(String... settings) {
        return answer(PLOVER, settings);
    }

    private static Result answer(ScenarioFile file, String... settings) {
        List<Setting> all = new ArrayList<>();
        for (String setting : settings) {
            int equals = setting.indexOf('=');
            all.add(new Setting(setting.substring(0, equals), setting.substring(equals + 1)));
        }
        return BENCH.answer(file.with(all));
    }

    private static double change(Quantity<Result> quantity, Result to) {
        return quantity.value(to) - quantity.value(TODAY);
    }

    @Test
    void keepingRestoresWhatIsKept() {
        Result cg = answer("boom.cut_mm=40", "rebalance.keep=cg", LEAD_ONLY);
        assertThat(change(ResultQuantities.CG, cg)).isCloseTo(0, within(0.01));
        Result margin = answer("boom.cut_mm=40", "rebalance.keep=margin", LEAD_ONLY);
        assertThat(change(ResultQuantities.STATIC_MARGIN, margin)).isCloseTo(0, within(0.01));
        Result battery = answer("boom.cut_mm=5", "rebalance.keep=cg", "rebalance.with=[battery]", "cut.joint_g=0");
        assertThat(change(ResultQuantities.CG, battery)).isCloseTo(0, within(0.01));
        assertThat(change(ResultQuantities.NOSE_LEAD, battery)).isZero();
    }

    @Test
    void aShortCutNeedsMoreLeadForItsJoint() {
        Result cut = answer("boom.cut_mm=10", "rebalance.keep=margin", LEAD_ONLY, "cut.joint_g=0.5");
        assertThat(change(ResultQuantities.NOSE_LEAD, cut)).isPositive();
        Result bare = answer("boom.cut_mm=10", "rebalance.keep=margin", LEAD_ONLY, "cut.joint_g=0");
        assertThat(change(ResultQuantities.NOSE_LEAD, bare)).isNegative();
    }

    /** Common practice, no source: a gram at the tail costs 2 to 2.5 g of nose lead; within a factor 1.5. */
    @Test
    void aGramAtTheTailCostsItsLead() {
        Result heavier = answer("fin.mass_g=7.9", "rebalance.keep=cg", LEAD_ONLY);
        assertThat(change(ResultQuantities.NOSE_LEAD, heavier)).isBetween(2 / 1.5, 2.5 * 1.5);
    }

    /** Common practice, no source: 100 mm off the boom; within a factor 1.5. */
    @Test
    void aHundredMillimetresTakeTheirShare() {
        Result cut = answer("boom.cut_mm=100", "rebalance.keep=margin", LEAD_ONLY);
        assertThat(lost(r -> r.volumes().horizontal(), cut)).isBetween(0.16 / 1.5, 0.16 * 1.5);
        assertThat(lost(r -> r.volumes().vertical(), cut)).isBetween(0.15 / 1.5, 0.15 * 1.5);
        assertThat(lost(r -> r.feel().pitchDamping(), cut)).isBetween(0.30 / 1.5, 0.30 * 1.5);
        assertThat(lost(r -> r.feel().yawDamping(), cut)).isBetween(0.30 / 1.5, 0.30 * 1.5);
    }

    private static double lost(ToDoubleFunction<Result> of, Result to) {
        return 1 - of.applyAsDouble(to) / of.applyAsDouble(TODAY);
    }

    @Test
    void sweepsAreSmooth() {
        double[] joints = {0, 0.5};
        for (double joint : joints) {
            // without a joint from no cut at all; with one from the first cut on, since no cut has no joint
            int from = joint == 0 ? 0 : 1;
            List<Double> top = new ArrayList<>();
            List<Double> settled = new ArrayList<>();
            for (int cut = from; cut <= 80; cut++) {
                Result result =
                        answer("boom.cut_mm=" + cut, "rebalance.keep=margin", LEAD_ONLY, "cut.joint_g=" + joint);
                top.add(result.outcome().top().height());
                settled.add(result.outcome().settled().height());
            }
            assertThat(roughness(top)).isLessThan(0.003);
            assertThat(roughness(settled)).isLessThan(0.003);
        }
    }

    private static double roughness(List<Double> values) {
        double most = 0;
        for (int i = 2; i < values.size(); i++) {
            most = Math.max(most, Math.abs(values.get(i) - 2 * values.get(i - 1) + values.get(i - 2)));
        }
        return most;
    }

    @Test
    void tenNumbersSayTheSameOfTheLeadAsTheWholeFile() {
        assertThat(ResultQuantities.NOSE_LEAD.value(answer(open("plover-ten-numbers.yaml"))))
                .isCloseTo(ResultQuantities.NOSE_LEAD.value(TODAY), within(0.4));
    }

    @Test
    void tenNumbersSayTheSameOfACutAsTheWholeFile() {
        assertThat(ofCut(open("plover-ten-numbers.yaml"))).isCloseTo(ofCut(PLOVER), within(0.1));
    }

    private static double ofCut(ScenarioFile file) {
        return ResultQuantities.APEX_HEIGHT.value(answer(file, "boom.cut_mm=40", "rebalance.keep=margin", LEAD_ONLY))
                - ResultQuantities.APEX_HEIGHT.value(answer(file));
    }

    @Test
    void cuttingTheRearEndEqualsBuildingShort() throws java.io.IOException {
        Result cut = answer("boom.cut_mm=40", "cut.joint_g=0");
        Glider glider = cut.plan().craft().glider();
        Path file = folder.resolve("short.yaml");
        String shorter = PLOVER.written(List.of(), glider, "built short", file);
        Files.writeString(file, shorter);
        Glider built =
                ScenarioFile.open(file, Path.of(Runs.scenario("club.yaml"))).today();
        MassProperties a = MassProperties.of(glider);
        MassProperties b = MassProperties.of(built);
        // the file holds seven digits: a tenth of a milligram, a ten thousandth of a millimetre
        assertThat(b.mass()).isCloseTo(a.mass(), within(1e-7));
        assertThat(b.cg().x()).isCloseTo(a.cg().x(), within(1e-7));
        assertThat(b.inertia().iyy()).isCloseTo(a.inertia().iyy(), within(1e-9));
        assertThat(built.boom().endX()).isCloseTo(PLOVER.today().boom().endX() + 0.040, within(1e-12));
        assertThat(built.tailplane().x()).isCloseTo(PLOVER.today().tailplane().x() + 0.040, within(1e-12));
        assertThat(built.fin().x()).isCloseTo(PLOVER.today().fin().x() + 0.040, within(1e-12));
    }

    /**
     * Plausibility bands of the demo glider (common practice, no source), each version at the preset that is best for it:
     * there the height is flat in the preset, so that what is left is the cut's own doing. At a preset far below the best
     * a shorter glider is pulled up harder by it, which can outweigh the cut.
     */
    @Test
    void aCutAtTheSameMarginCostsLittle() {
        String best = "preset=best_for_each";
        double today = ResultQuantities.APEX_HEIGHT.value(answer(best));
        Result forty = answer("boom.cut_mm=40", "rebalance.keep=margin", LEAD_ONLY, best);
        Result eighty = answer("boom.cut_mm=80", "rebalance.keep=margin", LEAD_ONLY, best);
        assertThat(today - ResultQuantities.APEX_HEIGHT.value(forty))
                .as("40 mm")
                .isBetween(0.0, 0.5);
        assertThat(today - ResultQuantities.APEX_HEIGHT.value(eighty))
                .as("80 mm")
                .isBetween(0.1, 1.1);
    }

    /** The preset is 0.8 mm up from the version's own cruise position, where it is today, or what is best for the version. */
    @Test
    void eachRuleOfThePresetCountsFromItsOwn() {
        String forward = "ready_to_fly.cg_mm=65";
        Result own = answer(forward, "preset=from_new_cruise");
        Result same = answer(forward, "preset=same_surface_position");
        Result best = answer(forward, "preset=best_for_each");
        double chord = own.plan().craft().deflections().elevatorChord();
        double cruise = Deflections.deflection(own.plan().craft().cruise().elevator(), chord);
        double today = Deflections.deflection(TODAY.plan().craft().cruise().elevator(), chord);
        assertThat(today - cruise).as("forward takes up elevator").isGreaterThan(0.0003);
        assertThat(cruise - Deflections.deflection(own.plan().presetElevator(), chord))
                .isCloseTo(0.0008, within(1e-9));
        assertThat(same.plan().presetElevator()).isCloseTo(TODAY.plan().presetElevator(), within(1e-12));
        for (Result other : List.of(own, same)) {
            assertThat(best.outcome().settled().height())
                    .isGreaterThanOrEqualTo(other.outcome().settled().height());
        }
    }

    @Test
    void ledgersCloseOnVersionsToo() {
        for (String change : List.of(
                "boom.cut_mm=80",
                "fin.scale_area=0.75",
                "tailplane.scale_area=0.85",
                "ready_to_fly.cg_mm=62",
                "wing.dihedral_deg=9",
                "air.wind_mps=4",
                "parts.ballast={mass_g: 40, behind_mm: 69}")) {
            assertThat(answer(change).outcome().ledger().closure()).as(change).isCloseTo(0, within(1e-3));
        }
    }

    /** The throw was seen with the preset and in the calm air of the launch file: it stays when these are changed. */
    @Test
    void theThrowIsKeptWhateverIsChangedInTheLaunch() {
        Result preset = answer("preset.elevator_up_mm=0");
        Result climb = answer("climb_deg=60");
        Result wind = answer("air.wind_mps=1");
        for (Result changed : List.of(preset, climb, wind)) {
            assertThat(changed.outcome().release().speed())
                    .isEqualTo(TODAY.outcome().release().speed());
        }
        assertThat(change(ResultQuantities.APEX_HEIGHT, preset)).isLessThan(-0.05);
        assertThat(change(ResultQuantities.APEX_HEIGHT, climb)).isLessThan(-0.05);
        // common practice, no source: 1 m/s of wind against the throw is about 2 m; within a factor 1.5
        assertThat(change(ResultQuantities.APEX_HEIGHT, wind)).isBetween(2 / 1.5, 2 * 1.5);
    }

    @Test
    void usualHeightsAreThoseOfCalmAir() throws java.io.IOException {
        Path windy = folder.resolve("windy.yaml");
        String club = Files.readString(Path.of(Runs.scenario("club.yaml")));
        String plover = Path.of(Runs.scenario("plover.yaml")).toAbsolutePath().toString();
        Files.writeString(windy, club.replace("wind_mps: 0", "wind_mps: 1").replace("plover.yaml", plover));
        Result inWind = answer(ScenarioFile.open(Path.of(plover), windy));
        assertThat(ResultQuantities.APEX_HEIGHT.value(inWind))
                .isCloseTo(ResultQuantities.APEX_HEIGHT.value(answer("air.wind_mps=1")), within(1e-6));
    }

    @Test
    void aPresetBelowTheBestPullsAShorterGliderUpHarder() {
        Result cut = answer("boom.cut_mm=80", "rebalance.keep=margin", LEAD_ONLY);
        assertThat(cut.outcome().maxLoad()).isGreaterThan(TODAY.outcome().maxLoad());
    }
}
