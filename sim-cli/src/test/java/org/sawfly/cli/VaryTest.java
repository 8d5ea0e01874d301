package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VaryTest {
    @TempDir
    private Path folder;

    @Test
    void theMainJob() {
        Path chart = folder.resolve("shorten-boom.png");
        Runs run = Runs.of("vary", Runs.scenario("shorten-boom.yaml"), "--chart", chart.toString());
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("9 cuts, 0 to 80 mm every 10 mm").contains("Wrote " + chart);
        assertThat(chart).isNotEmptyFile();
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
        assertThat(run.out())
                .matches("\\p{ASCII}*")
                .contains(
                        "<- today",
                        "no lead comes out",
                        "From 52 mm on the tailplane falls below",
                        "Caution: cut carbon")
                .doesNotContain("NaN");
    }

    @Test
    void everyStudyThatVariesRuns() {
        Runs cg = Runs.of("sweep", Runs.scenario("move-cg.yaml"), "--draws", "20");
        assertThat(cg.code()).isZero();
        assertThat(cg.out()).containsIgnoringCase("each 2 mm back:");
        assertThat(cg.out().lines()).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
        Runs grid = Runs.once("vary", Runs.scenario("boom-and-fin.yaml"));
        assertThat(grid.code()).isZero();
        assertThat(grid.out()).contains("cut down, fin area across");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fin-area", "fin-place", "dihedral"})
    void studiesOfTheWholeMotionVary(String study) {
        Runs run = Runs.of("vary", Runs.scenario(study + ".yaml"), "-q");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
    }

    @Test
    void theSameBytesForAnyNumberOfThreads() throws IOException {
        String[] outputs = new String[3];
        String[] rows = new String[3];
        int[] threads = {1, 2, 5};
        for (int i = 0; i < threads.length; i++) {
            Path csv = folder.resolve("rows" + i + ".csv");
            Runs run = Runs.of(
                    "vary",
                    Runs.scenario("plover.yaml"),
                    "--vary",
                    "boom.cut_mm=0..80/4",
                    "--keep",
                    "margin",
                    "--draws",
                    "20",
                    "--json",
                    "--csv",
                    csv.toString(),
                    "--threads",
                    String.valueOf(threads[i]));
            assertThat(run.code()).isZero();
            outputs[i] = run.out();
            rows[i] = Files.readString(csv);
        }
        assertThat(rows[1]).isEqualTo(rows[0]);
        assertThat(rows[2]).isEqualTo(rows[0]);
        assertThat(outputs[1]).isEqualTo(outputs[0]);
        assertThat(outputs[2]).isEqualTo(outputs[0]);
        assertThat(rows[0].lines()).hasSize(22);
        assertThat(rows[0].lines().findFirst().orElseThrow())
                .contains("apex_height_change_median_m,apex_height_change_low_m,apex_height_change_high_m");
        assertThat(outputs[0]).contains("\"how_sure\"", "\"draws\": 20", "\"bands\"");
    }

    @Test
    void rangesStandBesideTheRowsAndGrowWithTheChange() {
        Runs run = Runs.of("vary", Runs.scenario("move-cg.yaml"), "--draws", "24");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("9 in 10", "<- today", "Why so wide: ")
                .containsPattern("(?m)^  72 .* [0-9.]+-[0-9.]+ lower ")
                .containsPattern("Clearly\\s+lower\\s+than\\s+today\\s+from");
        Runs none = Runs.of("vary", Runs.scenario("move-cg.yaml"), "--draws", "0");
        assertThat(none.out()).doesNotContain("9 in 10", "Clearly").contains(" lower ");
        Runs grid = Runs.once("vary", Runs.scenario("boom-and-fin.yaml"));
        assertThat(grid.err()).contains("--draws 32 gives them");
        Runs many = Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "boom.cut_mm=0..80/0.01", "--draws", "64");
        assertThat(many.code()).isEqualTo(3);
        assertThat(many.err()).contains("512064 flights", "--draws 0");
        assertThat(Runs.of("vary", Runs.scenario("move-cg.yaml"), "--draws", "3")
                        .code())
                .isEqualTo(2);
    }

    @Test
    void aStoppedRunGoesOn() throws IOException {
        Path whole = folder.resolve("whole.csv");
        Path csv = folder.resolve("rows.csv");
        Path part = folder.resolve("rows.csv.part");
        Runs all = rows(whole);
        assertThat(all.code()).isZero();
        List<String> lines = Files.readAllLines(whole);
        String left = lines.subList(0, 4).stream().collect(Collectors.joining("\n", "", "\n")) + "30,settl";
        Files.writeString(part, left);
        assertThat(rows(csv).code()).isEqualTo(5);
        Runs resumed = rows(csv, "--resume");
        assertThat(resumed.code()).as(resumed.err()).isZero();
        assertThat(csv).hasSameTextualContentAs(whole);
        assertThat(part).doesNotExist();
        assertThat(resumed.out()).isEqualTo(all.out());
        Files.writeString(part, left.replace("\n10,settled", "\n11,settled"));
        assertThat(rows(csv, "--resume", "--force").code()).isEqualTo(3);
    }

    private static Runs rows(Path csv, String... more) {
        List<String> args = new java.util.ArrayList<>(List.of(
                "vary",
                Runs.scenario("plover.yaml"),
                "--vary",
                "boom.cut_mm=0..40/10",
                "--draws",
                "20",
                "--csv",
                csv.toString()));
        args.addAll(List.of(more));
        return Runs.of(args.toArray(String[]::new));
    }

    @Test
    void rowsWithLittleMarginAreMarkedAndWarnedOf() {
        Runs run = Runs.once("vary", Runs.scenario("move-cg.yaml"));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("Warning: little or no margin in the rows marked !");
        List<String> rows =
                run.out().lines().filter(line -> line.matches(" +[67]\\d .*")).toList();
        assertThat(rows).hasSize(9);
        for (String row : rows) {
            String[] cells = row.strip().split(" +");
            boolean behind = Double.parseDouble(cells[0]) > 71;
            assertThat(row.endsWith(" !")).as(row).isEqualTo(behind);
        }
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(30);
        Runs fine = Runs.once("vary", Runs.scenario("shorten-boom.yaml"));
        assertThat(fine.out()).doesNotContain("Warning", " !\n");
    }

    @Test
    void oneValueIsComparedWithToday() {
        Runs one = Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "boom.cut_mm=40", "--draws", "0");
        assertThat(one.out())
                .contains("Nothing gives out at 40 mm.")
                .endsWith("m higher than today.\n")
                .doesNotContain("Flat");
        Runs same = Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "boom.cut_mm=0", "--draws", "0");
        assertThat(same.out()).endsWith("That is today's value: nothing is varied.\n");
    }

    @Test
    void anEndThatIsNoWholeStepIsSaid() {
        Runs run = Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "boom.cut_mm=0..80/30", "--draws", "0");
        assertThat(run.err()).startsWith("3 cuts, 0 to 60 mm every 30 mm; 80 is no whole step\n");
    }

    @Test
    void aReasonIsSaidOfTheRowsItIsTrueOf() {
        Runs run =
                Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "ready_to_fly.cg_mm=52..90/2", "--draws", "0");
        assertThat(run.code()).as(run.err()).isZero();
        java.util.regex.Matcher failing = java.util.regex.Pattern.compile(
                        "(?m)^  (?:At|From) [0-9.]+ mm(?: to [0-9.]+ mm)?: ")
                .matcher(run.out());
        assertThat(run.out()).contains(" !\n").doesNotContain("Nothing gives out");
        assertThat(failing.results()).isNotEmpty();
    }

    @Test
    void rangesThatAreNoneAreRefusedWithAHint() {
        Runs billion = Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "boom.cut_mm=0..80/0.00000008");
        assertThat(billion.code()).isEqualTo(3);
        assertThat(billion.err()).contains("1000000001").contains("2000000");
        Runs product = Runs.of(
                "vary",
                Runs.scenario("plover.yaml"),
                "--vary",
                "boom.cut_mm=0..80/0.02",
                "--vary",
                "fin.scale_area=0.8..1.2/0.0001");
        assertThat(product.code()).isEqualTo(3);
        assertThat(product.err()).contains("16008001 rows");
        Runs dash = Runs.of("vary", Runs.scenario("plover.yaml"), "--vary", "boom.cut_mm=0-80");
        assertThat(dash.code()).isEqualTo(3);
        assertThat(dash.err()).contains("Maybe 0..80/");
        assertThat(Runs.of("vary", Runs.scenario("plover.yaml")).code()).isEqualTo(2);
        assertThat(Runs.of("vary", Runs.scenario("two-tails.yaml")).err()).contains("Maybe sawfly compare");
        assertThat(Runs.of("vary", Runs.scenario("shorten-boom.yaml"), "--threads", "0")
                        .code())
                .isEqualTo(2);
        assertThat(Runs.of("vary", Runs.scenario("shorten-boom.yaml"), "--resume")
                        .code())
                .isEqualTo(2);
        for (Runs refused : List.of(billion, product, dash)) {
            assertThat(refused.out()).isEmpty();
        }
    }
}
