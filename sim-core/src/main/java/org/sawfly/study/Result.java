package org.sawfly.study;

import org.sawfly.flight.Craft;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Outcome;
import org.sawfly.stability.Feel;
import org.sawfly.stability.Margins;
import org.sawfly.stability.Rebalanced;
import org.sawfly.stability.TailVolumes;

/**
 * Everything one scenario gives.
 *
 * @param plan the flight as flown; its craft is the rebalanced glider, trimmed
 * @param rebalanced what was moved, and the glider afterwards
 * @param margins neutral point and margins
 * @param volumes tail volumes
 * @param outcome of the launch
 * @param polar sink over speed for each setting
 */
public record Result(
        FlightPlan plan,
        Rebalanced rebalanced,
        Margins margins,
        TailVolumes volumes,
        Outcome outcome,
        GlidePolar polar) {
    /** What a pilot feels at the trimmed cruise. */
    public Feel feel() {
        Craft craft = plan.craft();
        return Feel.of(
                craft.model(),
                craft.cruise(),
                Craft.sample(plan.launch().weather().ground()));
    }

    /** Where the elevator stands in the cruise, at its trailing edge at the root, up positive [m]. */
    public double cruiseElevatorUp() {
        Craft craft = plan.craft();
        return -Deflections.deflection(
                craft.cruise().elevator(), craft.deflections().elevatorChord());
    }
}
