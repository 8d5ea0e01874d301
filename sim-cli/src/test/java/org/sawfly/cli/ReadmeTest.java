package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs what the README and the guide tell a reader to type, and compares the output they show with what comes. */
class ReadmeTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern COMMAND = Pattern.compile("(?m)^    \\./sawfly (.+)$");
    private static final Pattern SHOWN =
            Pattern.compile("(?m)^    \\./sawfly ([^\\n]+)\\n\\n```text\\n(.*?)\\n```", Pattern.DOTALL);

    @TempDir
    private Path folder;

    static Stream<Path> texts() {
        return Stream.of(ROOT.resolve("README.md"));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everyCommandEndsWell(Path text) throws IOException {
        List<String> commands = COMMAND.matcher(Files.readString(text))
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(commands).isNotEmpty();
        for (String command : commands) {
            run(command);
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void whatIsShownIsWhatComes(Path text) throws IOException {
        Matcher shown = SHOWN.matcher(Files.readString(text));
        while (shown.find()) {
            assertThat(run(shown.group(1))).isEqualTo(shown.group(2));
        }
    }

    /** Runs a command line as from the root of the checkout; what it writes goes to a folder of this test. */
    private String run(String command) {
        String[] args = command.split(" ");
        for (int i = 0; i < args.length; i++) {
            args[i] = args[i].startsWith("scenarios/") ? ROOT.resolve(args[i]).toString() : args[i];
            boolean written = i > 0 && List.of("--chart", "--csv", "-o").contains(args[i - 1]);
            args[i] = written ? folder.resolve(args[i]).toString() : args[i];
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(
                args,
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(exit)
                .as("%s%n%s", command, err.toString(StandardCharsets.UTF_8))
                .isZero();
        return out.toString(StandardCharsets.UTF_8).stripTrailing();
    }
}
