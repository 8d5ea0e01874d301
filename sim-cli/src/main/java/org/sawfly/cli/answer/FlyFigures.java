package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.cli.chart.Figure;
import org.sawfly.cli.chart.FlightFigure;
import org.sawfly.cli.chart.Stroke;
import org.sawfly.cli.chart.SwingFigure;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Moment;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.flight.Swing;
import org.sawfly.glider.Hand;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** The figures of one throw: its path, and its first half second. */
public final class FlyFigures {
    /** A harder release turns this much faster. */
    public static final double HARDER = 1.5;

    private static final double PUSH_TIME = 0.6;
    private static final Quantity<FlightLog.Row> HEIGHT =
            new Quantity<>("height_m", "height", Unit.METRE, 1, FlightLog.Row::height);
    private static final Quantity<FlightLog.Row> SPEED =
            new Quantity<>("speed_mps", "speed", Unit.METRE_PER_SECOND, 0, FlightLog.Row::speed);
    private static final Quantity<FlightLog.Row> NOSE_OFF =
            new Quantity<>("nose_off_deg", "nose off the flight path", Unit.DEGREE, 0, FlightLog.Row::noseOff);

    private FlyFigures() {}

    /** The path, phase by phase. */
    public static Figure path(Case asked, FlightLog log) {
        Outcome outcome = asked.result().outcome();
        List<FlightFigure.Phase> phases = new ArrayList<>();
        FlightPlan plan = asked.result().plan();
        double hold = plan.launch().preset().hold();
        double push = time(outcome, Moment.Kind.PUSH_OVER);
        double last = log.rows().get(log.rows().size() - 1).time();
        double from = 0;
        String[] names = {"preset held", "climb", "push-over", "glide"};
        double[] ends = {hold, push, push + PUSH_TIME, last};
        for (int i = 0; i < names.length; i++) {
            double end = Double.isNaN(ends[i]) ? last : Math.min(ends[i], last);
            if (end > from) {
                phases.add(phase(names[i], log, from, end));
                from = end;
            }
        }
        String title =
                "Launch " + OutcomeQuantities.APEX_HEIGHT.text(outcome) + " m, " + FlyAnswer.onceGliding(outcome);
        String caption = "Leaves the hand at " + OutcomeQuantities.RELEASE_SPEED.text(outcome) + " m/s; top after "
                + OutcomeQuantities.APEX_TIME.text(outcome) + " s.";
        return FlightFigure.of(title, caption, foot(asked), HEIGHT, SPEED, phases);
    }

    private static double time(Outcome outcome, Moment.Kind kind) {
        for (Moment moment : outcome.moments()) {
            if (moment.kind() == kind) {
                return moment.time();
            }
        }
        return Double.NaN;
    }

    private static FlightFigure.Phase phase(String name, FlightLog log, double from, double to) {
        List<FlightLog.Row> rows = log.rows().stream()
                .filter(row -> row.time() >= from - FlightLog.INTERVAL / 2 && row.time() <= to + FlightLog.INTERVAL / 2)
                .toList();
        return new FlightFigure.Phase(
                name,
                rows.stream().mapToDouble(FlightLog.Row::time).toArray(),
                rows.stream().mapToDouble(FlightLog.Row::distance).toArray(),
                rows.stream().mapToDouble(FlightLog.Row::height).toArray(),
                rows.stream().mapToDouble(FlightLog.Row::speed).toArray());
    }

    /**
     * The first half second.
     *
     * @param asked the glider and its throw
     * @param log of the throw
     * @param harder log of a harder release
     */
    public static Figure swing(Case asked, FlightLog log, FlightLog harder) {
        Outcome outcome = asked.result().outcome();
        double left = asked.scenario().launch().thrower().hand() == Hand.RIGHT ? 1 : -1;
        List<SwingFigure.Throw> shown = List.of(
                swing(asked.changes().isEmpty() ? "today" : "changed", log, left, Stroke.SOLID),
                swing("turning 1.5 times as fast", harder, left, Stroke.THIN));
        String title = "The nose swings " + OutcomeQuantities.FIRST_SWING.text(outcome) + " deg past the flight path";
        double stalled = outcome.swing().finStalledFor();
        String caption = stalled > 0
                ? "The fin is stalled for " + Numbers.fixed(stalled, 2) + " s after the release."
                : "The fin does not stall.";
        return SwingFigure.of(title, caption, foot(asked), NOSE_OFF, shown, stalled(log));
    }

    private static SwingFigure.Throw swing(String name, FlightLog log, double left, Stroke stroke) {
        List<FlightLog.Row> rows = log.rows().stream()
                .filter(row -> row.time() <= SwingFigure.SHOWN + FlightLog.INTERVAL / 2)
                .toList();
        return new SwingFigure.Throw(
                name,
                rows.stream().mapToDouble(FlightLog.Row::time).toArray(),
                rows.stream()
                        .mapToDouble(row -> Unit.DEGREE.fromSi(left * row.noseOff()))
                        .toArray(),
                stroke);
    }

    private static List<SwingFigure.Stalled> stalled(FlightLog log) {
        List<SwingFigure.Stalled> spans = new ArrayList<>();
        double since = Double.NaN;
        for (FlightLog.Row row : log.rows()) {
            boolean beyond = row.finAngle() > Swing.FIN_STALL && row.time() <= SwingFigure.SHOWN;
            if (beyond && Double.isNaN(since)) {
                since = row.time();
            } else if (!beyond && !Double.isNaN(since)) {
                spans.add(new SwingFigure.Stalled(since, Math.min(SwingFigure.SHOWN, row.time())));
                since = Double.NaN;
            }
        }
        return spans;
    }

    static String foot(Case asked) {
        return asked.title() + "; thrown by " + asked.scenario().launch().name() + "; " + asked.weather(new Fields())
                + "; "
                + Case.modelWords(asked.scenario().flying().model()) + "; an estimate";
    }
}
