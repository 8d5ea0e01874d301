package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One run of the program in this process.
 *
 * @param code exit code
 * @param out standard output
 * @param err messages
 */
public record Runs(int code, String out, String err) {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final Map<List<String>, Runs> ONCE = new ConcurrentHashMap<>();

    /** Runs the program. */
    public static Runs of(String... args) {
        return reading(InputStream.nullInputStream(), args);
    }

    /** Runs the program on demo files, writing none: the same words are run once, whichever tests look at the answer. */
    public static Runs once(String... args) {
        return ONCE.computeIfAbsent(List.of(args), same -> of(args));
    }

    /** What the program answers to words it accepts: plain text without a number that is none. */
    public static String answered(String... args) {
        Runs run = of(args);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).matches("(?s)[\\x0a\\x20-\\x7e]*").doesNotContain("NaN", "Infinity");
        return run.out();
    }

    /** The same for a text: 80 columns, no minus signs. */
    public static String text(String... args) {
        String text = answered(args);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
        assertThat(text).doesNotContainPattern("(^|[ (])-[0-9.]");
        return text;
    }

    /** Runs the program with something on standard input. */
    public static Runs reading(InputStream in, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                args,
                in,
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Runs(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** A demo file. */
    public static String scenario(String name) {
        return SCENARIOS.resolve(name).toString();
    }
}
