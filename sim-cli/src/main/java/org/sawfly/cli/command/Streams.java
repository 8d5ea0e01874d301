package org.sawfly.cli.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * The streams of one run. Results go to {@code out}; messages, progress and warnings to {@code err}.
 *
 * @param in standard input
 * @param out results
 * @param err everything else
 * @param terminal whether a person watches {@code err}, so that progress is worth showing
 */
public record Streams(InputStream in, PrintStream out, PrintStream err, boolean terminal) {
    PrintWriter writer() {
        return new PrintWriter(out, true, StandardCharsets.UTF_8);
    }

    PrintWriter errorWriter() {
        return new PrintWriter(err, true, StandardCharsets.UTF_8);
    }
}
