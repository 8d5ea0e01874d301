package org.sawfly.glider;

/**
 * A hole in the boom.
 *
 * @param x build axes, forward positive [m]
 * @param diameter [m]
 * @param side where on the boom
 */
public record BoomHole(double x, double diameter, Side side) {
    public BoomHole {
        Check.finite(x, "the place of a hole [m]");
        Check.positive(diameter, "the diameter of a hole [m]");
    }

    /** On which side of the boom. */
    public enum Side {
        TOP,
        BOTTOM,
        LEFT,
        RIGHT
    }
}
