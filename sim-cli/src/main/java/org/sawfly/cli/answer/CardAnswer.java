package org.sawfly.cli.answer;

import org.sawfly.flight.Ended;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.glider.Glider;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.BalanceQuantities;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** One glider on one card. */
public final class CardAnswer {
    private CardAnswer() {}

    /** The whole answer. */
    public static Answer of(Case asked) {
        Answer answer = new Answer("card");
        asked.inputs(answer.inputs());
        Result result = asked.result();
        Glider glider = result.rebalanced().glider();
        Fields results = answer.results();
        results.putAll(ResultQuantities.ALL, result);
        double area = 2 * glider.wing().planform().area();
        double span = 2 * glider.wing().planform().span();
        answer.sayFlush(asked.title());
        answer.lines(
                "  Mass      " + ResultQuantities.MASS.text(result) + " g, " + ResultQuantities.NOSE_LEAD.text(result)
                        + " g of it nose lead",
                "  Wing      span " + results.put("span_mm", Unit.MILLIMETRE.fromSi(span), 0) + " mm, area "
                        + results.put("wing_area_dm2", Unit.SQUARE_DECIMETRE.fromSi(area), 1) + " dm2, "
                        + results.put(
                                "wing_loading_g_per_dm2",
                                Unit.GRAM_PER_SQUARE_DECIMETRE.fromSi(
                                        result.plan().craft().mass().mass() / area),
                                1)
                        + " g/dm2",
                "  Balance   CG " + ResultQuantities.CG.text(result) + " mm behind the leading edge, neutral point "
                        + ResultQuantities.NEUTRAL_POINT.text(result) + " mm",
                "  Margin    " + margin(result) + ", " + signed(ResultQuantities.LAUNCH_MARGIN.shown(result), " %")
                        + " at launch speed",
                "  Tails     volume " + ResultQuantities.TAIL_VOLUME_H.text(result) + " tailplane, "
                        + ResultQuantities.TAIL_VOLUME_V.text(result) + " fin",
                launch(asked),
                "  Glide     least sink " + ResultQuantities.MIN_SINK.text(result) + " m/s at "
                        + ResultQuantities.MIN_SINK_SPEED.text(result) + " m/s, best glide "
                        + ResultQuantities.BEST_GLIDE.text(result));
        if (result.outcome().ended() == Ended.SETTLED) {
            answer.lines("  Still air "
                    + Numbers.clockWords(OutcomeQuantities.STILL_AIR_CIRCLING.value(result.outcome()))
                    + " circling, from the hand");
        }
        Cautions.of(result).forEach(answer::caution);
        verdict(answer, result);
        return answer;
    }

    private static String margin(Result result) {
        double margin = BalanceQuantities.MARGIN.shown(result.margins());
        String both = Numbers.fixed(Math.abs(margin), 1) + " mm = "
                + Numbers.fixed(Math.abs(ResultQuantities.STATIC_MARGIN.shown(result)), 1) + " %";
        return margin < 0 ? "none: " + both + " TOO LITTLE" : both + " of the chord";
    }

    private static String signed(double shown, String unit) {
        String amount = Numbers.fixed(Math.abs(shown), 1) + unit;
        return shown < 0 ? amount + " TOO LITTLE" : amount;
    }

    private static String launch(Case asked) {
        Result result = asked.result();
        String by = "thrown by " + asked.scenario().launch().name();
        if (result.outcome().ended() != Ended.SETTLED) {
            return "  Launch    " + by + " it " + result.outcome().ended().words();
        }
        return "  Launch    " + ResultQuantities.APEX_HEIGHT.text(result) + " m, "
                + ResultQuantities.SETTLED_HEIGHT.text(result) + " m once gliding, " + by + "; swings "
                + ResultQuantities.FIRST_SWING.text(result) + " deg";
    }

    private static void verdict(Answer answer, Result result) {
        boolean usual = Usual.TAIL_VOLUME_H.contains(ResultQuantities.TAIL_VOLUME_H.value(result))
                && Usual.TAIL_VOLUME_V.contains(ResultQuantities.TAIL_VOLUME_V.value(result))
                && Usual.STATIC_MARGIN.contains(ResultQuantities.STATIC_MARGIN.value(result));
        if (!Cautions.of(result).isEmpty()) {
            answer.verdict("Not for hard throws as it is: see the warning.");
        } else if (result.outcome().ended() != Ended.SETTLED) {
            answer.verdict("The throw does not end in a glide: sawfly fly shows where it goes wrong.");
        } else {
            answer.verdict(
                    usual
                            ? "Margin and tail volumes are where such gliders have them."
                            : "It flies, but margin or tail volumes are not where such gliders have them: sawfly stability.");
        }
    }
}
