package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.List;
import org.sawfly.glider.Flap;
import org.sawfly.glider.Hand;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Station;
import org.sawfly.glider.Wing;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.section.Section;

/** Reads the wing: listed by stations, or drawn from span and two chords. */
final class WingReader {
    /** Side of the glider on which something is. */
    enum Side {
        LEFT,
        RIGHT
    }

    /** Grams to a square decimetre of a moulded wing with its peg, as kg/m2; common practice, no source. */
    private static final double AREA_MASS = 0.54;

    /** A span of fewer root chords is that of one half, most likely; common practice, no source. */
    private static final double SLENDER = 6;

    private static final double EXAMPLE_SPAN = 1.5;
    private static final double EXAMPLE_ROOT = 0.168;
    private static final double EXAMPLE_TWO_THIRDS = 0.14;

    private static final String HALF_SPAN = "that is one half; from tip to tip it is twice this";
    private static final String HALF_STATIONS =
            "they were halved; out_mm counts from the middle of the glider to the tip";

    private WingReader() {}

    /** Whether the span is probably that of one half. */
    private static boolean isShort(Planform planform) {
        return 2 * planform.span() < SLENDER * planform.stations().get(0).chord();
    }

    private static String endsAt(Planform planform) {
        return "end " + Numbers.shortest(Unit.MILLIMETRE.fromSi(planform.span()), 1) + " mm out";
    }

    /** Why the wing may be too light for its glider; empty when it was weighed or nothing looks odd. */
    private static String light(In in, Planform planform) {
        if (!isShort(planform) || in.has("mass_g")) {
            return "";
        }
        return in.has("stations") ? "wing.stations: " + HALF_STATIONS : "wing.span_mm: " + HALF_SPAN;
    }

    /**
     * The wing and where it sits.
     *
     * @param wing      itself
     * @param aboveBoom root chord line above the boom's axis [m]
     * @param light     why it may be too light; empty when nothing looks odd
     */
    record Read(Wing wing, double aboveBoom, String light) {}

    static Read read(In in, Sections.Tables tables) {
        Planform planform = planform(in);
        double area = 2 * planform.area();
        double mass = in.optional("mass_g", between(10, 1000).usually(80, 200), 114, "bare, with peg, without servos");
        double dihedral = dihedral(in, planform.span());
        Flap flaperon = in.map("flaperon", "flaperon or aileron along the trailing edge", f -> flap(f, planform));
        double flapChord = flaperon.chordFraction();
        Section root =
                Sections.read(in, "section", new Sections.Usual(6.2, 1.9, "at the wing's root"), flapChord, tables);
        Section tip =
                Sections.read(in, "tip_section", new Sections.Usual(5.4, 1.7, "at the wing's tip"), flapChord, tables);
        Side peg = in.choice(
                "peg_tip",
                List.of(Side.values()),
                Side.LEFT,
                "tip with the peg; the one the thrower holds when left out");
        mass = in.orAssume(
                mass, "mass_g", AREA_MASS * area, 0.08 * 1000 * AREA_MASS * area, "wing of 5.4 g/dm2 with peg");
        double aboveBoom = in.assume("above_boom_mm", between(0, 100), 12, 4, "wing above the boom's axis");
        Hand hand = peg == Side.LEFT ? Hand.RIGHT : Hand.LEFT;
        return new Read(new Wing(mass, planform, dihedral, root, tip, flaperon, hand), aboveBoom, light(in, planform));
    }

    private static Planform planform(In in) {
        double span = in.optional(
                "span_mm", between(300, 4000).usually(900, 2000), 1500, "from tip to tip, flat on the bench");
        double root = in.optional(
                "root_chord_mm", between(30, 600).usually(90, 250), 168, "chord at the middle, not at the pod's side");
        double twoThirds = in.optional(
                "two_thirds_chord_mm", between(20, 600).usually(60, 230), 140, "chord two thirds of the half span out");
        Planform listed = Outlines.stations(in, "stations", "outline of the right half, from root to tip");
        boolean few = in.has("span_mm") || in.has("root_chord_mm") || in.has("two_thirds_chord_mm");
        if (in.has("stations")) {
            if (few) {
                in.problem(
                        "stations",
                        "stations and span_mm, root_chord_mm or two_thirds_chord_mm are both given",
                        "leave out the three");
            }
            if (listed != null && isShort(listed)) {
                in.doubt("stations", endsAt(listed) + ", which is short for such chords", HALF_STATIONS);
            }
            return listed == null ? Outlines.wing(EXAMPLE_SPAN / 2, EXAMPLE_ROOT, EXAMPLE_TWO_THIRDS) : listed;
        }
        span = neededUnlessListed(in, span, "span_mm", "from tip to tip", EXAMPLE_SPAN);
        root = neededUnlessListed(in, root, "root_chord_mm", "chord at the middle", EXAMPLE_ROOT);
        twoThirds = neededUnlessListed(
                in, twoThirds, "two_thirds_chord_mm", "chord two thirds of the half span out", EXAMPLE_TWO_THIRDS);
        Planform drawn = Outlines.wing(span / 2, root, twoThirds);
        for (Station station : drawn.stations()) {
            if (station.chord() < 0.1 * root) {
                in.problem(
                        "two_thirds_chord_mm",
                        "makes the wing a point before its tip",
                        "measured nearer to the tip; or list the stations");
                return Outlines.wing(EXAMPLE_SPAN / 2, EXAMPLE_ROOT, EXAMPLE_TWO_THIRDS);
            }
        }
        if (isShort(drawn)) {
            in.doubt("span_mm", "is short for such chords", HALF_SPAN);
        }
        if (twoThirds > root) {
            in.doubt("two_thirds_chord_mm", "is longer than root_chord_mm", "the two are exchanged");
        }
        return drawn;
    }

    private static double neededUnlessListed(In in, double read, String key, String words, double example) {
        if (!in.has(key)) {
            in.needed(key, words, Bounds.show(1000 * example));
        }
        return Double.isNaN(read) ? example : read;
    }

    private static double dihedral(In in, double halfSpan) {
        double angle = in.optional("dihedral_deg", between(0, 20).usually(3, 10), 6.5, "of each half");
        double otherTip = in.optional(
                "other_tip_up_mm", between(0, 1000), 169, "one half flat on the bench: height of the other tip");
        if (in.has("dihedral_deg") && in.has("other_tip_up_mm")) {
            in.problem("other_tip_up_mm", "dihedral_deg is given as well", "leave out one of the two");
        }
        if (!Double.isNaN(otherTip)) {
            if (otherTip < 0.6 * halfSpan) {
                return Math.asin(otherTip / halfSpan) / 2;
            }
            in.problem("other_tip_up_mm", "higher than 20 deg of dihedral would put it", "");
        }
        return in.has("other_tip_up_mm")
                ? Math.toRadians(6.5)
                : in.orAssume(angle, "dihedral_deg", Math.toRadians(6.5), 1, "dihedral of each half");
    }

    private static Flap flap(In in, Planform planform) {
        double chord = Sections.flapChord(in, "chord_pct", 32, "chord of the flaperon over the wing's");
        double from = in.neutral("from_mm", between(0, 2000), 20, "inner end, out from the middle");
        double to = in.optional("to_mm", between(0, 2000), 720, "outer end, out from the middle");
        double outer = Double.isNaN(to) ? 0.96 * planform.span() : to;
        if (from >= outer || outer > planform.span() * (1 + 1e-9)) {
            in.problem(
                    "to_mm",
                    "the flaperon must end outside its beginning and inside the tip",
                    isShort(planform)
                            ? "the wing's stations " + endsAt(planform) + ": " + HALF_STATIONS
                            : "from_mm: 20, to_mm: " + Bounds.show(Math.floor(960 * planform.span())));
            return new Flap(chord, 0, planform.span());
        }
        return new Flap(chord, from, outer);
    }
}
