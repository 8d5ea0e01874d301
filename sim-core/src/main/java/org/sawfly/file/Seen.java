package org.sawfly.file;

import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import java.util.List;

/**
 * What was seen in flight and narrows what is known of a glider.
 *
 * @param elevatorUp elevator in cruise, trailing edge up positive [m]; NaN when not seen
 * @param dive       what a dive test showed; null when not flown
 * @param leastSink  from a log in calm air [m/s]; NaN when not seen
 */
public record Seen(double elevatorUp, Dive dive, double leastSink) {
    /** What the glider does when left alone in a dive. */
    public enum Dive {
        PULLS_OUT_HARD,
        PULLS_OUT_GENTLY,
        NEUTRAL,
        TUCKS
    }

    static Seen read(In in) {
        return in.map(
                "seen_in_flight",
                "what was seen in flight; each one narrows a range",
                seen -> new Seen(
                        signed(seen, "elevator_in_cruise_up_mm", "elevator_in_cruise_down_mm", "elevator in cruise"),
                        seen.choice(
                                "dive_test", List.of(Dive.values()), null, "what it does when left alone in a dive"),
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
