package org.sawfly.cli.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.JsonWriter;
import org.sawfly.cli.answer.OutputFiles;
import org.sawfly.cli.answer.TextWriter;
import org.sawfly.cli.chart.Charts;
import org.sawfly.cli.chart.Figure;
import picocli.CommandLine.Option;

/** Where an answer goes: text or JSON on standard output, CSV and a chart into files. */
final class OutputOptions {
    private static final Path STANDARD_OUTPUT = Path.of("-");

    @Option(names = "--json", description = "one JSON document in place of the text")
    private boolean json;

    @Option(names = "--csv", paramLabel = "FILE", description = "the rows as CSV; - for standard output")
    private Path csv;

    @Option(names = "--chart", paramLabel = "FILE", description = "a chart, .png or .svg")
    private Path chart;

    @Option(names = "--force", description = "overwrite files that exist")
    private boolean force;

    @Option(
            names = {"-q", "--quiet"},
            description = "no progress and no notes")
    private boolean quiet;

    private final Set<Path> targets = new HashSet<>();

    /** Refuses, before any work, what could not be written afterwards. */
    void check() {
        if (json && toStandardOutput(csv)) {
            throw new CommandException(Exit.WRONG_USE, "--json and --csv - both ask for standard output");
        }
        if (chart != null) {
            chartKind();
            willWrite(chart);
        }
        if (csv != null && !toStandardOutput(csv)) {
            willWrite(csv);
        }
    }

    /** Asks, before any work, for a file that is going to be written: it has a name, it may be written, and only once. */
    void willWrite(Path file) {
        if (file.toString().isEmpty()) {
            throw new CommandException(Exit.WRONG_USE, "the name of a file to write is empty");
        }
        if (toStandardOutput(file)) {
            throw new CommandException(Exit.WRONG_USE, "-: standard output carries the answer; name a file");
        }
        files().check(file);
        if (!targets.add(file.toAbsolutePath().normalize())) {
            throw new CommandException(Exit.WRONG_USE, file + " is named for two outputs; name two files");
        }
    }

    /** Whether a chart is asked for. */
    boolean wantsChart() {
        return chart != null;
    }

    /** The file for rows, null when not asked for or when they go to standard output. */
    Path csvFile() {
        return toStandardOutput(csv) ? null : csv;
    }

    /** Whether rows take the place of the text on standard output. */
    boolean csvOnStandardOutput() {
        return toStandardOutput(csv);
    }

    /** Whether standard output carries text for people. */
    boolean showsText() {
        return !json && !toStandardOutput(csv);
    }

    /** Files as these options allow them to be written. */
    OutputFiles files() {
        return new OutputFiles(force);
    }

    boolean force() {
        return force;
    }

    boolean quiet() {
        return quiet;
    }

    /** A line for people beside the result; not shown when they asked for quiet. */
    void note(Streams streams, String line) {
        if (!quiet) {
            streams.err().println(line);
        }
    }

    /** Writes everything that was asked for: files first, so that a text stands only over files that are there. */
    void deliver(Answer answer, Streams streams) {
        if (csvFile() != null) {
            files().write(csvFile(), rowsOf(answer));
            note(streams, "Wrote " + csvFile());
        }
        deliverWithoutCsvFile(answer, streams);
    }

    /** As {@link #deliver} for a command that has written its rows itself. */
    void deliverWithoutCsvFile(Answer answer, Streams streams) {
        for (String warning : answer.warnings()) {
            note(streams, "Note: " + warning);
        }
        if (chart != null) {
            writeChart(answer, streams);
        }
        PrintStream out = streams.out();
        if (json) {
            out.print(JsonWriter.write(answer, ProgramVersion.NUMBER));
        } else if (showsText()) {
            out.print(TextWriter.write(answer));
        } else if (csvOnStandardOutput() && answer.rows().isPresent()) {
            out.print(rowsOf(answer));
        }
    }

    private void writeChart(Answer answer, Streams streams) {
        List<Figure> figures = answer.figures();
        if (figures.isEmpty()) {
            throw new CommandException(Exit.WRONG_USE, "there is nothing to draw for this; leave out --chart " + chart);
        }
        Charts.Kind kind = chartKind();
        for (int i = 0; i < figures.size(); i++) {
            Figure figure = figures.get(i);
            Path target = i == 0 ? chart : numbered(chart, i + 1);
            files().write(target, out -> Charts.write(figure, kind, out));
            note(streams, "Wrote " + target);
        }
    }

    private static Path numbered(Path file, int number) {
        String name = file.getFileName().toString();
        int point = name.lastIndexOf('.');
        return file.resolveSibling(name.substring(0, point) + "-" + number + name.substring(point));
    }

    private Charts.Kind chartKind() {
        try {
            return Charts.kindOf(chart.toString());
        } catch (IllegalArgumentException e) {
            throw new CommandException(Exit.WRONG_USE, e.getMessage());
        }
    }

    private static String rowsOf(Answer answer) {
        return answer.rows()
                .orElseThrow(
                        () -> new CommandException(Exit.WRONG_USE, answer.command() + " has no rows; leave out --csv"))
                .csv();
    }

    private static boolean toStandardOutput(Path path) {
        return STANDARD_OUTPUT.equals(path);
    }
}
