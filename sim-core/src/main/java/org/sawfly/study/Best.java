package org.sawfly.study;

import java.util.function.DoubleFunction;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.PushOver;
import org.sawfly.math.Minimum;

/** One setting of a launch at its best: where the settled height is greatest. */
final class Best {
    private static final double PRESET_REACH = 0.008;
    private static final double PRESET_TOLERANCE = 1e-6;
    private static final double SLOWEST_PUSH = 1.8;
    private static final double FASTEST_PUSH = 4;
    private static final double PUSH_TOLERANCE = 1e-4;
    /** Looked at first, so that flights that end badly lead the search nowhere. */
    private static final int LOOKED_AT = 9;

    private Best() {}

    /** The plan with the best elevator preset. */
    static FlightPlan preset(FlightPlan plan) {
        double chord = plan.craft().deflections().elevatorChord();
        double cruise = Deflections.deflection(plan.craft().cruise().elevator(), chord);
        return of(
                up -> plan.withPreset(Deflections.angle(cruise - up, chord)),
                -0.5 * PRESET_REACH,
                PRESET_REACH,
                PRESET_TOLERANCE);
    }

    /** The plan pushed over at the best airspeed. */
    static FlightPlan push(FlightPlan plan) {
        return of(ratio -> plan.withPush(new PushOver(ratio, Double.NaN)), SLOWEST_PUSH, FASTEST_PUSH, PUSH_TOLERANCE);
    }

    private static FlightPlan of(DoubleFunction<FlightPlan> plans, double low, double high, double tolerance) {
        return plans.apply(Minimum.scanned(
                x -> {
                    double height = Flight.fly(plans.apply(x)).settled().height();
                    return Double.isNaN(height) ? 0 : -height;
                },
                low,
                high,
                LOOKED_AT,
                tolerance));
    }
}
