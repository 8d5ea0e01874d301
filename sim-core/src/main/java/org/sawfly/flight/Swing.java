package org.sawfly.flight;

/**
 * The swing of the nose after release.
 *
 * @param first how far the nose swings past the flight path, towards the side it was turning to [rad]
 * @param firstTime when [s]
 * @param back how far it swings back past the path afterwards [rad]
 * @param finStalledFor how long the fin stood beyond its stall in the first 1.2 s [s]
 */
public record Swing(double first, double firstTime, double back, double finStalledFor) {
    /** Angle at the fin beyond which it counts as stalled, 15 degrees [rad]; common practice, no source. */
    public static final double FIN_STALL = 0.2618;

    /**
     * First swing beyond which the fast model is not for use, 45 degrees [rad]: a test holds the two models together up to it.
     */
    public static final double FAST_MODEL = 0.7854;

    /** None: flown without yaw. */
    public static final Swing NONE = new Swing(0, Double.NaN, 0, 0);

    /** Whether the nose swings further than the fast model is for use: fly it by strips. */
    public boolean beyondFastModel() {
        return first > FAST_MODEL;
    }
}
