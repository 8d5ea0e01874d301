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
 * @param releaseBank wings against the horizon about the path, the tip in the hand low positive [rad]
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
        double releaseBank,
        Weather weather) {
    /** With the wings level. */
    public Launch(
            String name,
            Thrower thrower,
            Preset preset,
            double climbAngle,
            PushOver pushOver,
            double releaseHeight,
            double releaseClimb,
            Weather weather) {
        this(name, thrower, preset, climbAngle, pushOver, releaseHeight, releaseClimb, 0, weather);
    }

    /** The same launch by another thrower. */
    Launch with(Thrower other) {
        return new Launch(name, other, preset, climbAngle, pushOver, releaseHeight, releaseClimb, releaseBank, weather);
    }

    /** The same launch in other air. */
    Launch with(Weather other) {
        return new Launch(name, thrower, preset, climbAngle, pushOver, releaseHeight, releaseClimb, releaseBank, other);
    }
}
