package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/**
 * "Sink and trim": sink downward over speed for the settings of the flaperons, with the elevator's position beneath;
 * which setting is best where; and the speeds to fly against a wind, where its ray touches.
 */
public final class GlideFigure {
    private static final double SLOWEST = 3;
    private static final double FASTEST = 12;
    private static final double[] WINDS = {3, 6};
    private static final double[] FLAGGED = {4.5, 5.5, 7, 8.5, 10};
    private static final double LEAST_ELEVATOR = 2;
    private static final double LEAST_SINK = 1;

    private GlideFigure() {}

    /**
     * One setting of the flaperons, trimmed at rising speeds.
     *
     * @param name words at its line: "thermal, 4 mm down"
     * @param speed speeds [m/s]
     * @param sink sink [m/s]
     * @param elevatorUp elevator, trailing edge up positive [mm]
     */
    public record Setting(String name, double[] speed, double[] sink, double[] elevatorUp) {
        /** Takes copies. */
        public Setting {
            speed = speed.clone();
            sink = sink.clone();
            elevatorUp = elevatorUp.clone();
        }

        @Override
        public double[] speed() {
            return speed.clone();
        }

        @Override
        public double[] sink() {
            return sink.clone();
        }

        @Override
        public double[] elevatorUp() {
            return elevatorUp.clone();
        }
    }

    /** The lowest of the settings' curves, over the speeds of the figure. */
    public static Envelope envelope(List<Setting> settings) {
        List<double[][]> curves = settings.stream()
                .map(setting -> new double[][] {setting.speed(), setting.sink()})
                .toList();
        return new Envelope(curves, SLOWEST, FASTEST);
    }

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param caption what else is to be said
     * @param foot glider, date, settings
     * @param sink the quantity that gives the title of the upper axis
     * @param elevator the quantity that gives the title and the decimals of the lower axis
     * @param settings the settings, slowest first
     */
    public static Figure of(
            String title, String caption, String foot, Quantity<?> sink, Quantity<?> elevator, List<Setting> settings) {
        Axis x = Axis.fixed("speed, m/s", SLOWEST, FASTEST).every(1);
        Envelope envelope = envelope(settings);
        List<Series> sinks = new ArrayList<>();
        List<Series> elevators = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        double most = 0;
        for (int i = 0; i < settings.size(); i++) {
            Setting one = settings.get(i);
            sinks.add(new Series.Line(one.speed(), one.sink(), Hue.SINK, Stroke.ofLine(i), one.name()));
            elevators.add(new Series.Line(one.speed(), one.elevatorUp(), Hue.ELEVATOR, Stroke.ofLine(i), one.name()));
            for (double value : one.elevatorUp()) {
                most = Double.isFinite(value) ? Math.max(most, Math.abs(value)) : most;
            }
        }
        for (Envelope.Range range : envelope.ranges()) {
            int best = range.curve();
            String words = settings.get(best).name().replaceAll(",.*", "");
            marks.add(new Mark.Span(range.from(), range.to(), words, Stroke.ofLine(best), Hue.SINK));
            if (range.from() > settings.get(best).speed()[0] + 0.01 && range.from() > SLOWEST) {
                marks.add(new Mark.Upright(range.from(), "change at " + Numbers.fixed(range.from(), 1)));
            }
        }
        for (double wind : WINDS) {
            ray(envelope.touch(wind), settings, envelope, elevator.decimals(), sinks, marks);
        }
        flags(settings, envelope, elevator.decimals(), marks);
        double deepest = Math.max(LEAST_SINK, Math.min(1.3, lastOf(envelope)));
        Axis down = Axis.around(sink.title(), deepest * 1.1, 0, deepest * 1.1)
                .down()
                .words("", "sinks least:");
        double reach = Math.max(LEAST_ELEVATOR, 1.1 * most);
        Axis up = Axis.low(elevator, 0, -reach, reach).words("trailing edge down", "trailing edge up");
        return new Figure(
                title,
                caption,
                foot,
                List.of(new Panel(x, down, sinks, marks, 2.6), new Panel(x, up, elevators, List.of(), 1)));
    }

    private static void ray(
            Envelope.Touch touch,
            List<Setting> settings,
            Envelope envelope,
            int decimals,
            List<Series> sinks,
            List<Mark> marks) {
        if (Double.isNaN(touch.speed())) {
            return;
        }
        double beyond = touch.speed() + 1.2;
        double slope = touch.sink() / (touch.speed() - touch.wind());
        double[] x = {touch.wind(), beyond};
        double[] y = {0, slope * (beyond - touch.wind())};
        sinks.add(new Series.Line(x, y, Hue.QUIET, Stroke.THIN_DASHED, ""));
        String words = "into " + Numbers.fixed(touch.wind(), 0) + " m/s fly " + Numbers.fixed(touch.speed(), 1) + ", "
                + elevator(settings, envelope, touch.speed(), decimals);
        marks.add(new Mark.Flag(touch.speed(), touch.sink(), words, Hue.INK));
    }

    /** The elevator's position written along the setting that is best there, clear of the rays. */
    private static void flags(List<Setting> settings, Envelope envelope, int decimals, List<Mark> marks) {
        for (double speed : FLAGGED) {
            boolean clear = true;
            for (double wind : WINDS) {
                clear &= !(Math.abs(envelope.touch(wind).speed() - speed) < 0.5);
            }
            if (clear && envelope.ranges().stream().anyMatch(range -> speed >= range.from() && speed <= range.to())) {
                String words = elevator(settings, envelope, speed, decimals);
                marks.add(new Mark.Flag(speed, envelope.sink(speed), words, Hue.ELEVATOR));
            }
        }
    }

    /** "0.8 up", "level": where the elevator stands at a speed in the setting that is best there. */
    private static String elevator(List<Setting> settings, Envelope envelope, double speed, int decimals) {
        double up = Double.NaN;
        for (Envelope.Range range : envelope.ranges()) {
            if (speed >= range.from() && speed <= range.to()) {
                Setting best = settings.get(range.curve());
                up = Envelope.at(new double[][] {best.speed(), best.elevatorUp()}, speed);
            }
        }
        double shown = Numbers.rounded(up, decimals);
        String way = shown > 0 ? " up" : " down";
        return shown == 0 ? "level" : Numbers.fixed(Math.abs(shown), decimals) + way;
    }

    private static double lastOf(Envelope envelope) {
        double sink = envelope.sink(FASTEST);
        return Double.isFinite(sink) ? sink : LEAST_SINK;
    }
}
