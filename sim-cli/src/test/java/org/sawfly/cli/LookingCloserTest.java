package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands about one glider: card, check, fly, balance, stability, glide, cautions. */
class LookingCloserTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final String PLOVER = SCENARIOS.resolve("plover.yaml").toString();

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return Main.run(
                args,
                InputStream.nullInputStream(),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private String answered(String... args) {
        assertThat(run(args)).as(err()).isZero();
        assertThat(out())
                .matches("(?s)[\\x0a\\x20-\\x7e]*")
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
        return out();
    }

    @ParameterizedTest
    @CsvSource({
        "card, plover",
        "fly, plover",
        "balance, plover",
        "stability, plover",
        "glide, plover",
        "check, plover",
        "card, reed",
        "fly, reed",
        "stability, reed",
        "balance, plover-ten-numbers",
        "check, plover-ten-numbers",
        "check, club",
        "check, shorten-boom"
    })
    void wordsAndLayoutAreKept(String command, String file) {
        String path = SCENARIOS.resolve(file + ".yaml").toString();
        String text = command.equals("card") ? answered(path, "-q") : answered(command, path, "-q");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        Golden.assertKept(command + "-" + file, text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"card", "fly", "balance", "stability", "glide"})
    void everydayTextFitsAScreenAndUsesABuildersWords(String command) {
        String text = answered(command, PLOVER);
        assertThat(text.lines().count()).isLessThanOrEqualTo(30);
        assertThat(text)
                .doesNotContainIgnoringCase("sideslip")
                .doesNotContainIgnoringCase("load factor")
                .doesNotContainIgnoringCase("eigenvalue")
                .doesNotContain("rad/s")
                .doesNotContainIgnoringCase("reynolds")
                .doesNotContain(" CL");
        assertThat(text).doesNotContainPattern("(^|[ (])-[0-9.]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"card", "fly", "balance", "stability", "glide"})
    void jsonIsOneDocumentOfItsCommand(String command) {
        answered(command, PLOVER, "--json", "-q");
        assertThat(out()).startsWith("{\n").endsWith("}\n").contains("\"command\": \"" + command + "\"");
        assertThat(out())
                .contains("\"mass_g\": 231.4")
                .contains("\"cg_mm\": 69")
                .contains("\"verdict\": ");
    }

    @Test
    void gramsAddUp() {
        for (String file : List.of("plover.yaml", "plover-ten-numbers.yaml", "reed.yaml")) {
            out.reset();
            String text = answered("balance", SCENARIOS.resolve(file).toString(), "-q");
            double sum = 0;
            String parts = text.substring(text.indexOf('\n'), text.indexOf("---"));
            Matcher grams =
                    Pattern.compile("(?m)^  .{6,40}? {2,}(-?\\d+\\.\\d)(?= |$)").matcher(parts);
            while (grams.find()) {
                sum += Double.parseDouble(grams.group(1));
            }
            Matcher total = Pattern.compile("adds up to +(\\d+\\.\\d)").matcher(text);
            assertThat(total.find()).isTrue();
            assertThat(sum).as(file).isCloseTo(Double.parseDouble(total.group(1)), within(0.05));
        }
    }

    @Test
    void heightsAddUp() {
        String text = answered("fly", PLOVER, "-q");
        Matcher total = Pattern.compile("Where the throw's (\\d+\\.\\d) m went").matcher(text);
        assertThat(total.find()).isTrue();
        double sum = 0;
        Matcher spent = Pattern.compile("(?m)^    [a-z, ]+? {2,}(\\d+\\.\\d) m").matcher(text);
        while (spent.find()) {
            sum += Double.parseDouble(spent.group(1));
        }
        assertThat(sum).isCloseTo(Double.parseDouble(total.group(1)), within(0.05));
    }

    @Test
    void ledgerClosesOnEveryScenario() {
        for (String file : List.of("plover.yaml", "plover-ten-numbers.yaml", "reed.yaml")) {
            for (String thrower : List.of("club.yaml", "strong.yaml")) {
                out.reset();
                answered(
                        "fly",
                        SCENARIOS.resolve(file).toString(),
                        "--launch",
                        SCENARIOS.resolve(thrower).toString(),
                        "--json",
                        "-q");
                Matcher closure =
                        Pattern.compile("\"closure_pct\": (-?[0-9.eE-]+)").matcher(out());
                assertThat(closure.find()).isTrue();
                assertThat(Math.abs(Double.parseDouble(closure.group(1))))
                        .as(file + thrower)
                        .isLessThan(0.1);
            }
        }
    }

    @Test
    void chartsAndRowsAreWritten() throws IOException {
        Path chart = folder.resolve("flight.svg");
        Path swing = folder.resolve("swing.svg");
        Path rows = folder.resolve("flight.csv");
        answered(
                "fly",
                PLOVER,
                "--chart",
                chart.toString(),
                "--chart-swing",
                swing.toString(),
                "--csv",
                rows.toString());
        assertThat(Files.readString(chart)).startsWith("<").contains("push-over");
        assertThat(Files.readString(swing)).contains("nose left").contains("fin stalled");
        assertThat(Files.readAllLines(rows).get(0)).startsWith("time_s,distance_m,height_m");
        assertThat(err()).contains("Wrote " + swing);
        out.reset();
        Path glide = folder.resolve("glide.svg");
        answered("glide", PLOVER, "--chart", glide.toString());
        assertThat(Files.readString(glide)).contains("change at");
        assertThat(run("glide", PLOVER, "--chart", glide.toString())).isEqualTo(5);
    }

    @Test
    void derivativesHaveTheirMeaning() {
        String text = answered("stability", PLOVER, "--derivatives", "-q");
        assertThat(text).contains("by both models", "fast", "strip").contains("nose up for more angle of attack");
    }

    @Test
    void aChangedGliderIsBalancedAnew() {
        String text =
                answered("balance", PLOVER, "--change", "boom.cut_mm=40", "--keep", "cg", "--with", "nose_lead", "-q");
        assertThat(text)
                .contains("40 mm off the rear end of the boom")
                .contains("new joint")
                .contains(" 69.0");
        assertThat(text).doesNotContain("you weighed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"balance", "glide", "fly", "tolerance"})
    void aGliderWithoutMarginIsWarnedOfLast(String command) {
        String text = answered(command, Runs.scenario("reed.yaml"), "-q").replaceAll("\\s+", " ");
        assertThat(text)
                .endsWith("Not for hard throws as it is: little or no margin at launch speed, and a small fin."
                        + " Put the CG forward first. ");
        out.reset();
        assertThat(answered(command, PLOVER, "-q")).doesNotContain("Not for hard throws");
    }

    @Test
    void whatIsSteadyIsNoMoreThanTheLinesAboveSay() {
        assertThat(answered("stability", PLOVER, "-q"))
                .contains("tightens by itself")
                .contains("Steady in pitch and yaw;")
                .doesNotContain("all axes");
        out.reset();
        assertThat(answered("stability", PLOVER, "--change", "tailplane.scale_area=0.9", "--keep", "margin", "-q")
                        .replaceAll("\\s+", " "))
                .contains("Not where such gliders have it: the tailplane's volume.");
    }

    @Test
    void cgBehindTheNeutralPointIsFlownWithAWarning() {
        String text = answered("stability", PLOVER, "--change", "ready_to_fly.cg_mm=80", "-q");
        assertThat(text).contains("BEHIND").endsWith("the CG forward before it is thrown.\n");
        out.reset();
        assertThat(answered("fly", PLOVER, "--change", "ready_to_fly.cg_mm=80", "-q"))
                .contains("Warning: little or no margin")
                .containsPattern("Launch 31 m, 31\\.[0-9] m once gliding\\.");
    }

    @Test
    void whoThrowsIsSaidWhenNobodyWasNamed() {
        answered(PLOVER);
        assertThat(err()).contains("no --launch given");
    }

    @ParameterizedTest
    @ValueSource(strings = {"card", "check", "fly", "balance", "stability", "glide"})
    void helpShowsExamplesFirst(String command) {
        String text = answered(command, "--help");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        assertThat(text.indexOf("  sawfly ")).isPositive().isLessThan(text.indexOf("Usage:"));
        assertThat(text.split("(?m)^  sawfly ", -1)).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void cautionsAreListedInFull() {
        String text = answered("help", "cautions");
        assertThat(text)
                .contains("Cutting:", "Drilling:", "Gluing:", "Lead and battery:", "Throwing:", "First flights");
        assertThat(text).contains("no check of").doesNotContain("!").doesNotContainIgnoringCase("approved");
    }

    @Test
    void refusedInputLeavesStandardOutputEmpty() throws IOException {
        Path spoiled = folder.resolve("spoiled.yaml");
        Files.writeString(spoiled, Files.readString(Path.of(PLOVER)).replace("cg_mm: 69.0", "cg_mm: 69,5"));
        for (String command : List.of("check", "fly", "balance", "stability", "glide", "card")) {
            out.reset();
            err.reset();
            assertThat(run(command, spoiled.toString())).as(command).isEqualTo(3);
            assertThat(out()).isEmpty();
            assertThat(err()).contains("spoiled.yaml:9:").contains("cg_mm").contains("69.5");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "fly, --axes, all, --axes all",
        "fly, --model, both, --model both is for compare",
        "fly, --model, panels, choose from",
        "fly, --hands-off, flaps, choose from",
        "glide, --preset, yesterday, choose from",
        "balance, --keep, everything, choose from"
    })
    void whatIsNotThereIsRefusedInWords(String command, String option, String value, String said) {
        assertThat(run(command, PLOVER, option, value)).isEqualTo(2);
        assertThat(out()).isEmpty();
        assertThat(err()).contains(said).doesNotContain("Exception");
    }

    @Test
    void theWholeMotionIsToldSideways() {
        String text = answered("fly", PLOVER, "--axes", "all", "--model", "strip", "-q");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        assertThat(text.lines().count()).isLessThanOrEqualTo(34);
        assertThat(text)
                .contains("Sideways: rolls ", "the climb leans ", "N inward, ")
                .doesNotContainPattern("(^|[ (])-[0-9.]");
        out.reset();
        answered("fly", PLOVER, "--axes", "all", "--model", "strip", "--hands-off", "rudder,aileron", "--json", "-q");
        assertThat(out())
                .contains("\"rolled_right_deg\"", "\"climb_leans_right_deg\"", "\"heading_right_at_top_deg\"")
                .contains("\"top_to_the_right_m\"", "\"fin_stalled_s\"", "\"peg_along_N\"", "\"trails_the_arm_deg\"")
                .contains("\"fin_load_outward_N\"", "\"axes\": \"all\"", "\"model\": \"strip\"");
    }

    @Test
    void aChartShowsTheLaunchFromBehind() throws IOException {
        Path chart = folder.resolve("side.svg");
        answered("fly", PLOVER, "--axes", "all", "--model", "strip", "--chart-side", chart.toString(), "-q");
        assertThat(Files.readString(chart))
                .contains("seen from behind", "rolled, deg", "heading, deg", "left", "right");
    }

    @ParameterizedTest
    @CsvSource({
        "release.held_tip_low_deg=200, held_tip_low_deg",
        "'preset.aileron_left_mm=1,preset.aileron_right_mm=1', aileron_left_mm",
        "'release.held_tip_low_deg=5,release.held_tip_high_deg=5', held_tip_high_deg",
        "axes=all, model: strip",
        "pilot.aileron=off, axes: all",
        "release.bank_deg=5, held_tip_low_deg"
    })
    void badBanksAndControlsAreRefused(String change, String said) {
        assertThat(run("fly", PLOVER, "--change", change)).as(change).isEqualTo(3);
        assertThat(out()).isEmpty();
        assertThat(err()).contains(said).doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thrower.release_speed_mps=300", "thrower.release_speed_mps=0", "boom.cut_mm=2000"})
    void nonsenseIsRefused(String change) {
        assertThat(run("fly", PLOVER, "--change", change)).isEqualTo(3);
        assertThat(out()).isEmpty();
        assertThat(err()).doesNotContain("Exception");
    }

    @Test
    void aMissingFileIsNamed() {
        assertThat(run("fly", "nothing-here.yaml")).isEqualTo(3);
        assertThat(err()).contains("nothing-here.yaml");
    }
}
