package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.sawfly.cli.chart.Figure;
import org.sawfly.cli.chart.ToleranceFigure;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Astray;
import org.sawfly.study.BenchError;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Sensitivity;
import org.sawfly.study.Straying;
import org.sawfly.study.Tolerance;
import org.sawfly.study.ToleranceQuantities;

/** What errors on the bench cost, what matters first. */
public final class ToleranceAnswer {
    /** The cost in launch height that is looked for [m]. */
    public static final double HEIGHT = 0.5;
    /** The cost that is looked for as a part of the sink [1]. */
    public static final double SINK_SHARE = Unit.PERCENT.toSi(1);

    private final Answer answer = new Answer("tolerance");
    private final Case asked;
    private final List<Sensitivity> errors;

    private final List<Straying> strayings;

    private ToleranceAnswer(Case asked, List<Sensitivity> errors, List<Straying> strayings) {
        this.asked = asked;
        this.errors = errors;
        this.strayings = strayings;
    }

    /** The whole answer; errors in the order in which they are shown. */
    public static Answer of(Case asked, List<Sensitivity> errors, List<Straying> strayings) {
        ToleranceAnswer made = new ToleranceAnswer(asked, errors, strayings);
        asked.inputs(made.answer.inputs());
        made.sizes();
        made.costs();
        made.sideways();
        made.end();
        return made.answer;
    }

    private void sizes() {
        Fields results = answer.results();
        results.putAll(ResultQuantities.ALL, asked.result());
        answer.sayFlush(asked.title() + ": what errors on the bench cost; "
                + asked.scenario().launch().name()
                + " throws. Millimetres are over the part's own length, where a ruler finds them; the worse of both ways"
                + " counts; what matters first stands first.");
        String metres = Numbers.fixed(HEIGHT, 1);
        results.put("looked_for_m", HEIGHT, 1);
        results.put("looked_for_pct", Unit.PERCENT.fromSi(SINK_SHARE), 0);
        Table table = new Table(2, 2)
                .left("error")
                .left("ruler")
                .right("part", "mm")
                .right(metres + " m of", "launch, mm")
                .right("the same", "deg")
                .right("1 % of", "sink, mm");
        for (Sensitivity one : errors) {
            Fields fields = results.section("errors").section(key(one.error()));
            fields.putAll(ToleranceQuantities.OF_ERROR, one);
            fields.put("words", one.error().words());
            table.row(
                    name(one),
                    one.error().ruler(),
                    ToleranceQuantities.LENGTH.text(one),
                    ToleranceQuantities.COSTS_HEIGHT.text(one),
                    ToleranceQuantities.COSTS_HEIGHT_ANGLE.text(one),
                    ToleranceQuantities.COSTS_SINK.text(one));
        }
        answer.table(table);
        answer.say("A dash: no error up to 4 deg or 8 mm costs so much.");
        results.put("looked_at_to_deg", 4, 0);
        results.put("looked_at_to_mm", 8, 0);
    }

    private void costs() {
        Table table = new Table(2, 1)
                .left("it changes")
                .right("1 mm:", "launch m")
                .right("cruise", "elev. mm")
                .right("sink", "m/s")
                .right("1 deg:", "launch m")
                .right("cruise", "elev. mm")
                .right("sink", "m/s");
        for (Sensitivity one : errors) {
            Fields fields = answer.results().section("errors").section(key(one.error()));
            Tolerance millimetre = one.perMillimetre();
            Tolerance degree = one.perDegree();
            fields.section("per_millimetre").putAll(ToleranceQuantities.OF_SIZE, millimetre);
            if (degree != null) {
                fields.section("per_degree").putAll(ToleranceQuantities.OF_SIZE, degree);
            }
            table.row(
                    name(one).replace("tailplane", "tail"),
                    height(millimetre),
                    elevator(millimetre),
                    sink(millimetre),
                    degree == null ? Numbers.NONE : height(degree),
                    degree == null ? Numbers.NONE : elevator(degree),
                    degree == null ? Numbers.NONE : sink(degree));
        }
        answer.table(table);
    }

    private void sideways() {
        answer.results().put("rolling_s", Astray.ROLLING, 1);
        answer.say(
                "Free to roll, by strips: what the error named turns the launch to the left (L) or right (R), seen from"
                        + " behind the thrower: roll in the first half second, heading at the top. The other way round, the other"
                        + " side. The pilot steers as in every flight.");
        Table table = new Table(2, 1)
                .left("error and the way that is meant")
                .right("1 mm:", "roll deg")
                .right("heading", "deg")
                .right("1 deg:", "roll deg")
                .right("heading", "deg");
        for (Straying one : strayings) {
            Fields fields = answer.results().section("free_to_roll").section(key(one.error()));
            fields.section("per_millimetre").putAll(ToleranceQuantities.SIDEWAYS, one.perMillimetre());
            if (one.perDegree() != null) {
                fields.section("per_degree").putAll(ToleranceQuantities.SIDEWAYS, one.perDegree());
            }
            List<String> cells = new ArrayList<>(List.of(one.error().words()));
            for (Astray size : Arrays.asList(one.perMillimetre(), one.perDegree())) {
                cells.add(size == null ? Numbers.NONE : signed(ToleranceQuantities.ROLLED, size, "L", "R"));
                cells.add(size == null ? Numbers.NONE : signed(ToleranceQuantities.HEADING, size, "L", "R"));
            }
            table.row(cells.toArray(String[]::new));
        }
        answer.table(table);
    }

    private static String height(Tolerance one) {
        return signed(ToleranceQuantities.HEIGHT, one, "lower", "higher");
    }

    private static String sink(Tolerance one) {
        return signed(ToleranceQuantities.SINK, one, "less", "more");
    }

    private static String elevator(Tolerance one) {
        return signed(ToleranceQuantities.ELEVATOR, one, "up", "down");
    }

    private static <T> String signed(Quantity<T> quantity, T one, String below, String above) {
        double shown = quantity.shown(one);
        if (Double.isNaN(shown)) {
            return "no flight";
        }
        String size = Numbers.fixed(Math.abs(shown), quantity.decimals());
        return shown == 0 ? size : size + " " + (shown < 0 ? below : above);
    }

    private void end() {
        Cautions.of(asked.changes()).forEach(answer::caution);
        Sensitivity first = errors.get(0);
        String name = name(first);
        if (Double.isInfinite(first.costsHeight())) {
            answer.verdict("No error of building looked at costs " + Numbers.fixed(HEIGHT, 1)
                    + " m of launch: build it straight by eye and spend the time elsewhere.");
        } else {
            answer.verdict("Measure the " + name + " first: " + ToleranceQuantities.COSTS_HEIGHT.text(first) + " mm "
                    + first.error().ruler() + " costs " + Numbers.fixed(HEIGHT, 1) + " m of launch.");
        }
        answer.verdict(Cautions.lastWords(asked.result()));
        Rows rows = new Rows(List.of(
                "error",
                "ruler",
                "over_mm",
                "costs_launch_mm",
                "costs_launch_deg",
                "costs_sink_mm",
                "launch_change_m"));
        for (Sensitivity one : errors) {
            rows.add(List.of(
                    one.error().words(),
                    one.error().ruler(),
                    ToleranceQuantities.LENGTH.value(one),
                    ToleranceQuantities.COSTS_HEIGHT.value(one),
                    ToleranceQuantities.COSTS_HEIGHT_ANGLE.value(one),
                    ToleranceQuantities.COSTS_SINK.value(one),
                    ToleranceQuantities.HEIGHT.value(one.perMillimetre())));
        }
        answer.rows(rows);
        answer.figure(figure());
    }

    private Figure figure() {
        List<ToleranceFigure.Bar> bars = errors.stream()
                .map(one -> new ToleranceFigure.Bar(
                        name(one) + ", " + one.error().ruler(), ToleranceQuantities.COSTS_HEIGHT.value(one)))
                .toList();
        return ToleranceFigure.of(answer.verdict(), FlyFigures.foot(asked), ToleranceQuantities.COSTS_HEIGHT, bars);
    }

    private static String name(Sensitivity one) {
        return name(one.error());
    }

    private static String name(BenchError error) {
        return error.words().replaceAll(",.*", "");
    }

    private static String key(BenchError error) {
        return error.name().toLowerCase(Locale.ROOT);
    }
}
