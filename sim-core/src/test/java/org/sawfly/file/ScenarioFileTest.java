package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.BenchErrors;
import org.sawfly.flight.Launch;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.BoomSleeve;
import org.sawfly.glider.BoomSplice;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.BoomWrap;
import org.sawfly.glider.CgSetting.Means;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.RebalanceRule.Keep;
import org.sawfly.glider.SleeveStock;
import org.sawfly.math.Inertia;
import org.sawfly.study.Setting;

class ScenarioFileTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final ScenarioFile PLOVER =
            ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));

    @TempDir
    private Path folder;

    @Test
    void todayWithoutSettingsIsTheGliderOfTheFile() {
        Scenario scenario = PLOVER.with(List.of());
        assertThat(scenario.glider()).isEqualTo(PLOVER.today());
        assertThat(scenario.today()).isEqualTo(PLOVER.today());
        assertThat(scenario.calibratedWith()).isEqualTo(PLOVER.today());
        assertThat(scenario.rebalance().keep()).isEqualTo(Keep.NOTHING);
        assertThat(scenario.presetRule()).isEqualTo(PresetRule.FROM_NEW_CRUISE);
        assertThat(scenario.launch().thrower().usualHeight()).isEqualTo(41);
        assertThat(scenario.launch().preset().elevatorUp()).isCloseTo(0.0008, within(1e-12));
        assertThat(scenario.settings().cruiseCamber()).isCloseTo(0.001, within(1e-12));
        assertThat(PLOVER.assumed())
                .extracting(Assumed::path)
                .containsOnlyOnce("thrower.arm_mass_kg", "release.height_m");
    }

    @Test
    void onePartMoreMakesNoAssumedPartVanish() {
        ScenarioFile few =
                ScenarioFile.open(SCENARIOS.resolve("plover-ten-numbers.yaml"), SCENARIOS.resolve("club.yaml"));
        double before = MassProperties.of(few.today()).mass();
        Glider ballasted = few.with(Settings.parse("parts.ballast={mass_g: 40, behind_mm: 69}", "--change"))
                .glider();
        assertThat(MassProperties.of(ballasted).mass()).isCloseTo(before + 0.040, within(1e-12));
        Glider heavier =
                few.with(Settings.parse("parts.battery.mass_g=20", "--change")).glider();
        assertThat(MassProperties.of(heavier).mass()).isCloseTo(before + 0.020 - 0.0152, within(1e-12));
        assertThat(heavier.parts().get("battery").place())
                .isEqualTo(few.today().parts().get("battery").place());
    }

    @Test
    void thrownByAnybodyALeftHandersGliderIsHeldAtItsPeg() throws IOException {
        Path glider = folder.resolve("left.yaml");
        String text = Files.readString(SCENARIOS.resolve("plover-ten-numbers.yaml"));
        Files.writeString(glider, text.replace("\nwing:", "\nwing:\n  peg_tip: right"));
        Scenario scenario = ScenarioFile.open(glider, null).with(List.of());
        assertThat(scenario.launch().thrower().hand())
                .isEqualTo(scenario.glider().wing().peg())
                .isNotEqualTo(PLOVER.today().wing().peg());
    }

    @Test
    void aPegThatNoFileTellsOfIsWhereTheThrowerHoldsIt() throws IOException {
        Path few = folder.resolve("few.yaml");
        Files.writeString(few, Files.readString(SCENARIOS.resolve("plover-ten-numbers.yaml")));
        Path club = folder.resolve("club.yaml");
        Files.writeString(
                club,
                Files.readString(SCENARIOS.resolve("club.yaml"))
                        .replaceAll("calibrated_with.*", "calibrated_with: few.yaml")
                        .replace("hand: right", "hand: left"));
        ScenarioFile file = ScenarioFile.open(few, club);
        assertThat(file.with(List.of()).glider().wing().peg()).isEqualTo(Hand.LEFT);
        assertThat(file.today()).isEqualTo(file.with(List.of()).glider());
        Scenario right = file.with(Settings.parse("thrower.hand=right", "--change"));
        assertThat(right.glider().wing().peg()).isEqualTo(Hand.RIGHT);
    }

    @Test
    void cutsTheBoomAsTheGliderPackageDoes() {
        Glider cut = with("boom.cut_mm=40", "rebalance.keep=margin").glider();
        assertThat(cut).isEqualTo(BoomCut.atRearEnd(0.04, 0.0005).apply(PLOVER.today()));
    }

    @Test
    void cutIsDescribedByItsOwnSection() {
        Glider cut = with("boom.cut_mm=40", "cut.at=middle", "cut.behind_mm=430", "cut.joint_g=2")
                .glider();
        assertThat(cut).isEqualTo(new BoomCut(BoomCut.Where.MIDDLE, -0.43, 0.04, 0.002, true).apply(PLOVER.today()));
    }

    @Test
    void mendsTheBoomAsTheGliderPackageDoes() {
        Glider spliced = with("boom.splice.behind_mm=430", "boom.splice.takes_out_mm=20", "boom.splice.glue_g=0.3")
                .glider();
        SleeveStock plug = new SleeveStock(BoomSleeve.Fit.INSIDE, 0.08, 0.0005, 1550, 80e9, 400e6);
        assertThat(spliced).isEqualTo(new BoomSplice(-0.43, 0.02, plug, 0.0003).apply(PLOVER.today()));
        Glider wrapped = with("boom.wrap={behind_mm: 585, length_mm: 60}").glider();
        SleeveStock cloth = new SleeveStock(BoomSleeve.Fit.OUTSIDE, 0.06, 0.0002, 1550, 40e9, 250e6);
        assertThat(wrapped).isEqualTo(new BoomWrap(-0.585, cloth, 0.0002).apply(PLOVER.today()));
        assertThat(BoomTube.of(wrapped.boom()).deflectionOfForce(-0.168, -0.663, -0.663))
                .as("a bend test without the wrap says nothing against it")
                .isLessThan(BoomTube.of(PLOVER.today().boom()).deflectionOfForce(-0.168, -0.663, -0.663));
    }

    @Test
    void aNewBoomNeedsNoBendTest() {
        Glider other =
                with("boom={mass_g: 16, specific_modulus_MNm_per_kg: 75}").glider();
        assertThat(BoomTube.of(other.boom()).specificModulus()).isCloseTo(75e6, within(1e-3));
    }

    @Test
    void aMendedBoomIsWrittenAndReadBack() throws IOException {
        List<Setting> settings = List.of(
                new Setting("boom.splice", "{behind_mm: 430, takes_out_mm: 20}"),
                new Setting(
                        "boom.slots", "{rudder: {from_behind_mm: 600, to_behind_mm: 612, width_mm: 2, side: left}}"),
                new Setting("boom.wall", "{thickness_mm: 0.3, tension_MPa: 700, compression_MPa: 550, shear_MPa: 35}"));
        Glider mended = PLOVER.with(settings).glider();
        Path file = folder.resolve("mended.yaml");
        Files.writeString(file, PLOVER.written(settings, mended, "mended", file));
        Glider back = ScenarioFile.open(file, null).today();
        assertThat(back.boom().build().slots().keySet()).containsExactly("rudder");
        assertThat(back.boom().build().wall()).isEqualTo(mended.boom().build().wall());
        assertThat(BoomTube.of(back.boom()).deflectionOfForce(-0.168, -0.643, -0.643))
                .as("as good as seven digits of lengths and forces make it")
                .isCloseTo(
                        BoomTube.of(mended.boom()).deflectionOfForce(-0.168, -0.643, -0.643), withinPercentage(1e-4));
    }

    @Test
    void aWrittenVersionKeepsWhatWasSwungAndFindsItsTables() throws IOException {
        Path bench = Files.createDirectories(folder.resolve("bench"));
        Path shed = Files.createDirectories(folder.resolve("shed/short"));
        Path tables = Path.of("../airfoil-data/src/main/resources/org/sawfly/airfoil");
        Files.copy(tables.resolve("turnstone.csv"), bench.resolve("my root.csv"));
        Path swung = bench.resolve("swung.yaml");
        Files.writeString(
                swung,
                Files.readString(SCENARIOS.resolve("plover.yaml")).replace("{table: turnstone}", "{table: my root.csv}")
                        + "swings:\n  yaw: {strings_apart_mm: 600, string_length_mm: 1200, period_s: 2.6}\n"
                        + "  roll: {strings_apart_mm: 600, string_length_mm: 1200, period_s: 1.9}\n"
                        + "uncertain: {drag_pct: 5}\n");
        ScenarioFile file = ScenarioFile.open(swung, null);
        List<Setting> settings = List.of(new Setting("boom.cut_mm", "40"));
        Glider cut = file.with(settings).glider();
        Path target = shed.resolve("cut.yaml");
        String text = file.written(settings, cut, "cut", target);
        assertThat(text)
                .contains("../../bench/my root.csv")
                .contains("uncertain:")
                .doesNotContainPattern("[0-9.]{10}");
        Files.writeString(target, text);
        Glider back = ScenarioFile.open(target, null).today();
        Inertia expected = MassProperties.of(cut).inertia();
        Inertia got = MassProperties.of(back).inertia();
        assertThat(MassProperties.of(file.today()).inertia().izz())
                .as("the swing shows more than the parts have")
                .isNotCloseTo(MassProperties.of(PLOVER.today()).inertia().izz(), withinPercentage(1));
        assertThat(got.ixx()).isCloseTo(expected.ixx(), withinPercentage(1e-4));
        assertThat(got.iyy()).isCloseTo(expected.iyy(), withinPercentage(1e-4));
        assertThat(got.izz()).isCloseTo(expected.izz(), withinPercentage(1e-4));
    }

    @Test
    void benchErrorsComeInDegreesOrOnTheRuler() {
        BenchErrors square = PLOVER.with(List.of()).corrections().bench();
        assertThat(square).isEqualTo(BenchErrors.NONE);
        BenchErrors angle = with("bench.fin_skew_deg=0.5").corrections().bench();
        assertThat(angle.finSkew()).isCloseTo(Math.toRadians(0.5), within(1e-12));
        BenchErrors ruler = with("bench.fin_skew_deg=0.5", "bench.fin_skew_mm=-1")
                .corrections()
                .bench();
        assertThat(ruler.finSkew()).as("1 mm over the root chord of 72").isCloseTo(-1 / 72.0, within(1e-12));
    }

    @Test
    void aLighterTailplaneIsNotSwallowedByTheWeighing() {
        Glider lighter = with("tailplane.mass_g=5.2").glider();
        assertThat(MassProperties.of(lighter).mass()).isCloseTo(0.2302, within(1e-9));
        Glider few = ScenarioFile.open(SCENARIOS.resolve("plover-ten-numbers.yaml"), null)
                .with(List.of(new Setting("parts.ballast", "{mass_g: 10, behind_mm: 69}")))
                .glider();
        assertThat(MassProperties.of(few).mass()).isLessThan(0.2414 + 1e-9);
    }

    @Test
    void scaledTailplaneTakesTheMassGivenWithIt() {
        Glider scaled =
                with("tailplane.scale_area=0.85", "tailplane.mass_g=5.2").glider();
        assertThat(scaled.tailplane().mass()).isCloseTo(0.0052, within(1e-12));
        assertThat(scaled.tailplane().planform().area())
                .isCloseTo(0.85 * PLOVER.today().tailplane().planform().area(), within(1e-9));
        Glider byArea = with("tailplane.scale_area=0.85").glider();
        assertThat(byArea.tailplane().mass()).isCloseTo(0.85 * 0.0064, within(1e-12));
    }

    @Test
    void aWantedCgIsARuleOfRebalancing() {
        Scenario scenario = with("ready_to_fly.cg_mm=72", "rebalance.with=[nose_lead]");
        assertThat(scenario.rebalance().keep()).isEqualTo(Keep.CG_AT);
        assertThat(scenario.rebalance().wantedCg()).isCloseTo(0.072, within(1e-12));
        assertThat(scenario.rebalance().with()).containsExactly(Means.NOSE_LEAD);
        assertThat(scenario.glider()).isEqualTo(PLOVER.today());
    }

    @Test
    void anotherBoomTakesTheTailsAlong() {
        Glider longer = with("boom.end_behind_mm=820").glider();
        assertThat(longer.fin().x()).isCloseTo(PLOVER.today().fin().x() - 0.03, within(1e-12));
        assertThat(longer.parts().get("tailplane mount").place().x()).isCloseTo(-0.694, within(1e-12));
    }

    @Test
    void launchCorrectionsAndAirAreSetTheSameWay() {
        Scenario scenario = with(
                "thrower.release_speed_mps=33",
                "air.wind_mps=2",
                "preset.elevator_down_mm=1",
                "correction.drag_pct=110",
                "preset=best_for_each");
        assertThat(scenario.launch().thrower().releaseSpeed()).isEqualTo(33);
        assertThat(scenario.launch().thrower().usualHeight()).isNaN();
        assertThat(scenario.launch().weather().wind()).isEqualTo(2);
        assertThat(scenario.launch().preset().elevatorUp()).isCloseTo(-0.001, within(1e-12));
        assertThat(scenario.corrections().drag().wing()).isCloseTo(1.1, within(1e-12));
        assertThat(scenario.presetRule()).isEqualTo(PresetRule.BEST_FOR_EACH);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boom.cut_mm=900            | boom.cut_mm | too long",
                "boom.cut_mm=-40            | boom.cut_mm | out of range",
                "boom.cut_mm=40mm           | boom.cut_mm | a number is needed",
                "boom.cut=40                | boom.cut | unknown key",
                "stab.area_dm2=2            | stab | unknown key",
                "ready_to_fly.mass_g=250    | ready_to_fly.mass_g | cannot be changed",
                "thrower.release_speed_mps=0   | thrower.release_speed_mps | out of range",
                "thrower.release_speed_mps=300 | thrower.release_speed_mps | out of range",
                "thrower.hand=left          | thrower.hand | holds the right tip",
                "cut.at=middle              | cut.behind_mm | is needed",
                "rebalance.keep=balance     | rebalance.keep | one of nothing, cg, margin",
                "tailplane.scale_area=0     | tailplane.scale_area | out of range",
                "wing.stations=[{out_mm: 0, chord_mm: 1}] | wing.stations[1].chord_mm | out of range",
            })
    void refusesASettingWithTheFilesOwnMessage(String setting, String path, String what) {
        int equals = setting.indexOf('=');
        Setting one = new Setting(setting.substring(0, equals), setting.substring(equals + 1));
        assertThatThrownBy(() -> PLOVER.with(List.of(one)))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems()).anySatisfy(problem -> {
                            assertThat(problem.path()).isEqualTo(path);
                            assertThat(problem.what()).contains(what);
                        }));
    }

    @Test
    void assumedDecalageTrimsTheCruise() {
        ScenarioFile few = ScenarioFile.open(SCENARIOS.resolve("plover-ten-numbers.yaml"), null);
        double decalage = Math.toDegrees(few.today().tailplane().decalage());
        assertThat(few.assumed())
                .extracting(Assumed::path)
                .contains("tailplane.decalage_deg", "thrower.usual_height_m");
        assertThat(decalage).isBetween(-0.5, 3.0);
        assertThat(few.with(List.of(new Setting("boom.cut_mm", "40")))
                        .glider()
                        .tailplane()
                        .decalage())
                .isEqualTo(few.today().tailplane().decalage());
    }

    @Test
    void theDemoThrowerIsTheClubsThrower() {
        Launch demo = ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), null)
                .with(List.of())
                .launch();
        assertThat(demo).isEqualTo(PLOVER.with(List.of()).launch());
    }

    @Test
    void anAssumptionIsWorthWhatTheGliderDoesWithAnother() {
        FileCheck check = FileCheck.of(SCENARIOS.resolve("plover-ten-numbers.yaml"));
        assertThat(check.effects())
                .hasSameSizeAs(check.assumed())
                .containsEntry("boom.wall.tension_MPa", 0.0)
                .hasEntrySatisfying(
                        "tailplane.decalage_deg",
                        metres -> assertThat(metres)
                                .isGreaterThan(0.2)
                                .isGreaterThan(check.effects().get("parts.receiver.ahead_mm")))
                .allSatisfy((path, metres) -> assertThat(metres).as(path).isBetween(0.0, 20.0));
    }

    @Test
    void reportsAllFilesAtOnce() {
        assertThatThrownBy(() -> ScenarioFile.open(Path.of("nowhere.yaml"), Path.of("nothing.yaml")))
                .isInstanceOfSatisfying(
                        InputException.class, e -> assertThat(e.problems()).hasSize(2));
    }

    private static Scenario with(String... settings) {
        return PLOVER.with(Settings.parse(String.join(",", settings), "--change"));
    }
}
