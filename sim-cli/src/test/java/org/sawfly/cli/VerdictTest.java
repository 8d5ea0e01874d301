package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a change made launches higher, as a user asks it. */
class VerdictTest {
    private static final String BEFORE = Runs.scenario("logs/plover-before.csv");
    private static final String AFTER = Runs.scenario("logs/plover-after.csv");
    private static final double BETWEEN = 40;

    @TempDir
    private Path folder;

    private static String answered(String... args) {
        return Runs.text(args).replaceAll("\\s+", " ");
    }

    /** A log of hops to given tops, one every 40 s; with winds a third column. */
    private String log(String name, double begin, double noise, List<Double> tops, List<Double> winds)
            throws IOException {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        StringBuilder text = new StringBuilder(winds.isEmpty() ? "time_s,height_m\n" : "time_s,height_m,wind_mps\n");
        for (int i = 0; i < tops.size(); i++) {
            for (double t = -15; t < BETWEEN - 15; t += 0.1) {
                double share = Math.min(1, t / 3);
                double up = tops.get(i) * (1 - (1 - share) * (1 - share)) - Math.max(0, 2 * (t - 3));
                double height = t < 0 ? 0 : Math.max(0, up);
                text.append(Math.round(100 * (begin + BETWEEN * i + t + 15)) / 100.0)
                        .append(',')
                        .append(height + noise * random.nextGaussian())
                        .append(winds.isEmpty() ? "\n" : "," + winds.get(i) + "\n");
            }
        }
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private String log(String name, Double... tops) throws IOException {
        return log(name, 0, 0.2, List.of(tops), List.of());
    }

    @Test
    void theExampleSaysThatItWorked() throws IOException {
        Path chart = folder.resolve("verdict.svg");
        Path rows = folder.resolve("verdict.csv");
        Runs run = Runs.of(
                "verdict",
                BEFORE,
                "--against",
                AFTER,
                "--order",
                "ABBAABBAABBAABBA",
                "-q",
                "--chart",
                chart.toString(),
                "--csv",
                rows.toString());
        Golden.assertKept("verdict-plover", run.out());
        assertThat(run.out()).contains("B is higher, more than 99 in 100 sure", "a drift is taken out");
        assertThat(Files.readString(chart)).contains("in the order thrown").contains("B: ");
        assertThat(Files.readAllLines(rows))
                .hasSize(17)
                .first()
                .isEqualTo("set,log,released_s,height_m,wind_mps,left_out");
    }

    @Test
    void fewThrowsAreNotEnough() throws IOException {
        String text = answered("verdict", log("a.csv", 38.0, 41.0, 39.5), "--against", log("b.csv", 39.0, 42.0, 40.4));
        assertThat(text)
                .contains("Not enough throws: ", " more each would show a difference of this size", "m lower to")
                .contains("Caution: nobody in the whole circle")
                .contains("is not known (--order ABBA or --one-clock tells it)");
    }

    @Test
    void noDifferenceIsNotWorthTheThrows() throws IOException {
        String text = answered("verdict", log("a.csv", 38.0, 41.0, 39.5), "--against", log("b.csv", 38.0, 41.0, 39.52));
        assertThat(text).contains("No difference worth the throws it would take to show it, more than 500 more each");
    }

    @Test
    void aFlukeIsLeftOutAndShown() throws IOException {
        String text = answered(
                "verdict",
                log("a.csv", 40.0, 41.0, 40.5, 39.5, 12.0),
                "--against",
                log("b.csv", 35.0, 36.0, 35.4, 34.7));
        assertThat(text).contains("A 5 1 41.").contains("B is lower, more than 99 in 100 sure: B is 4.9 m lower");
    }

    @Test
    void setsOneAfterTheOtherAreSaidToBe() throws IOException {
        String a = log("a.csv", 0, 0.1, List.of(40.0, 40.5, 40.2), List.of());
        String b = log("b.csv", 500, 0.1, List.of(42.0, 42.5, 42.2), List.of());
        assertThat(answered("verdict", a, "--against", b, "--one-clock"))
                .contains("One set was thrown before the other", "B is higher");
        assertThat(answered("verdict", a, "--against", b, "--order", "aabbab")).contains("The sets were mixed, but");
    }

    @Test
    void windIsTakenOutWhereItWasWrittenDown() throws IOException {
        List<List<Double>> tops = List.of(new ArrayList<>(), new ArrayList<>());
        List<List<Double>> winds = List.of(new ArrayList<>(), new ArrayList<>());
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 16; i++) {
            double wind = Math.round(10 * (3 * random.nextDouble() + i % 2)) / 10.0;
            winds.get(i % 2).add(wind);
            tops.get(i % 2).add(36 + 2 * wind + 0.3 * random.nextGaussian());
        }
        String a = log("a.csv", 0, 0.2, tops.get(0), winds.get(0));
        String b = log("b.csv", 0, 0.2, tops.get(1), winds.get(1));
        assertThat(answered("verdict", a, "--against", b))
                .contains("The wind is taken out: each m/s of it made a launch ")
                .doesNotContain("B is higher");
        String calm = log("c.csv", 0, 0.2, List.of(40.0, 40.5, 40.2), List.of(0.0, 0.0, 0.0));
        assertThat(answered("verdict", a, "--against", calm)).contains("wind is taken out");
    }

    @Test
    void everyNumberIsInTheJson() {
        Runs run = Runs.of("verdict", BEFORE, "--against", AFTER, "--json", "-q");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("\"command\": \"verdict\"", "\"b_less_a_m\": ", "\"bands\": ", "\"order\": \"unknown\"")
                .contains("\"rows\": ", "\"verdict\": \"B is higher");
    }

    @ParameterizedTest
    @CsvSource({
        "--order ABABABAB, 2, has 4 A and 4 B; in the logs are 8 and 8 throws",
        "--order AXB, 2, letters A and B only",
        "--order AB --one-clock, 2, both tell the order"
    })
    void aWrongOrderIsRefused(String options, int code, String words) {
        String[] args = ("verdict LOGA --against LOGB " + options).split(" ");
        args[1] = BEFORE;
        args[3] = AFTER;
        Runs run = Runs.of(args);
        assertThat(run.code()).isEqualTo(code);
        assertThat(run.err()).contains(words).doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void logsWithoutThrowsHaveNoAnswer() throws IOException {
        String quiet = Files.writeString(folder.resolve("quiet.csv"), "time_s,height_m\n0,1\n0.1,1\n0.2,1\n0.3,1.1\n")
                .toString();
        Runs run = Runs.of("verdict", quiet, "--against", AFTER);
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).contains("0 and 8 are left", "quiet.csv: no throw in it");
        Runs twice = Runs.of("verdict", AFTER, "--against", AFTER);
        assertThat(twice.code()).isEqualTo(3);
        assertThat(twice.err()).contains("is named twice");
        Runs alone = Runs.of("verdict", AFTER);
        assertThat(alone.code()).isEqualTo(2);
    }

    @Test
    void badLogsAreRefusedWithTheirPlaces() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.csv"), "time_s,height_m\n0,1\n0.1,x\n0.2,y\n");
        Runs run = Runs.of(
                "verdict",
                wrong.toString(),
                "--against",
                folder.resolve("none.csv").toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("wrong.csv:3:5: height_m: ", "wrong.csv:4:5: ", "none.csv: there is no such file");
    }

    @Test
    void aHoleInTheClimbIsTold() throws IOException {
        String whole = Files.readString(Path.of(log("a.csv", 38.0, 41.0, 39.5)));
        StringBuilder holed = new StringBuilder();
        whole.lines()
                .filter(line -> !line.matches("(16\\.[5-9]|17\\.|18\\.0).*"))
                .forEach(line -> holed.append(line).append('\n'));
        Path a = Files.writeString(folder.resolve("holed.csv"), holed);
        Runs run = Runs.of("verdict", a.toString(), "--against", log("b.csv", 39.0, 42.0, 40.4));
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("holed.csv at 15 s: samples are missing in the climb; not used");
    }
}
