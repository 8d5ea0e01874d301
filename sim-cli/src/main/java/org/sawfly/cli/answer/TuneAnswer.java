package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Knob;
import org.sawfly.study.Limit;
import org.sawfly.study.Result;
import org.sawfly.study.Tune;
import org.sawfly.study.Tuned;

/** Settings tuned for an aim: how far each may be off first, the best values only when asked for. */
public final class TuneAnswer {
    private final Answer answer = new Answer("tune");
    private final Case today;
    private final Asked asked;
    private final Tune.Aim aim;
    private final Tuned tuned;

    private TuneAnswer(Case today, Asked asked, Tuned tuned) {
        this.today = today;
        this.asked = asked;
        this.aim = asked.aim();
        this.tuned = tuned;
    }

    /**
     * What was asked.
     *
     * @param aim
     * @param limits what has to be kept
     * @param today value of a key as it is today, NaN when it has none
     * @param best whether the best values are told
     */
    public record Asked(Tune.Aim aim, List<Limit> limits, ToDoubleFunction<String> today, boolean best) {}

    /** The whole answer about a glider as it is and as it was tuned. */
    public static Answer of(Case today, Asked asked, Tuned tuned) {
        TuneAnswer made = new TuneAnswer(today, asked, tuned);
        today.inputs(made.answer.inputs());
        made.title();
        made.settings();
        made.end();
        return made.answer;
    }

    /** A setting as it is called. */
    public static String words(String path) {
        return axis(path).name();
    }

    private static VariedAxis axis(String path) {
        return new VariedAxis(path, List.of(), "", Double.NaN);
    }

    private void title() {
        Fields results = answer.results();
        results.put("aim", aim.of().key());
        String close = shortest(results, "close_" + aim.of().unit().suffix(), aim.close(), 1) + unit();
        answer.sayFlush(today.title() + ": tuned for " + aim.of().words() + "; "
                + today.scenario().launch().name() + " throws as always. Each setting may be anywhere in its range, the"
                + " others at their best: within " + close + " of the best.");
        for (Limit limit : asked.limits()) {
            Fields one = results.item("limits");
            one.put("key", limit.of().key());
            answer.say("  Kept: " + limit.of().words() + within(one, limit) + ".");
        }
    }

    private static String within(Fields fields, Limit limit) {
        int decimals = limit.of().decimals() + 1;
        String unit = " " + limit.of().unit().words();
        double low = limit.allowed().low();
        double high = limit.allowed().high();
        String least = Double.isInfinite(low) ? "" : " at least " + shortest(fields, "from", low, decimals);
        String most = Double.isInfinite(high) ? "" : " at most " + shortest(fields, "to", high, decimals);
        return least + (least.isEmpty() || most.isEmpty() ? "" : " and") + most + unit;
    }

    private static String shortest(Fields fields, String key, double value, int decimals) {
        fields.put(key, value, decimals);
        return Numbers.shortest(value, decimals);
    }

    private String unit() {
        return " " + aim.of().unit().words();
    }

    private void settings() {
        Table table = new Table(2, 2)
                .left("setting")
                .right("good", "from")
                .right("to")
                .right("today")
                .right("looked", "from")
                .right("to");
        if (asked.best()) {
            table.right("best");
        }
        for (Tuned.Of one : tuned.settings()) {
            Knob knob = one.knob();
            Fields fields = answer.results().item("settings");
            fields.put("key", knob.path());
            fields.put("leans", one.leans());
            VariedAxis axis = axis(knob.path());
            int decimals = decimals(knob);
            List<String> cells = new ArrayList<>(List.of(
                    axis.name() + (axis.unit().isEmpty() ? "" : ", " + axis.unit()),
                    fields.put("good_from", one.good().low(), decimals),
                    fields.put("good_to", one.good().high(), decimals),
                    fields.put("today", asked.today().applyAsDouble(knob.path()), decimals),
                    fields.put("looked_from", knob.low(), decimals),
                    fields.put("looked_to", knob.high(), decimals)));
            if (asked.best()) {
                cells.add(fields.put("best", one.best(), decimals) + (one.leans() ? " at an end" : ""));
            }
            table.row(cells.toArray(String[]::new));
        }
        answer.table(table);
        Rows rows = new Rows(List.of("setting", "good_from", "good_to", "today", "looked_from", "looked_to"));
        for (Tuned.Of one : tuned.settings()) {
            rows.add(List.of(
                    one.knob().path(),
                    one.good().low(),
                    one.good().high(),
                    asked.today().applyAsDouble(one.knob().path()),
                    one.knob().low(),
                    one.knob().high()));
        }
        answer.rows(rows);
    }

    /** A hundredth of what was looked at is as fine as a setting makes sense. */
    private static int decimals(Knob knob) {
        double span = knob.high() - knob.low();
        return span >= 20 ? 0 : span >= 1 ? 1 : 2;
    }

    private void end() {
        Fields results = answer.results();
        Quantity<Result> of = aim.of();
        int decimals = of.decimals();
        String top = results.put("best_" + of.key(), tuned.value(), decimals);
        String now = results.put(of, today.result());
        results.put("flights", (long) tuned.flights());
        String gain = results.put(
                "gain_" + of.unit().suffix(),
                Numbers.rounded(tuned.value(), decimals) - of.shown(today.result()),
                decimals);
        List<String> warnings = tuned.warnings();
        results.put("free", tuned.free());
        warnings.forEach(warning -> answer.say("! " + warning + "."));
        Cautions.of(today.changes()).forEach(answer::caution);
        answer.caution(Cautions.FIRST_FLIGHTS);
        if (!(tuned.value() - of.value(today.result()) >= aim.close())) {
            answer.verdict(
                    "Nothing to gain: at best " + top + unit() + " within what was allowed, " + now + " as it is.");
            return;
        }
        answer.verdict((tuned.free() ? "" : "No free optimum: something holds it (see !). ") + top + unit()
                + " instead of "
                + now + ", " + gain + " more by the model; set it within the ranges and throw both ways by turns."
                + (asked.best() ? "" : " --best tells single values."));
    }
}
