package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.glider.Part;
import org.sawfly.glider.Part.Mount;
import org.sawfly.glider.Piece;
import org.sawfly.math.Vec3;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Unit;

/**
 * Reads everything else that weighs something, by name. A list is complete when the lead is weighed too; before that, what a
 * usual set has and nobody listed is assumed, so that one part more or one weighed makes no other vanish.
 */
final class PartsReader {
    private static final List<String> PIECES =
            List.of(Piece.WING, Piece.TAILPLANE, Piece.FIN, Piece.BOOM, Piece.POD, Piece.NOSE_LEAD);

    private static final Bounds PLACE = between(0, 3000).usually(0, 1300);
    /** Nose of the demo glider ahead of its wing [m]; what sits in the nose is placed in proportion to it. */
    private static final double DEMO_NOSE = 0.265;

    private static final double MASS_BAND = 0.25;
    /** Half the range a usual place lies in [mm]. */
    private static final double PLACE_BAND = 15;

    private final double nose;
    private final double boomEnd;
    private final double boomZ;
    private final double tailEdge;

    /**
     * For a glider with these places.
     *
     * @param nose     ahead of the wing's root leading edge [m]
     * @param boomEnd  behind it [m]
     * @param boomZ    height of the boom's axis in build axes [m]
     * @param tailEdge tailplane's root leading edge behind the wing's [m]
     */
    PartsReader(double nose, double boomEnd, double boomZ, double tailEdge) {
        this.nose = nose;
        this.boomEnd = boomEnd;
        this.boomZ = boomZ;
        this.tailEdge = tailEdge;
    }

    /**
     * Reads them.
     *
     * @param complete whether a list, if there is one, names all there is
     */
    Map<String, Part> read(In in, boolean complete) {
        boolean whole = complete && in.has("parts");
        Map<String, Part> usual = usual();
        Map<String, Part> listed = in.named(
                "parts",
                "battery",
                "everything else that weighs something",
                (name, one) -> part(name, one, whole || one.described() != null ? null : usual.get(name)));
        for (String piece : PIECES) {
            if (listed.containsKey(piece)) {
                in.problem("parts", "\"" + piece + "\" has a section of its own", "another name");
            }
        }
        if (whole) {
            return listed;
        }
        Map<String, Part> parts = new LinkedHashMap<>();
        usual.forEach((name, part) -> {
            if (!listed.containsKey(name)) {
                tell(in, name, part);
            }
            parts.put(name, listed.getOrDefault(name, part));
        });
        listed.forEach(parts::putIfAbsent);
        return parts;
    }

    /** One part; what is usual stands in for what is left out, if anything is usual under this name. */
    private Part part(String name, In in, Part usual) {
        Bounds weight = between(0, 1000).usually(0.1, 150);
        double mass = usual == null
                ? in.number("mass_g", weight, 10, "weight")
                : in.orAssume(
                        in.optional("mass_g", weight, 10, "weight"),
                        "mass_g",
                        usual.mass(),
                        MASS_BAND * Unit.GRAM.fromSi(usual.mass()),
                        "usual weight of " + name);
        double x = place(name, in, usual);
        double above = in.neutral("above_boom_mm", between(0, 300), 0, "above the boom's axis");
        Mount mount = in.choice(
                "on", List.of(Mount.values()), usual == null ? Mount.FIXED : usual.mount(), "what it moves with");
        double forward = in.neutral("can_slide_forward_mm", between(0, 500), 0, "room to move it forward");
        double back = in.neutral("can_slide_back_mm", between(0, 500), 0, "room to move it back");
        if (name.equals("battery") && x < 0) {
            in.doubt("behind_mm", "the battery lies behind the wing's leading edge", "ahead_mm");
        }
        if (-x > boomEnd + 0.1 || x > nose) {
            in.doubt(x > 0 ? "ahead_mm" : "behind_mm", "lies beyond the end of the glider", "");
        }
        return new Part(mass, new Vec3(x, 0, boomZ - above), mount, forward, back);
    }

    /** Place along the glider, forward positive [m], from one of two keys. */
    private static double place(String name, In in, Part usual) {
        double ahead = in.optional("ahead_mm", PLACE, 120, "ahead of the wing's root leading edge");
        double behind = in.optional("behind_mm", PLACE, 60, "behind the wing's root leading edge");
        if (in.has("ahead_mm") && in.has("behind_mm")) {
            in.problem("behind_mm", "ahead_mm is given as well", "leave out one of the two");
        } else if (!in.has("ahead_mm") && !in.has("behind_mm") && usual != null) {
            double x = usual.place().x();
            in.orAssume(
                    Double.NaN, x >= 0 ? "ahead_mm" : "behind_mm", Math.abs(x), PLACE_BAND, "usual place of " + name);
            return x;
        } else if (!in.has("ahead_mm") && !in.has("behind_mm")) {
            in.needed("ahead_mm", "place ahead of the wing's root leading edge, or behind_mm", "120");
        }
        return Double.isNaN(ahead) ? Double.isNaN(behind) ? 0 : -behind : ahead;
    }

    /** The nose lead; its mass is NaN when it is to be found by weighing and balancing. */
    NoseLead lead(In in) {
        double usualPlace = nose - Unit.MILLIMETRE.toSi(15);
        return in.map("nose_lead", "lead in the nose; at the most this much can be taken out", lead -> {
            double mass = lead.optional("mass_g", between(0, 200).usually(0, 40), 13.9, "lead that is in now");
            double ahead =
                    lead.optional("ahead_mm", between(0, 1000), 250, "its place ahead of the wing's root leading edge");
            ahead = lead.orAssume(ahead, "ahead_mm", usualPlace, 8, "lead 15 mm behind the nose tip");
            if (ahead > nose) {
                lead.problem("ahead_mm", "lies ahead of the nose tip", "");
                ahead = usualPlace;
            }
            return new NoseLead(mass, new Vec3(ahead, 0, boomZ), lead.has("mass_g"));
        });
    }

    /**
     * Lead as the file has it.
     *
     * @param mass  [kg], NaN when not given
     * @param place build axes [m]
     * @param given whether the mass stands in the file
     */
    record NoseLead(double mass, Vec3 place, boolean given) {
        Part part(double resolved) {
            return Part.fixed(resolved, place);
        }
    }

    /** What is in such a glider usually; common practice, no source. */
    private Map<String, Part> usual() {
        double scale = nose / DEMO_NOSE;
        Map<String, Part> parts = new LinkedHashMap<>();
        put(parts, "wing servos and leads", 11.6, -0.058, Mount.FIXED);
        put(parts, "wing bolts", 1.6, -0.062, Mount.FIXED);
        put(parts, "tail servos", 9.4, 0.128 * scale, Mount.FIXED);
        put(parts, "receiver", 3.8, 0.078 * scale, Mount.FIXED);
        put(parts, "battery", 15.2, 0.205 * scale, Mount.FIXED);
        put(parts, "switch and wiring", 2.4, 0.15 * scale, Mount.FIXED);
        put(parts, "tailplane mount", 1.1, -tailEdge - 0.024, Mount.BOOM_END);
        put(parts, "strings and springs", 0.9, -(boomEnd - 0.43), Mount.ALONG_BOOM);
        put(parts, "glue and cloth", 0.9, -(boomEnd - 0.055), Mount.BOOM_END);
        return parts;
    }

    private void put(Map<String, Part> parts, String name, double grams, double x, Mount mount) {
        parts.put(name, new Part(Unit.GRAM.toSi(grams), new Vec3(x, 0, boomZ), mount, 0, 0));
    }

    /** Lists a usual part as assumed. */
    private static void tell(In in, String name, Part part) {
        double x = part.place().x();
        double grams = Unit.GRAM.fromSi(part.mass());
        double place = Unit.MILLIMETRE.fromSi(Math.abs(x));
        String path = in.pathOf("parts") + "." + name;
        String key = x >= 0 ? ".ahead_mm" : ".behind_mm";
        Band weights = Band.around(grams, MASS_BAND * grams);
        Band places = Band.around(place, PLACE_BAND);
        in.reading().assume(new Assumed(path + ".mass_g", grams, weights, Unit.GRAM, "usual weight of " + name));
        in.reading().assume(new Assumed(path + key, place, places, Unit.MILLIMETRE, "usual place of " + name));
    }
}
