package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class MainTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return Main.run(
                args,
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @Test
    void versionIsThatOfTheBuild() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).matches("sawfly \\d+\\.\\d+\\.\\d+\\R");
        assertThat(err.size()).isZero();
    }

    @Test
    void helpGoesToStandardOutput() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("sawfly", "--version");
        assertThat(err.size()).isZero();
    }

    @Test
    void anUnknownOptionIsWrongUse() {
        assertThat(run("--nonsense")).isEqualTo(2);
        assertThat(out.size()).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("--nonsense");
    }
}
