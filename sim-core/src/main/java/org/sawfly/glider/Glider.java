package org.sawfly.glider;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A whole glider, ready to fly, every part resolved: whatever weighing and balancing showed is already in its parts.
 *
 * <p>Build axes: origin at the wing's root leading edge in the plane of symmetry, x forward, y right, z down [m]. They
 * are parallel to the body axes at the CG. A file's {@code behind_mm: 69} is x = -0.069.
 *
 * @param name as its owner calls it
 * @param wing with its root leading edge at the origin
 * @param tailplane both halves
 * @param fin above and below the boom
 * @param boom from the pod to its end
 * @param pod from the nose to the boom
 * @param parts by name, in the order of the file
 * @param noseLead mass and place; at the most this much can be taken out
 * @param correction what weighing and balancing added to (or took off) the sum of the parts; {@link Correction#NONE} if
 *     nothing
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
        Correction correction) {
    public Glider {
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    /** The same glider with other small parts. */
    public Glider withParts(Map<String, Part> newParts) {
        return new Glider(name, wing, tailplane, fin, boom, pod, newParts, noseLead, correction);
    }

    /** The same glider with one part put in, or put in place of the one of that name. */
    public Glider withPart(String partName, Part part) {
        Map<String, Part> all = new LinkedHashMap<>(parts);
        all.put(partName, part);
        return withParts(all);
    }

    /** The same glider with so much nose lead at its place [kg]. */
    public Glider withNoseLead(double mass) {
        return new Glider(name, wing, tailplane, fin, boom, pod, parts, noseLead.withMass(mass), correction);
    }

    /** The same glider with another boom; nothing else moves. */
    public Glider withBoom(Boom newBoom) {
        return new Glider(name, wing, tailplane, fin, newBoom, pod, parts, noseLead, correction);
    }

    /** The same glider with other tails. */
    public Glider withTails(Tailplane newTailplane, Fin newFin) {
        return new Glider(name, wing, newTailplane, newFin, boom, pod, parts, noseLead, correction);
    }

    /** The same glider with another correction. */
    public Glider withCorrection(Correction newCorrection) {
        return new Glider(name, wing, tailplane, fin, boom, pod, parts, noseLead, newCorrection);
    }
}
