package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.EnumMap;
import java.util.Map;
import org.sawfly.study.Scattered;

/** Reads how much throws differ: standard deviations, as usual when left out. */
final class ScatterReader {
    /** Up to so many times the usual ones are accepted. */
    private static final int MOST = 5;

    private static final double MOST_SPEED_PCT = 20;
    private static final double EXAMPLE_SPEED_PCT = 2.5;

    private ScatterReader() {}

    /** Those of a launch file. */
    static Map<Scattered, Double> read(In in) {
        return in.map("throw_scatter", "how much your throws differ: standard deviations", ScatterReader::deviations);
    }

    private static Map<Scattered, Double> deviations(In in) {
        Map<Scattered, Double> all = new EnumMap<>(Scattered.class);
        for (Scattered one : Scattered.values()) {
            String words = "scatter of the " + one.words();
            if (Double.isNaN(one.usual())) {
                all.put(
                        one,
                        in.optional(
                                one.key(),
                                between(0, MOST_SPEED_PCT),
                                EXAMPLE_SPEED_PCT,
                                words + "; follows from height_scatter_m when left out"));
            } else {
                all.put(one, UncertaintyReader.size(in, one, MOST, words));
            }
        }
        return all;
    }
}
