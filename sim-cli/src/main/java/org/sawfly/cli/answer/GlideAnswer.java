package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.cli.chart.Envelope;
import org.sawfly.cli.chart.GlideFigure;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Settled;
import org.sawfly.motion.Glide;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.ResultQuantities;

/** Sink and elevator against speed for each setting of the flaperons. */
public final class GlideAnswer {
    private static final double[] SPEEDS = {4, 4.5, 5, 6, 7, 8, 10, 12};
    private static final double CLOSE = 1e-6;
    private static final double FELT_SLOWEST = 4.5;
    private static final double FELT_FASTEST = 12;

    /** Elevator travel over the speeds below which play is felt [mm]; common practice, no source. */
    private static final double LITTLE_TRAVEL = 3;

    private static final Quantity<Glide> SINK =
            new Quantity<>("sink_mps", "sink", Unit.METRE_PER_SECOND, 2, Glide::sink);
    private static final Quantity<Double> ELEVATOR =
            new Quantity<>("elevator_up_mm", "elevator", Unit.MILLIMETRE, 1, up -> up);

    private final Answer answer = new Answer("glide");
    private final Case asked;
    private final GlidePolar polar;
    private final double elevatorChord;

    private GlideAnswer(Case asked) {
        this.asked = asked;
        this.polar = asked.result().polar();
        this.elevatorChord = asked.result().plan().craft().deflections().elevatorChord();
    }

    /** The whole answer. */
    public static Answer of(Case asked) {
        GlideAnswer made = new GlideAnswer(asked);
        asked.inputs(made.answer.inputs());
        made.table();
        made.rows();
        made.end();
        return made.answer;
    }

    private void table() {
        Fields results = answer.results();
        answer.sayFlush(asked.title() + ", "
                + Numbers.fixed(ResultQuantities.MASS.value(asked.result()), 0) + " g, "
                + asked.weather(answer.inputs()) + ", straight; sink in m/s, elevator in mm");
        results.putAll(ResultQuantities.ALL, asked.result());
        Table table = new Table(2, 2).left();
        List<String> best = new ArrayList<>(List.of("best glide"));
        polar.settings().forEach((name, curve) -> {
            Fields fields = results.section("settings").section(name);
            table.right(name + " (" + camber(fields, name) + ")");
            fields.put("least_sink_mps", curve.leastSink().sink(), 2);
            fields.put("least_sink_speed_mps", curve.leastSink().speed(), 1);
            best.add(fields.put("best_glide_ratio", curve.bestGlide().ratio(), 1) + " at "
                    + fields.put("best_glide_speed_mps", curve.bestGlide().speed(), 1) + "  ");
        });
        for (double speed : SPEEDS) {
            List<String> cells = new ArrayList<>(List.of(Numbers.shortest(speed, 1) + " m/s"));
            Fields row = results.item("shown");
            row.put("speed_mps", speed, 1);
            boolean any = false;
            for (Map.Entry<String, GlidePolar.Curve> one : polar.settings().entrySet()) {
                Glide glide = at(one.getValue(), speed);
                any |= glide != null;
                cells.add(glide == null ? "-        " : cell(row.section(one.getKey()), glide));
            }
            if (any) {
                table.row(cells);
            }
        }
        answer.table(table.row(best));
    }

    private String cell(Fields fields, Glide glide) {
        String elevator = Case.upDown(fields, ELEVATOR.key(), up(glide), 1);
        String way = elevator.contains(" ") ? elevator.substring(elevator.indexOf(' ') + 1) : "";
        String number = elevator.contains(" ") ? elevator.substring(0, elevator.indexOf(' ')) : elevator;
        return fields.put(SINK, glide) + "  " + number + " " + way + " ".repeat(Math.max(0, 4 - way.length()));
    }

    private void rows() {
        Rows rows = new Rows(List.of(
                "setting", "speed_mps", "sink_mps", "glide_ratio", "elevator_up_mm", "alpha_deg", "lift_coefficient"));
        polar.settings()
                .forEach((name, curve) -> curve.points()
                        .forEach(glide -> rows.add(List.of(
                                name,
                                glide.speed(),
                                glide.sink(),
                                glide.ratio(),
                                Unit.MILLIMETRE.fromSi(up(glide)),
                                Unit.DEGREE.fromSi(glide.alpha()),
                                glide.liftCoefficient()))));
        answer.rows(rows);
    }

    private void end() {
        Fields results = answer.results();
        if (polar.settings().isEmpty()) {
            answer.verdict("It cannot be trimmed at any speed in any of these settings: look at CG and decalage.");
            return;
        }
        String more = results.put("circling_more_sink_pct", Unit.PERCENT.fromSi(Settled.CIRCLING - 1), 0);
        answer.sayFlush("Circling costs about " + more + " % more sink.");
        travel();
        Glide least = polar.leastSink();
        String setting = settingOf(least);
        String speed = results.put(ResultQuantities.MIN_SINK_SPEED, asked.result());
        StringBuilder verdict = new StringBuilder("Least sink " + results.put(ResultQuantities.MIN_SINK, asked.result())
                + " m/s at " + speed + " m/s in the " + setting + " setting");
        List<GlideFigure.Setting> drawn = drawn();
        List<Envelope.Range> ranges = GlideFigure.envelope(drawn).ranges();
        for (int i = 1; i < ranges.size(); i++) {
            Fields change = results.item("change_over");
            String from = change.put("from_mps", ranges.get(i).from(), 1);
            String name = change.put("setting", name(ranges.get(i).curve()));
            verdict.append(i == 1 ? "; above " : ", above ")
                    .append(from)
                    .append(" m/s ")
                    .append(name)
                    .append(i == 1 ? " sinks less" : "");
        }
        answer.verdict(verdict.append(".").toString());
        answer.verdict(Cautions.lastWords(asked.result()));
        answer.figure(GlideFigure.of(
                "Least sink " + ResultQuantities.MIN_SINK.text(asked.result()) + " m/s at " + speed + " m/s",
                "Best glide " + results.put(ResultQuantities.BEST_GLIDE, asked.result()) + ". Circling costs about "
                        + more + " % more sink. At the dots: elevator, mm.",
                FlyFigures.foot(asked),
                SINK,
                ELEVATOR,
                drawn));
    }

    private void travel() {
        GlidePolar.Curve cruise =
                polar.settings().get(asked.scenario().settings().cruise());
        Glide slow = cruise == null ? null : at(cruise, FELT_SLOWEST);
        Glide fast = cruise == null ? null : at(cruise, FELT_FASTEST);
        if (slow == null || fast == null) {
            return;
        }
        double travel = Numbers.rounded(Unit.MILLIMETRE.fromSi(Math.abs(up(slow) - up(fast))), 1);
        Fields fields = answer.results().section("cruise_travel");
        answer.sayFlush("From " + Numbers.shortest(fields(fields, "from_mps", FELT_SLOWEST), 1) + " to "
                + Numbers.shortest(fields(fields, "to_mps", FELT_FASTEST), 1) + " m/s the elevator moves "
                + fields.put("elevator_travel_mm", travel, 1) + " mm"
                + (travel < LITTLE_TRAVEL ? ": play in the string is felt." : "."));
    }

    private static double fields(Fields fields, String key, double value) {
        fields.put(key, value, 1);
        return value;
    }

    private String settingOf(Glide glide) {
        for (Map.Entry<String, GlidePolar.Curve> one : polar.settings().entrySet()) {
            if (one.getValue().leastSink().equals(glide)) {
                return one.getKey();
            }
        }
        return "";
    }

    private String name(int index) {
        return List.copyOf(slowestFirst().keySet()).get(index);
    }

    /** Settings as the figure wants them: the one with the most camber first. */
    private Map<String, GlidePolar.Curve> slowestFirst() {
        Map<String, GlidePolar.Curve> sorted = new LinkedHashMap<>();
        polar.settings().entrySet().stream()
                .sorted(Comparator.comparingDouble(one -> -one.getValue().camber()))
                .forEach(one -> sorted.put(one.getKey(), one.getValue()));
        return sorted;
    }

    private List<GlideFigure.Setting> drawn() {
        List<GlideFigure.Setting> settings = new ArrayList<>();
        slowestFirst()
                .forEach((name, curve) -> settings.add(new GlideFigure.Setting(
                        name + ", " + camber(new Fields(), name),
                        curve.points().stream().mapToDouble(Glide::speed).toArray(),
                        curve.points().stream().mapToDouble(Glide::sink).toArray(),
                        curve.points().stream()
                                .mapToDouble(glide -> Unit.MILLIMETRE.fromSi(up(glide)))
                                .toArray())));
        return settings;
    }

    private String camber(Fields fields, String setting) {
        double down = asked.scenario().settings().camberDown().get(setting);
        double shown = Numbers.rounded(Unit.MILLIMETRE.fromSi(down), 1);
        fields.put("camber_down_mm", Unit.MILLIMETRE.fromSi(down), 1);
        return shown == 0 ? "level" : Numbers.shortest(Math.abs(shown), 1) + " mm " + (shown < 0 ? "up" : "down");
    }

    private static Glide at(GlidePolar.Curve curve, double speed) {
        for (Glide glide : curve.points()) {
            if (Math.abs(glide.speed() - speed) < CLOSE) {
                return glide;
            }
        }
        return null;
    }

    private double up(Glide glide) {
        return -Deflections.deflection(glide.elevator(), elevatorChord);
    }
}
