package org.sawfly.glider;

import org.sawfly.section.Section;

/**
 * The fin with its rudder, a part above the boom and a part below.
 *
 * @param mass with rudder and horn [kg]
 * @param above planform of the part above the boom
 * @param below planform of the part below the boom
 * @param x place of the root leading edge in build axes, forward positive [m]
 * @param z place of the root (boom axis) in build axes, down positive [m]
 * @param section its section, the same from root to tip
 * @param rudderChord rudder chord as a fraction of the local chord [1]
 */
public record Fin(
        double mass, Planform above, Planform below, double x, double z, Section section, double rudderChord) {
    public Fin {
        Check.notNegative(mass, "the mass of the fin [kg]");
        Check.finite(x, "the place of the fin [m]");
        Check.finite(z, "the height of the fin's root [m]");
        Check.between(rudderChord, 0, 1, "the rudder chord as a part of the chord");
    }

    /** Area above and below the boom together [m2]. */
    public double area() {
        return above.area() + below.area();
    }

    /** Quarter point of the mean aerodynamic chord of both parts, behind the root leading edge [m]. */
    public double quarterPointBack() {
        return (above.area() * above.quarterPointBack() + below.area() * below.quarterPointBack()) / area();
    }

    /** Forward by so much [m], otherwise the same. */
    Fin forward(double shift) {
        return new Fin(mass, above, below, x + shift, z, section, rudderChord);
    }

    /** The same with so many times the mass. */
    Fin heavier(double factor) {
        return new Fin(mass * factor, above, below, x, z, section, rudderChord);
    }
}
