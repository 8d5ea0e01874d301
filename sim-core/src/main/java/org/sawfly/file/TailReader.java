package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import org.sawfly.glider.Fin;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Tailplane;
import org.sawfly.quantity.Unit;
import org.sawfly.section.Section;

/** Reads tailplane and fin: listed by stations, or drawn from their areas; what is not measured is assumed. */
final class TailReader {
    /** Grams to a square decimetre of moulded tails, as kg/m2; common practice, no source. */
    private static final double TAILPLANE_MASS = 0.33;

    private static final double FIN_MASS = 0.58;
    private static final double MASS_BAND = 0.2;

    /** From the tailplane's root trailing edge to the fin's root leading edge where nothing is given [m]. */
    private static final double GAP = Unit.MILLIMETRE.toSi(10);
    /** From the boom's end to the fin's trailing edge where nothing is given [m]. */
    private static final double OVERHANG = Unit.MILLIMETRE.toSi(4);

    /** A tailplane of less aspect ratio was halved, most likely; common practice, no source. */
    private static final double STUBBY = 3;

    private TailReader() {}

    /**
     * The fin.
     *
     * @param boomEnd place of the boom's end behind the wing [m]
     * @param boomZ   height of the boom's axis in build axes [m]
     */
    static Fin fin(In in, double boomEnd, double boomZ, Sections.Tables tables) {
        double area = in.optional(
                "area_dm2", between(0.2, 6).usually(0.7, 2.5), 1.2, "above and below the boom, with rudder");
        double below = in.optional("below_pct", between(5, 95), 45, "share of the area below the boom");
        double aspect = in.optional("aspect_ratio", between(1, 8), 3.6, "height squared over area");
        Planform listedAbove = Outlines.stations(in, "above", "outline above the boom, from the boom up");
        Planform listedBelow = Outlines.stations(in, "below", "outline below the boom, from the boom down");
        double mass = in.optional("mass_g", between(0.5, 60).usually(3, 20), 6.9, "with rudder and horn");
        double edge = in.optional(
                "leading_edge_behind_mm", between(100, 3000).usually(400, 1200), 722, "where it meets the boom");
        double rudder = Sections.flapChord(in, "rudder_chord_pct", 45, "chord of the rudder over the fin's");
        Section section = Sections.read(in, "section", new Sections.Usual(6, 0, "of the fin"), rudder, tables);

        boolean listed = in.has("above") || in.has("below");
        if (listed) {
            if (in.has("area_dm2") || in.has("below_pct") || in.has("aspect_ratio")) {
                in.problem(
                        in.has("area_dm2") ? "area_dm2" : "above",
                        "outline and area are both given",
                        "leave out the area");
            }
            if (!in.has("above") || !in.has("below")) {
                in.needed(in.has("above") ? "below" : "above", "the fin's other part", "[{out_mm: 0, ...}]");
            }
        } else {
            if (!in.has("area_dm2")) {
                in.needed("area_dm2", "area above and below the boom together, with rudder", "1.2");
            }
            below = in.orAssume(below, "below_pct", 0.45, 10, "share of the fin below the boom");
            aspect = in.orAssume(aspect, "aspect_ratio", 3.6, 0.5, "fin's height squared over area");
        }
        double size = Double.isNaN(area) ? Unit.SQUARE_DECIMETRE.toSi(1.2) : area;
        Planform above = listedAbove != null ? listedAbove : Outlines.fin(true, size, or(aspect, 3.6), or(below, 0.45));
        Planform under =
                listedBelow != null ? listedBelow : Outlines.fin(false, size, or(aspect, 3.6), or(below, 0.45));
        double whole = above.area() + under.area();
        mass = in.orAssume(
                mass, "mass_g", FIN_MASS * whole, 1000 * MASS_BAND * FIN_MASS * whole, "moulded fin of 5.8 g/dm2");
        double root = above.stations().get(0).chord();
        edge = in.orAssume(
                edge, "leading_edge_behind_mm", boomEnd + OVERHANG - root, 5, "fin ending 4 mm behind the boom's end");
        return new Fin(mass, above, under, -edge, boomZ, section, rudder);
    }

    /** The tailplane; where no decalage is given 0 stands for it until it is found. */
    static Tailplane tailplane(In in, Fin fin, double boomZ, Sections.Tables tables) {
        double area = in.optional("area_dm2", between(0.3, 10).usually(1, 4), 1.93, "length times mean chord");
        double aspect = in.optional("aspect_ratio", between(2, 12), 5.4, "span squared over area");
        Planform listed = Outlines.stations(in, "stations", "outline of the right half, from root to tip");
        double mass = in.optional("mass_g", between(0.5, 80).usually(3, 20), 6.4, "with horn, without its mount");
        double edge = in.optional(
                "leading_edge_behind_mm", between(100, 3000).usually(350, 1100), 640, "leading edge at its middle");
        double height = in.assume("above_boom_mm", between(0, 200), 14, 3, "tailplane above the boom's axis");
        double decalage = in.optional(
                "decalage_deg", between(-5, 8).usually(0, 4), 1.2, "wing noses up this much against the tailplane");
        double elevator = Sections.flapChord(in, "elevator_chord_pct", 40, "chord of the elevator; 100 is all-moving");
        Section section = Sections.read(in, "section", new Sections.Usual(6, 0, "of the tailplane"), elevator, tables);

        if (in.has("stations")) {
            if (in.has("area_dm2") || in.has("aspect_ratio")) {
                in.problem("stations", "outline and area are both given", "leave out the area");
            }
            if (listed != null && listed.aspectRatio() < STUBBY) {
                in.doubt("stations", "are short for such chords", "they were halved; out_mm counts from the middle");
            }
        } else {
            if (!in.has("area_dm2")) {
                in.needed("area_dm2", "length times mean chord, in mm, divided by 10 000", "1.93");
            }
            aspect = in.orAssume(aspect, "aspect_ratio", 5.4, 0.5, "tailplane's span squared over area");
        }
        Planform planform = listed != null
                ? listed
                : Outlines.tailplane(Double.isNaN(area) ? Unit.SQUARE_DECIMETRE.toSi(1.93) : area, or(aspect, 5.4));
        double whole = 2 * planform.area();
        mass = in.orAssume(
                mass,
                "mass_g",
                TAILPLANE_MASS * whole,
                1000 * MASS_BAND * TAILPLANE_MASS * whole,
                "moulded tailplane of 3.3 g/dm2");
        double root = planform.stations().get(0).chord();
        edge = in.orAssume(
                edge, "leading_edge_behind_mm", -fin.x() - GAP - root, 5, "tailplane ending 10 mm ahead of the fin");
        return new Tailplane(mass, planform, -edge, boomZ - height, or(decalage, 0), section, elevator);
    }

    private static double or(double value, double otherwise) {
        return Double.isNaN(value) ? otherwise : value;
    }
}
