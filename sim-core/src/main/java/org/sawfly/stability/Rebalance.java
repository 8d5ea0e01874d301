package org.sawfly.stability;

import java.util.function.ToDoubleFunction;
import org.sawfly.glider.CgSetting;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Part;
import org.sawfly.glider.RebalanceRule;

/**
 * Brings a changed glider into balance again by a rule: the battery within its room, then nose lead, in the order the rule
 * names. The CG comes back exactly; the margin by iteration, since the neutral point moves a little with the CG.
 */
public final class Rebalance {
    private static final int MOST_ROUNDS = 20;
    private static final double CLOSE_ENOUGH = 1e-10;

    private Rebalance() {}

    /**
     * The changed glider rebalanced.
     *
     * @param today what is to be kept is taken from it
     * @param changed not yet rebalanced
     * @param rule what is kept and what is moved
     * @param marginShare margin of a glider as a share of its mean chord [1]
     * @throws org.sawfly.glider.DesignException if what may be moved does not suffice
     */
    public static Rebalanced apply(
            Glider today, Glider changed, RebalanceRule rule, ToDoubleFunction<Glider> marginShare) {
        Glider glider =
                switch (rule.keep()) {
                    case NOTHING -> changed;
                    case CG -> at(changed, MassProperties.of(today).cg().x(), rule);
                    case CG_AT -> at(changed, -rule.wantedCg(), rule);
                    case MARGIN -> changed.equals(today) ? changed : withMargin(today, changed, rule, marginShare);
                };
        double lead = glider.noseLead().mass();
        return new Rebalanced(
                glider, lead, lead - changed.noseLead().mass(), placeOfMovers(glider) - placeOfMovers(changed));
    }

    private static Glider at(Glider changed, double cgX, RebalanceRule rule) {
        return new CgSetting(cgX, rule.with()).apply(changed);
    }

    private static Glider withMargin(
            Glider today, Glider changed, RebalanceRule rule, ToDoubleFunction<Glider> marginShare) {
        double wanted = marginShare.applyAsDouble(today);
        double chord = changed.wing().planform().meanChord();
        double x = MassProperties.of(changed).cg().x();
        double miss = marginShare.applyAsDouble(changed) - wanted;
        double slope = 1 / chord;
        Glider glider = changed;
        for (int i = 0; i < MOST_ROUNDS && Math.abs(miss) > CLOSE_ENOUGH; i++) {
            double next = x - miss / slope;
            glider = at(changed, next, rule);
            double now = marginShare.applyAsDouble(glider) - wanted;
            if (next != x && now != miss) {
                slope = (now - miss) / (next - x);
            }
            x = next;
            miss = now;
        }
        return glider;
    }

    /** Sum of the places of whatever can slide [m]. */
    private static double placeOfMovers(Glider glider) {
        double sum = 0;
        for (Part part : glider.parts().values()) {
            if (part.slideForward() + part.slideBack() > 0) {
                sum += part.place().x();
            }
        }
        return sum;
    }
}
