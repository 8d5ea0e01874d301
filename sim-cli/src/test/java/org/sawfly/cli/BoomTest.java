package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The boom and the bench as a user asks for them. */
class BoomTest {
    private static final String PLOVER = Runs.scenario("plover.yaml");

    @TempDir
    private Path folder;

    @Test
    void boomTellsStiffnessLoadsAndReserve() throws IOException {
        Path chart = folder.resolve("boom.svg");
        String text = Runs.text("boom", PLOVER, "-q", "--chart", chart.toString());
        Golden.assertKept("boom-plover", text);
        assertThat(text).contains("500 g 5.7 mm", "as your bend test showed", "assumed: a third");
        assertThat(Files.readString(chart)).contains("elevator string", "tailplane, trim");
    }

    @Test
    void aMendedBoomIsShownBesideToday() {
        String text = Runs.text("boom", PLOVER, "-q", "--change", "boom.splice={behind_mm: 430, takes_out_mm: 20}");
        assertThat(text)
                .contains("Before this change: 500 g moved it 5.7 mm")
                .contains("  splice ")
                .contains("Caution: cut carbon", "Caution: epoxy");
    }

    @Test
    void aWeakBoomIsCalledSo() {
        String text = Runs.text(
                "boom", PLOVER, "-q", "--change", "boom.wall={tension_MPa: 90, compression_MPa: 80, shear_MPa: 10}");
        assertThat(text.replace('\n', ' '))
                .contains("Weak spot: by this estimate the boom bears only")
                .contains("Do not throw it hard")
                .contains("wall as given.");
    }

    @Test
    void mendingIsComparedInOneTable() {
        String text = Runs.text("compare", Runs.scenario("repair-boom.yaml"), "-q", "--draws", "32");
        assertThat(text).contains("boom moves under 500 g", "boom bears throw, times", "nose lead", "launch height");
        Golden.assertKept("compare-repair-boom", text);
    }

    @Test
    void toleranceSortsWhatMatters() throws IOException {
        Path chart = folder.resolve("tolerance.svg");
        Path rows = folder.resolve("tolerance.csv");
        String text = Runs.text("tolerance", PLOVER, "-q", "--chart", chart.toString(), "--csv", rows.toString());
        Golden.assertKept("tolerance-plover", text);
        assertThat(text.replaceAll("\\s+", " "))
                .contains("Free to roll, by strips", "Measure the tailplane incidence first");
        assertThat(Files.readString(chart)).contains("CG, on the balance");
        assertThat(Files.readAllLines(rows).get(0)).startsWith("error,ruler,over_mm");
    }

    @Test
    void theSheetMeasuresFromEdgesThatAreThere() {
        String text = Runs.text(
                "compare",
                PLOVER,
                "--change",
                "boom.cut_mm=40",
                "--keep",
                "margin",
                "--with",
                "nose_lead",
                "--sheet",
                "-q");
        Golden.assertKept("sheet-cut-40", text);
        String line = text.replaceAll("\\s+", " ");
        assertThat(line)
                .contains("40.0 mm from the boom's end = 582 mm behind the wing's trailing edge")
                .contains("fin root leading edge 68 mm, tailplane root leading edge 150 mm")
                .contains("432 mm behind the wing's trailing edge")
                .contains("launch preset", "Springs", "First air");
    }

    @Test
    void theSheetIsForOneVersion() {
        Runs run = Runs.of("compare", Runs.scenario("repair-boom.yaml"), "--sheet");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--sheet is for one version").doesNotContain("Exception");
    }

    @Test
    void aSwingGivesAnInertiaAndHowWellItIsKnown() {
        String text =
                Runs.text("swing", PLOVER, "--axis", "yaw", "--apart", "600", "--length", "1200", "--period", "2.57");
        assertThat(text).contains("Inertia in yaw 0.0282 kg m2, known to 0.0003", "the same as the parts");
        for (String[] wrong : new String[][] {{"bank", "2.5"}, {"yaw", "fast"}, {"yaw", "0"}, {"yaw", "2+-1+-1"}}) {
            Runs run = Runs.of(
                    "swing", PLOVER, "--axis", wrong[0], "--apart", "600", "--length", "1200", "--period", wrong[1]);
            assertThat(run.code()).as(wrong[1]).isEqualTo(2);
            assertThat(run.out()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"boom", "tolerance", "swing"})
    void helpShowsExamplesFirst(String command) {
        String text = Runs.text(command, "--help");
        assertThat(text.indexOf("  sawfly ")).isPositive().isLessThan(text.indexOf("Usage:"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "boom.splice.behind_mm=2000",
                "boom.splice.behind_mm=50",
                "boom.splice.takes_out_mm=20",
                "boom.wrap={behind_mm: 900}",
                "boom.wall={thickness_mm: 0}",
                "boom.slots={a: {from_behind_mm: 600, to_behind_mm: 500, width_mm: 2}}",
                "boom.sleeves={a: {from_behind_mm: 60, to_behind_mm: 100, wall_mm: 0.3}}",
                "bench.fin_skew_deg=90"
            })
    void nonsenseIsRefused(String change) {
        Runs run = Runs.of("boom", PLOVER, "--change", change);
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).doesNotContain("Exception");
    }

    @Test
    void crookedTailsAreFlown() {
        String square = Runs.text("fly", PLOVER, "-q");
        String crooked = Runs.text("fly", PLOVER, "-q", "--change", "bench.fin_skew_mm=3");
        assertThat(crooked.lines().skip(1).toList())
                .isNotEqualTo(square.lines().skip(1).toList());
    }
}
