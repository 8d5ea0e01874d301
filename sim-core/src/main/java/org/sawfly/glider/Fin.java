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
 * @param section
 * @param rudderChord rudder chord as a fraction of the local chord [1]
 */
public record Fin(
        double mass, Planform above, Planform below, double x, double z, Section section, double rudderChord) {}
