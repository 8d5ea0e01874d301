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
 * @param section
 * @param elevatorChord elevator chord as a fraction of the local chord [1]; 1 means all-moving
 */
public record Tailplane(
        double mass, Planform planform, double x, double z, double decalage, Section section, double elevatorChord) {}
