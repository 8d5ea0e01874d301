package org.sawfly.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sawfly.quantity.Unit;
import org.sawfly.section.SectionTable;

/** Reads a section table from CSV with the columns {@code reynolds,flap_deg,alpha_deg,cl,cd,cm}, in any order of rows. */
final class TableText {
    private static final List<String> COLUMNS = List.of("reynolds", "flap_deg", "alpha_deg", "cl", "cd", "cm");
    private static final int MOST_PROBLEMS = 20;

    private final Source source;
    private final Problems problems;
    private int found;

    private TableText(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /** The table, or null after a problem. */
    static SectionTable read(Source source, In in, String key) {
        TableText text = new TableText(source, in.reading().problems());
        List<double[]> rows = text.rows();
        if (text.found > 0) {
            return null;
        }
        double[][] columns = new double[COLUMNS.size()][rows.size()];
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < columns.length; j++) {
                columns[j][i] = rows.get(i)[j];
            }
        }
        toRadians(columns[1]);
        toRadians(columns[2]);
        try {
            return SectionTable.fromRows(columns[0], columns[1], columns[2], columns[3], columns[4], columns[5]);
        } catch (IllegalArgumentException e) {
            in.problem(key, source.name() + ": " + e.getMessage(), "");
            return null;
        }
    }

    private List<double[]> rows() {
        List<double[]> rows = new ArrayList<>();
        int[] order = null;
        for (int i = 0; i < source.lines().size(); i++) {
            String line = source.lines().get(i);
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (order == null) {
                order = heading(line, i + 1);
                if (order == null) {
                    return rows;
                }
            } else {
                double[] row = row(line, i + 1, order);
                if (row != null) {
                    rows.add(row);
                }
            }
        }
        if (order == null) {
            problem(1, 1, "has no heading", String.join(",", COLUMNS));
        }
        return rows;
    }

    /** For each column of the file which of ours it is, -1 for others; null after a problem. */
    private int[] heading(String line, int number) {
        String[] names = line.strip().split(",", -1);
        int[] order = Arrays.stream(names).mapToInt(n -> COLUMNS.indexOf(n.strip())).toArray();
        for (int column = 0; column < COLUMNS.size(); column++) {
            int wanted = column;
            if (Arrays.stream(order).noneMatch(o -> o == wanted)) {
                String maybe = line.contains(";") ? "commas between the columns, points for decimals" : "the heading " + String.join(",", COLUMNS);
                problem(number, 1, "the column " + COLUMNS.get(column) + " is missing", maybe);
                return null;
            }
        }
        return order;
    }

    private double[] row(String line, int number, int[] order) {
        String[] cells = line.split(",", -1);
        if (cells.length != order.length) {
            problem(number, 1, cells.length + " values stand under " + order.length + " headings", "a decimal comma");
            return null;
        }
        double[] row = new double[COLUMNS.size()];
        int column = 1;
        for (int i = 0; i < cells.length; i++) {
            if (order[i] >= 0) {
                row[order[i]] = number(cells[i].strip(), number, column);
            }
            column += cells[i].codePointCount(0, cells[i].length()) + 1;
        }
        return row;
    }

    private double number(String cell, int line, int column) {
        try {
            double value = Double.parseDouble(cell);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // reported below, together with what is not finite
        }
        problem(line, column, "a number is needed, not \"" + Ascii.printable(cell) + "\"", Slips.ofWriting(cell, Unit.NUMBER));
        return 0;
    }

    private void problem(int line, int column, String what, String maybe) {
        found++;
        if (found <= MOST_PROBLEMS) {
            problems.add(new Place(source.name(), line, column), "", what, maybe);
        }
    }

    private static void toRadians(double[] degrees) {
        for (int i = 0; i < degrees.length; i++) {
            degrees[i] = Unit.DEGREE.toSi(degrees[i]);
        }
    }
}
