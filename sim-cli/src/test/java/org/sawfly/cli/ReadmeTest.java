package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.+)$");
    private static final Pattern SECTION = Pattern.compile("\\]\\(#([^)]+)\\)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|\\S+");
    private static final List<String> WRITING = List.of("--chart", "--chart-side", "--chart-swing", "--csv", "-o");

    @TempDir
    private Path folder;

    static Stream<Path> texts() {
        return Stream.of(ROOT.resolve("README.md"), ROOT.resolve("sim-cli/guide/README.md"));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everyCommandRunsAndGivesWhatIsShown(Path text) throws IOException {
        String whole = Files.readString(text);
        Map<String, String> shown = SHOWN.matcher(whole)
                .results()
                .collect(Collectors.toMap(found -> found.group(1), found -> found.group(2)));
        List<String> commands = COMMAND.matcher(whole)
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
        assertThat(commands).isNotEmpty();
        for (String command : commands) {
            String out = run(command);
            assertThat(out).as(command).isEqualTo(shown.getOrDefault(command, out));
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everyPathIsThere(Path text) throws IOException {
        LINK.matcher(Files.readString(text))
                .results()
                .map(found -> found.group(1))
                .filter(target -> !target.contains("://"))
                .forEach(target -> assertThat(text.resolveSibling(target)).exists());
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everySectionThatIsPointedToIsThere(Path text) throws IOException {
        String whole = Files.readString(text);
        List<String> sections = HEADING.matcher(whole)
                .results()
                .map(found -> found.group(1).toLowerCase(Locale.ROOT))
                .map(words -> words.replaceAll("[^a-z0-9 -]", "").replace(' ', '-'))
                .toList();
        SECTION.matcher(whole).results().forEach(found -> assertThat(sections).contains(found.group(1)));
    }

    /** Runs a command line as from the root of the checkout; what it writes goes to a folder of this test. */
    private String run(String command) {
        String[] args = WORD.matcher(command)
                .results()
                .map(word -> word.group(1) == null ? word.group() : word.group(1))
                .toArray(String[]::new);
        boolean writes = false;
        for (int i = 0; i < args.length; i++) {
            args[i] = args[i].startsWith("scenarios/") ? ROOT.resolve(args[i]).toString() : args[i];
            int back = args[0].equals("calibrate") ? 1 : 2;
            boolean written = i > 0 && WRITING.contains(args[i - 1]) || i >= back && args[i - back].equals("--write");
            args[i] = written ? folder.resolve(args[i]).toString() : args[i];
            writes |= written;
        }
        Runs run = writes ? Runs.of(args) : Runs.once(args);
        assertThat(run.code()).as("%s%n%s", command, run.err()).isZero();
        return run.out().stripTrailing();
    }
}
