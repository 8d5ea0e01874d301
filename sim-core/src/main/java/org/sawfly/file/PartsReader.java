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

/** Reads everything else that weighs something, by name; a usual set is assumed when nothing is listed. */
final class PartsReader {
    private static final List<String> PIECES =
            List.of(Piece.WING, Piece.TAILPLANE, Piece.FIN, Piece.BOOM, Piece.POD, Piece.NOSE_LEAD);

    private static final Bounds PLACE = between(0, 3000).usually(0, 1300);
    /** Nose of the demo glider ahead of its wing [m]; what sits in the nose is placed in proportion to it. */
    private static final double DEMO_NOSE = 0.265;

    private static final double MASS_BAND = 0.25;

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

    Map<String, Part> read(In in) {
        Map<String, Part> listed = in.named("parts", "battery", "everything else that weighs something", this::part);
        for (String piece : PIECES) {
            if (listed.containsKey(piece)) {
                in.problem("parts", "\"" + piece + "\" has a section of its own", "another name");
            }
        }
        return in.has("parts") ? listed : usual(in);
    }

    private Part part(String name, In in) {
        double mass = in.number("mass_g", between(0, 1000).usually(0.1, 150), 10, "weight");
        double x = place(in);
        double above = in.neutral("above_boom_mm", between(0, 300), 0, "above the boom's axis");
        Mount mount = in.choice("on", List.of(Mount.values()), Mount.FIXED, "what it moves with");
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
    private static double place(In in) {
        double ahead = in.optional("ahead_mm", PLACE, 120, "ahead of the wing's root leading edge");
        double behind = in.optional("behind_mm", PLACE, 60, "behind the wing's root leading edge");
        if (in.has("ahead_mm") && in.has("behind_mm")) {
            in.problem("behind_mm", "ahead_mm is given as well", "leave out one of the two");
        } else if (!in.has("ahead_mm") && !in.has("behind_mm")) {
            in.needed("ahead_mm", "place ahead of the wing's root leading edge, or behind_mm", "120");
        }
        return Double.isNaN(ahead) ? Double.isNaN(behind) ? 0 : -behind : ahead;
    }

    /** The nose lead; its mass is NaN when it is to be found by weighing and balancing. */
    NoseLead lead(In in) {
        double usualPlace = nose - Outlines.mm(15);
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
    private Map<String, Part> usual(In in) {
        double scale = nose / DEMO_NOSE;
        Map<String, Part> parts = new LinkedHashMap<>();
        put(in, parts, "wing servos and leads", 11.6, -0.058, Mount.FIXED);
        put(in, parts, "wing bolts", 1.6, -0.062, Mount.FIXED);
        put(in, parts, "tail servos", 9.4, 0.128 * scale, Mount.FIXED);
        put(in, parts, "receiver", 3.8, 0.078 * scale, Mount.FIXED);
        put(in, parts, "battery", 15.2, 0.205 * scale, Mount.FIXED);
        put(in, parts, "switch and wiring", 2.4, 0.15 * scale, Mount.FIXED);
        put(in, parts, "tailplane mount", 1.1, -tailEdge - 0.024, Mount.BOOM_END);
        put(in, parts, "strings and springs", 0.9, -(boomEnd - 0.43), Mount.ALONG_BOOM);
        put(in, parts, "glue and cloth", 0.9, -(boomEnd - 0.055), Mount.BOOM_END);
        return parts;
    }

    private void put(In in, Map<String, Part> parts, String name, double grams, double x, Mount mount) {
        double mass = Unit.GRAM.toSi(grams);
        parts.put(name, new Part(mass, new Vec3(x, 0, boomZ), mount, 0, 0));
        String path = in.pathOf("parts") + "." + name;
        in.reading()
                .assume(new Assumed(
                        path + ".mass_g",
                        grams,
                        Band.around(grams, MASS_BAND * grams),
                        Unit.GRAM,
                        "usual weight of " + name));
        double place = Unit.MILLIMETRE.fromSi(Math.abs(x));
        in.reading()
                .assume(new Assumed(
                        path + (x >= 0 ? ".ahead_mm" : ".behind_mm"),
                        place,
                        Band.around(place, 15),
                        Unit.MILLIMETRE,
                        "usual place of " + name));
    }
}
