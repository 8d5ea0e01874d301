package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.cli.chart.Figure;
import org.sawfly.cli.chart.Stroke;
import org.sawfly.cli.chart.SwingFigure;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.glider.Hand;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;

/** The first half second of today's throw and of the versions', to be held against a film. */
public final class CompareFigure {
    private final Result today;
    private final List<SwingFigure.Throw> throwsShown = new ArrayList<>();

    /** With today's glider, whose throw is added first. */
    public CompareFigure(Result today) {
        this.today = today;
    }

    /** Adds a throw as written down. */
    public void add(String name, FlightLog log) {
        // a right-hander's glider leaves turning nose-left, which the log counts as positive
        int left = today.plan().launch().thrower().hand() == Hand.RIGHT ? 1 : -1;
        double[] time = log.rows().stream().mapToDouble(FlightLog.Row::time).toArray();
        double[] angle = log.rows().stream()
                .mapToDouble(row -> left * Unit.DEGREE.fromSi(row.noseOff()))
                .toArray();
        throwsShown.add(new SwingFigure.Throw(name, time, angle, Stroke.ofLine(throwsShown.size())));
    }

    /** The figure. */
    public Figure figure(String title) {
        String foot = today.plan().craft().glider().name() + ", thrown by "
                + today.plan().launch().name();
        return SwingFigure.of(
                title,
                "the first half second after release",
                foot,
                OutcomeQuantities.FIRST_SWING,
                throwsShown,
                List.of());
    }
}
