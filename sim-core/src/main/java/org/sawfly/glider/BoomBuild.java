package org.sawfly.glider;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a boom is made and what was done to it besides round holes.
 *
 * @param wall
 * @param slots by name
 * @param sleeves by name: splices and wraps
 */
public record BoomBuild(BoomWall wall, Map<String, BoomSlot> slots, Map<String, BoomSleeve> sleeves) {
    /** A whole tube of the usual wall. */
    public static final BoomBuild PLAIN = new BoomBuild(BoomWall.USUAL, Map.of(), Map.of());

    public BoomBuild {
        slots = Collections.unmodifiableMap(new LinkedHashMap<>(slots));
        sleeves = Collections.unmodifiableMap(new LinkedHashMap<>(sleeves));
    }

    /** The same with one more sleeve, or another of that name. */
    BoomBuild withSleeve(String name, BoomSleeve sleeve) {
        Map<String, BoomSleeve> all = new LinkedHashMap<>(sleeves);
        all.put(name, sleeve);
        return new BoomBuild(wall, slots, all);
    }

    /** What is left when the piece from one place back to another is taken out and the rest closes up [m]. */
    BoomBuild without(double fromX, double toX) {
        double shift = fromX - toX;
        Map<String, BoomSlot> keptSlots = new LinkedHashMap<>();
        slots.forEach((name, slot) -> {
            if (slot.endX() >= fromX) {
                keptSlots.put(name, slot);
            } else if (slot.frontX() <= toX) {
                keptSlots.put(name, slot.forward(shift));
            }
        });
        Map<String, BoomSleeve> keptSleeves = new LinkedHashMap<>();
        sleeves.forEach((name, sleeve) -> {
            if (sleeve.endX() >= fromX) {
                keptSleeves.put(name, sleeve);
            } else if (sleeve.frontX() <= toX) {
                keptSleeves.put(name, sleeve.forward(shift));
            }
        });
        return new BoomBuild(wall, keptSlots, keptSleeves);
    }
}
