package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The launches of two sets, throw by throw where their order is known, else each set from its first throw on. */
public final class VerdictFigure {
    private static final double LEAST_RANGE = 8;

    private VerdictFigure() {}

    /**
     * One launch.
     *
     * @param set "A" or "B"
     * @param time when it was thrown, by one clock; NaN if not known
     * @param height [m]
     * @param leftOut whether the rule left it out
     */
    public record Dot(String set, double time, double height, boolean leftOut) {}

    /** A set's mean height [m] with its words. */
    public record Mean(String words, double height) {}

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param caption what else is to be said
     * @param foot where the numbers come from
     * @param dots all launches, set by set
     * @param means of both sets
     */
    public static Figure of(String title, String caption, String foot, List<Dot> dots, List<Mean> means) {
        boolean ordered = dots.stream().noneMatch(dot -> Double.isNaN(dot.time()));
        List<Dot> shown = new ArrayList<>(dots);
        if (ordered) {
            shown.sort(Comparator.comparingDouble(Dot::time));
        }
        Map<String, Integer> counts = new HashMap<>();
        List<Mark> marks = new ArrayList<>();
        double[] heights = new double[shown.size()];
        int most = 1;
        for (int i = 0; i < heights.length; i++) {
            Dot dot = shown.get(i);
            int number = counts.merge(ordered ? "" : dot.set(), 1, Integer::sum);
            most = Math.max(most, number);
            heights[i] = dot.height();
            String label = dot.leftOut() ? "(" + dot.set() + ")" : dot.set();
            marks.add(new Mark.Flag(number, dot.height(), label, Hue.HEIGHT));
        }
        List<Series> series = new ArrayList<>();
        for (int i = 0; i < means.size(); i++) {
            double height = means.get(i).height();
            series.add(new Series.Line(
                    new double[] {0, most + 1},
                    new double[] {height, height},
                    Hue.HEIGHT,
                    i == 0 ? Stroke.SOLID : Stroke.DASHED,
                    means.get(i).words()));
        }
        Axis x = Axis.fixed(ordered ? "throw, in the order thrown" : "throw of its set", 0, most + 1);
        Axis y = Axis.around("launch height, m", LEAST_RANGE, heights);
        return new Figure(title, caption, foot, List.of(new Panel(x, y, series, marks, 1)));
    }
}
