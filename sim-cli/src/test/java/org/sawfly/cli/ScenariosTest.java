package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file of the scenarios does what it is there for. */
class ScenariosTest {
    static Stream<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("..", "scenarios"))) {
            return all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    private static String answered(String... args) {
        Runs run = Runs.once(args);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).matches("[\\x20-\\x7e\\n]*").doesNotContain("NaN", "Infinity");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out();
    }

    @ParameterizedTest
    @MethodSource("files")
    void aScenarioRuns(Path file) throws IOException {
        String name = file.toString();
        answered("check", name);
        String text = Files.readString(file);
        if (text.contains("\nstudy: ")) {
            answered(text.contains("\nversions:") ? "compare" : "vary", name);
        } else if (text.contains("\nlaunch: ")) {
            assertThat(answered("fly", Runs.scenario("plover.yaml"), "--launch", name))
                    .contains("settled height");
        } else {
            assertThat(text).contains("\nglider: ");
            for (String launch : List.of("club.yaml", "strong.yaml")) {
                assertThat(answered(name, "--launch", Runs.scenario(launch))).contains("once gliding");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "card REED, Not for hard throws",
        "fly REED, Not for hard throws",
        "stability REED, it may tuck when thrown hard",
        "compare REED --change boom.cut_mm=20 --keep cg --draws 20, move the CG forward before any full throw",
        "vary REED --vary boom.cut_mm=0..20/10 --keep margin --draws 20, put the CG forward first"
    })
    void theLastWordsAboutReedWarn(String words, String warning) {
        String[] args =
                (words + " --json").replace("REED", Runs.scenario("reed.yaml")).split(" ");
        Runs run = Runs.of(args);
        Matcher verdict = Pattern.compile("\"verdict\": \"(.*)\"").matcher(run.out());
        assertThat(verdict.find()).as(run.err()).isTrue();
        assertThat(verdict.group(1)).contains(warning);
    }
}
