package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/**
 * A table for machines: keys above, a Double or a String in each cell. As CSV it follows RFC 4180 with plain line feeds:
 * comma, point as decimal mark, quotes where they are needed; an empty cell for none.
 */
public final class Rows {
    private final List<String> keys;
    private final List<List<Object>> cells = new ArrayList<>();

    /** An empty table under the given keys. */
    public Rows(List<String> keys) {
        if (new HashSet<>(keys).size() < keys.size()) {
            throw new IllegalArgumentException("a key stands twice in " + keys);
        }
        this.keys = List.copyOf(keys);
    }

    /** A table of results, one a row, with a quantity a column. */
    public static <T> Rows of(List<Quantity<T>> columns, List<T> results) {
        Rows rows = new Rows(columns.stream().map(Quantity::key).toList());
        for (T result : results) {
            rows.add(
                    columns.stream().<Object>map(column -> column.value(result)).toList());
        }
        return rows;
    }

    /** Adds a row of Doubles and Strings. */
    public Rows add(List<Object> row) {
        if (row.size() != keys.size()) {
            throw new IllegalArgumentException(row.size() + " cells under " + keys.size() + " keys");
        }
        for (Object cell : row) {
            if (!(cell instanceof Double || cell instanceof String)) {
                throw new IllegalArgumentException("a cell holds " + cell);
            }
        }
        cells.add(List.copyOf(row));
        return this;
    }

    /** The whole table with its header. */
    public String csv() {
        StringBuilder text = new StringBuilder(header());
        for (List<Object> row : cells) {
            text.append(csvLine(row));
        }
        return text.toString();
    }

    /** The header line, for a table that is written row by row. */
    public String header() {
        return csvLine(keys);
    }

    /** One line of CSV with its line feed, for a table that is written row by row. */
    public static String csvLine(List<?> row) {
        return row.stream().map(Rows::csvCell).collect(Collectors.joining(",", "", "\n"));
    }

    void putInto(Fields fields, String key) {
        for (List<Object> row : cells) {
            Fields item = fields.item(key);
            for (int i = 0; i < row.size(); i++) {
                if (row.get(i) instanceof Double number) {
                    item.put(keys.get(i), number, 0);
                } else {
                    item.put(keys.get(i), row.get(i).toString());
                }
            }
        }
    }

    private static String csvCell(Object cell) {
        if (cell instanceof Double number) {
            return Double.isFinite(number) ? Numbers.machine(number) : "";
        }
        String text = cell.toString();
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
