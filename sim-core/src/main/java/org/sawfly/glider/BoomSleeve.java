package org.sawfly.glider;

/**
 * A tube glued into the boom or cloth laid round it over some length. Its mass is a part of the glider, not of the boom.
 *
 * @param fit inside or outside
 * @param frontX its forward end, build axes [m]
 * @param endX its rear end, build axes [m]; the same as the forward end for a sleeve of no length
 * @param cutX where the boom itself is parted under it [m]; NaN if it is whole
 * @param wall thickness of the sleeve [m]
 * @param modulus along it [Pa]; infinite for a rigid one
 * @param strength along it, in compression [Pa]
 */
public record BoomSleeve(
        Fit fit, double frontX, double endX, double cutX, double wall, double modulus, double strength) {
    /** How a sleeve sits. */
    public enum Fit {
        /** A plug inside the boom. */
        INSIDE,
        /** A sleeve or a wrap round it. */
        OUTSIDE
    }

    public BoomSleeve {
        Check.finite(frontX, "the forward end of a sleeve [m]");
        Check.finite(endX, "the rear end of a sleeve [m]");
        Check.positive(wall, "the wall of a sleeve [m]");
        if (!(modulus > 0) || !(strength > 0)) {
            throw new IllegalArgumentException("modulus and strength of a sleeve must be above 0");
        }
        if (endX > frontX) {
            throw new IllegalArgumentException("the rear end of a sleeve must not lie ahead of its forward end");
        }
    }

    /** Whether it covers a place [m]; a sleeve of no length covers none. */
    public boolean covers(double x) {
        return x < frontX && x > endX;
    }

    /** Length [m]. */
    public double length() {
        return frontX - endX;
    }

    BoomSleeve forward(double shift) {
        return new BoomSleeve(fit, frontX + shift, endX + shift, cutX + shift, wall, modulus, strength);
    }
}
