package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;

/** The rows of a sweep that an answer works with: all of them, or of very many every so many and the last. */
public final class VaryRows {
    /** More are not kept in memory. */
    static final int MOST = 5000;

    private final int total;
    private final int every;
    private final List<VaryRow> rows = new ArrayList<>();
    private int seen;
    private int flown;

    /** For so many rows in all. */
    public VaryRows(int total) {
        this.total = total;
        this.every = (total + MOST - 1) / MOST;
    }

    /** Takes the next row. */
    public void add(VaryRow row) {
        if (seen % every == 0 || seen == total - 1) {
            rows.add(row);
        }
        seen++;
        flown += row.flew() ? 1 : 0;
    }

    /** The rows kept. */
    List<VaryRow> rows() {
        return rows;
    }

    /** How many rows came. */
    public int seen() {
        return seen;
    }

    /** How many of them flew and settled. */
    public int flown() {
        return flown;
    }

    /** One row of so many is kept. */
    int every() {
        return every;
    }
}
