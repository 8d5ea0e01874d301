package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** Figures of invented numbers that look like a glider's. */
final class DemoFigures {
    static final Quantity<Double> HEIGHT = quantity("apex_height_m", "launch height", Unit.METRE, 1);
    static final Quantity<Double> SWING = quantity("first_swing_deg", "first swing of the nose", Unit.DEGREE, 0);
    static final Quantity<Double> MARGIN = quantity("launch_margin_pct", "margin at launch speed", Unit.PERCENT, 1);
    static final Quantity<Double> SINK = quantity("min_sink_mps", "least sink", Unit.METRE_PER_SECOND, 2);
    static final Quantity<Double> SPEED = quantity("speed_mps", "speed", Unit.METRE_PER_SECOND, 1);

    static final String FOOT = "plover with club, right hand; calm, 15 C; margin kept, lead only; preset from the new "
            + "cruise position; tail-volume model, pitch-yaw; invented numbers; sawfly 0.1.0";

    private DemoFigures() {}

    private static Quantity<Double> quantity(String key, String words, Unit unit, int decimals) {
        return new Quantity<>(key, words, unit, decimals, Double::doubleValue);
    }

    static Figure cut() {
        return VaryFigure.of(
                new VaryFigure.Words(
                        "Flat: 0 to 80 mm off the boom, all within 0.4 m of launch height",
                        "There is no best length in this range. The margin is kept with nose lead; the fin runs below "
                                + "its usual range at 97 mm.",
                        FOOT,
                        "mm off the boom, rear end"),
                new VaryFigure.Titles(HEIGHT, SWING, MARGIN, SINK, false),
                List.of(new VaryFigure.Family("", cutRows(1))),
                new VaryFigure.Marks(0, 2, 25, 2, List.of(new Mark.Upright(97, "fin, 97 mm"))));
    }

    static Figure cutAndFin() {
        return VaryFigure.of(
                new VaryFigure.Words(
                        "The fin matters more than the boom: a quarter less fin costs 0.9 m, 80 mm off the boom 0.4 m",
                        "Every line is one fin. The margin is kept with nose lead.",
                        FOOT,
                        "mm off the boom, rear end"),
                new VaryFigure.Titles(HEIGHT, SWING, MARGIN, SINK, false),
                List.of(
                        new VaryFigure.Family("fin as it is", cutRows(1)),
                        new VaryFigure.Family("fin 25 % smaller", cutRows(0.75)),
                        new VaryFigure.Family("fin 25 % larger", cutRows(1.25))),
                new VaryFigure.Marks(0, 2, 25, 2, List.of(new Mark.Upright(62, "small fin, 62 mm"))));
    }

    static Figure balance() {
        List<VaryFigure.Row> rows = new ArrayList<>();
        for (double cg = 62; cg <= 76; cg += 2) {
            double off = cg - 69;
            double height = 41.2 - 0.11 * off;
            Band likely = new Band(height - 0.05 * Math.abs(off), height + 0.05 * Math.abs(off));
            rows.add(new VaryFigure.Row(cg, height, likely, 14, 2.3 - 0.69 * off, 0.27 - 0.0015 * off));
        }
        return VaryFigure.of(
                new VaryFigure.Words(
                        "Each 2 mm back: launch 0.2 m lower, sink the same, margin 1.4 % less",
                        "Behind 72 mm the bending of the boom has eaten the margin at launch speed.",
                        FOOT,
                        "CG behind the leading edge, mm"),
                new VaryFigure.Titles(HEIGHT, SWING, MARGIN, SINK, false),
                List.of(new VaryFigure.Family("", rows)),
                new VaryFigure.Marks(69, 2, 25, 0, List.of(new Mark.Upright(72.3, "margin gone, 72 mm"))));
    }

    private static List<VaryFigure.Row> cutRows(double fin) {
        List<VaryFigure.Row> rows = new ArrayList<>();
        for (double cut = 0; cut <= 80; cut += 5) {
            double wag = 15 / fin * (1 + cut / 600);
            double height = 41.2 - 0.9 * (1 / fin - 1) * 3 - 0.00006 * cut * cut;
            Band likely = fin == 1 ? new Band(height - 0.004 * cut, height + 0.002 * cut) : null;
            rows.add(new VaryFigure.Row(cut, height, likely, wag, 2.3 + 0.018 * cut, 0.27));
        }
        return rows;
    }

    static Figure swing() {
        return SwingFigure.of(
                "40 mm off the boom: the nose swings 1 deg further, too small to see on film",
                "A release half as hard again swings it past the angle where the fin stalls.",
                FOOT,
                quantity("nose_off_path_deg", "nose off the flight path", Unit.DEGREE, 0),
                List.of(
                        wag("today", 15, 8.6, Stroke.SOLID),
                        wag("40 mm off", 16.2, 8.1, Stroke.DASHED),
                        wag("today, released 1.5 times as hard", 24, 8.4, Stroke.THIN)),
                List.of(new SwingFigure.Stalled(0.02, 0.09)));
    }

    private static SwingFigure.Throw wag(String name, double size, double rate, Stroke stroke) {
        int n = 200;
        double[] time = new double[n];
        double[] angle = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = 0.6 * i / (n - 1);
            angle[i] = Math.exp(-6 * time[i]) * (-6 * Math.cos(rate * time[i]) + 1.9 * size * Math.sin(rate * time[i]));
        }
        return new SwingFigure.Throw(name, time, angle, stroke);
    }

    static Figure glide() {
        return GlideFigure.of(
                "Least sink 0.25 m/s with 4 mm of camber; take it off above 6.6 m/s",
                "Blue dots: elevator for that speed, mm at the root trailing edge. Grey rays touch where it pays to fly "
                        + "into a wind of 3 and 6 m/s.",
                FOOT,
                quantity("sink_mps", "sink in straight flight", Unit.METRE_PER_SECOND, 2),
                quantity("elevator_up_mm", "elevator", Unit.MILLIMETRE, 1),
                List.of(
                        setting("thermal, 4 mm down", 4, 0.25, 4.4, 0.0225, 0.9),
                        setting("cruise, 1 mm down", 4.5, 0.262, 4.7, 0.0205, 0.7),
                        setting("speed, 1 mm up", 4.9, 0.285, 5.1, 0.0195, 0.85)));
    }

    private static GlideFigure.Setting setting(
            String name, double slowest, double least, double best, double growth, double trim) {
        int n = 40;
        double[] speed = new double[n];
        double[] sink = new double[n];
        double[] elevator = new double[n];
        for (int i = 0; i < n; i++) {
            speed[i] = slowest + (12 - slowest) * i / (n - 1);
            double off = speed[i] - best;
            sink[i] = least + growth * off * off + (off < 0 ? 0.15 * off * off : 0);
            elevator[i] = trim * (10 / speed[i] - 1.5);
        }
        return new GlideFigure.Setting(name, speed, sink, elevator);
    }

    static Figure flight() {
        List<FlightFigure.Phase> phases = new ArrayList<>();
        String[] names = {"leaves the hand", "pull-up", "zoom", "push-over", "glide"};
        double[] starts = {0, 0.3, 0.7, 1.6, 4, 8};
        double x = 0;
        double h = 1.7;
        double v = 34.8;
        for (int p = 0; p < names.length; p++) {
            int n = 60;
            double[][] c = new double[4][n];
            double step = (starts[p + 1] - starts[p]) / (n - 1);
            for (int i = 0; i < n; i++) {
                double t = starts[p] + i * step;
                double climb = Math.toRadians(
                        t < 0.3
                                ? 10
                                : t < 0.7 ? 10 + 160 * (t - 0.3) : t < 1.6 ? 74 : Math.max(-4, 74 - 40 * (t - 1.6)));
                c[0][i] = t;
                c[1][i] = x;
                c[2][i] = h;
                c[3][i] = v;
                if (i < n - 1) {
                    v = Math.max(4.6, v + step * (-9.81 * Math.sin(climb) - 0.0045 * v * v));
                    x += step * v * Math.cos(climb);
                    h += step * v * Math.sin(climb);
                }
            }
            phases.add(new FlightFigure.Phase(names[p], c[0], c[1], c[2], c[3]));
        }
        return FlightFigure.of(
                "Launch 41 m, most of it once gliding",
                "Thrown by club at 34.8 m/s, first swing 15 deg.",
                FOOT,
                quantity("height_m", "height", Unit.METRE, 1),
                SPEED,
                phases);
    }
}
