package org.sawfly.cli.answer;

import org.sawfly.aero.TailVolumeModel;
import org.sawfly.flight.Swing;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** What an answer of the fast model says when the nose swings further than it is good for, see {@link Swing#beyondFastModel}. */
final class FarSwing {
    private static final String SENTENCE =
            "The nose swings further than the fast model is good for: use --model strip.";

    private FarSwing() {}

    /** Whether that is so of a result. */
    static boolean of(Result result) {
        return fast(result) && result.outcome().swing().beyondFastModel();
    }

    /** The same of a row of a study of which one result is known. */
    static boolean of(VaryRow row, Result one) {
        return fast(one) && Unit.DEGREE.toSi(row.value(ResultQuantities.FIRST_SWING)) > Swing.FAST_MODEL;
    }

    static void say(Answer answer) {
        answer.verdict(SENTENCE);
    }

    private static boolean fast(Result result) {
        return result.plan().craft().model() instanceof TailVolumeModel;
    }
}
