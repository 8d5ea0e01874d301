package org.sawfly.cli.answer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.sawfly.cli.chart.RestFigure;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Uncertainties;
import org.sawfly.study.log.Calibrated;
import org.sawfly.study.log.Calibrated.Thrown;
import org.sawfly.study.log.Calibration;
import org.sawfly.study.log.Estimate;
import org.sawfly.study.log.FlightModel;
import org.sawfly.study.log.GlideSink;

/** What logs say about thrower and glider. */
public final class CalibrateAnswer {
    private static final Quantity<Estimate> SPEED =
            new Quantity<>("release_speed_mps", "speed at release", Unit.METRE_PER_SECOND, 1, Estimate::value);
    private static final Quantity<Estimate> DRAG =
            new Quantity<>("drag_pct", "drag of wing and tails", Unit.PERCENT, 0, Estimate::value);
    private static final Quantity<GlideSink> SINK =
            new Quantity<>("sink_mps", "sink", Unit.METRE_PER_SECOND, 2, GlideSink::sink);
    private static final Quantity<Thrown> TOP = new Quantity<>(
            "height_m", "launch height", Unit.METRE, 1, one -> one.logged().height());
    private static final Quantity<Thrown> RELEASED =
            new Quantity<>("released_s", "released", Unit.SECOND, 1, Thrown::release);

    /** More throws than this stand in the files only. */
    private static final int MOST_SHOWN = 12;

    /** An altimeter's samples scatter less [m]; common practice, no source. */
    private static final double MOST_NOISE = 0.5;

    private static final String NO_SIGN = "no sign that it is other than the parts say.";

    private final Answer answer = new Answer("calibrate");
    private final Case asked;
    private final Found found;

    /**
     * What was found.
     *
     * @param fit throws and drag
     * @param height to which the mean throw goes with that drag [m]
     * @param wagFree speed that would reach the same height without any wag [m/s]
     * @param sinks of the glides, throw by throw
     */
    public record Found(Calibrated fit, double height, double wagFree, List<GlideSink> sinks) {}

    private CalibrateAnswer(Case asked, Found found) {
        this.asked = asked;
        this.found = found;
    }

    /**
     * The whole answer.
     *
     * @param asked the glider, and the launch that says what is held
     * @param logs that were read
     * @param found in them
     * @param uncertainties of what is held
     */
    public static Answer of(Case asked, List<Path> logs, Found found, Uncertainties uncertainties) {
        CalibrateAnswer made = new CalibrateAnswer(asked, found);
        asked.inputs(made.answer.inputs());
        made.answer.inputs().put("logs", logs.stream().map(Path::toString).toList());
        made.title();
        made.table();
        made.mean();
        made.notTold(uncertainties);
        made.sink();
        made.end();
        return made.answer;
    }

    private void title() {
        Fields results = answer.results();
        int fitted = found.fit().throwsFitted().size();
        answer.sayFlush(
                asked.title() + ", thrown by " + asked.scenario().launch().name() + ", "
                        + asked.weather(answer.inputs()) + ": " + results.put("throws", fitted)
                        + (fitted == 1 ? " throw" : " throws") + " found and fitted");
        found.fit().skipped().forEach(answer::warn);
    }

    private void table() {
        Rows rows = new Rows(List.of(
                "log",
                RELEASED.key(),
                TOP.key(),
                SPEED.key(),
                "release_speed_low_mps",
                "release_speed_high_mps",
                SINK.key()));
        Table table = new Table()
                .left("log")
                .right("released", "at s")
                .right("launch", "height, m")
                .right("leaves the hand", "m/s (9 times in 10)")
                .right("glide", "sink, m/s");
        List<Thrown> all = found.fit().throwsFitted();
        for (int i = 0; i < all.size(); i++) {
            Thrown one = all.get(i);
            GlideSink sink = found.sinks().get(i);
            Path file = Path.of(one.logged().log().name());
            Band likely = one.speed().likely();
            Fields fields = answer.results().item("launches");
            fields.put("log", file.toString());
            String[] cells = {
                String.valueOf(file.getFileName()),
                fields.put(RELEASED, one),
                fields.put(TOP, one),
                fields.put(SPEED, one.speed()) + " (" + fields.band(SPEED, likely) + ")",
                fields.put(SINK, sink)
            };
            fields.put("unrest_mps", sink.unrest(), 2);
            fields.put(
                    "after_release_s",
                    one.residuals().stream().mapToDouble(at -> at[0]).toArray());
            fields.put(
                    "log_less_flight_m",
                    one.residuals().stream().mapToDouble(at -> at[1]).toArray());
            if (i < MOST_SHOWN) {
                table.row(cells);
            }
            rows.add(List.of(
                    file.toString(),
                    RELEASED.value(one),
                    TOP.value(one),
                    SPEED.value(one.speed()),
                    likely.low(),
                    likely.high(),
                    SINK.value(sink)));
        }
        answer.table(table);
        if (all.size() > MOST_SHOWN) {
            answer.say("  and " + answer.results().put("not_shown", all.size() - MOST_SHOWN) + " more, see --csv");
        }
        answer.rows(rows);
    }

    private void mean() {
        Fields results = answer.results();
        Calibrated fit = found.fit();
        Estimate speed = fit.meanSpeed();
        answer.say("Leaves the hand at " + results.put(SPEED, speed) + " m/s on the mean ("
                + results.band(SPEED, speed.likely()) + "), which goes to "
                + results.put("mean_height_m", found.height(), 1) + " m. Without any wag "
                + results.put("wag_free_speed_mps", found.wagFree(), 1) + " m/s would do the same.");
        String narrow = results.band("drag_if_so_pct", fit.drag().withoutHeld().fromSi(Unit.PERCENT), DRAG.decimals());
        String narrowSpeed = results.band("release_speed_if_so_mps", speed.withoutHeld(), SPEED.decimals());
        answer.say("Drag of wing and tails " + results.put(DRAG, fit.drag()) + " % of what the parts say ("
                + results.band(DRAG, fit.drag().likely().fromSi(Unit.PERCENT))
                + "). If all that is held below were just so: "
                + narrowSpeed + " m/s, " + narrow + " %.");
        answer.say("Two samples in three lie within " + results.put("noise_m", fit.noise(), 2)
                + " m of the flights, from " + results.put("first_used_s", Calibration.IGNORED, 0)
                + " s after release to a little after the top."
                + (fit.noise() > MOST_NOISE ? " That is more than an altimeter's noise: look at --chart." : ""));
    }

    private void notTold(Uncertainties uncertainties) {
        Fields held = answer.results().section("held");
        String words = FlightModel.HELD.stream()
                .map(one -> {
                    Unit unit = Unit.of(one.key());
                    double half = unit.differenceFromSi(uncertainties.halfWidth(one));
                    held.put(one.key(), half, 1);
                    return one.words() + " (" + Numbers.shortest(half, 1) + " " + unit.words() + ")";
                })
                .collect(Collectors.joining(", "));
        answer.results().put("speed_with_drag", found.fit().correlation(), 2);
        answer.say(
                "A log can hardly tell a faster release with more drag from a slower one with less, and not at all a wag"
                        + " from a slower release: the wag is over before the sensor can be trusted. So these"
                        + " are held as the files have them, and what they may be off by is in the ranges: " + words
                        + ". Drag of pod and boom counts as drag of the wing.");
    }

    private void sink() {
        GlideSink together = GlideSink.of(found.sinks());
        Fields results = answer.results().section("glide");
        results.put(SINK, together);
        results.put("glides", together.pieces());
        results.put("unrest_mps", together.unrest(), 2);
        String least = results.put(ResultQuantities.MIN_SINK, asked.result());
        String calm = Numbers.shortest(GlideSink.CALM, 2);
        results.put("calm_below_mps", GlideSink.CALM, 2);
        if (Double.isNaN(together.sink())) {
            answer.say("No glide is long and calm enough to tell the sink: "
                    + results.put("shortest_glide_s", GlideSink.SHORTEST, 0) + " s from the top at least, in pieces of "
                    + results.put("piece_s", GlideSink.PIECE, 0) + " s that differ by no more than " + calm
                    + " m/s (two in three of them).");
            return;
        }
        answer.say("Sinks " + SINK.text(together) + " m/s in the glide ("
                + results.band(SINK, together.likely()) + "), from " + together.pieces()
                + (together.pieces() == 1 ? " glide" : " glides") + " in air that looked calm; the parts say " + least
                + " at the least, straight. Calm it need not have been: air that rises or sinks evenly all the time does"
                + " not show, and turns cost sink.");
    }

    private void end() {
        Calibrated fit = found.fit();
        Band drag = fit.drag().likely();
        String speed = SPEED.text(fit.meanSpeed()) + " m/s ("
                + SPEED.range(fit.meanSpeed().likely()) + ")";
        String amount = DRAG.text(fit.drag()) + " % (" + DRAG.range(drag.fromSi(Unit.PERCENT)) + ")";
        boolean other = !drag.contains(1);
        answer.verdict("It leaves the hand at " + speed + ". Drag " + amount + ": "
                + (other ? (drag.low() > 1 ? "more" : "less") + " than the parts say." : NO_SIGN));
        if (fit.noise() > MOST_NOISE) {
            answer.verdict(
                    "Do not trust it yet: climb, preset, push-over or wind were not as the files have them, or it is"
                            + " another glider.");
        }
        List<RestFigure.Throw> shown = new ArrayList<>();
        for (Thrown one : fit.throwsFitted()) {
            shown.add(new RestFigure.Throw(
                    one.residuals().stream().mapToDouble(at -> at[0]).toArray(),
                    one.residuals().stream().mapToDouble(at -> at[1]).toArray()));
        }
        answer.figure(RestFigure.of(
                answer.verdict(),
                "What is left when the fitted flights are taken from the logs. A pattern that all throws share is the"
                        + " model's fault or the sensor's.",
                FlyFigures.foot(asked),
                fit.noise(),
                shown));
    }
}
