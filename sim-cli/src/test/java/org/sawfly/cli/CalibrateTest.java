package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Thrower and drag from logs, as a user asks for them. The truth of the example logs stands in their maker. */
class CalibrateTest {
    private static final String PLOVER = Runs.scenario("plover.yaml");
    private static final String CLUB = Runs.scenario("club.yaml");
    private static final String BEFORE = Runs.scenario("logs/plover-before.csv");
    private static final String AFTER = Runs.scenario("logs/plover-after.csv");
    private static final double TRUE_SPEED = 34;

    @TempDir
    private Path folder;

    private static double number(String text, String before) {
        Matcher matcher = Pattern.compile(before + "(-?\\d+\\.?\\d*)").matcher(text);
        assertThat(matcher.find()).as("%s in %s", before, text).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    void theExampleGivesSpeedDragAndSink() throws IOException {
        Path chart = folder.resolve("rest.svg");
        Path rows = folder.resolve("throws.csv");
        String text = Runs.answered(
                "calibrate",
                PLOVER,
                BEFORE,
                "--launch",
                CLUB,
                "-q",
                "--chart",
                chart.toString(),
                "--csv",
                rows.toString());
        Golden.assertKept("calibrate-plover", text);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        assertThat(text).doesNotContainPattern("(^|[ (])-[0-9.]");
        assertThat(text).contains("8 throws found and fitted", "A log can hardly tell", "Without any wag");
        assertThat(Files.readString(chart)).contains("log less flight", "two samples in three");
        assertThat(Files.readAllLines(rows)).hasSize(9).first().asString().startsWith("log,released_s,height_m");
        assertThat(number(text, "on the mean \\(")).isLessThan(TRUE_SPEED);
        assertThat(number(text, "Leaves the hand at ")).isCloseTo(TRUE_SPEED, within(1.0));
        assertThat(Runs.of("fit", PLOVER, BEFORE, "--launch", CLUB, "-q").out()).isEqualTo(text);
    }

    @Test
    void lessDragIsSeenBesideMore() {
        String dirty = Runs.answered("calibrate", PLOVER, BEFORE, "-q", "--json");
        String clean = Runs.answered("calibrate", PLOVER, AFTER, "-q", "--json");
        assertThat(number(clean, "\"drag_pct\": ")).isLessThan(number(dirty, "\"drag_pct\": "));
        assertThat(number(dirty, "\"wag_free_speed_mps\": ")).isLessThan(number(dirty, "\"mean_height_m\": "));
        assertThat(dirty).contains("\"held\": ", "\"log_less_flight_m\": ", "\"speed_with_drag\": 0.");
    }

    @Test
    void whatIsWrittenFliesAsLogged() throws IOException {
        String name = folder.resolve("evening").toString();
        String text = Runs.answered("calibrate", PLOVER, BEFORE, "--launch", CLUB, "-q", "--json", "--write", name);
        String glider = name + "-glider.yaml";
        String launch = name + "-launch.yaml";
        String flown = Runs.answered("fly", glider, "--launch", launch, "-q", "--json");
        // eight tops seen by an altimeter that scatters by 0.25 m: their mean is known to some 0.04 m
        assertThat(number(flown, "\"apex_height_m\": ")).isCloseTo(number(text, "\"mean_height_m\": "), within(0.1));
        assertThat(number(flown, "\"release_speed_mps\": "))
                .isCloseTo(number(text, "\\}?\"release_speed_mps\": "), within(1.0));
        assertThat(Files.readString(Path.of(glider))).contains("uncertain: {drag_pct: ");
        assertThat(Runs.answered("check", glider, "-q")).contains("plover, as logged");
        assertThat(Runs.answered("check", launch, "-q")).contains("club, as logged");
        Runs again = Runs.of("calibrate", PLOVER, BEFORE, "--write", name);
        assertThat(again.code()).isEqualTo(5);
        assertThat(again.err()).contains("evening-glider.yaml exists; --force overwrites it");
        assertThat(again.out()).isEmpty();
    }

    private Runs ofParabola(double up, double down) throws IOException {
        StringBuilder text = new StringBuilder("time_s,height_m\n");
        for (int i = 0; i < 400; i++) {
            double t = i / 10.0 - 15;
            double height = t < 0 ? 1 : Math.max(1, 1 + up * t - down * t * t);
            text.append(i / 10.0).append(',').append(height).append('\n');
        }
        Path log = Files.writeString(folder.resolve("parabola.csv"), text);
        return Runs.of("calibrate", PLOVER, log.toString());
    }

    @Test
    void whatIsNoLaunchOfThisGliderIsSeen() throws IOException {
        Runs none = ofParabola(62, 12);
        assertThat(none.code()).as(none.out()).isEqualTo(4);
        assertThat(none.out()).isEmpty();
        assertThat(none.err()).contains("no answer: ").doesNotContain("Exception");
        Runs odd = ofParabola(45, 6);
        assertThat(odd.code()).as(odd.err()).isZero();
        assertThat(odd.out().replaceAll("\\s+", " ")).contains("more than an altimeter's noise", "Do not trust it yet");
    }

    @Test
    void badInputIsRefusedAndNothingWritten() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.csv"), "seconds,height_m\n0,1\n");
        String name = folder.resolve("none").toString();
        Runs run = Runs.of("calibrate", PLOVER, wrong.toString(), "--write", name);
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("wrong.csv:1:1: no column is called time_s", "Maybe \"seconds\" is it");
        assertThat(folder.resolve("none-glider.yaml")).doesNotExist();
        Path quiet = Files.writeString(folder.resolve("quiet.csv"), "time_s,height_m\n0,1\n0.1,1\n0.2,1\n0.3,1\n");
        Runs none = Runs.of("calibrate", PLOVER, quiet.toString(), "--write", name);
        assertThat(none.code()).isEqualTo(4);
        assertThat(none.err()).contains("quiet.csv: no throw in it");
        assertThat(folder.resolve("none-glider.yaml")).doesNotExist();
        assertThat(Runs.of("calibrate", PLOVER).code()).isEqualTo(2);
        Runs unnamed = Runs.of("calibrate", PLOVER, BEFORE, "--write", "");
        assertThat(unnamed.code()).isEqualTo(2);
        assertThat(unnamed.err()).contains("is no beginning of a name");
        assertThat(Runs.of(
                                "calibrate",
                                PLOVER,
                                BEFORE,
                                "--launch",
                                folder.resolve("no.yaml").toString())
                        .code())
                .isEqualTo(3);
    }
}
