package org.sawfly.study;

import java.util.List;
import org.sawfly.flight.Ended;
import org.sawfly.glider.DesignException;

/**
 * A scenario answered, or the reason why there is no answer.
 *
 * @param result null if there is none
 * @param reason null if there is a result; else in a builder's words
 */
public record Answered(Result result, String reason) {
    /** Asks the bench; a glider that cannot be built, trimmed or thrown gives its reason. */
    static Answered of(Workbench bench, Scenarios scenarios, List<Setting> settings) {
        try {
            return new Answered(bench.answer(scenarios.with(settings)), null);
        } catch (NoAnswerException | DesignException e) {
            return new Answered(null, e.getMessage());
        }
    }

    /** True if there is a result and its flight settled. */
    public boolean flew() {
        return result != null && result.outcome().ended() == Ended.SETTLED;
    }

    /** How it ended, in words without a full stop: of the flight, or why there was none. */
    public String ended() {
        return result == null
                ? reason.replaceFirst("\\.$", "")
                : result.outcome().ended().words();
    }
}
