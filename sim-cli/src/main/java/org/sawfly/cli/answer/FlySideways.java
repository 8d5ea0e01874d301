package org.sawfly.cli.answer;

import java.util.List;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.ResultQuantities;

/** What a throw does sideways when it is free to roll: roll, lean of the climb, where the top lies. */
final class FlySideways {
    /** Less fin stall than this is none [s]. */
    private static final double MOMENT = 0.005;

    private FlySideways() {}

    /** Says it; the numbers are quantities of the result. */
    static void say(Answer answer, Case asked) {
        Fields results = answer.results();
        results.putAll(ResultQuantities.ALL, asked.result());
        Outcome outcome = asked.result().outcome();
        if (outcome.ledger() == null) {
            return;
        }
        String when = results.put("rolled_after_s", outcome.top().course().rolledTime(), 1);
        answer.say("  Sideways: rolls " + side(OutcomeQuantities.ROLLED, outcome, " deg")
                + " in " + when + " s; "
                + finStall(results, outcome));
        answer.say("    the climb leans " + side(OutcomeQuantities.SLANT, outcome, " deg") + "; top "
                + side(OutcomeQuantities.DRIFT, outcome, " m") + ", heading "
                + side(OutcomeQuantities.HEADING, outcome, " deg"));
        List<String> off = Case.handsOff(asked.scenario().flying().steering());
        if (!off.isEmpty()) {
            answer.say("    hands off: " + String.join(", ", off));
        }
        answer.gap();
    }

    private static String finStall(Fields results, Outcome outcome) {
        double stalled = outcome.swing().finStalledFor();
        results.put(OutcomeQuantities.FIN_STALLED, outcome);
        return stalled < MOMENT
                ? "the fin does not stall"
                : "the fin stalls for " + OutcomeQuantities.FIN_STALLED.text(outcome) + " s";
    }

    /** "12 left", for a column. */
    static String letter(Quantity<Outcome> quantity, Outcome outcome) {
        return letter(quantity, quantity.value(outcome));
    }

    /** The same of a number in its unit. */
    static String letter(Quantity<?> quantity, double value) {
        double shown = Numbers.rounded(value, quantity.decimals());
        if (Double.isNaN(shown)) {
            return Numbers.NONE;
        }
        return Numbers.fixed(Math.abs(shown), quantity.decimals()) + (shown < 0 ? " left" : shown > 0 ? " right" : "");
    }

    /** "12 deg left"; the number's sign goes into the word. */
    static String side(Quantity<Outcome> quantity, Outcome outcome, String unit) {
        double shown = quantity.shown(outcome);
        return Numbers.fixed(Math.abs(shown), quantity.decimals()) + unit + (shown < 0 ? " left" : " right");
    }
}
