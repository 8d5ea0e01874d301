package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.OptionalDouble;
import org.sawfly.glider.BoomReplacement;
import org.sawfly.glider.DesignChange;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.FinScale;
import org.sawfly.glider.Glider;
import org.sawfly.glider.RebalanceRule.Keep;
import org.sawfly.glider.TailplaneScale;

/**
 * Changes of the airframe that move other things along.
 *
 * @param boom      what is done to the boom
 * @param tailplane new area over old area of the tailplane [1]
 * @param fin       new area over old area of the fin [1]
 * @param cg        wanted balance point behind the wing's root leading edge [m]; NaN when none
 * @param in        where it stands
 */
record Designs(Mended boom, double tailplane, double fin, double cg, In in) {
    private static final Bounds FACTOR = between(0.1, 5).usually(0.5, 1.6);

    /**
     * What is done to the boom.
     *
     * @param cut    length cut off [m]
     * @param splice null for none
     * @param wrap   null for none
     */
    record Mended(double cut, DesignChange splice, DesignChange wrap) {
        static Mended read(In in) {
            return new Mended(
                    in.neutral("cut_mm", between(0, 2000).usually(0, 250), 0, "piece cut off, not the length left"),
                    in.optionalMap("splice", "sawn through and joined by a sleeve", StockReader::splice),
                    in.optionalMap("wrap", "wrapped or plugged, the boom left whole", StockReader::wrap));
        }

        boolean any() {
            return cut > 0 || splice != null || wrap != null;
        }

        Glider apply(Glider before, Options.Cut how) {
            Glider glider = splice == null ? before : splice.apply(before);
            glider = wrap == null ? glider : wrap.apply(glider);
            return how.of(cut).apply(glider);
        }
    }

    static Designs read(In in) {
        return new Designs(
                in.map("boom", "the boom", Mended::read),
                in.map("tailplane", "the tailplane", t -> t.neutral("scale_area", FACTOR, 1, "new area over old")),
                in.map("fin", "the fin", f -> f.neutral("scale_area", FACTOR, 1, "new area over old")),
                in.map(
                        "ready_to_fly",
                        "balance wanted after the change",
                        r -> r.optional(
                                "cg_mm",
                                between(1, 400).usually(40, 110),
                                69,
                                "wanted balance point behind the root leading edge")),
                in);
    }

    /**
     * The glider with these made.
     *
     * @param read  the glider with all changed values of its file
     * @param today before any change
     * @param file  the changed file
     */
    Glider apply(Glider read, Glider today, In file, Options.Cut how) {
        Glider glider = read;
        try {
            boolean tailsStood = glider.fin().x() == today.fin().x();
            if (tailsStood && glider.boom().endX() != today.boom().endX()) {
                glider = new BoomReplacement(glider.boom()).apply(glider.withBoom(today.boom()));
            }
            if (tailplane != 1) {
                glider = new TailplaneScale(
                                tailplane,
                                given(read.tailplane().mass(), today.tailplane().mass()))
                        .apply(glider);
            }
            if (fin != 1) {
                glider = new FinScale(fin, given(read.fin().mass(), today.fin().mass())).apply(glider);
            }
            return boom.apply(glider, how);
        } catch (DesignException e) {
            Place place = boom.any() ? in.place("boom") : file.place("boom");
            String path = boom.cut() > 0 ? "boom.cut_mm" : "boom";
            file.reading().problems().add(place, path, e.getMessage(), notTheRest(read));
            return read;
        }
    }

    /** A guess at what a long cut may be. */
    private String notTheRest(Glider read) {
        boolean most = boom.cut() > 0.5 * (read.boom().frontX() - read.boom().endX());
        return most ? "boom.cut_mm is the piece that comes off, not the length that stays" : "";
    }

    /** What is kept: a wanted balance point goes before all else. */
    Keep keep(Keep said, Problems problems) {
        if (Double.isNaN(cg)) {
            return said == null ? Keep.NOTHING : said;
        }
        if (said == Keep.MARGIN || said == Keep.CG) {
            problems.add(
                    in.place("ready_to_fly"),
                    "ready_to_fly.cg_mm",
                    "a wanted CG and keep: " + Texts.word(said) + " are both given",
                    "leave out keep");
        }
        return Keep.CG_AT;
    }

    /** A mass that a change gave along with the area. */
    private static OptionalDouble given(double now, double before) {
        return now == before ? OptionalDouble.empty() : OptionalDouble.of(now);
    }
}
