package org.sawfly.glider;

/**
 * A plain flap along the trailing edge.
 *
 * @param chordFraction flap chord as a fraction of the local chord [1]; 1 means the whole surface turns
 * @param from inner end, distance from the root [m]
 * @param to outer end, distance from the root [m]
 */
public record Flap(double chordFraction, double from, double to) {
    public Flap {
        Check.between(chordFraction, 0, 1, "the flap chord as a part of the chord");
        Check.notNegative(from, "the inner end of the flap [m]");
        Check.finite(to, "the outer end of the flap [m]");
        if (to <= from) {
            throw new IllegalArgumentException(
                    "the outer end of the flap (" + to + " m) must lie outside its inner end (" + from + " m)");
        }
    }
}
