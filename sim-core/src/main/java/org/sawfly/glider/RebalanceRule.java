package org.sawfly.glider;

import java.util.List;

/**
 * What is kept after a change, and what is moved to keep it.
 *
 * @param keep
 * @param with movers in the order in which they are used
 * @param wantedCg for {@link Keep#CG_AT}: the wanted balance point behind the root leading edge [m]; else NaN
 */
public record RebalanceRule(Keep keep, List<CgSetting.Means> with, double wantedCg) {
    public RebalanceRule {
        with = List.copyOf(with);
    }

    /** What stays as it is today. */
    public enum Keep {
        /** Nothing is moved: the CG goes where the change takes it. */
        NOTHING,
        /** The balance point. */
        CG,
        /** The static margin. */
        MARGIN,
        /** A wanted balance point. */
        CG_AT
    }
}
