package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScatterTest {
    private static final String PLOVER = Runs.scenario("plover.yaml");

    @TempDir
    private Path folder;

    private static Runs scatter(String... more) {
        List<String> args = new ArrayList<>(List.of("scatter", PLOVER, "--throws", "64"));
        args.addAll(List.of(more));
        return Runs.of(args.toArray(String[]::new));
    }

    @Test
    void oneGlidersThrowsAndWhatTheyCouldShow() {
        Runs run = scatter();
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .matches("[\\x20-\\x7e\\n]*")
                .startsWith("plover: 64 throws by club\n")
                .containsPattern("scatter, standard deviation +2.0  m")
                .contains("9 times in 10", "Heights differ by: speed of the throw")
                .contains("Your heights scatter by 2.0 m", "Caution: nobody in the whole circle")
                .contains("Throws a side that would show a gain: 0.3 m more than")
                .doesNotContain("NaN", "Infinity");
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aChangeIsThrownBesideToday() throws IOException {
        Path chart = folder.resolve("scatter.svg");
        Path csv = folder.resolve("throws.csv");
        Runs run = scatter(
                "--change", "boom.cut_mm=40", "--keep", "margin", "--chart", chart.toString(), "--csv", csv.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("64 throws by club today, and as many with 40 mm off", "Its next throw is higher", "cut 40")
                .contains("leave it.", "Caution: cut carbon");
        assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(30).allMatch(line -> line.length() <= 80);
        assertThat(Files.readString(chart)).contains("of 100 throws, so many reach it at least", "half above");
        assertThat(Files.readString(csv).lines()).hasSize(65);
        assertThat(Files.readString(csv))
                .startsWith(
                        "throw,speed_pct,turning_pct,nose_out_deg,letting_go_s,bank_deg,climb_deg,timing_s,wind_mps,")
                .doesNotContain("NaN");
    }

    @Test
    void aLargeGainNeedsFewThrows() {
        Runs run = scatter("--change", "ready_to_fly.cg_mm=76", "--json");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("\"next_throw_higher_pct\"", "\"throws_a_side_shown\"", " lower; to show that takes");
        assertThat(run.out()).contains("Not for hard throws as it is");
    }

    @Test
    void theSameBytesForAnyNumberOfThreadsAndOthersForAnotherSeed() {
        String[] change = {"--change", "boom.cut_mm=40", "--json", "-q", "--threads", "1", "--seed", "3"};
        String first = scatter(change).out();
        change[5] = "2";
        assertThat(scatter(change).out()).isEqualTo(first).contains("\"seed\": 3");
        change[7] = "4";
        assertThat(scatter(change).out()).isNotEqualTo(first);
    }

    @Test
    void whatTheLaunchFileSaysCounts() {
        String still = "throw_scatter={speed_pct: 0, turning_pct: 0, nose_out_deg: 0, letting_go_s: 0, bank_deg: 0,"
                + " climb_deg: 0, timing_s: 0, wind_mps: 0}";
        Runs none = scatter("--change", still, "--json");
        assertThat(none.code()).as(none.err()).isZero();
        assertThat(none.out()).contains("\"next_throw_higher_pct\": 50").doesNotContain("NaN", "seen_height_scatter_m");
        Runs strong = Runs.of("scatter", PLOVER, "--throws", "32", "--launch", Runs.scenario("strong.yaml"), "--json");
        assertThat(strong.code()).as(strong.err()).isZero();
        assertThat(strong.out()).contains("\"turning_pct\": 20", "\"wind_mps\": 0.3");
        Runs windy = scatter("--change", "throw_scatter.wind_mps=2.5");
        assertThat(windy.out().replaceAll("\\s+", " ")).contains("all else gives more than that");
    }

    @Test
    void nonsenseIsRefused() {
        for (String count : List.of("5", "-1", "0", "30000", "many")) {
            Runs run = Runs.of("scatter", PLOVER, "--throws", count);
            assertThat(run.code()).as(count).isEqualTo(2);
            assertThat(run.out()).isEmpty();
        }
        Runs wild = scatter("--change", "throw_scatter.speed_pct=80");
        assertThat(wild.code()).isEqualTo(3);
        assertThat(wild.err()).contains("throw_scatter.speed_pct");
        Runs misspelt = scatter("--change", "throw_scatter.sped_pct=2");
        assertThat(misspelt.code()).isEqualTo(3);
        assertThat(misspelt.err()).contains("unknown key", "Maybe speed_pct");
        assertThat(scatter("--threads", "0").code()).isEqualTo(2);
        assertThat(scatter("--change", "boom.cut_mm=700").code()).isEqualTo(3);
        assertThat(scatter("--chart", "x.pdf").code()).isEqualTo(2);
    }
}
