package org.sawfly.glider;

/**
 * A hole in the boom.
 *
 * @param x build axes, forward positive [m]
 * @param diameter [m]
 * @param side
 */
public record BoomHole(double x, double diameter, Side side) {
    /** On which side of the boom. */
    public enum Side {
        TOP,
        BOTTOM,
        LEFT,
        RIGHT
    }
}
