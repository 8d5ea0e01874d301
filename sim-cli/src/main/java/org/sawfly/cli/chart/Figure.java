package org.sawfly.cli.chart;

import java.util.List;

/**
 * A figure as plain data; it knows no renderer. The page is A4 across.
 *
 * @param title the answer in words
 * @param caption what else is to be said, under the title
 * @param foot glider, date and settings, small
 * @param panels from the top down
 */
public record Figure(String title, String caption, String foot, List<Panel> panels) {
    /** Points across the sheet. */
    static final int WIDTH = 1120;

    /** Points down the sheet. */
    static final int HEIGHT = 792;

    /** Checks that there is something to see. */
    public Figure {
        panels = List.copyOf(panels);
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("a figure without a panel");
        }
    }
}
