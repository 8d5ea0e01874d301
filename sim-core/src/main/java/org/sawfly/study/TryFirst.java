package org.sawfly.study;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.sawfly.aero.ModelChoice;
import org.sawfly.air.Air;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.CgSetting.Means;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.glider.RebalanceRule.Keep;
import org.sawfly.motion.NoTrimException;
import org.sawfly.stability.Margins;
import org.sawfly.stability.Rebalance;
import org.sawfly.stability.Rebalanced;

/**
 * How to get a foretaste of a change without making it: today's glider balanced so that its margin is what the changed one
 * would have at today's CG. It feels like it in pitch only.
 *
 * @param marginShare margin of the changed glider at today's CG, as a share of the mean chord [1]
 * @param cg balance point of today's glider that gives as much, behind the root leading edge [m]
 * @param leadPutIn lead that takes, put in positive [kg]
 * @param batteryForward how far the battery goes for it, forward positive [m]
 */
public record TryFirst(double marginShare, double cg, double leadPutIn, double batteryForward) {
    private static final List<Means> BY_LEAD = List.of(Means.NOSE_LEAD);
    private static final List<Means> BY_ALL = List.of(Means.BATTERY, Means.NOSE_LEAD);

    /** For a changed glider; empty when what can be moved does not suffice. */
    public static Optional<TryFirst> of(Workbench bench, Scenario changed) {
        Air air = changed.launch().weather().ground();
        ModelChoice model = changed.flying().model();
        ToDoubleFunction<Glider> share =
                glider -> Margins.share(glider, changed.corrections(), bench.models(), model, air);
        Optional<TryFirst> byLead = of(changed, share, BY_LEAD);
        return byLead.isPresent() ? byLead : of(changed, share, BY_ALL);
    }

    private static Optional<TryFirst> of(Scenario changed, ToDoubleFunction<Glider> share, List<Means> with) {
        Glider today = changed.today();
        try {
            Glider atTodaysCg = Rebalance.apply(today, changed.glider(), rule(Keep.CG, with), share)
                    .glider();
            Rebalanced tried = Rebalance.apply(atTodaysCg, today, rule(Keep.MARGIN, with), share);
            double cg = -MassProperties.of(tried.glider()).cg().x();
            return Optional.of(
                    new TryFirst(share.applyAsDouble(atTodaysCg), cg, tried.leadPutIn(), tried.batteryForward()));
        } catch (DesignException | NoTrimException e) {
            return Optional.empty();
        }
    }

    private static RebalanceRule rule(Keep keep, List<Means> with) {
        return new RebalanceRule(keep, with, Double.NaN);
    }
}
