package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.section.SectionTable;

class SectionFileTest {
    private static final String HEADING = "reynolds,flap_deg,alpha_deg,cl,cd,cm\n";

    private static String rows() {
        StringBuilder text = new StringBuilder("# mine, from the tunnel\n").append(HEADING);
        for (int re = 50_000; re <= 200_000; re *= 2) {
            for (int a = -6; a <= 12; a += 2) {
                text.append(String.format(Locale.ROOT, "%d,0,%d,%.3f,%.4f,-0.05%n", re, a, 0.2 + 0.1 * a, 0.01));
            }
        }
        return text.toString();
    }

    @Test
    void readsATableAndCompletesTheCircle() {
        Problems problems = new Problems();
        SectionTable table = SectionFile.read(Source.of("mine.csv", "\uFEFF" + rows()), problems);
        assertThat(problems.all()).isEmpty();
        double[] out = new double[3];
        table.at(Math.toRadians(4), 1e5, 0, out);
        assertThat(out).containsExactly(new double[] {0.6, 0.01, -0.05}, within(1e-9));
        table.at(Math.toRadians(90), 1e5, 0, out);
        assertThat(out[1]).isCloseTo(2, within(0.05));
    }

    @Test
    void reportsEveryWrongCellWithItsPlace() {
        String text = rows() + "100000,0,14,1.2,-0.02,-0.1\n100000,0,sixteen,,0.2,-0.1\n1,2\n";
        Problems problems = new Problems();
        assertThat(SectionFile.read(Source.of("mine.csv", text), problems)).isNull();
        assertThat(problems.all().stream().map(p -> p.place().toString()).toList())
                .isEqualTo(List.of("mine.csv:33:17", "mine.csv:34:10", "mine.csv:34:18", "mine.csv:35:1"));
    }

    /** A drag that falls to a tenth in a narrow step of the Reynolds number swings below nothing in the wide one behind it. */
    @Test
    void refusesRowsBetweenWhichTheDragFallsBelowNothing() {
        StringBuilder text = new StringBuilder(HEADING);
        double[][] drags = {{50_000, 0.06}, {60_000, 0.006}, {1_000_000, 0.005}};
        for (double[] drag : drags) {
            for (int a = -6; a <= 12; a += 2) {
                text.append(String.format(Locale.ROOT, "%.0f,0,%d,%.3f,%.4f,-0.05%n", drag[0], a, 0.1 * a, drag[1]));
            }
        }
        Problems problems = new Problems();
        assertThat(SectionFile.read(Source.of("mine.csv", text.toString()), problems))
                .isNull();
        assertThat(problems.all()).singleElement().satisfies(p -> {
            assertThat(p.what())
                    .contains("drag falls below 0")
                    .contains("an angle of 0 deg")
                    .contains("Reynolds number 1");
            assertThat(p.maybe()).contains("add rows");
        });
        String even = text.toString().replace("60000,", "200000,");
        Problems none = new Problems();
        assertThat(SectionFile.read(Source.of("mine.csv", even), none)).isNotNull();
        assertThat(none.any()).isFalse();
    }

    @Test
    void guessesAtSemicolons() {
        Problems problems = new Problems();
        assertThat(SectionFile.read(Source.of("mine.csv", "reynolds;flap_deg\n1;2\n"), problems))
                .isNull();
        assertThat(problems.all().get(0).maybe()).contains("semicolons");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#only\n", HEADING, HEADING + "100000,0,0,0.1,0.01,0\n"})
    void refusesATableWithoutEnoughRows(String text) {
        Problems problems = new Problems();
        assertThat(SectionFile.read(Source.of("mine.csv", text), problems)).isNull();
        assertThat(problems.any()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"turnstone", "sanderling", "dunlin", "knot"})
    void findsTheTablesThatComeAlong(String name) {
        Problems problems = new Problems();
        assertThat(SectionFile.named(name, problems).withoutDrag()).isEmpty();
        assertThat(problems.any()).isFalse();
        assertThat(SectionFile.named("nobody", problems)).isNull();
        assertThat(SectionFile.named("../" + name, problems)).isNull();
    }
}
