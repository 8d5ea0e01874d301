package org.sawfly.cli.command;

import picocli.CommandLine.Option;

/** How the work is done; the numbers do not depend on it. */
final class RunOptions {
    private static final int MOST = 256;

    @Option(names = "--threads", paramLabel = "N", description = "how many threads work; all processors if left out")
    private Integer threads;

    int threads() {
        if (threads == null) {
            return Math.min(MOST, Runtime.getRuntime().availableProcessors());
        }
        if (threads < 1 || threads > MOST) {
            throw new CommandException(
                    Exit.WRONG_USE, "--threads " + threads + ": a number from 1 to " + MOST + " is needed");
        }
        return threads;
    }
}
