package org.sawfly.flight;

/**
 * The swing of the nose after release.
 *
 * @param first how far the nose swings past the flight path, towards the side it was turning to [rad]
 * @param firstTime when [s]
 * @param back how far it swings back past the path afterwards [rad]
 * @param finStalledFor how long the fin stood beyond its stall in the first second [s]
 */
public record Swing(double first, double firstTime, double back, double finStalledFor) {
    /** Angle at the fin beyond which it counts as stalled, 15 degrees [rad]; common practice, no source. */
    public static final double FIN_STALL = 0.2618;

    /** None: flown without yaw. */
    public static final Swing NONE = new Swing(0, Double.NaN, 0, 0);
}
