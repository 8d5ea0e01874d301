package org.sawfly.flight;

import java.util.function.Supplier;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Integrator;

/**
 * One flight to be flown.
 *
 * @param craft
 * @param launch
 * @param releaseSpeed over the ground [m/s]
 * @param yawRate left at release, magnitude [rad/s]
 * @param presetElevator where the elevator is held at first, trailing edge down positive [rad]
 * @param axes freedoms of motion
 * @param steering which controls the pilot moves
 * @param integrator makes the one integrator of this flight
 */
public record FlightPlan(
        Craft craft,
        Launch launch,
        double releaseSpeed,
        double yawRate,
        double presetElevator,
        Axes axes,
        Steering steering,
        Supplier<Integrator> integrator) {
    /** With a pilot who moves all controls. */
    public FlightPlan(
            Craft craft,
            Launch launch,
            double releaseSpeed,
            double yawRate,
            double presetElevator,
            Axes axes,
            Supplier<Integrator> integrator) {
        this(craft, launch, releaseSpeed, yawRate, presetElevator, axes, Steering.FULL, integrator);
    }

    /** This plan with another launch; release and preset stay. */
    public FlightPlan withLaunch(Launch other) {
        return new FlightPlan(craft, other, releaseSpeed, yawRate, presetElevator, axes, steering, integrator);
    }

    /** This plan with other freedoms of motion. */
    public FlightPlan withAxes(Axes other) {
        return new FlightPlan(craft, launch, releaseSpeed, yawRate, presetElevator, other, steering, integrator);
    }

    /** This plan with another release. */
    public FlightPlan withRelease(double speed, double rate) {
        return new FlightPlan(craft, launch, speed, rate, presetElevator, axes, steering, integrator);
    }

    /** This plan with another elevator preset [rad]. */
    public FlightPlan withPreset(double elevator) {
        return new FlightPlan(craft, launch, releaseSpeed, yawRate, elevator, axes, steering, integrator);
    }

    /**
     * The same throw with another craft.
     *
     * @param elevator its preset [rad]
     */
    public FlightPlan withCraft(Craft other, double elevator) {
        return new FlightPlan(other, launch, releaseSpeed, yawRate, elevator, axes, steering, integrator);
    }

    /** This plan pushed over at another moment. */
    public FlightPlan withPush(PushOver push) {
        return withLaunch(launch.with(push));
    }

    /** This plan with a pilot who moves other controls. */
    public FlightPlan withSteering(Steering other) {
        return new FlightPlan(craft, launch, releaseSpeed, yawRate, presetElevator, axes, other, integrator);
    }
}
