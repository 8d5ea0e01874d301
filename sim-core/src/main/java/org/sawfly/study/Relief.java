package org.sawfly.study;

import java.util.EnumMap;
import java.util.Map;
import org.sawfly.aero.DragFactors;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.Axes;

/**
 * What a tenth less of each loss gives, flown anew with the same throw: losses are no shopping list, since less of one
 * leaves more speed for the others.
 */
public final class Relief {
    private static final double LESS = 0.9;

    private Relief() {}

    /** What is made less. */
    public enum Of {
        WING_PROFILE,
        TAIL_PROFILE,
        BODIES,
        INDUCED,
        /** Not a tenth, but all of it: the same throw without any yaw. */
        WAG
    }

    /** Gain in launch height of each relief [m]; NaN where that flight has no top. */
    public static Map<Of, Double> gains(Workbench bench, Scenario scenario, Result result) {
        Map<Of, Double> gains = new EnumMap<>(Of.class);
        double height = result.outcome().top().height();
        for (Of of : Of.values()) {
            gains.put(of, height(bench, scenario, result, of) - height);
        }
        return gains;
    }

    private static double height(Workbench bench, Scenario scenario, Result result, Of of) {
        FlightPlan plan = result.plan();
        DragFactors d = scenario.corrections().drag();
        DragFactors less =
                switch (of) {
                    case WING_PROFILE -> new DragFactors(LESS * d.wing(), d.tails(), d.bodies(), d.induced());
                    case TAIL_PROFILE -> new DragFactors(d.wing(), LESS * d.tails(), d.bodies(), d.induced());
                    case BODIES -> new DragFactors(d.wing(), d.tails(), LESS * d.bodies(), d.induced());
                    case INDUCED -> new DragFactors(d.wing(), d.tails(), d.bodies(), LESS * d.induced());
                    case WAG -> d;
                };
        Axes axes = of == Of.WAG ? Axes.PITCH : plan.axes();
        Craft craft = bench.craft(
                plan.craft().glider(), scenario, scenario.corrections().withDrag(less));
        return Flight.fly(plan.withCraft(craft, plan.presetElevator()).withAxes(axes))
                .top()
                .height();
    }
}
