package org.sawfly.glider;

import java.util.Map;

/**
 * A whole glider, ready to fly, every part resolved: whatever weighing and balancing showed is already in its parts.
 *
 * <p>Build axes: origin at the wing's root leading edge in the plane of symmetry, x forward, y right, z down [m]. They
 * are parallel to the body axes at the CG. A file's {@code behind_mm: 69} is x = -0.069.
 *
 * @param name
 * @param wing
 * @param tailplane
 * @param fin
 * @param boom
 * @param pod
 * @param parts by name, in the order of the file
 * @param noseLead mass and place; at the most this much can be taken out
 * @param correction what weighing and balancing added to (or took off) the sum of the parts; mass 0 if nothing
 */
public record Glider(
        String name,
        Wing wing,
        Tailplane tailplane,
        Fin fin,
        Boom boom,
        Pod pod,
        Map<String, Part> parts,
        Part noseLead,
        Part correction) {}
