package org.sawfly.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.sawfly.cli.command.Root;
import org.sawfly.cli.command.Streams;
import picocli.CommandLine;

/** Entry of the program. */
public final class Main {
    private Main() {}

    /**
     * Runs one command line and ends the process with its exit code.
     *
     * @param args the words after the program's name
     */
    public static void main(String[] args) {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        System.exit(run(args, System.in, out, err));
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
        CommandLine commandLine = Root.commandLine(new Streams(in, out, err));
        return commandLine.execute(args);
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
