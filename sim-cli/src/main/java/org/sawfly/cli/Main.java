package org.sawfly.cli;

import java.io.BufferedOutputStream;
import java.io.File;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.sawfly.cli.command.Root;
import org.sawfly.cli.command.Streams;
import picocli.CommandLine;

/** Entry of the program. */
public final class Main {
    /** Set by the launcher when messages go to a terminal. */
    private static final String TERMINAL = "sawfly.terminal";

    private Main() {}

    /**
     * Runs one command line and ends the process with its exit code.
     *
     * @param args the words after the program's name
     */
    public static void main(String[] args) {
        Locale.setDefault(Locale.ROOT);
        System.exit(run(args, System.in, utf8(FileDescriptor.out, false), utf8(FileDescriptor.err, true)));
    }

    /**
     * Runs one command line on the given streams.
     *
     * @param args the words after the program's name
     * @param in standard input
     * @param out results
     * @param err messages
     * @return the exit code
     */
    static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
        Failures failures = new Failures(err);
        int code;
        try {
            String first = args.length > 0 ? args[0] : "";
            CommandLine line = Root.commandLine(new Streams(in, out, err, Boolean.getBoolean(TERMINAL)), first)
                    .setParameterExceptionHandler((e, words) -> failures.wrongUse(e))
                    .setExecutionExceptionHandler((e, command, parsed) -> failures.failed(e));
            code = line.execute(withCommand(args, line));
        } catch (RuntimeException | Error e) {
            code = failures.failed(e);
        }
        boolean written = !out.checkError();
        err.flush();
        return code == 0 && !written ? failures.notWritten() : code;
    }

    /** A glider file where a command should stand asks for that glider's card. */
    private static String[] withCommand(String[] args, CommandLine line) {
        boolean bare = args.length > 0
                && !args[0].startsWith("-")
                && !line.getSubcommands().containsKey(args[0])
                && line.getSubcommands().containsKey(Root.CARD)
                && looksLikeFile(args[0]);
        return bare ? Stream.concat(Stream.of(Root.CARD), Arrays.stream(args)).toArray(String[]::new) : args;
    }

    private static boolean looksLikeFile(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return lower.endsWith(".yaml") || lower.endsWith(".yml") || new File(word).isFile();
    }

    private static PrintStream utf8(FileDescriptor descriptor, boolean lineByLine) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(descriptor)), lineByLine, StandardCharsets.UTF_8);
    }
}
