package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/**
 * "The first half second": how far the nose points off the flight path after the release, nose left positive, over time
 * with the frames of a film beneath, so that it can be held against a phone.
 */
public final class SwingFigure {
    /** How long it lasts [s]. */
    public static final double SHOWN = 0.5;

    private static final double FRAMES_A_SECOND = 240;
    private static final int FRAMES_A_NUMBER = 12;
    private static final double LEAST_RANGE = 30;

    private SwingFigure() {}

    /**
     * One throw.
     *
     * @param name words at its line: "today", "40 mm off", "harder release"
     * @param time time after release [s]
     * @param angle nose off the flight path, left positive [deg]
     * @param stroke solid for today, dashed for a version, thin for a harder release
     */
    public record Throw(String name, double[] time, double[] angle, Stroke stroke) {
        /** Takes copies. */
        public Throw {
            time = time.clone();
            angle = angle.clone();
        }

        @Override
        public double[] time() {
            return time.clone();
        }

        @Override
        public double[] angle() {
            return angle.clone();
        }
    }

    /** From when to when [s] the fin of the first throw is stalled. */
    public record Stalled(double from, double to) {}

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param caption what else is to be said
     * @param foot glider, date, settings
     * @param angle the quantity that gives the title of the axis and the decimals
     * @param throwsShown the throws, today's first
     * @param stalled when the fin is stalled in the first of them
     */
    public static Figure of(
            String title,
            String caption,
            String foot,
            Quantity<?> angle,
            List<Throw> throwsShown,
            List<Stalled> stalled) {
        Axis x = Axis.fixed("seconds after the glider has left the hand", 0, SHOWN)
                .every(0.05)
                .with(new Axis.Ruler(FRAMES_A_SECOND, FRAMES_A_NUMBER, "film frames, 240 a second"));
        List<Series> series = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < stalled.size(); i++) {
            String words = i == 0 ? "fin stalled" : "";
            marks.add(Mark.Hatched.between(stalled.get(i).from(), stalled.get(i).to(), words));
        }
        series.add(new Series.Line(new double[] {0, SHOWN}, new double[] {0, 0}, Hue.QUIET, Stroke.THIN, ""));
        double low = 0;
        double high = 0;
        for (Throw one : throwsShown) {
            series.add(new Series.Line(one.time(), one.angle(), Hue.SWING, one.stroke(), one.name()));
            int turn = firstSwing(one);
            double swing = one.angle()[turn];
            String size = Numbers.fixed(Math.abs(swing), angle.decimals());
            marks.add(new Mark.Flag(
                    one.time()[turn],
                    swing,
                    one.name() + ": " + size + " deg " + (swing > 0 ? "left" : "right"),
                    Hue.SWING));
            for (int i = 0; i < one.time().length && one.time()[i] <= SHOWN; i++) {
                low = Double.isFinite(one.angle()[i]) ? Math.min(low, one.angle()[i]) : low;
                high = Double.isFinite(one.angle()[i]) ? Math.max(high, one.angle()[i]) : high;
            }
        }
        Axis y = Axis.around(angle.title(), LEAST_RANGE, low - 1, high + 1).words("nose right", "nose left");
        return new Figure(title, caption, foot, List.of(new Panel(x, y, series, marks, 1)));
    }

    /** Where the nose is furthest past the flight path, on the other side than at release when it gets there. */
    private static int firstSwing(Throw one) {
        double[] angle = one.angle();
        double[] time = one.time();
        int other = -1;
        int any = 0;
        for (int i = 0; i < angle.length && time[i] <= SHOWN; i++) {
            any = Math.abs(angle[i]) > Math.abs(angle[any]) ? i : any;
            boolean past = angle[i] * angle[0] < 0;
            other = past && (other < 0 || Math.abs(angle[i]) > Math.abs(angle[other])) ? i : other;
        }
        return other < 0 ? any : other;
    }
}
