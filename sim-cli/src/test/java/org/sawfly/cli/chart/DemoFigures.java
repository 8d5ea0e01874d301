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
                new VaryFigure.Titles(HEIGHT, SWING, MARGIN, SINK),
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
                new VaryFigure.Titles(HEIGHT, SWING, MARGIN, SINK),
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
                new VaryFigure.Titles(HEIGHT, SWING, MARGIN, SINK),
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
}
