package org.sawfly.glider;

import org.sawfly.section.Section;

/**
 * The wing, both halves alike. Its root leading edge is the origin of the build axes (x forward, y right, z down).
 *
 * @param mass bare with peg, without servos [kg]
 * @param planform right half
 * @param dihedral of each half [rad]
 * @param root section at the root
 * @param tip section at the tip
 * @param flaperon camber and roll control along the trailing edge
 * @param peg at which tip the peg sits
 */
public record Wing(
        double mass, Planform planform, double dihedral, Section root, Section tip, Flap flaperon, Hand peg) {
    public Wing {
        Check.notNegative(mass, "the mass of the wing [kg]");
        Check.between(dihedral, -1, 1, "the dihedral [rad]");
    }
}
