package org.sawfly.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.log.HeightLog;

/**
 * Reads an altimeter's log: CSV with a heading that names {@code time_s} (or {@code time_ms}) and {@code height_m}, in any
 * order and among any others; {@code wind_mps} against the throw is taken where it is there. Lines that begin with # and
 * empty lines are skipped, a row without a height is a sample that was lost, a row cut short at the very end is left out.
 * Read as a stream, so that a file of any size or kind costs bounded memory.
 */
public final class LogFile {
    /** A log of this many rows lasts eleven hours at 50 a second; all logs of a command together have no more. */
    static final int MOST_ROWS = 2_000_000;

    /** One slip often repeats in every row. */
    private static final int MOST_PROBLEMS = 5;

    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final double LATEST = 1e13;
    private static final double LOWEST = -1000;
    private static final double HIGHEST = 12_000;
    private static final double STRONGEST_WIND = 30;

    private final String name;
    private final Problems problems;
    private final int most;
    private double[] times = new double[1024];
    private double[] heights = new double[1024];
    private double[] winds = new double[1024];
    private int rows;
    private int found;
    private int cutShort;
    private LogHeading heading;

    private LogFile(String name, Problems problems, int most) {
        this.name = name;
        this.problems = problems;
        this.most = most;
    }

    /**
     * Reads logs.
     *
     * @throws InputException with everything that is wrong in any of them
     */
    public static List<HeightLog> read(List<Path> paths) {
        Problems problems = new Problems();
        List<HeightLog> logs = new ArrayList<>();
        Set<Path> before = new HashSet<>();
        int left = MOST_ROWS;
        for (Path path : paths) {
            HeightLog log = null;
            if (before.add(path.toAbsolutePath().normalize())) {
                log = read(path, problems, left);
            } else {
                problems.add(Place.whole(path.toString()), "", "is named twice", "");
            }
            if (log != null) {
                logs.add(log);
                left -= log.times().length;
            }
        }
        problems.throwIfAny();
        return logs;
    }

    private static HeightLog read(Path path, Problems problems, int most) {
        String name = path.toString();
        if (!Files.isRegularFile(path)) {
            String what = Files.isDirectory(path) ? "is a folder; name a log in it" : "there is no such file";
            problems.add(Place.whole(name), "", what, Documents.neighbour(path));
            return null;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return read(name, in, problems, most);
        } catch (IOException e) {
            problems.add(Place.whole(name), "", "the log cannot be read");
            return null;
        }
    }

    /** The log in a stream; null after a problem. */
    static HeightLog read(String name, InputStream in, Problems problems, int most) throws IOException {
        LogFile file = new LogFile(name, problems, most);
        file.read(new ShortLines(in));
        return file.found > 0 ? null : file.log();
    }

    private void read(ShortLines lines) throws IOException {
        for (String line = lines.next(); line != null && found < MOST_PROBLEMS; line = lines.next()) {
            if (lines.tooLong()) {
                problem(lines.number(), 1, "", "a line longer than " + ShortLines.MOST + " characters: no log", "");
                return;
            }
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (heading == null) {
                heading = LogHeading.of(line, new Place(name, lines.number(), 1), problems);
                if (heading == null) {
                    found++;
                    return;
                }
            } else if (rows == most) {
                problem(
                        lines.number(),
                        1,
                        "",
                        "more than " + MOST_ROWS + " samples in all logs together",
                        "cut out the time of the throws, or log less often");
                return;
            } else {
                row(line, lines.number());
            }
        }
    }

    private HeightLog log() {
        if (heading == null || rows < 2) {
            String what = heading == null ? "the log is empty" : "fewer than two samples under the heading";
            problem(0, 0, "", what, "");
            return null;
        }
        double[] wind = heading.wind() < 0 ? new double[0] : Arrays.copyOf(winds, rows);
        HeightLog log = new HeightLog(name, Arrays.copyOf(times, rows), Arrays.copyOf(heights, rows), wind);
        for (HeightLog.Suspicion one : log.suspicions()) {
            problem(0, 0, "", one.what(), one.maybe());
        }
        return found > 0 ? null : log;
    }

    private void row(String line, int number) {
        if (cutShort > 0) {
            problem(cutShort, 1, "", "a row with fewer values than the heading has names", "");
            cutShort = 0;
        }
        String[] cells = line.split(",", -1);
        if (cells.length < heading.names().size()) {
            cutShort = number;
            return;
        }
        if (cells.length > heading.names().size()) {
            problem(number, 1, "", "a row with more values than the heading has names", "a comma for the decimals");
            return;
        }
        if (LogHeading.bare(cells[heading.height()]).isEmpty()) {
            return;
        }
        double time = number(cells, heading.time(), number, -LATEST, LATEST, "");
        double height = number(
                cells,
                heading.height(),
                number,
                LOWEST,
                HIGHEST,
                "it is a pressure, or a height in mm: metres are needed");
        double wind = Double.NaN;
        if (heading.wind() >= 0 && !LogHeading.bare(cells[heading.wind()]).isEmpty()) {
            wind = number(cells, heading.wind(), number, -STRONGEST_WIND, STRONGEST_WIND, "");
        }
        if (!Double.isNaN(time)
                && !Double.isNaN(height)
                && inOrder(heading.timeUnit().toSi(time), number)) {
            add(heading.timeUnit().toSi(time), height, wind);
        }
    }

    private boolean inOrder(double time, int number) {
        if (rows == 0 || time > times[rows - 1]) {
            return true;
        }
        boolean equal = time == times[rows - 1];
        problem(
                number,
                1,
                heading.names().get(heading.time()),
                Numbers.shortest(time, 3) + " s does not come after " + Numbers.shortest(times[rows - 1], 3)
                        + " s, the time of the sample before",
                equal
                        ? "the times are rounded: log them to 0.01 s"
                        : "the clock began anew: cut the file in two there");
        return false;
    }

    private void add(double time, double height, double wind) {
        if (rows == times.length) {
            times = Arrays.copyOf(times, 2 * rows);
            heights = Arrays.copyOf(heights, 2 * rows);
            winds = Arrays.copyOf(winds, 2 * rows);
        }
        times[rows] = time;
        heights[rows] = height;
        winds[rows] = wind;
        rows++;
    }

    private double number(String[] cells, int at, int line, double low, double high, String maybe) {
        String cell = LogHeading.bare(cells[at]);
        PlainNumbers plain = new PlainNumbers(cell);
        double value = plain.next();
        if (!plain.atEnd()) {
            value = NUMBER.matcher(cell).matches() ? Double.parseDouble(cell) : Double.NaN;
        }
        if (value >= low && value <= high) {
            return value;
        }
        Unit unit = Unit.of(heading.names().get(at));
        int column = 1;
        for (int i = 0; i < at; i++) {
            column += cells[i].length() + 1;
        }
        boolean number = !Double.isNaN(value);
        problem(
                line,
                column,
                heading.names().get(at),
                number
                        ? Numbers.shortest(value, 3) + " " + unit.words() + " is out of range: at least "
                                + Numbers.shortest(low, 0) + " and at most " + Numbers.shortest(high, 0) + " "
                                + unit.words()
                        : "a number is needed in " + unit.words() + ", not "
                                + (cell.isEmpty() ? "nothing" : "the text \"" + cell + "\""),
                number ? maybe : "");
        return Double.NaN;
    }

    private void problem(int line, int column, String key, String what, String maybe) {
        problems.add(new Place(name, line, column), key, what, maybe);
        found++;
    }
}
