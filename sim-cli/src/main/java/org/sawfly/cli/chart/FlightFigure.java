package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/** One throw: its path, phase by phase, and beside it height and speed over time. */
public final class FlightFigure {
    private static final Hue[] HUES = {Hue.SINK, Hue.SPEED, Hue.HEIGHT, Hue.MARGIN, Hue.SWING, Hue.ELEVATOR};
    private static final double STEP_ROOM = 1.08;

    private FlightFigure() {}

    /**
     * One phase; its first point is the last of the phase before.
     *
     * @param name words: "climb"
     * @param time time after release [s]
     * @param along way over the ground along the throw [m]
     * @param height height [m]
     * @param speed airspeed [m/s]
     */
    public record Phase(String name, double[] time, double[] along, double[] height, double[] speed) {
        /** Takes copies. */
        public Phase {
            time = time.clone();
            along = along.clone();
            height = height.clone();
            speed = speed.clone();
        }

        @Override
        public double[] time() {
            return time.clone();
        }

        @Override
        public double[] along() {
            return along.clone();
        }

        @Override
        public double[] height() {
            return height.clone();
        }

        @Override
        public double[] speed() {
            return speed.clone();
        }
    }

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param caption what else is to be said
     * @param foot glider, date, settings
     * @param height the quantity that gives the title and decimals of the heights
     * @param speed the quantity that gives the title of the speeds
     * @param phases the phases in their order
     */
    public static Figure of(
            String title, String caption, String foot, Quantity<?> height, Quantity<?> speed, List<Phase> phases) {
        List<Series> path = new ArrayList<>();
        List<Series> heights = new ArrayList<>();
        List<Series> speeds = new ArrayList<>();
        List<Mark> onPath = new ArrayList<>();
        List<Mark> starts = new ArrayList<>();
        List<Mark> named = new ArrayList<>();
        Extent along = new Extent();
        Extent up = new Extent();
        Extent fast = new Extent();
        Extent late = new Extent();
        double[] top = {Double.NaN, Double.NaN, Double.NEGATIVE_INFINITY};
        for (int i = 0; i < phases.size(); i++) {
            Phase phase = phases.get(i);
            Hue hue = HUES[i % HUES.length];
            Stroke stroke = i % 2 == 0 ? Stroke.SOLID : Stroke.DASHED;
            path.add(new Series.Line(phase.along(), phase.height(), hue, stroke, ""));
            heights.add(new Series.Line(phase.time(), phase.height(), hue, stroke, ""));
            speeds.add(new Series.Line(phase.time(), phase.speed(), hue, stroke, ""));
            along.take(phase.along());
            up.take(phase.height());
            fast.take(phase.speed());
            late.take(phase.time());
            double start = phase.time()[0];
            String words = start > 0 ? phase.name() + ", " + Numbers.fixed(start, 1) + " s" : phase.name();
            onPath.add(new Mark.Flag(phase.along()[0], phase.height()[0], words, hue));
            starts.add(new Mark.Upright(start, ""));
            named.add(new Mark.Flag(start, phase.height()[0], i == 0 ? "" : phase.name(), hue));
            for (int k = 0; k < phase.time().length; k++) {
                if (phase.height()[k] > top[2]) {
                    top = new double[] {phase.time()[k], phase.along()[k], phase.height()[k]};
                }
            }
        }
        String highest = "top " + Numbers.fixed(top[2], height.decimals()) + " m at " + Numbers.fixed(top[0], 1) + " s";
        onPath.add(new Mark.Flag(top[1], top[2], highest, Hue.INK));
        Axis ground = Axis.around("along the ground, m", 10, Math.min(0, along.low), along.high * STEP_ROOM);
        double sky = 5 * Math.ceil(up.high * STEP_ROOM / 5);
        Axis upward = Axis.fixed(height.title(), 0, sky).every(10);
        Axis time = Axis.fixed("seconds after release", 0, Math.max(1, Math.ceil(late.high)));
        Axis faster = Axis.low(speed, 4, 0, fast.high * STEP_ROOM);
        named.addAll(starts);
        return new Figure(
                title,
                caption,
                foot,
                List.of(
                        new Panel(ground, upward, path, onPath, 3.4, true),
                        new Panel(time, upward.every(20), heights, named, 1.1),
                        new Panel(time, faster, speeds, starts, 1)));
    }

    /** The ends of some numbers; NaN is passed over. */
    private static final class Extent {
        private double low = Double.POSITIVE_INFINITY;
        private double high = Double.NEGATIVE_INFINITY;

        void take(double[] values) {
            for (double value : values) {
                if (Double.isFinite(value)) {
                    low = Math.min(low, value);
                    high = Math.max(high, value);
                }
            }
        }
    }
}
