package org.sawfly.study;

import org.sawfly.flight.Craft;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Scenario;

/**
 * What the bending of the boom costs in launch height, and what re-setting the launch preset gives back. The same release
 * for all; heights are settled heights, NaN where a flight has none.
 *
 * @param asIs the boom as it is, its preset [m]
 * @param asIsBest the same at its own best elevator preset [m]
 * @param stiff a boom that does not bend, the preset counted from its own cruise position [m]
 * @param stiffBest the same at its own best elevator preset [m]
 */
public record SoftBoom(double asIs, double asIsBest, double stiff, double stiffBest) {
    /** So many times as stiff as it is does not bend [1]. */
    private static final double STIFF = 1e6;

    /** Of an answered scenario. */
    public static SoftBoom of(Workbench bench, Scenario scenario, Result result) {
        FlightPlan plan = result.plan();
        FlightPlan stiff = unbending(bench, scenario, plan);
        return new SoftBoom(height(plan), height(Best.preset(plan)), height(stiff), height(Best.preset(stiff)));
    }

    /** The same throw with a boom that does not bend, the preset counted from its own cruise position. */
    static FlightPlan unbending(Workbench bench, Scenario scenario, FlightPlan plan) {
        Craft craft = bench.craft(
                plan.craft().glider(), scenario, scenario.corrections().withBoomStiffness(STIFF));
        return plan.withCraft(craft, Workbench.presetFrom(craft, craft, plan.launch()));
    }

    private static double height(FlightPlan plan) {
        return Flight.fly(plan).settled().height();
    }

    /** Lost to the bending at the preset as it is [m]. */
    public double cost() {
        return stiff - asIs;
    }

    /** Lost to the bending when both have their best preset [m]. */
    public double costAtBest() {
        return stiffBest - asIsBest;
    }

    /** Given back by re-setting the preset [m]. */
    public double givenBack() {
        return asIsBest - asIs;
    }
}
