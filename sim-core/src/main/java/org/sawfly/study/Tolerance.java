package org.sawfly.study;

import org.sawfly.aero.BenchErrors;
import org.sawfly.aero.Corrections;
import org.sawfly.air.Air;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.Glider;

/**
 * What one error of building costs: the same glider, the same throw, the preset counted from the cruise position that the
 * elevator needs now. Both directions are flown and the worse counts. NaN where a flight has no settled height.
 *
 * @param error which
 * @param angle its size [rad]
 * @param height change of the settled launch height, the worse direction [m]
 * @param sink change of the least sink, the worse direction [m/s]
 * @param elevatorDown what the elevator's trailing edge has to go down in cruise for the positive direction [m]
 * @param swing change of the first swing, the direction that swings further [rad]
 */
public record Tolerance(BenchError error, double angle, double height, double sink, double elevatorDown, double swing) {
    /** A glider as it was built. */
    private record Built(double height, double sink, double elevatorDown, double swing) {}

    /**
     * The cost of an error.
     *
     * @param result the answer of the scenario, built squarely
     * @param angle size of the error, above 0 [rad]
     */
    public static Tolerance of(Workbench bench, Scenario scenario, Result result, BenchError error, double angle) {
        Built square = built(bench, scenario, result, BenchErrors.NONE);
        Built one = built(bench, scenario, result, error.of(angle));
        Built other = built(bench, scenario, result, error.of(-angle));
        return new Tolerance(
                error,
                angle,
                Math.min(one.height(), other.height()) - square.height(),
                Math.max(one.sink(), other.sink()) - square.sink(),
                one.elevatorDown() - square.elevatorDown(),
                Math.max(one.swing(), other.swing()) - square.swing());
    }

    private static Built built(Workbench bench, Scenario scenario, Result result, BenchErrors errors) {
        FlightPlan plan = result.plan();
        Corrections crooked = scenario.corrections().withBench(errors);
        Air air = plan.launch().weather().ground();
        Craft craft = Craft.of(
                plan.craft().glider(),
                crooked,
                bench.models(),
                scenario.flying().model(),
                scenario.settings(),
                air);
        Outcome outcome = Flight.fly(new FlightPlan(
                craft,
                plan.launch(),
                plan.releaseSpeed(),
                plan.yawRate(),
                Workbench.presetFrom(craft, craft, plan.launch()),
                plan.axes(),
                plan.steering(),
                plan.integrator()));
        double elevator = Deflections.deflection(
                craft.cruise().elevator(), craft.deflections().elevatorChord());
        return new Built(
                outcome.settled().height(),
                GlidePolar.of(craft, scenario.settings(), air).leastSink().sink(),
                elevator,
                outcome.swing().first());
    }

    /** What a ruler reads for this size on this glider [m]. */
    public double reading(Glider glider) {
        return error.length(glider) * angle;
    }
}
