package org.sawfly.file;

import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import java.util.List;
import org.sawfly.study.SeenInFlight;

/** Reads what was seen in flight. */
final class SeenReader {
    private SeenReader() {}

    static SeenInFlight read(In in) {
        return in.map(
                "seen_in_flight",
                "what was seen in flight; each one narrows the ranges",
                seen -> new SeenInFlight(
                        signed(seen, "elevator_in_cruise_up_mm", "elevator_in_cruise_down_mm", "elevator in cruise"),
                        seen.choice(
                                "dive_test",
                                List.of(SeenInFlight.Dive.values()),
                                null,
                                "what it does when left alone in a dive"),
                        seen.optional(
                                "least_sink_mps",
                                above(0, 3).usually(0.2, 0.6),
                                0.29,
                                "calm evening, thermal setting, from a log")));
    }

    /** A deflection whose direction is in the key, positive by the first one [m]; NaN when neither stands there. */
    static double signed(In in, String plus, String minus, String words) {
        Bounds bounds = between(0, 60).usually(0, 25);
        double positive = in.optional(plus, bounds, 0, words + ", at the root trailing edge");
        double negative = in.optional(minus, bounds, 0, words + ", at the root trailing edge");
        if (in.has(plus) && in.has(minus)) {
            in.problem(minus, plus + " is given as well", "leave out one of the two");
        }
        return Double.isNaN(positive) ? -negative : positive;
    }
}
