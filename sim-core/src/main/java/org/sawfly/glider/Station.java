package org.sawfly.glider;

/**
 * One station of a planform, measured in the plane of the surface.
 *
 * @param out distance from the root [m]
 * @param chord [m]
 * @param back leading edge behind the leading edge of the root [m]
 */
public record Station(double out, double chord, double back) {
    public Station {
        Check.notNegative(out, "the distance of a station from the root [m]");
        Check.positive(chord, "the chord of a station [m]");
        Check.finite(back, "the leading edge of a station [m]");
    }
}
