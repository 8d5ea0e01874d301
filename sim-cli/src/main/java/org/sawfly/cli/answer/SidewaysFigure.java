package org.sawfly.cli.answer;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.cli.chart.Axis;
import org.sawfly.cli.chart.Figure;
import org.sawfly.cli.chart.Hue;
import org.sawfly.cli.chart.Mark;
import org.sawfly.cli.chart.Panel;
import org.sawfly.cli.chart.Series;
import org.sawfly.cli.chart.Stroke;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.quantity.Unit;

/** A launch as the thrower sees it from behind: to which side it leans; and how it rolls and turns meanwhile. */
public final class SidewaysFigure {
    /** Half the width of the upper panel over its height, so that the throw stands in the middle. */
    private static final double HALF_SHEET = 0.5;

    private static final double LEAST_DEGREES = 40;
    private static final double ROOM = 1.15;

    private SidewaysFigure() {}

    /**
     * The figure, up to the top and a second beyond.
     *
     * @param asked the glider and its throw
     * @param log of the throw
     */
    public static Figure of(Case asked, FlightLog log) {
        Outcome outcome = asked.result().outcome();
        double top = outcome.top().time();
        List<FlightLog.Row> rows =
                log.rows().stream().filter(row -> !(row.time() > top + 1)).toList();
        double[] time = column(rows, FlightLog.Row::time);
        double[] right = column(rows, row -> row.side().drift());
        double[] height = column(rows, FlightLog.Row::height);
        double highest = 5 * Math.ceil(largest(height) * ROOM / 5);
        double wide = Math.max(10 * Math.ceil(largest(right) / 10), 10 * Math.floor(HALF_SHEET * highest / 10));
        Axis across = Axis.fixed("from the line of the throw, m, seen from behind", -wide, wide)
                .words("left", "right");
        Axis up = Axis.fixed("height, m", 0, highest).every(10);
        List<Mark> marks = Double.isNaN(top)
                ? List.of()
                : List.of(new Mark.Flag(
                        outcome.top().course().drift(), outcome.top().height(), "top", Hue.INK));
        Panel behind = new Panel(
                across, up, List.of(new Series.Line(right, height, Hue.HEIGHT, Stroke.SOLID, "")), marks, 3, true);
        Axis seconds = Axis.fixed("seconds after release", 0, Math.max(1, Math.ceil(largest(time))));
        Panel rolled = panel(
                seconds, "rolled, deg", time, column(rows, row -> row.side().rolled()));
        Panel heading = panel(seconds, "heading, deg", time, unbroken(rows));
        String title = "The climb leans " + FlySideways.side(OutcomeQuantities.SLANT, outcome, " deg")
                + "; the top lies " + FlySideways.side(OutcomeQuantities.DRIFT, outcome, " m") + " of the throw";
        String caption = "Rolls " + FlySideways.side(OutcomeQuantities.ROLLED, outcome, " deg") + " at first; heads "
                + FlySideways.side(OutcomeQuantities.HEADING, outcome, " deg") + " at the top.";
        return new Figure(title, caption, FlyFigures.foot(asked), List.of(behind, rolled, heading));
    }

    private static Panel panel(Axis seconds, String title, double[] time, double[] radians) {
        double[] degrees = radians.clone();
        for (int i = 0; i < degrees.length; i++) {
            degrees[i] = Unit.DEGREE.fromSi(radians[i]);
        }
        double wide = largest(degrees);
        Axis y = Axis.around(title, LEAST_DEGREES, -wide, wide).words("left", "right");
        double[] ends = {0, seconds.high()};
        return new Panel(
                seconds,
                y,
                List.of(
                        new Series.Line(ends, new double[] {0, 0}, Hue.QUIET, Stroke.THIN, ""),
                        new Series.Line(time, degrees, Hue.SWING, Stroke.SOLID, "")),
                List.of(),
                1);
    }

    /** The heading without jumps by a whole turn. */
    private static double[] unbroken(List<FlightLog.Row> rows) {
        double[] heading = column(rows, row -> row.side().heading());
        for (int i = 1; i < heading.length; i++) {
            heading[i] = heading[i - 1] + Math.IEEEremainder(heading[i] - heading[i - 1], 2 * Math.PI);
        }
        return heading;
    }

    private static double[] column(List<FlightLog.Row> rows, ToDoubleFunction<FlightLog.Row> of) {
        return rows.stream().mapToDouble(of).toArray();
    }

    private static double largest(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Double.isFinite(value) ? Math.max(most, Math.abs(value)) : most;
        }
        return most;
    }
}
