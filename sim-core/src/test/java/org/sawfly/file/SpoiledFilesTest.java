package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files spoiled at random: whatever stands in them is read or refused with a place, never a stack trace. */
class SpoiledFilesTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final String[] BITS = {
        "", "-", "\t", "{", "}", "[", "]", ": ", ",", "\"", "'", "#", "&a ", "*a", "!x ", "0", "1e999", ".nan", "-1",
        "999999", "\u00b0", "\u201c", "\ufeff", "\0", "\r", "|", ">", "<<: ", "---\n", "~", "[]", "{}"
    };

    private static final int SEEDS = Integer.getInteger("seeds", 60);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"plover.yaml", "reed.yaml", "club.yaml"})
    void areRefusedInWords(String file) throws IOException {
        String whole = Files.readString(SCENARIOS.resolve(file));
        for (int seed = 0; seed < SEEDS; seed++) {
            String spoiled = spoiled(whole, new Random(seed));
            Path path = folder.resolve(file);
            Files.writeString(path, spoiled);
            try {
                assertThat(FileCheck.of(path).name()).isNotBlank();
            } catch (InputException e) {
                assertThat(e.problems()).as("seed " + seed).isNotEmpty();
                assertThat(e.getMessage())
                        .as("seed " + seed)
                        .matches("[\\x20-\\x7e\\n]*")
                        .doesNotContain("NaN");
            } catch (RuntimeException e) {
                throw new AssertionError(file + " with seed " + seed + " ends in " + e, e);
            }
        }
    }

    private static String spoiled(String whole, Random random) {
        StringBuilder text = new StringBuilder(whole);
        for (int i = random.nextInt(3); i >= 0; i--) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(3)) {
                case 0 -> text.insert(at, BITS[random.nextInt(BITS.length)]);
                case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(40)));
                default -> text.replace(at, Math.min(text.length(), at + 1), BITS[random.nextInt(BITS.length)]);
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plover.yaml",
                "plover-ten-numbers.yaml",
                "reed.yaml",
                "club.yaml",
                "strong.yaml",
                "shorten-boom.yaml",
                "move-cg.yaml",
                "two-tails.yaml",
                "boom-and-fin.yaml"
            })
    void theScenariosAreFine(String file) {
        FileCheck check = FileCheck.of(SCENARIOS.resolve(file));
        assertThat(check.name()).isNotBlank();
        assertThat(check.doubts()).isEmpty();
    }

    @Test
    void oneRunFindsEverything() throws IOException {
        Path path = folder.resolve("many.yaml");
        Files.writeString(path, """
                glider: plover
                ready_to_fly: {mass_g: 0.2314, cg_mm: 69,5}
                wing: {span_m: 1.5, root_chord_mm: 168mm, two_thirds_chord_mm: 14}
                pod: {nose_ahead_mm: 265}
                boom: {end_behind_mm: 790, end_diameter_mm: .5}
                stab: {area_dm2: 1.93}
                fin: {area_dm2: 120}
                """);
        try {
            FileCheck.of(path);
        } catch (InputException e) {
            List<String> places = e.problems().stream()
                    .map(p -> p.place().line() + " " + p.path())
                    .toList();
            assertThat(places)
                    .contains(
                            "2 ready_to_fly.mass_g",
                            "2 ready_to_fly",
                            "3 wing.span_m",
                            "3 wing.span_mm",
                            "3 wing.root_chord_mm",
                            "3 wing.two_thirds_chord_mm",
                            "5 boom.end_diameter_mm",
                            "6 stab",
                            "7 fin.area_dm2");
            return;
        }
        throw new AssertionError("accepted");
    }
}
