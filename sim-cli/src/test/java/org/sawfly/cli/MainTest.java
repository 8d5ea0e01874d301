package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.cli.command.CommandException;
import org.sawfly.cli.command.Exit;
import org.sawfly.file.InputException;
import org.sawfly.file.Place;
import org.sawfly.file.Problem;

class MainTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final PrintStream errStream = new PrintStream(err, true, StandardCharsets.UTF_8);

    private int run(String... args) {
        return run(out, args);
    }

    private int run(OutputStream to, String... args) {
        return Main.run(
                args, InputStream.nullInputStream(), new PrintStream(to, false, StandardCharsets.UTF_8), errStream);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void versionIsThatOfTheBuild() {
        assertThat(run("--version")).isZero();
        assertThat(out()).matches("sawfly \\d+\\.\\d+\\.\\d+\\R");
        assertThat(err()).isEmpty();
    }

    @Test
    void helpGoesToStandardOutputWithExamplesFirst() {
        assertThat(run("--help")).isZero();
        assertThat(out()).contains("  sawfly compare plover.yaml --change").contains("Usage:");
        assertThat(out().indexOf("sawfly compare")).isLessThan(out().indexOf("Usage:"));
        assertThat(out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(out()).matches("\\p{ASCII}*");
        assertThat(err()).isEmpty();
    }

    @Test
    void noCommandIsWrongUse() {
        assertThat(run()).isEqualTo(2);
        assertThat(out()).isEmpty();
        assertThat(err()).contains("missing").contains("sawfly --help");
    }

    @Test
    void anUnknownWordGetsTheNearestOne() {
        assertThat(run("hepl")).isEqualTo(2);
        assertThat(out()).isEmpty();
        assertThat(err()).contains("hepl").contains("Maybe help");
    }

    @Test
    void anUnknownOptionGetsTheNearestOne() {
        assertThat(run("--versoin")).isEqualTo(2);
        assertThat(out()).isEmpty();
        assertThat(err()).contains("--versoin").contains("Maybe --version");
    }

    @Test
    void whatPeopleTypeForACutIsUnderstood() {
        assertThat(run("--cut=40")).isEqualTo(2);
        assertThat(err()).contains("Maybe --change boom.cut_mm=40");
    }

    @Test
    void anOutputThatCannotBeWrittenIsNoSuccess() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        assertThat(run(full, "--help")).isEqualTo(5);
        assertThat(err()).contains("could not write");
    }

    @Test
    void aStopKeepsItsExitCode() {
        Failures failures = new Failures(errStream);
        assertThat(failures.failed(new CommandException(Exit.NO_ANSWER, "the glider does not trim")))
                .isEqualTo(4);
        assertThat(err()).isEqualTo("sawfly: the glider does not trim" + System.lineSeparator());
    }

    @Test
    void aRefusedFileIsReportedAsItsReaderSaysIt() {
        Problem problem = new Problem(new Place("plover.yaml", 3, 9), "wing.span_mm", "negative", "1500");
        assertThat(new Failures(errStream).failed(new InputException(List.of(problem))))
                .isEqualTo(3);
        assertThat(err()).startsWith("plover.yaml:3:9:");
    }

    @Test
    void aFaultIsOneLineAndNoTrace() {
        assertThat(new Failures(errStream).failed(new IllegalStateException("broken")))
                .isEqualTo(1);
        assertThat(err().lines()).hasSize(1);
        assertThat(err()).contains("broken").doesNotContain("at org.");
    }

    @Test
    void aWriteThatFailsIsSaid() {
        assertThat(new Failures(errStream).failed(new IOException("x.csv: no space")))
                .isEqualTo(5);
        assertThat(err()).contains("x.csv: no space");
    }
}
