package org.sawfly.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.section.SectionTable;

/**
 * Reads section tables: one heading {@code reynolds,flap_deg,alpha_deg,cl,cd,cm}, then one row a line; lines that begin with
 * # and empty lines are skipped. Strict: every cell that is wrong is reported with its line and column.
 */
final class SectionFile {
    private static final List<String> HEADING = List.of("reynolds", "flap_deg", "alpha_deg", "cl", "cd", "cm");
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final double HALF_TURN_DEG = Unit.DEGREE.fromSi(Math.PI);
    private static final String RESOURCES = "/org/sawfly/airfoil/";
    /** After this many problems the rest of a table is not looked at: one slip often repeats in every row. */
    private static final int MOST_PROBLEMS = 20;

    private final Source source;
    /** A builder's own table is looked at more closely than those that come along, which a test looks at. */
    private final boolean own;

    private final Problems problems;
    private final double[][] columns = new double[HEADING.size()][];
    private int rows;
    private int found;

    private SectionFile(Source source, boolean own, Problems problems) {
        this.source = source;
        this.own = own;
        this.problems = problems;
        for (int i = 0; i < columns.length; i++) {
            columns[i] = new double[source.lines().size()];
        }
    }

    /** The table in a file; null after a problem. */
    static SectionTable read(Path path, Problems problems) {
        try {
            return read(Source.of(path.toString(), Files.readAllBytes(path), problems), problems);
        } catch (IOException e) {
            problems.add(Place.whole(path.toString()), "", "the section table cannot be read");
            return null;
        }
    }

    /** The table of that name among those that come along; null if there is none. */
    static SectionTable named(String name, Problems problems) {
        if (!name.matches("[a-z]+(-[a-z]+)*")) {
            return null;
        }
        String file = name + ".csv";
        try (InputStream in = SectionFile.class.getResourceAsStream(RESOURCES + file)) {
            return in == null
                    ? null
                    : new SectionFile(Source.of(file, in.readAllBytes(), problems), false, problems).table();
        } catch (IOException e) {
            problems.add(Place.whole(file), "", "the section table cannot be read");
            return null;
        }
    }

    /** The table in a text; null after a problem. */
    static SectionTable read(Source source, Problems problems) {
        return new SectionFile(source, true, problems).table();
    }

    private SectionTable table() {
        boolean headed = false;
        for (int i = 0; i < source.lines().size() && found < MOST_PROBLEMS; i++) {
            String line = source.lines().get(i);
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (headed) {
                if (!plainRow(line)) {
                    row(line, i + 1);
                }
            } else if (heading(line, i + 1)) {
                headed = true;
            } else {
                return null;
            }
        }
        if (found == 0 && rows == 0) {
            problem(0, 0, "the section table has no rows", "");
        }
        return found > 0 ? null : assembled();
    }

    private SectionTable assembled() {
        double[][] c = new double[columns.length][];
        for (int i = 0; i < c.length; i++) {
            c[i] = Arrays.copyOf(columns[i], rows);
        }
        try {
            SectionTable table = SectionTable.fromRows(c[0], c[1], c[2], c[3], c[4], c[5]);
            return own && !drags(table) ? null : table;
        } catch (IllegalArgumentException e) {
            problem(0, 0, e.getMessage(), "");
            return null;
        }
    }

    /** Whether the drag stays above 0 between the rows too; else a problem. */
    private boolean drags(SectionTable table) {
        double[] none = table.withoutDrag();
        if (none.length > 0) {
            problem(
                    0,
                    0,
                    "between the rows, near an angle of " + degrees(none[0]) + " deg, Reynolds number "
                            + Numbers.shortest(none[1], 0) + " and a flap angle of " + degrees(none[2])
                            + " deg, the drag falls below 0",
                    "add rows there: the drag jumps and the rows stand far apart");
        }
        return none.length == 0;
    }

    private static String degrees(double angle) {
        return Numbers.shortest(Unit.DEGREE.fromSi(angle), 1);
    }

    private boolean heading(String line, int number) {
        if (Arrays.stream(line.split(",", -1)).map(String::strip).toList().equals(HEADING)) {
            return true;
        }
        String maybe = line.indexOf(';') >= 0
                ? "the columns are separated by semicolons: save with commas between and points in the numbers"
                : "";
        problem(number, 1, "the first line must be the heading " + String.join(",", HEADING), maybe);
        return false;
    }

    /** Takes a row as nearly all are: six plain numbers within their bounds. False, with nothing taken, for any other. */
    private boolean plainRow(String line) {
        PlainNumbers numbers = new PlainNumbers(line);
        for (int c = 0; c < columns.length; c++) {
            double value = numbers.next();
            if (!wrong(c, value).isEmpty()) {
                return false;
            }
            take(c, value);
        }
        rows += numbers.atEnd() ? 1 : 0;
        return numbers.atEnd();
    }

    private void take(int column, double value) {
        columns[column][rows] = column == 1 || column == 2 ? Unit.DEGREE.toSi(value) : value;
    }

    private void row(String line, int number) {
        String[] cells = line.split(",", -1);
        if (cells.length != HEADING.size()) {
            problem(
                    number,
                    1,
                    "a row has " + HEADING.size() + " values, this one " + cells.length,
                    cells.length > HEADING.size() ? "a comma stands for a decimal point" : "");
            return;
        }
        int column = 1;
        boolean good = true;
        for (int c = 0; c < cells.length; c++) {
            String cell = cells[c].strip();
            double value = NUMBER.matcher(cell).matches() ? Double.parseDouble(cell) : Double.NaN;
            String wrong = wrong(c, value);
            if (!wrong.isEmpty()) {
                problem(
                        number,
                        column,
                        HEADING.get(c) + " " + wrong + ", not " + (cell.isEmpty() ? "empty" : cell),
                        "");
                good = false;
            }
            take(c, value);
            column += cells[c].codePointCount(0, cells[c].length()) + 1;
        }
        rows += good ? 1 : 0;
    }

    private static String wrong(int column, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return "must be a number";
        }
        return switch (column) {
            case 0 -> value >= 1 && value <= 1e9 ? "" : "must be above 1";
            case 1 -> Math.abs(value) <= HALF_TURN_DEG / 2 ? "" : "must be between -90 and 90";
            case 2 -> Math.abs(value) <= HALF_TURN_DEG ? "" : "must be within half a turn";
            case 4 -> value > 0 && value <= 10 ? "" : "must be above 0 and at most 10";
            default -> Math.abs(value) <= 10 ? "" : "must be between -10 and 10";
        };
    }

    private void problem(int line, int column, String what, String maybe) {
        problems.add(new Place(source.name(), line, column), "", what, maybe);
        found++;
    }
}
