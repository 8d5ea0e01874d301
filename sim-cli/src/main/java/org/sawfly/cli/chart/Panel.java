package org.sawfly.cli.chart;

import java.util.List;

/**
 * One field of a figure. Panels above each other with equal horizontal axes share the numbers under the lowest.
 *
 * @param x horizontal axis
 * @param y vertical axis
 * @param series lines and bands
 * @param marks what is pointed out
 * @param share height relative to the other panels
 * @param equalScale whether a metre up is as long as a metre along; further panels then stand beside the first
 */
public record Panel(Axis x, Axis y, List<Series> series, List<Mark> marks, double share, boolean equalScale) {
    /** Takes copies of the lists. */
    public Panel {
        series = List.copyOf(series);
        marks = List.copyOf(marks);
    }

    /** A panel whose axes have scales of their own. */
    public Panel(Axis x, Axis y, List<Series> series, List<Mark> marks, double share) {
        this(x, y, series, marks, share, false);
    }
}
