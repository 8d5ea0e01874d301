package org.sawfly.cli.command;

import java.io.PrintStream;

/** One line that counts what is done, on a terminal only and at most ten times a second; it is wiped at the end. */
final class Progress implements AutoCloseable {
    private static final long BETWEEN_NANOS = 100_000_000;
    private static final String BLANK = " ".repeat(60);

    private final PrintStream err;
    private final boolean shown;
    private final String what;
    private final int total;
    private long last;
    private boolean drawn;

    /**
     * Starts counting.
     *
     * @param streams shown when their messages go to a terminal
     * @param quiet never shown
     * @param what is counted: "flights"
     * @param total how many there will be
     */
    Progress(Streams streams, boolean quiet, String what, int total) {
        this.err = streams.err();
        this.shown = streams.terminal() && !quiet;
        this.what = what;
        this.total = total;
        this.last = System.nanoTime();
    }

    /** So many are done. */
    void done(int count) {
        long now = System.nanoTime();
        if (shown && now - last >= BETWEEN_NANOS) {
            last = now;
            drawn = true;
            err.print("\r" + count + " of " + total + " " + what);
            err.flush();
        }
    }

    @Override
    public void close() {
        if (drawn) {
            err.print("\r" + BLANK + "\r");
            err.flush();
        }
    }
}
