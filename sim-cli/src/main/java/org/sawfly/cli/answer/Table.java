package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Columns of text under headings, aligned left or right; a missing cell at the end of a row is empty. A table that is
 * too wide for the page moves its columns together or has the words of its widest left-aligned column shortened.
 */
public final class Table implements Block {
    private static final String CUT = "..";
    private static final int LEAST_WIDTH = 6;

    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final int indent;
    private final int gap;

    /** Two blanks before the table and two between its columns. */
    public Table() {
        this(2, 2);
    }

    /** So many blanks before the table and between its columns. */
    public Table(int indent, int gap) {
        this.indent = indent;
        this.gap = gap;
    }

    /** Adds a column of words with the lines of its heading. */
    public Table left(String... heading) {
        columns.add(new Column(false, List.of(heading)));
        return this;
    }

    /** Adds a column of numbers with the lines of its heading. */
    public Table right(String... heading) {
        columns.add(new Column(true, List.of(heading)));
        return this;
    }

    /** Adds a row. */
    public Table row(String... cells) {
        return row(List.of(cells));
    }

    /** Adds a row. */
    public Table row(List<String> cells) {
        if (cells.size() > columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns.size() + " columns");
        }
        rows.add(List.copyOf(cells));
        return this;
    }

    /** Adds a ruler over the width of the table. */
    public Table ruler() {
        rows.add(List.of());
        return this;
    }

    @Override
    public List<String> lines() {
        int[] widths = widths();
        List<String> lines = new ArrayList<>();
        int headings = columns.stream().mapToInt(c -> c.heading.size()).max().orElse(0);
        for (int i = 0; i < headings; i++) {
            List<String> cells = new ArrayList<>();
            for (Column column : columns) {
                int line = i - headings + column.heading.size();
                cells.add(line < 0 ? "" : column.heading.get(line));
            }
            String heading = line(cells, widths);
            if (!heading.isBlank()) {
                lines.add(heading);
            }
        }
        for (List<String> row : rows) {
            lines.add(row.isEmpty() ? " ".repeat(indent) + "-".repeat(total(widths) - indent) : line(row, widths));
        }
        return lines;
    }

    private String line(List<String> cells, int[] widths) {
        int between = gap(widths);
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        for (int i = 0; i < cells.size(); i++) {
            String cell = shortened(cells.get(i), widths[i]);
            String blanks = " ".repeat(widths[i] - cell.length());
            line.append(i == 0 ? "" : " ".repeat(between));
            line.append(columns.get(i).right ? blanks + cell : cell + blanks);
        }
        return line.toString().stripTrailing();
    }

    private static String shortened(String cell, int width) {
        return cell.length() <= width ? cell : cell.substring(0, Math.max(0, width - CUT.length())) + CUT;
    }

    private int[] widths() {
        int[] widths = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            for (String line : columns.get(i).heading) {
                widths[i] = Math.max(widths[i], line.length());
            }
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], i < row.size() ? row.get(i).length() : 0);
            }
        }
        int over = total(widths) - TextWriter.WIDTH;
        int widest = -1;
        for (int i = 0; i < widths.length; i++) {
            if (!columns.get(i).right && (widest < 0 || widths[i] > widths[widest])) {
                widest = i;
            }
        }
        if (over > 0 && widest >= 0) {
            widths[widest] = Math.max(LEAST_WIDTH, widths[widest] - over);
        }
        return widths;
    }

    /** Blanks between columns: one where that brings it onto the page. */
    private int gap(int[] widths) {
        return total(widths, gap) > TextWriter.WIDTH && total(widths, 1) <= TextWriter.WIDTH ? 1 : gap;
    }

    private int total(int[] widths) {
        return total(widths, gap(widths));
    }

    private int total(int[] widths, int between) {
        return indent
                + between * Math.max(0, widths.length - 1)
                + Arrays.stream(widths).sum();
    }

    private record Column(boolean right, List<String> heading) {}
}
