package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.sawfly.aero.BenchErrors;
import org.sawfly.glider.Glider;
import org.sawfly.study.BenchError;

/** Reads what was not built squarely, in degrees or in what a ruler shows over the part's own length. */
final class BenchReader {
    private static final Bounds DEGREES = between(-15, 15).usually(-3, 3);
    private static final Bounds MILLIMETRES = between(-60, 60).usually(-10, 10);

    /** As read: an angle [rad] or, where that is NaN, a length [m]. */
    private record Read(double angle, double length) {}

    private final Map<BenchError, Read> errors = new EnumMap<>(BenchError.class);

    private BenchReader() {}

    static BenchReader read(In in) {
        BenchReader reader = new BenchReader();
        in.map("bench", "what was not built squarely; below 0 is the other way", inside -> {
            for (BenchError error : BenchError.values()) {
                if (error.isAngle()) {
                    reader.one(inside, error);
                }
            }
            return reader;
        });
        return reader;
    }

    private void one(In in, BenchError error) {
        String name = error.name().toLowerCase(Locale.ROOT);
        double angle = in.optional(name + "_deg", DEGREES, 0, error.words());
        double length = in.optional(name + "_mm", MILLIMETRES, 0, error.words() + ", " + error.ruler());
        if (!Double.isNaN(angle) && !Double.isNaN(length)) {
            in.problem(name + "_mm", name + "_deg is given as well", "leave out one of the two");
        } else if (!Double.isNaN(angle) || !Double.isNaN(length)) {
            errors.put(error, new Read(angle, length));
        }
    }

    /** All of them together on a glider. */
    BenchErrors of(Glider glider) {
        BenchErrors all = BenchErrors.NONE;
        for (Map.Entry<BenchError, Read> one : errors.entrySet()) {
            double angle = one.getValue().angle();
            double ruler = one.getValue().length() / one.getKey().length(glider);
            all = all.plus(one.getKey().of(Double.isNaN(angle) ? ruler : angle));
        }
        return all;
    }
}
