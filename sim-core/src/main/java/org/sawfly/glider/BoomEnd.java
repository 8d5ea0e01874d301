package org.sawfly.glider;

import java.util.LinkedHashMap;
import java.util.Map;

/** What goes along when the rear end of the boom moves. */
final class BoomEnd {
    private BoomEnd() {}

    /**
     * The glider on another boom, with fin and whatever sits on the boom's end moved.
     *
     * @param boom the new boom
     * @param shift of the end, forward positive [m]
     * @param tailplaneMoves whether the tailplane goes along
     */
    static Glider moved(Glider before, Boom boom, double shift, boolean tailplaneMoves) {
        Map<String, Part> parts = new LinkedHashMap<>();
        for (Map.Entry<String, Part> entry : before.parts().entrySet()) {
            parts.put(entry.getKey(), moved(entry.getValue(), before.boom(), shift, tailplaneMoves));
        }
        Tailplane tailplane = before.tailplane();
        return before.withBoom(boom)
                .withParts(parts)
                .withTails(
                        tailplaneMoves ? tailplane.forward(shift) : tailplane,
                        before.fin().forward(shift));
    }

    private static Part moved(Part part, Boom oldBoom, double shift, boolean tailplaneMoves) {
        return switch (part.mount()) {
            case FIXED -> part;
            case BOOM_END -> part.forward(shift);
            case TAILPLANE -> tailplaneMoves ? part.forward(shift) : part;
            case ALONG_BOOM -> shortened(part, part.lengthAlong(oldBoom), shift);
        };
    }

    /** Runs from where it began to the new end, as heavy per length as before. */
    private static Part shortened(Part part, double length, double shift) {
        if (length == 0) {
            return part.forward(shift);
        }
        return part.withMass(part.mass() * Math.max(0, length - shift) / length).forward(0.5 * shift);
    }
}
