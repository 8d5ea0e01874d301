package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;

/** What is left when fitted flights are taken from logs, over the time after release. */
public final class RestFigure {
    private static final double LEAST_RANGE = 2;

    private RestFigure() {}

    /**
     * One throw.
     *
     * @param times after release [s]
     * @param rests log less flight [m]
     */
    public record Throw(double[] times, double[] rests) {
        /** Takes copies. */
        public Throw {
            times = times.clone();
            rests = rests.clone();
        }

        @Override
        public double[] times() {
            return times.clone();
        }

        @Override
        public double[] rests() {
            return rests.clone();
        }
    }

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param caption what else is to be said
     * @param foot glider, date, settings
     * @param noise standard deviation of all rests [m]
     * @param throwsShown all throws
     */
    public static Figure of(String title, String caption, String foot, double noise, List<Throw> throwsShown) {
        double first = Double.POSITIVE_INFINITY;
        double last = 0;
        double most = 0;
        List<Series> series = new ArrayList<>();
        for (int i = 0; i < throwsShown.size(); i++) {
            Throw one = throwsShown.get(i);
            series.add(new Series.Line(one.times(), one.rests(), Hue.HEIGHT, Stroke.ofLine(i), ""));
            for (int k = 0; k < one.times().length; k++) {
                first = Math.min(first, one.times()[k]);
                last = Math.max(last, one.times()[k]);
                most = Math.max(most, Math.abs(one.rests()[k]));
            }
        }
        double[] ends = {first, last};
        series.add(
                0,
                new Series.Ribbon(
                        ends,
                        new double[] {-noise, -noise},
                        new double[] {noise, noise},
                        Hue.SCATTER,
                        "two samples in three"));
        series.add(new Series.Line(ends, new double[] {0, 0}, Hue.QUIET, Stroke.THIN, ""));
        Axis x = Axis.fixed("seconds after release", first, last);
        Axis y = Axis.around("log less flight, m", LEAST_RANGE, -most, most);
        return new Figure(title, caption, foot, List.of(new Panel(x, y, series, List.of(), 1)));
    }
}
