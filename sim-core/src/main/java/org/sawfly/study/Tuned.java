package org.sawfly.study;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Band;

/**
 * Settings tuned for an aim.
 *
 * @param settings in the order they were given
 * @param value of the aim at the best, in its unit
 * @param held limits that hold the best back: without them it would lie elsewhere
 * @param flights how many were flown
 */
public record Tuned(List<Tuned.Of> settings, double value, List<Limit> held, int flights) {
    /**
     * One setting.
     *
     * @param knob
     * @param good range in which the aim stays close to its best, the other settings at theirs, in the unit of the key
     * @param best in the unit of the key
     * @param leansLow the best lies at the lower end that was allowed
     * @param leansHigh the best lies at the upper end that was allowed
     */
    public record Of(Knob knob, Band good, double best, boolean leansLow, boolean leansHigh) {
        /** Whether a better value may lie beyond what was allowed. */
        public boolean leans() {
            return leansLow || leansHigh;
        }
    }

    /** True if nothing but the aim decided: no setting at an end, no limit touched. */
    public boolean free() {
        return held.isEmpty() && settings.stream().noneMatch(Of::leans);
    }

    /** What to say before any best value; empty when the optimum is free. */
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (Of one : settings) {
            if (one.leans()) {
                warnings.add(one.knob().words() + " leans on its " + (one.leansLow() ? "lower" : "upper")
                        + " end: a better value may lie beyond what was allowed");
            }
        }
        for (Limit limit : held) {
            warnings.add("held back by the limit on " + limit.of().words());
        }
        return warnings;
    }
}
