package org.sawfly.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks of flights and studies and the program itself, and writes the table of their times. */
public final class SpeedTable {
    private static final String FLIGHT = FlightBench.class.getName() + ".flight";
    private static final int STARTS = 11;

    private SpeedTable() {}

    /**
     * Writes the table.
     *
     * @param args the file to write
     */
    public static void main(String[] args) throws RunnerException, IOException, InterruptedException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include("org\\.sawfly\\.(bench\\.(Flight|Study|Scaling)|flight\\.StripFlight)Bench")
                        .addProfiler(GCProfiler.class)
                        .build())
                .run();
        StringBuilder text = new StringBuilder(heading());
        double flight = results.stream()
                .filter(result -> result.getParams().getBenchmark().equals(FLIGHT))
                .mapToDouble(SpeedTable::microseconds)
                .findFirst()
                .orElse(Double.NaN);
        for (RunResult result : results) {
            text.append(line(words(result), microseconds(result), flight, allocated(result)));
        }
        List<String> fly = List.of("fly", "../scenarios/plover.yaml");
        text.append(line("`sawfly fly`, the whole program", start(fly), flight, Double.NaN));
        File chart = File.createTempFile("flight", ".png");
        List<String> drawn = List.of("fly", "../scenarios/plover.yaml", "--force", "--chart", chart.getPath());
        text.append(line("`sawfly fly` with a chart", start(drawn), flight, Double.NaN));
        Files.delete(chart.toPath());
        Files.writeString(Path.of(args[0]), text);
    }

    private static String heading() throws IOException {
        return "# How long things take\n\nWritten by `org.sawfly.bench.SpeedTable` (see DEVELOPERS.md) with the demo glider"
                + " `plover`, with the fast model\nwhere no strips are named. Ratios are to one flight; compare ratios, not times, between machines."
                + "\n\n" + machine()
                + "\n\n| what | time | over a flight | allocated |\n| --- | ---: | ---: | ---: |\n";
    }

    /** Cores, clock and Java; nothing that names the machine. */
    private static String machine() throws IOException {
        Path about = Path.of("/proc/cpuinfo");
        String clock = "";
        if (Files.isReadable(about)) {
            clock = Files.readAllLines(about).stream()
                    .filter(line -> line.startsWith("cpu MHz"))
                    .findFirst()
                    .map(line -> String.format(
                            Locale.ROOT,
                            " at %.1f GHz",
                            Double.parseDouble(line.substring(line.indexOf(':') + 1)) / 1e3))
                    .orElse("");
        }
        return Runtime.getRuntime().availableProcessors() + " cores" + clock + ", " + System.getProperty("os.arch")
                + ", "
                + System.getProperty("os.name") + ", Java " + Runtime.version().feature() + " ("
                + System.getProperty("java.vm.name") + ").";
    }

    private static String method(RunResult result) {
        String name = result.getParams().getBenchmark();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static String words(RunResult result) {
        String name = result.getParams().getBenchmark();
        try {
            Class<?> owner = Class.forName(name.substring(0, name.lastIndexOf('.')));
            String said =
                    owner.getMethod(method(result)).getAnnotation(Says.class).value();
            String threads = result.getParams().getParam("threads");
            return threads == null ? said : said + ", threads: " + threads;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double microseconds(RunResult result) {
        Result<?> time = result.getPrimaryResult();
        if (!time.getScoreUnit().startsWith("us/")) {
            throw new IllegalStateException("not in microseconds: " + time.getScoreUnit());
        }
        return time.getScore();
    }

    private static double allocated(RunResult result) {
        return result.getSecondaryResults().entrySet().stream()
                .filter(entry -> entry.getKey().endsWith("gc.alloc.rate.norm"))
                .mapToDouble(entry -> entry.getValue().getScore())
                .findFirst()
                .orElse(Double.NaN);
    }

    /** Median time of a run of the program, started before once or twice so that its archive of classes is there [us]. */
    private static double start(List<String> words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("../sawfly"));
        command.addAll(words);
        double[] times = new double[STARTS];
        for (int i = -2; i < STARTS; i++) {
            long begin = System.nanoTime();
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (process.waitFor() != 0) {
                throw new IllegalStateException(command + " ended with " + process.exitValue());
            }
            times[Math.max(i, 0)] = (System.nanoTime() - begin) / 1e3;
        }
        Arrays.sort(times);
        return times[STARTS / 2];
    }

    private static String line(String words, double microseconds, double flight, double bytes) {
        return "| " + words + " | " + time(microseconds) + " | " + digits(microseconds / flight) + " | "
                + (Double.isNaN(bytes) ? "-" : size(bytes)) + " |\n";
    }

    private static String time(double microseconds) {
        return microseconds < 1e3
                ? digits(microseconds) + " us"
                : microseconds < 1e6 ? digits(microseconds / 1e3) + " ms" : digits(microseconds / 1e6) + " s";
    }

    private static String size(double bytes) {
        return bytes < 0.5 ? "0" : bytes < 1e3 ? digits(bytes) + " B" : digits(bytes / 1e3) + " kB";
    }

    /** Three digits that count. */
    private static String digits(double value) {
        int decimals = value == 0 ? 0 : (int) Math.max(0, 2 - Math.floor(Math.log10(value)));
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
