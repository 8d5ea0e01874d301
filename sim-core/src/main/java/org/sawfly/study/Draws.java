package org.sawfly.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sawfly.flight.Scenario;
import org.sawfly.study.statistics.Normal;

/**
 * Draws of everything uncertain, each a list of settings. A draw is known by its index alone, and is the same for every
 * version: applied after the version's own settings it makes the pairs from which differences are taken.
 *
 * <p>Each input is normal, cut off at three standard deviations, its stated half width being that of the range from 5 to
 * 95 in a hundred of the uncut normal. The points are {@link SobolPoints}.
 */
public final class Draws {
    /** Standard deviations from the middle to the end of a range 9 times in 10. */
    public static final double NINE_IN_TEN = Normal.quantile(0.95);

    /** Enough to place the ends of a range to about a tenth of it. */
    public static final int USUAL_COUNT = 128;

    private static final double CUT = 3;
    private static final double BELOW_CUT = Normal.cumulative(-CUT);

    private final Uncertainties uncertainties;
    private final SobolPoints points;
    private final int count;

    /**
     * A set of draws.
     *
     * @param uncertainties
     * @param count a power of 2 fills the space best
     * @param seed moves all points; the same seed gives the same draws
     */
    public Draws(Uncertainties uncertainties, int count, long seed) {
        this.uncertainties = uncertainties;
        this.count = count;
        this.points = new SobolPoints(Uncertain.values().length, seed);
    }

    /** How many. */
    public int count() {
        return count;
    }

    /** How far each input is off in one draw, by the order of {@link Uncertain} [SI; factors as 1]. */
    public double[] offsets(int index) {
        double[] offsets = points.point(index);
        for (Uncertain one : Uncertain.values()) {
            int i = one.ordinal();
            offsets[i] = uncertainties.deviation(one) * cutNormal(offsets[i]);
        }
        return offsets;
    }

    /** Standard normal cut at three standard deviations, from a number between 0 and 1. */
    static double cutNormal(double uniform) {
        return Normal.quantile(BELOW_CUT + uniform * (1 - 2 * BELOW_CUT));
    }

    /** What all draws of one version are laid over. */
    final class Base {
        private final List<Setting> version;
        private final Scenario now;
        private final Scenario neutral;

        Base(Scenarios scenarios, List<Setting> version) {
            this.version = List.copyOf(version);
            this.now = scenarios.with(version);
            List<Setting> all = new ArrayList<>(version);
            for (Uncertain one : Uncertain.values()) {
                if (one.neutral() != null) {
                    all.add(one.neutral());
                }
            }
            this.neutral = scenarios.with(all);
        }

        /** What is uncertain in this version at all. */
        Set<Uncertain> moving() {
            Set<Uncertain> moving = EnumSet.noneOf(Uncertain.class);
            for (Uncertain one : Uncertain.values()) {
                if (one.applies(now) && uncertainties.halfWidth(one) > 0) {
                    moving.add(one);
                }
            }
            return moving;
        }

        /** The version's own settings and those of a draw. */
        List<Setting> settings(double[] offsets) {
            Map<String, Double> values = new LinkedHashMap<>();
            Map<String, Uncertain> byPath = new LinkedHashMap<>();
            for (Uncertain one : moving()) {
                double before = values.containsKey(one.path()) ? values.get(one.path()) : one.now(now, neutral);
                values.put(one.path(), one.moved(before, offsets[one.ordinal()]));
                byPath.put(one.path(), one);
            }
            List<Setting> all = new ArrayList<>(version);
            values.forEach((path, value) -> all.add(byPath.get(path).setting(value)));
            return all;
        }
    }

    /** Prepares the draws of one version. */
    Base base(Scenarios scenarios, List<Setting> version) {
        return new Base(scenarios, version);
    }
}
