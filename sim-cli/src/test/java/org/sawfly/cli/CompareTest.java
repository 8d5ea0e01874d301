package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.quantity.Numbers;

class CompareTest {
    @TempDir
    private Path folder;

    private static Runs cut(String... more) {
        List<String> args = new java.util.ArrayList<>(
                List.of("compare", Runs.scenario("plover.yaml"), "--change", "boom.cut_mm=40"));
        args.addAll(List.of(more));
        return Runs.of(args.toArray(String[]::new));
    }

    @Test
    void theMainQuestionIsAnsweredOnOnePage() {
        Runs run = cut("--keep", "margin", "--with", "nose_lead");
        assertThat(run.code()).isZero();
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
        assertThat(run.out())
                .matches("\\p{ASCII}*")
                .startsWith("plover: today, and with 40 mm off the rear end of the boom\n")
                .contains("Keeps the margin: lead only.", "take out", "kept", "What you will feel:")
                .contains("The grams: offcut", "Try it first, no saw:", "Caution: cut carbon wet")
                .contains("change (9 times in 10)", "How sure: launch ", " Why: ")
                .doesNotContainIgnoringCase("sideslip")
                .doesNotContain("NaN", "rad/s", "Infinity");
        assertThat(run.out().indexOf("Caution:")).isLessThan(run.out().indexOf("The cut "));
        assertThat(run.err()).contains("demo thrower");
    }

    @Test
    void rangesAreTheSameForAnyNumberOfThreadsAndOthersForAnotherSeed() throws IOException {
        String[] outputs = new String[3];
        String[] rows = new String[3];
        String[][] ways = {{"1", "7"}, {"2", "7"}, {"2", "8"}};
        for (int i = 0; i < ways.length; i++) {
            Path csv = folder.resolve("versions" + i + ".csv");
            Runs run = cut(
                    "--draws",
                    "24",
                    "--threads",
                    ways[i][0],
                    "--seed",
                    ways[i][1],
                    "--json",
                    "--csv",
                    csv.toString(),
                    "-q");
            assertThat(run.code()).as(run.err()).isZero();
            outputs[i] = run.out();
            rows[i] = Files.readString(csv);
        }
        assertThat(outputs[1]).isEqualTo(outputs[0]);
        assertThat(rows[1]).isEqualTo(rows[0]);
        assertThat(outputs[2]).isNotEqualTo(outputs[0]);
        assertThat(rows[2]).isNotEqualTo(rows[0]);
        assertThat(outputs[0]).contains("\"draws\": 24", "\"seed\": 7", "\"medians\"", "\"bands\"");
        assertThat(rows[0].lines()).hasSize(3);
        assertThat(rows[0]).contains("apex_height_change_low_m").doesNotContain("NaN");
    }

    @Test
    void drawsThatAreNoneAreRefused() {
        for (String draws : List.of("5", "-1", "20001", "many", "1e3")) {
            Runs run = cut("--draws", draws);
            assertThat(run.code()).as(draws).isEqualTo(2);
            assertThat(run.out()).isEmpty();
        }
        assertThat(cut("--seed", "x").code()).isEqualTo(2);
        assertThat(cut("--threads", "0").code()).isEqualTo(2);
        Runs none = cut("--draws", "0");
        assertThat(none.code()).isZero();
        assertThat(none.out()).doesNotContain("9 times in 10", "How sure");
    }

    @Test
    void whatWasSeenInFlightIsHeededUnlessItContradicts() {
        Runs gently = cut("--draws", "40", "--change", "seen_in_flight.dive_test=pulls_out_gently");
        assertThat(gently.code()).as(gently.err()).isZero();
        assertThat(gently.out().replaceAll("\\s+", " "))
                .containsPattern("[0-9]+ of 40 draws agree with what was seen in flight; the others are left out\\.");
        Runs wrong = cut("--draws", "40", "--change", "seen_in_flight.least_sink_mps=1.5");
        assertThat(wrong.out().replaceAll("\\s+", " "))
                .contains("None of 40 draws agrees with what was seen in flight, so it is left aside");
    }

    @Test
    void whatTheFileSaysOfUncertaintyCounts() {
        String certain = "uncertain={drag_pct: 0, body_drag_pct: 0, tail_slope_pct: 0, fin_beyond_stall_pct: 0,"
                + " downwash_pct: 0, boom_stiffness_pct: 0, yaw_inertia_pct: 0, cg_mm: 0, neutral_point_mm: 0},"
                + "throw_uncertain={release_rate_pct: 0, nose_out_deg: 0, climb_deg: 0, preset_deg: 0,"
                + " push_over_mps: 0, timing_s: 0, bank_deg: 0}";
        Runs run = cut("--keep", "margin", "--change", certain, "--draws", "20", "--json");
        assertThat(run.code()).as(run.err()).isZero();
        String changes = run.out().substring(run.out().indexOf("\"changes\""));
        double change = number(changes, "nose_lead_g");
        String band = changes.substring(changes.indexOf("\"nose_lead_g\": ["));
        String[] ends = band.substring(band.indexOf('[') + 1, band.indexOf(']')).split(",");
        assertThat(Double.parseDouble(ends[0].strip())).isCloseTo(change, org.assertj.core.data.Offset.offset(0.06));
        assertThat(ends[0].strip()).isEqualTo(ends[1].strip());
        assertThat(run.out()).doesNotContain("range_hangs_on");
    }

    @Test
    void theLeadAmongTheGramsIsTheLeadOfTheTable() {
        for (String area : List.of("0.8", "0.83", "0.85", "0.9", "1.1", "1.2")) {
            Runs run = Runs.of(
                    "compare",
                    Runs.scenario("plover-ten-numbers.yaml"),
                    "--change",
                    "tailplane.scale_area=" + area,
                    "--keep",
                    "margin",
                    "--draws",
                    "0");
            java.util.regex.Matcher table = java.util.regex.Pattern.compile("(take out|put in) ([0-9.]+) g")
                    .matcher(run.out());
            java.util.regex.Matcher grams = java.util.regex.Pattern.compile("nose\\s+lead\\s+([0-9.]+)\\s+(out|in)")
                    .matcher(run.out());
            if (table.find()) {
                assertThat(grams.find()).as(run.out()).isTrue();
                assertThat(grams.group(1)).as(run.out()).isEqualTo(table.group(2));
                assertThat(table.group(1)).endsWith(grams.group(2));
            }
        }
    }

    @Test
    void severalRulesGiveSeveralColumns() {
        Runs run = Runs.once(
                "compare", Runs.scenario("plover.yaml"), "--change", "boom.cut_mm=40", "--keep", "nothing,cg,margin");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("keep nothing    keep cg  keep margin", "pitch damping")
                .containsPattern("worst, 9 times in 10 +[0-9.]+ lower +[0-9.]+ lower +[0-9.]+ lower  m\n")
                .containsPattern("best, 9 times in 10 +[0-9.]+ higher +[0-9.]+ lower +[0-9.]+ higher  m\n")
                .contains("Why so wide: neutral point.");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Try it first, no saw: at TODAY's CG \"keep nothing\" would have", "of lead and fly it");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plover.yaml --change boom.cut_mm=40 --keep nothing,cg,margin",
                "reed.yaml --change boom.cut_mm=40 --keep margin",
                "reed.yaml --change boom.cut_mm=40 --keep nothing,cg,margin",
                "two-tails.yaml",
                "repair-boom.yaml"
            })
    void everyComparisonStaysOnAPage(String words) {
        String[] args = words.split(" ");
        args[0] = Runs.scenario(args[0]);
        Runs run = Runs.of(Stream.concat(Stream.of("compare", "-q", "--draws", "24"), Stream.of(args))
                .toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
        assertThat(run.out()).contains("launch height", "Caution: ").doesNotContain("..");
    }

    @Test
    void whatIsLeftOutOfThePageIsInTheJson() {
        String[] study = {"compare", Runs.scenario("repair-boom.yaml"), "--draws", "24"};
        Runs text = Runs.of(study);
        assertThat(text.out()).contains("The same in all: ").doesNotContain("The grams");
        Runs json = Runs.of(Stream.concat(Stream.of(study), Stream.of("--json")).toArray(String[]::new));
        assertThat(json.out()).contains("\"gained_g\"", "\"try_first\"", "\"min_sink_mps\"");
    }

    @Test
    void noForetasteIsOfferedWhereThereIsNothingToDoForIt() {
        Runs stiff = Runs.of(
                "compare",
                Runs.scenario("plover.yaml"),
                "--change",
                "boom.mass_g=18,boom.bend_test.moves_mm=3.5",
                "--keep",
                "cg",
                "--draws",
                "0");
        assertThat(stiff.code()).as(stiff.err()).isZero();
        assertThat(stiff.out()).doesNotContain("Try it first").contains("boom moves under 500 g");
    }

    @Test
    void theGramsOfTheSheetAddUp() {
        for (String length : List.of("10", "25", "40", "70")) {
            Runs run = Runs.of(
                    "compare",
                    Runs.scenario("plover.yaml"),
                    "--change",
                    "boom.cut_mm=" + length,
                    "--keep",
                    "margin",
                    "--sheet");
            String sheet = run.out().replaceAll("\\s+", " ");
            double sum = grams(sheet, "Before mass ______ \\(([0-9.]+)\\)");
            String pieces = sheet.substring(sheet.indexOf("Mass then"), sheet.indexOf("10 Radio"));
            java.util.regex.Matcher piece =
                    java.util.regex.Pattern.compile("([0-9.]+) (in|out)").matcher(pieces);
            while (piece.find()) {
                sum += (piece.group(2).equals("in") ? 1 : -1) * Double.parseDouble(piece.group(1));
            }
            assertThat(sum)
                    .as(run.out())
                    .isCloseTo(grams(sheet, "Mass then ([0-9.]+) g"), org.assertj.core.data.Offset.offset(1e-6));
            assertThat(pieces)
                    .contains("offcut " + Numbers.fixed(grams(sheet, "offcut: ______ g \\(([0-9.]+)\\)"), 1) + " out")
                    .contains("new joint " + Numbers.fixed(grams(sheet, "no more than ([0-9.]+) g"), 1) + " in");
            assertThat(sheet).contains("battery: ");
        }
    }

    private static double grams(String text, String pattern) {
        java.util.regex.Matcher found = java.util.regex.Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern + " in " + text).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @Test
    void studiesOfVersionsAreCompared() {
        Runs run = Runs.once("compare", Runs.scenario("two-tails.yaml"));
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("plover: two tails compared").contains("Don't.");
        assertThat(run.out()).containsPattern("battery moved +- +8\\.0 forward +15\\.0 back +mm");
        assertThat(run.err()).isEmpty();
        assertThat(Runs.of("compare", Runs.scenario("shorten-boom.yaml")).err()).contains("Maybe sawfly vary");
    }

    @Test
    void aGliderWithoutMarginIsWarnedOfLast() {
        Runs run = Runs.of("compare", Runs.scenario("reed.yaml"), "--change", "boom.cut_mm=20", "--keep", "cg");
        assertThat(run.code()).isZero();
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(30);
        String end = lines.subList(lines.size() - 5, lines.size()).stream().collect(Collectors.joining(" "));
        assertThat(end).contains("Today already").contains("move the CG forward before any full throw");
        assertThat(run.out()).contains("Warning:");
    }

    @Test
    void aVersionIsWrittenAsAGliderThatReadsBackToTheSameNumbers() throws IOException {
        Path file = folder.resolve("short.yaml");
        Runs run = cut("--keep", "margin", "--write", "cut 40", file.toString(), "--json", "--draws", "0");
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("Wrote " + file);
        Runs back = Runs.of(
                "compare",
                file.toString(),
                "--change",
                "boom.cut_mm=0",
                "--launch",
                launchSeenWithPlover(),
                "--json",
                "--draws",
                "0");
        assertThat(back.code()).as(back.err()).isZero();
        String version = run.out().substring(run.out().indexOf("\"cut 40\""));
        String today = back.out().substring(back.out().indexOf("\"today\""));
        for (String key : List.of(
                "mass_g",
                "nose_lead_g",
                "cg_mm",
                "neutral_point_mm",
                "static_margin_pct",
                "ixx_kgm2",
                "iyy_kgm2",
                "izz_kgm2",
                "tail_volume_h",
                "tail_volume_v",
                "apex_height_m",
                "settled_height_m",
                "first_swing_deg",
                "min_sink_mps")) {
            double expected = number(version, key);
            assertThat(number(today, key))
                    .as(key)
                    .isCloseTo(expected, org.assertj.core.data.Offset.offset(1e-6 * Math.abs(expected)));
        }
        Runs again = cut("--write", "cut 40", file.toString());
        assertThat(again.code()).isEqualTo(5);
        assertThat(again.out()).isEmpty();
        assertThat(again.err()).contains("exists; --force");
    }

    /** The demo thrower, whose height was seen with the plover of the scenarios. */
    private String launchSeenWithPlover() throws IOException {
        String text = Files.readString(Path.of(Runs.scenario("club.yaml")), StandardCharsets.UTF_8);
        Path plover = Path.of(Runs.scenario("plover.yaml")).toAbsolutePath().normalize();
        Path file = folder.resolve("club.yaml");
        Files.writeString(file, text.replace("plover.yaml", plover.toString()));
        return file.toString();
    }

    private static double number(String json, String key) {
        String from = json.substring(json.indexOf("\"" + key + "\": ") + key.length() + 4);
        return Double.parseDouble(from.substring(0, from.indexOf('\n')).replace(",", ""));
    }

    @Test
    void aStudyWithoutALaunchIsThrownByTheSameDemoThrower() throws IOException {
        Path study = folder.resolve("study.yaml");
        Path plover = Path.of(Runs.scenario("plover.yaml")).toAbsolutePath().normalize();
        Files.writeString(
                study, "study: a cut\nglider: " + plover + "\nversions: {cut 40: {change: {boom.cut_mm: 40}}}\n");
        Runs run = Runs.of("compare", study.toString(), "--draws", "20");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err()).contains("launch: none is named: the demo thrower throws");
        String table = run.out().substring(run.out().indexOf("mass"));
        assertThat(cut("--draws", "20").out()).endsWith(table);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rudder-preset", "aileron-preset", "release-bank", "release-early-late"})
    void studiesOfTheWholeMotionAreCompared(String study) {
        Runs run = Runs.of("compare", Runs.scenario(study + ".yaml"), "-q");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.out()).contains("lean of the climb", "top to the side");
    }

    @Test
    void bothModelsStandSideBySide() {
        Runs run = cut("--keep", "margin", "--model", "both");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("fast", "strip", "models").doesNotContainPattern("(^|[ (])-[0-9.]");
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
        assertThat(cut("--keep", "nothing,cg", "--model", "both").code()).isEqualTo(2);
        String fin = Runs.of(
                        "compare", Runs.scenario("plover.yaml"), "--change", "fin.scale_area=1.25", "--model", "both")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(fin).contains("Warning: little or no margin");
        java.util.regex.Matcher said = java.util.regex.Pattern.compile(
                        "settled height (\\S+) m (?:lower|higher) by the fast one, (\\S+) m (?:lower|higher) by strips")
                .matcher(fin);
        if (said.find() && !said.group(1).equals(said.group(2))) {
            assertThat(fin).doesNotContain("say the same");
        }
    }

    @Test
    void aVersionThatCannotBeHadSaysWhyInOneSentenceAfterAnother() {
        Runs run = Runs.of("compare", Runs.scenario("plover.yaml"), "--change", "ready_to_fly.cg_mm=95");
        assertThat(run.code()).as(run.err()).isEqualTo(4);
        String words = run.out().replaceAll("\\s+", " ");
        assertThat(words).containsPattern("Maybe battery can move back by [0-9.]+ mm\\. ");
        assertThat(words).doesNotContain("..", ".)");
    }

    @Test
    void wrongUseIsSaidInWords() {
        assertThat(cut("--axes", "all").code()).isEqualTo(2);
        assertThat(cut("--axes", "all").err()).contains("fast model").contains("Maybe --axes all --model strip");
        assertThat(cut("--model", "wind-tunnel").code()).isEqualTo(2);
        assertThat(cut("--keep", "balance").err()).contains("nothing, cg, margin");
        assertThat(cut("--chart", "x.pdf").err()).contains(".png or .svg");
        assertThat(Runs.of("compare", Runs.scenario("plover.yaml")).code()).isEqualTo(2);
        Runs missing = Runs.of("compare", Runs.scenario("plovr.yaml"), "--change", "boom.cut_mm=40");
        assertThat(missing.code()).isEqualTo(3);
        assertThat(missing.err()).contains("there is no file").contains("Maybe");
        Runs tooLong = Runs.of("compare", Runs.scenario("plover.yaml"), "--change", "boom.cut_mm=740");
        assertThat(tooLong.code()).isEqualTo(3);
        assertThat(tooLong.out()).isEmpty();
        Runs unknown = Runs.of("compare", Runs.scenario("plover.yaml"), "--change", "boom.cutt_mm=40");
        assertThat(unknown.code()).isEqualTo(3);
        assertThat(unknown.err()).contains("unknown key");
    }
}
