package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuneCommandTest {
    private static final String PLOVER = "../scenarios/plover.yaml";

    private static Runs tune(String... words) {
        List<String> all = new java.util.ArrayList<>(List.of("tune", PLOVER, "-q"));
        all.addAll(List.of(words));
        return Runs.of(all.toArray(String[]::new));
    }

    @Test
    void theRangeComesFirstAndTheBestOnlyWhenAsked() {
        String plain = tune("--let", "preset.elevator_up_mm=0..3").out();
        assertThat(plain).contains("good").doesNotContain("best  ");
        String asked = tune("--let", "preset.elevator_up_mm=0..3", "--best").out();
        assertThat(asked.lines().filter(line -> line.startsWith("  setting")).findFirst())
                .hasValueSatisfying(line -> assertThat(line).endsWith("best"));
        assertThat(tune("--let", "preset.elevator_up_mm=0..3", "--json").out()).doesNotContain("\"best\"");
    }

    @Test
    void whatIsAssumedOfTheDemoThrowerStandsUnderToday() {
        assertThat(tune("--let", "preset.elevator_up_mm=0..3").out())
                .containsPattern("(?m)^  preset elevator up, mm +[0-9.]+ +[0-9.]+ +0\\.8 ");
    }

    @Test
    void aPushOverThatIsAWordInTheFileStandsUnderTodayAsItsMoment() {
        assertThat(tune("--let", "push_over_at_s=1.2..2.8").out())
                .containsPattern("(?m)^  push over at, s +[0-9.]+ +[0-9.]+ +1\\.6 +1\\.2 +2\\.8$");
    }

    @Test
    void whatLeansOnAnEndSaysSo() {
        Runs run = tune("--let", "climb_deg=50..60", "--best");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("60.0 at an end", "! climb leans on its upper end", "Nothing to gain");
    }

    @Test
    void aLimitIsKeptAndNamed() {
        Runs run = tune("--let", "preset.elevator_up_mm=0..3", "--limit", "max_load_g=..9");
        assertThat(run.out()).contains("Kept: greatest load at most 9 g", "held back by the limit on greatest load");
    }

    @ParameterizedTest
    @CsvSource({
        "--let, x, 3, not KEY=FROM..TO",
        "--let, preset.elevator_up_mm=3..1, 3, does not rise",
        "--let, 'preset.elevator_up_mm=0,5..1', 3, is no range",
        "--let, preset.elevator_up_mm=0..NaN, 3, is no range",
        "--let, preset.elevator_up_mm=0..100, 3, out of range",
        "--let, boom.cutt_mm=0..20, 3, Maybe",
        "--let, preset.elevator_up_mm=0.., 2, both ends",
        "--let, climb_deg=70..70, 3, does not rise",
        "--limit, static_margin_pct=2, 3, Maybe static_margin_pct=2..",
        "--limit, statc_margin_pct=2.., 2, Maybe static_margin_pct",
        "--limit, static_margin_pct=60.., 4, no setting within the ends keeps the limits",
        "--aim, far, 2, 'choose from height, time'"
    })
    void nonsenseIsRefused(String option, String value, int code, String said) {
        Runs run = tune(option, value);
        assertThat(run.code()).isEqualTo(code);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception");
    }
}
