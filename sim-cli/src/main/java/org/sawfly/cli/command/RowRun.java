package org.sawfly.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.sawfly.cli.answer.HowSure;
import org.sawfly.cli.answer.OutputFiles;
import org.sawfly.cli.answer.RowFile;
import org.sawfly.cli.answer.Rows;
import org.sawfly.cli.answer.VaryRow;
import org.sawfly.cli.answer.VaryRows;
import org.sawfly.study.Vary;

/** Runs a sweep row by row: into memory for the answer and, where asked for, into a file that survives being stopped. */
final class RowRun {
    private static final int ROWS_A_FLUSH = 64;
    private static final int PATIENCE_S = 20;

    private final Vary study;
    private final VaryRows rows;
    private final HowSure sure;
    private final OutputOptions output;
    private final Streams streams;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private RowFile csv;
    private VaryRow last;

    /** With how sure the differences from today are; null for no ranges. */
    RowRun(Vary study, VaryRows rows, HowSure sure, OutputOptions output, Streams streams) {
        this.study = study;
        this.rows = rows;
        this.sure = sure;
        this.output = output;
        this.streams = streams;
    }

    /** Refuses, before any flight, to begin anew beside what is left of a run, or to go on where nothing is left. */
    static void check(OutputOptions output, boolean resume) {
        Path target = output.csvFile();
        if (resume && target == null) {
            throw new CommandException(Exit.WRONG_USE, "--resume goes on with the file of --csv; name it");
        }
        boolean left = target != null && RowFile.canResume(target);
        if (resume && !left) {
            throw new CommandException(Exit.WRONG_USE, "--resume: there is no " + OutputFiles.partOf(target));
        }
        if (left && !resume && !output.force()) {
            throw new CommandException(
                    Exit.NOT_WRITTEN,
                    OutputFiles.partOf(target) + " is left from a run that was stopped; --resume goes on with it, "
                            + "--force starts anew");
        }
    }

    /** Runs all rows; those of a run that was stopped are taken over. */
    void run(int threads, boolean resume) {
        Path target = output.csvFile();
        CountDownLatch safe = new CountDownLatch(1);
        Thread hook = new Thread(() -> stop(safe), "stop");
        Runtime.getRuntime().addShutdownHook(hook);
        try (Progress progress = new Progress(streams, output.quiet(), "flights", study.rows())) {
            int from = target == null ? 0 : open(target, resume);
            study.run(threads, from, row -> take(row, from, progress), stopped::get);
            if (stopped.get()) {
                leave(target);
            } else if (csv != null) {
                csv.complete();
                output.note(streams, "Wrote " + target);
            }
        } finally {
            if (csv != null) {
                csv.close();
            }
            safe.countDown();
            forget(hook);
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the process is already ending: the hook is running
        }
    }

    /** What an interrupt does: no further row, and wait until the last one is in the file. */
    private void stop(CountDownLatch safe) {
        stopped.set(true);
        try {
            boolean done = safe.await(PATIENCE_S, TimeUnit.SECONDS);
            if (!done) {
                streams.err().println("sawfly: the last row did not get into the file in time");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void leave(Path target) {
        String where = target == null ? "" : "; they are in " + OutputFiles.partOf(target) + ", --resume goes on";
        throw new CommandException(
                Exit.NO_ANSWER, "stopped after " + rows.seen() + " of " + study.rows() + " rows" + where);
    }

    /** Opens the file; returns from which row on there is work to do. */
    private int open(Path target, boolean resume) {
        String header = Rows.csvLine(keys());
        if (!resume) {
            csv = RowFile.begin(target, header);
            return 0;
        }
        csv = RowFile.resume(target, header, line -> takeOver(target, line));
        return Math.max(0, rows.seen() - 1);
    }

    private List<String> keys() {
        return VaryRow.keys(study.paths(), sure != null);
    }

    private void takeOver(Path target, String line) {
        VaryRow row = VaryRow.parse(line, study.paths().size(), keys().size());
        boolean fits = row != null && rows.seen() < study.rows() && row.values().equals(study.values(rows.seen()));
        if (!fits) {
            throw strange(target);
        }
        rows.add(row);
        last = row;
    }

    private void take(Vary.Row row, int from, Progress progress) {
        VaryRow made = VaryRow.of(row, sure);
        if (last != null && row.index() == from) {
            // the last row that was taken over is worked out again: it must be the same
            if (!made.equals(last)) {
                throw strange(output.csvFile());
            }
            return;
        }
        rows.add(made);
        if (csv != null) {
            csv.add(Rows.csvLine(made.cells()));
            if (rows.seen() % ROWS_A_FLUSH == 0) {
                csv.flush();
            }
        }
        progress.done(rows.seen());
    }

    private static CommandException strange(Path target) {
        return new CommandException(
                Exit.NOT_ACCEPTED,
                OutputFiles.partOf(target) + " was made from other files or another range. Maybe delete it");
    }
}
