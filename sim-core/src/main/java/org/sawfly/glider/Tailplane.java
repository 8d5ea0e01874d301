package org.sawfly.glider;

import org.sawfly.section.Section;

/**
 * The tailplane, both halves alike.
 *
 * @param mass with horn, without its mount [kg]
 * @param planform right half
 * @param x place of the root leading edge in build axes, forward positive, so negative behind the wing [m]
 * @param z place in build axes, down positive, so negative above the wing's root leading edge [m]
 * @param decalage wing root chord line noses up this much against the tailplane's chord line [rad]
 * @param section its section, the same from root to tip
 * @param elevatorChord elevator chord as a fraction of the local chord [1]; 1 means all-moving
 */
public record Tailplane(
        double mass, Planform planform, double x, double z, double decalage, Section section, double elevatorChord) {
    public Tailplane {
        Check.notNegative(mass, "the mass of the tailplane [kg]");
        Check.finite(x, "the place of the tailplane [m]");
        Check.finite(z, "the height of the tailplane [m]");
        Check.between(decalage, -1, 1, "the decalage [rad]");
        Check.between(elevatorChord, 0, 1, "the elevator chord as a part of the chord");
    }

    /** Forward by so much [m], otherwise the same. */
    Tailplane forward(double shift) {
        return new Tailplane(mass, planform, x + shift, z, decalage, section, elevatorChord);
    }

    /** The same with so many times the mass. */
    Tailplane heavier(double factor) {
        return new Tailplane(mass * factor, planform, x, z, decalage, section, elevatorChord);
    }
}
