package org.sawfly.flight;

/**
 * One way of launching.
 *
 * @param name
 * @param thrower
 * @param preset
 * @param climbAngle nose above the horizon in the climb [rad]
 * @param pushOver
 * @param releaseHeight of the CG above the ground [m]
 * @param releaseClimb flight path above the horizon as it leaves the hand [rad]
 * @param weather
 */
public record Launch(
        String name,
        Thrower thrower,
        Preset preset,
        double climbAngle,
        PushOver pushOver,
        double releaseHeight,
        double releaseClimb,
        Weather weather) {}
