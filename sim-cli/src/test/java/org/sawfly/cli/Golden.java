package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Kept texts of commands, for their words and layout: every digit counts as any other. Run with {@code
 * -Dsawfly.golden=update} to write them anew.
 */
final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/org/sawfly/cli/golden");

    private Golden() {}

    /** Compares a text with the kept one of that name. */
    static void assertKept(String name, String text) {
        Path file = FOLDER.resolve(name + ".txt");
        try {
            if ("update".equals(System.getProperty("sawfly.golden"))) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, text, StandardCharsets.UTF_8);
            }
            String kept = Files.readString(file, StandardCharsets.UTF_8);
            assertThat(anyDigits(text)).as(name).isEqualTo(anyDigits(kept));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String anyDigits(String text) {
        return text.replaceAll("[0-9]", "0");
    }
}
