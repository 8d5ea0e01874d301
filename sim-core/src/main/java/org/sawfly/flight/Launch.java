package org.sawfly.flight;

/**
 * One way of launching.
 *
 * @param name
 * @param thrower
 * @param preset
 * @param climbAngle nose above the horizon in the climb [rad]
 * @param pushOver
 * @param releasePath
 * @param weather
 * @param doubts offsets from the above, none by default
 */
public record Launch(
        String name,
        Thrower thrower,
        Preset preset,
        double climbAngle,
        PushOver pushOver,
        ReleasePath releasePath,
        Weather weather,
        LaunchDoubts doubts) {

    /** As meant and with the wings level. */
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

    /** As meant. */
    public Launch(
            String name,
            Thrower thrower,
            Preset preset,
            double climbAngle,
            PushOver pushOver,
            double releaseHeight,
            double releaseClimb,
            double releaseBank,
            Weather weather) {
        this(
                name,
                thrower,
                preset,
                climbAngle,
                pushOver,
                new ReleasePath(releaseHeight, releaseClimb, releaseBank),
                weather,
                LaunchDoubts.NONE);
    }

    /** Height of the CG above the ground at release [m]. */
    public double releaseHeight() {
        return releasePath.height();
    }

    /** Flight path above the horizon at release [rad]. */
    public double releaseClimb() {
        return releasePath.climb();
    }

    /** Wings against the horizon about the path at release, the tip in the hand low positive, doubt included [rad]. */
    public double releaseBank() {
        return releasePath.bank() + doubts.bank();
    }

    /** When the preset ends after release, doubt included [s]. */
    public double presetEnd() {
        return Math.max(0, preset.hold() + doubts.late());
    }

    /** Nose above the horizon in the climb, doubt included [rad]. */
    public double flownClimb() {
        return climbAngle + doubts.steeper();
    }

    /** The same launch in other air. */
    public Launch with(Weather other) {
        return new Launch(name, thrower, preset, climbAngle, pushOver, releasePath, other, doubts);
    }

    /** The same launch let go in another way. */
    public Launch with(ReleasePath other) {
        return new Launch(name, thrower, preset, climbAngle, pushOver, other, weather, doubts);
    }

    /** The same launch pushed over at another moment. */
    public Launch with(PushOver other) {
        return new Launch(name, thrower, preset, climbAngle, other, releasePath, weather, doubts);
    }

    /** The same launch with other doubts. */
    public Launch with(LaunchDoubts other) {
        return new Launch(name, thrower, preset, climbAngle, pushOver, releasePath, weather, other);
    }

    /** The same launch by another thrower. */
    public Launch with(Thrower other) {
        return new Launch(name, other, preset, climbAngle, pushOver, releasePath, weather, doubts);
    }
}
