package org.sawfly.cli.answer;

import java.util.List;
import java.util.Map;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.Ended;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Moment;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.flight.Spin;
import org.sawfly.flight.Thrower;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Relief;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** One throw, from the hand to the settled glide, and where the height went. */
public final class FlyAnswer {
    private static final double FIN_MOMENT = 0.02;
    /** Less than this is no lever [m]. */
    private static final double LEVER = 0.15;

    private final Answer answer = new Answer("fly");
    private final Case asked;
    private final Result result;
    private final Outcome outcome;

    private FlyAnswer(Case asked) {
        this.asked = asked;
        this.result = asked.result();
        this.outcome = result.outcome();
    }

    /**
     * The whole answer.
     *
     * @param asked the glider and its throw
     * @param gains what less of each loss gives; empty without a top
     */
    public static Answer of(Case asked, Map<Relief.Of, Double> gains) {
        FlyAnswer made = new FlyAnswer(asked);
        asked.inputs(made.answer.inputs());
        made.throwing();
        made.moments();
        if (asked.scenario().axes() == Axes.ALL) {
            FlySideways.say(made.answer, asked);
        }
        if (made.outcome.ledger() != null) {
            new FlyLedger(made.answer, asked).write(gains);
        }
        made.rest();
        made.end(gains);
        return made.answer;
    }

    /** The flight as rows, one every hundredth of a second. */
    public static Rows rows(FlightLog log, double elevatorChord) {
        Rows rows = new Rows(List.of(
                "time_s",
                "distance_m",
                "height_m",
                "speed_mps",
                "path_deg",
                "nose_off_deg",
                "elevator_down_mm",
                "load_g",
                "fin_angle_deg",
                "right_of_throw_m",
                "heading_right_deg",
                "rolled_right_deg"));
        for (FlightLog.Row row : log.rows()) {
            rows.add(List.of(
                    row.time(),
                    row.distance(),
                    row.height(),
                    row.speed(),
                    Unit.DEGREE.fromSi(row.pathAngle()),
                    Unit.DEGREE.fromSi(row.noseOff()),
                    Unit.MILLIMETRE.fromSi(Deflections.deflection(row.elevator(), elevatorChord)),
                    row.load(),
                    Unit.DEGREE.fromSi(row.finAngle()),
                    row.side().drift(),
                    Unit.DEGREE.fromSi(row.side().heading()),
                    Unit.DEGREE.fromSi(row.side().rolled())));
        }
        return rows;
    }

    private void throwing() {
        Fields results = answer.results();
        answer.sayFlush(asked.title() + ", thrown by "
                + asked.scenario().launch().name() + " (" + asked.hand() + " hand), " + asked.weather(answer.inputs()));
        Thrower thrower = asked.scenario().launch().thrower();
        results.putAll(ResultQuantities.ALL, result);
        String speed = "leaves the hand at " + OutcomeQuantities.RELEASE_SPEED.textWithUnit(outcome);
        String turns = "still turning " + OutcomeQuantities.RELEASE_TURNS.text(outcome) + " turns a second then";
        if (Double.isNaN(thrower.usualHeight())) {
            answer.lines("As you said: " + speed);
        } else {
            String height = answer.inputs().put("usual_height_m", thrower.usualHeight(), 0);
            String with = asked.scenario().calibratedWith().name();
            boolean another = !with.equals(asked.scenario().glider().name());
            answer.lines("From what you saw: " + height + " m usual launch" + (another ? " with " + with : "") + " -> "
                    + speed);
        }
        if (outcome.release().yawRate() == 0) {
            answer.lines("                   flown in pitch only: no swing of the nose");
        } else if (Double.isNaN(thrower.firstSwing())) {
            answer.lines("             " + turns);
        } else {
            String swing = answer.inputs().put("first_swing_deg", Unit.DEGREE.fromSi(thrower.firstSwing()), 0);
            answer.lines("                   " + swing + " deg first swing -> " + turns);
        }
        answer.gap();
    }

    private void moments() {
        Table table = new Table(2, 2)
                .left()
                .right("after")
                .right("height")
                .right("speed")
                .left();
        for (Moment moment : outcome.moments()) {
            Fields fields = answer.results().section("moments").section(key(moment));
            fields.put("time_s", moment.time(), 1);
            fields.put("height_m", height(moment), 1);
            fields.put("distance_m", moment.distance(), 1);
            fields.put("speed_mps", moment.speed(), 1);
            fields.put("path_deg", Unit.DEGREE.fromSi(moment.pathAngle()), 0);
            boolean fine = moment.kind() == Moment.Kind.RELEASE
                    || moment.kind() == Moment.Kind.TOP
                    || moment.kind() == Moment.Kind.GLIDING;
            String blank = fine ? "" : "  ";
            table.row(
                    words(moment),
                    (moment.time() == 0 ? "0" : Numbers.fixed(moment.time(), 1)) + " s",
                    Numbers.fixed(height(moment), fine ? 1 : 0) + blank + " m",
                    Numbers.fixed(moment.speed(), fine ? 1 : 0) + blank + " m/s",
                    remark(moment));
        }
        answer.table(table);
        if (outcome.ended() != Ended.SETTLED) {
            answer.say("  Then it " + outcome.ended().words() + ".");
        }
        answer.results().put("ended", outcome.ended().words());
        answer.results().put("settled_into_the_glide", outcome.settled().ticked());
        answer.gap();
    }

    /** At the end the settled height, counted back to the top; everywhere else the height there. */
    private double height(Moment moment) {
        return moment.kind() == Moment.Kind.GLIDING ? outcome.settled().height() : moment.height();
    }

    private static String key(Moment moment) {
        return switch (moment.kind()) {
            case RELEASE -> "release";
            case WAG_OVER -> "wag_over";
            case PULLED_UP -> "pulled_up";
            case PUSH_OVER -> "push_over";
            case TOP -> "top";
            case GLIDING -> "gliding";
        };
    }

    private static String words(Moment moment) {
        return switch (moment.kind()) {
            case RELEASE -> "leaves hand";
            case WAG_OVER -> "wag over";
            case PULLED_UP -> "pulled up";
            case PUSH_OVER -> "push-over";
            case TOP -> "top";
            case GLIDING -> "gliding";
        };
    }

    private String remark(Moment moment) {
        String path = Numbers.fixed(Math.abs(Unit.DEGREE.fromSi(moment.pathAngle())), 0) + " deg";
        return switch (moment.kind()) {
            case RELEASE -> "climbing " + path;
            case WAG_OVER ->
                "swung " + OutcomeQuantities.FIRST_SWING.text(outcome) + " deg past, "
                        + OutcomeQuantities.SWING_BACK.text(outcome) + " deg back";
            case PULLED_UP ->
                (moment.pathAngle() < 0 ? "sinking " : "climbing ") + path + ", "
                        + OutcomeQuantities.MAX_LOAD.text(outcome) + " g at most";
            case PUSH_OVER -> "";
            case TOP -> "launch height";
            case GLIDING -> "settled height, " + lostOnTheWay();
        };
    }

    private String lostOnTheWay() {
        Difference lost = new Difference(
                OutcomeQuantities.APEX_HEIGHT.value(outcome),
                OutcomeQuantities.SETTLED_HEIGHT.value(outcome),
                Unit.METRE,
                1);
        answer.results().put("top_less_settled_m", -lost.amount(), 1);
        String amount = Numbers.fixed(Math.abs(lost.amount()), 1) + " m ";
        return amount + (lost.amount() > 0 ? "won on the way" : "lost on the way");
    }

    private void rest() {
        if (outcome.ended() == Ended.SETTLED) {
            answer.say("  Still air: "
                    + Numbers.clockWords(OutcomeQuantities.STILL_AIR_CIRCLING.value(outcome)) + " circling, "
                    + Numbers.clockWords(OutcomeQuantities.STILL_AIR_TIME.value(outcome)) + " straight, hand to hand");
        }
        Fields spin = answer.results().section("spin");
        Spin in = outcome.release().spin();
        double lead = result.rebalanced().leadMass() * in.load();
        answer.say("  In the spin: " + spin.put("spin_load_g", in.load(), 0) + " g, "
                + spin.put("peg_N", Math.hypot(in.pegRadial(), in.pegAlong()), 0)
                + " N on the peg; the nose lead pulls like " + spin.put("lead_pulls_like_kg", lead, 1) + " kg");
        spin.put("turns_per_s", Unit.TURNS_PER_SECOND.fromSi(in.rate()), 2);
        spin.put("nose_outward_deg", Unit.DEGREE.fromSi(in.noseOutward()), 1);
        String across = spin.put("peg_radial_N", in.pegRadial(), 0);
        String along = spin.put("peg_along_N", in.pegAlong(), 0);
        String trail = Numbers.fixed(Math.abs(in(Unit.DEGREE, in.trail())), 0);
        spin.put("trails_the_arm_deg", in(Unit.DEGREE, in.trail()), 1);
        spin.put("fin_load_outward_N", in.finOutward(), 1);
        answer.say("    " + across + " N inward, " + along + " along; " + (in.trail() < 0 ? "leads" : "trails")
                + " the arm " + trail + " deg; fin at " + spin.put("fin_angle_deg", in(Unit.DEGREE, in.finAngle()), 0)
                + " deg, "
                + Numbers.fixed(Math.abs(in.finOutward()), 1) + " N "
                + (in.finOutward() < 0 ? "inward" : "outward"));
    }

    private static double in(Unit unit, double si) {
        return unit.fromSi(si);
    }

    /** "40.5 m of it once gliding"; a glider that is fast at the top has more once it glides. */
    static String onceGliding(Outcome outcome) {
        boolean more = OutcomeQuantities.SETTLED_HEIGHT.value(outcome) > OutcomeQuantities.APEX_HEIGHT.value(outcome);
        return OutcomeQuantities.SETTLED_HEIGHT.text(outcome) + (more ? " m once gliding" : " m of it once gliding");
    }

    private void end(Map<Relief.Of, Double> gains) {
        answer.caution("clear the whole circle and the line of flight. Estimate, not a promise.");
        Cautions.of(result).forEach(answer::caution);
        if (FarSwing.of(result)) {
            FarSwing.say(answer);
        }
        if (outcome.ledger() == null || outcome.ended() != Ended.SETTLED) {
            answer.verdict("No settled height: it " + outcome.ended().words() + ".");
            return;
        }
        answer.verdict("Launch " + Numbers.fixed(OutcomeQuantities.APEX_HEIGHT.value(outcome), 0) + " m, "
                + onceGliding(outcome) + ".");
        if (!Cautions.lastWords(result).isEmpty()) {
            answer.verdict(Cautions.lastWords(result));
            return;
        }
        if (outcome.stalledAtTop()) {
            answer.verdict("It stalled at the top: push over earlier, that gives more than any change of the glider.");
            return;
        }
        double wag = gains.getOrDefault(Relief.Of.WAG, 0.0);
        String gain = Numbers.fixed(wag, 1);
        if (wag < LEVER) {
            answer.verdict(
                    result.outcome().swing().first() > 0
                            ? "It leaves the hand cleanly; what is left to gain is in the throw itself."
                            : "Flown without any swing of the nose, as a clean release would be.");
        } else if (outcome.swing().finStalledFor() > FIN_MOMENT) {
            answer.verdict(
                    "The fin stalls for a moment as it leaves the hand; a calmer release or a bit more fin is worth up"
                            + " to " + gain + " m.");
        } else {
            answer.verdict("A calmer release is worth up to " + gain + " m.");
        }
    }
}
