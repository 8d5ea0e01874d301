package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.CgSetting.Means;
import org.sawfly.glider.Glider;
import org.sawfly.glider.RebalanceRule.Keep;
import org.sawfly.study.Setting;

class StudyFileTest {
    private static final Path SCENARIOS =
            Path.of("../scenarios").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    @Test
    void readsTheBoomStudy() {
        StudyFile study = StudyFile.open(SCENARIOS.resolve("shorten-boom.yaml"));
        assertThat(study.name()).isEqualTo("shorten the boom");
        assertThat(study.varied()).hasSize(1);
        assertThat(study.varied().get(0).values()).containsExactly(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0);
        assertThat(study.varied().get(0).words()).isEqualTo("9 values, 0 to 80 mm every 10 mm");
        assertThat(study.stopWhen().marginBelow()).isCloseTo(0.03, within(1e-12));
        Scenario scenario = study.scenarios().with(List.of(Setting.of("boom.cut_mm", 40)));
        assertThat(scenario.rebalance().keep()).isEqualTo(Keep.MARGIN);
        assertThat(scenario.rebalance().with()).containsExactly(Means.NOSE_LEAD);
        assertThat(scenario.glider().boom().endX()).isCloseTo(-0.75, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"move-cg.yaml, 1", "boom-and-fin.yaml, 2", "shorten-boom.yaml, 1"})
    void everyVariedValueOfTheScenariosIsAccepted(String file, int quantities) {
        StudyFile study = StudyFile.open(SCENARIOS.resolve(file));
        assertThat(study.varied()).hasSize(quantities);
        for (Varied varied : study.varied()) {
            for (double value : varied.values()) {
                assertThat(study.scenarios().with(List.of(Setting.of(varied.path(), value))))
                        .isNotNull();
            }
        }
    }

    @Test
    void versionsAreSettings() {
        StudyFile study = StudyFile.open(SCENARIOS.resolve("two-tails.yaml"));
        Map<String, List<Setting>> versions = study.versions();
        assertThat(versions.keySet()).containsExactly("smaller tailplane", "smaller and CG left alone");
        Scenario smaller = study.scenarios().with(versions.get("smaller tailplane"));
        assertThat(smaller.glider().tailplane().mass()).isCloseTo(0.0052, within(1e-12));
        assertThat(smaller.rebalance().keep()).isEqualTo(Keep.MARGIN);
        assertThat(study.scenarios()
                        .with(versions.get("smaller and CG left alone"))
                        .rebalance()
                        .keep())
                .isEqualTo(Keep.CG);
    }

    @Test
    void wholeBlocksAndNamesSurviveBecomingSettings() throws IOException {
        StudyFile study = open("""
                versions:
                  other:
                    change:
                      tailplane:
                        mass_g: 5
                        stations: [{out_mm: 0, chord_mm: 70}, {out_mm: 150, chord_mm: 50, back_mm: 5}]
                      parts:
                        tail servos: {mass_g: 12, behind_mm: 600}
                """);
        Scenario other = study.scenarios().with(study.versions().get("other"));
        assertThat(other.glider().tailplane().planform().span()).isCloseTo(0.15, within(1e-12));
        assertThat(other.glider().parts().get("tail servos").place().x()).isCloseTo(-0.6, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vary: {boom.cut_mm: {from: 0, to: 1000000000, every: 1}} | 1000000001 values are too many",
                "vary: {boom.cut_mm: 0..80/0.00001}                       | 8000001 values are too many",
                "vary: {boom.cut_mm: 0..80/0.05, fin.scale_area: 0.8..1.2/0.0001} | rows are too many",
                "vary: {boom.cut_mm: 0..80/0}                             | steps above 0",
                "vary: {boom.cut_mm: 0-80}                                | is no range",
                "vary: {boom.cut_mm: {from: 0, until: 80, step: 10}}      | is needed",
                "vary: {boom.cut_mm: 0..900/100}                          | too long",
                "vary: {boom.cute_mm: [1, 2]}                             | unknown key",
                "vary: {a: [1], b: [1], c: [1]}                           | at most two",
                "vary: 5                                                  | a key and its range",
                "vary: {boom.cut_mm: [1]};versions: {a: {}}               | vary is given as well",
                "stop: 1                                                  | is needed",
                "versions: {a: {change: {wing: {span_mm: 1600}}}}         | both given",
                "versions: {a: {rebalnce: {}}}                            | unknown key",
            })
    void refuses(String text, String what) {
        assertThatThrownBy(() -> open(text.replace(';', '\n')))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems())
                                .anySatisfy(
                                        problem -> assertThat(problem.what()).contains(what)));
    }

    @Test
    void keysOfAChangeMayBePaths() throws IOException {
        StudyFile study = open("versions:\n"
                + "  points: {change: {boom.cut_mm: 40, parts.battery.mass_g: 20, fin: {scale_area: 1.1}}}\n"
                + "  nested: {change: {boom: {cut_mm: 40}, parts: {battery: {mass_g: 20}}, fin: {scale_area: 1.1}}}\n");
        Glider points = study.scenarios().with(study.versions().get("points")).glider();
        assertThat(points)
                .isEqualTo(
                        study.scenarios().with(study.versions().get("nested")).glider())
                .isNotEqualTo(study.scenarios().today());
    }

    @Test
    void problemsOfAVersionStandAtTheirPlace() {
        assertThatThrownBy(() -> open("versions:\n  a:\n    change:\n      boom: {cut_mm: 40mm}\n"))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.problems().get(0).toString())
                                .contains("study.yaml:7:22: boom.cut_mm: a number is needed in mm"));
    }

    @Test
    void aStudyOfAStudyIsRefused() throws IOException {
        Path study = folder.resolve("round.yaml");
        Files.writeString(study, "study: round\nglider: round.yaml\nvary: {boom.cut_mm: [1]}\n");
        assertThatThrownBy(() -> StudyFile.open(study)).hasMessageContaining("is a study file");
    }

    @Test
    void rangesOnTheCommandLine() {
        assertThat(Varied.parse("boom.cut_mm=0..80/10", "--vary").values()).hasSize(9);
        assertThat(Varied.parse("boom.cut_mm=0,20,40", "--vary").words()).isEqualTo("3 values, 0 20 40 mm");
        assertThat(Varied.parse("fin.scale_area=0..1/0.1", "--vary").values())
                .hasSize(11)
                .endsWith(1.0);
        assertThatThrownBy(() -> Varied.parse("boom.cut_mm", "--vary")).isInstanceOf(InputException.class);
        assertThatThrownBy(() -> Varied.parse("boom.cut_mm=0-80", "--vary")).hasMessageContaining("0..80/STEP");
        assertThatThrownBy(() -> Settings.parse("40", "--change")).hasMessageContaining("is not KEY=VALUE");
        assertThat(Settings.parse("a.b=[1, 2],c.d={e: 1, f: 2}", "--change")).hasSize(2);
    }

    @Test
    void theJointOfACutIsListedWhenNobodyGaveIt() throws IOException {
        String vary = "vary: {boom.cut_mm: {from: 0, to: 40, every: 40}}";
        assertThat(open(vary).scenarios().assumed())
                .filteredOn(one -> one.path().equals("cut.joint_g"))
                .singleElement()
                .satisfies(one -> assertThat(one.value()).isEqualTo(0.5));
        assertThat(open(vary + "\ncut: {behind_mm: 430}").scenarios().assumed())
                .filteredOn(one -> one.path().equals("cut.joint_g"))
                .singleElement()
                .satisfies(one -> assertThat(one.value()).isEqualTo(2));
        String given = vary + "\ncut: {joint_g: 0.5}";
        String none = "vary: {fin.scale_area: [0.9, 1.1]}";
        for (String study : List.of(given, none)) {
            assertThat(open(study).scenarios().assumed())
                    .extracting(Assumed::path)
                    .doesNotContain("cut.joint_g");
        }
    }

    private StudyFile open(String rest) throws IOException {
        Path study = folder.resolve("study.yaml");
        Files.writeString(
                study,
                "study: a test\nglider: " + SCENARIOS.resolve("plover.yaml") + "\nlaunch: "
                        + SCENARIOS.resolve("club.yaml") + "\n" + rest + "\n");
        return StudyFile.open(study);
    }
}
