package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Piece;
import org.sawfly.glider.Weighing;

/** Reads glued pieces that were weighed, and perhaps balanced, together. */
final class WeighingReader {
    /**
     * One weighing and where it stands.
     *
     * @param in       where
     * @param weighing what
     */
    record Read(In in, Weighing weighing) {}

    private WeighingReader() {}

    static Map<String, Read> read(In in) {
        return in.named("weighings", "pod and boom", "glued pieces weighed together", (name, one) -> {
            List<String> of = one.texts(
                    "of", "pod, boom", "which pieces: wing, tailplane, fin, boom, pod, nose lead, or a part's name");
            double mass = one.number("mass_g", between(0.1, 1000), 43.3, "weight together");
            double ahead =
                    one.optional("ahead_mm", between(0, 1000), 20, "balance point ahead of the root leading edge");
            double behind =
                    one.optional("behind_mm", between(0, 3000), 92, "balance point behind the root leading edge");
            if (one.has("ahead_mm") && one.has("behind_mm")) {
                one.problem("behind_mm", "ahead_mm is given as well", "leave out one of the two");
            }
            if (of.isEmpty()) {
                one.needed("of", "which pieces were weighed", "[pod, boom]");
            }
            double x = Double.isNaN(ahead) ? -behind : ahead;
            OptionalDouble place = Double.isNaN(x) ? OptionalDouble.empty() : OptionalDouble.of(x);
            return new Read(one, new Weighing(Set.copyOf(of), mass, place));
        });
    }

    /**
     * The glider with the masses adjusted to all weighings, in the order of the file.
     *
     * @param added is given what each piece gained [kg]
     */
    static Glider apply(Glider glider, Map<String, Read> weighings, Map<String, Double> added) {
        Glider result = glider;
        for (Read one : weighings.values()) {
            Map<String, Piece> all = new LinkedHashMap<>();
            Piece.all(result).forEach(piece -> all.put(piece.name(), piece));
            List<String> unknown = new ArrayList<>(one.weighing.of());
            unknown.removeAll(all.keySet());
            for (String name : unknown) {
                one.in.problem(
                        "of",
                        "there is no piece \"" + Ascii.printable(name) + "\"",
                        Spelling.nearest(name, all.keySet()));
            }
            if (unknown.isEmpty() && !one.weighing.of().isEmpty()) {
                result = applied(result, one, added);
            }
        }
        return result;
    }

    private static Glider applied(Glider glider, Read one, Map<String, Double> added) {
        try {
            Weighing.Result result = one.weighing.applyTo(glider);
            result.added().forEach((name, mass) -> added.merge(name, mass, Double::sum));
            return result.glider();
        } catch (DesignException e) {
            one.in.problem("mass_g", e.getMessage(), "");
            return glider;
        }
    }
}
