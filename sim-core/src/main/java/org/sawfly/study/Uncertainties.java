package org.sawfly.study;

import java.util.EnumMap;
import java.util.Map;

/**
 * How uncertain each input is: the half width of its range 9 times in 10, in SI, factors as 1.
 *
 * @param halfWidths of all of {@link Uncertain}; 0 where it is taken as known
 */
public record Uncertainties(Map<Uncertain, Double> halfWidths) {
    /** As nobody said otherwise. */
    public static final Uncertainties USUAL = usual();

    /** Fills in what is usual. */
    public Uncertainties {
        Map<Uncertain, Double> all = new EnumMap<>(Uncertain.class);
        for (Uncertain one : Uncertain.values()) {
            double half = halfWidths.getOrDefault(one, one.usual());
            if (!(half >= 0)) {
                throw new IllegalArgumentException("half width " + half + " of " + one.words());
            }
            all.put(one, half);
        }
        halfWidths = Map.copyOf(all);
    }

    private static Uncertainties usual() {
        return new Uncertainties(Map.of());
    }

    /** Half width of the range 9 times in 10 [SI; factors as 1]. */
    public double halfWidth(Uncertain of) {
        return halfWidths.get(of);
    }

    /** Standard deviation of the normal whose range 9 times in 10 this is [SI]. */
    public double deviation(Uncertain of) {
        return halfWidth(of) / Draws.NINE_IN_TEN;
    }
}
