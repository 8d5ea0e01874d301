package org.sawfly.file;

import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import org.sawfly.section.Section;
import org.sawfly.section.SectionShape;

/** Sections: from a table of one's own, by name from those that come along, or estimated from thickness and camber. */
final class Sections {
    /** Where tables are found; the same table must come back for the same name. */
    interface Tables {
        /** The table of that name, or null after a problem. */
        Section table(In in, String key, String name);

        /** The estimate of a shape. */
        Section estimate(SectionShape shape);
    }

    /**
     * What is assumed of a section.
     *
     * @param thick  [%]
     * @param camber [%]
     * @param words  of which section
     */
    record Usual(double thick, double camber, String words) {}

    private Sections() {}

    /** A section at a key; what is not given is assumed. */
    static Section read(In in, String key, Usual usual, double flapChord, Tables tables) {
        return in.map(key, "section " + usual.words, section -> {
            String table =
                    section.optionalText("table", "my-root.csv", "table of one's own, or name of one that comes along");
            Section found = table == null ? null : tables.table(section, "table", table);
            double thick = section.optional(
                    "thick_pct", between(2, 20).usually(4, 12), usual.thick, "greatest thickness over the chord");
            double camber = section.optional(
                    "camber_pct",
                    between(0, 10).usually(0, 4),
                    usual.camber,
                    "greatest height of the mean line over the chord");
            if (table != null) {
                if (section.has("thick_pct") || section.has("camber_pct")) {
                    section.problem(
                            "table", "a table and a thickness or camber are both given", "leave out one of the two");
                }
                if (found != null) {
                    return found;
                }
            }
            thick = section.orAssume(
                    thick, "thick_pct", usual.thick / 100, 0.5, "thickness of the section " + usual.words);
            camber = section.orAssume(
                    camber, "camber_pct", usual.camber / 100, 0.4, "camber of the section " + usual.words);
            return tables.estimate(SectionShape.of(thick, camber, flapChord));
        });
    }

    /** Chord of a flap over the chord of its surface. */
    static double flapChord(In in, String key, double usual, String words) {
        return in.assume(key, above(0, 100).usually(15, 100), usual, 5, words);
    }
}
