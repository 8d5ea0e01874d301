package org.sawfly.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.study.statistics.Sample;
import org.sawfly.study.statistics.ShareOfVariance;

/**
 * Many throws of one glider, each off by what differs from throw to throw. A throw is known by its index: throw n of another
 * glider is off by the same. Throws that have no top are kept as NaN.
 *
 * <p>How much the speed scatters is what nobody can see, and the scatter of the heights is what everybody can: where the
 * first is not given it follows from the second. Variances add up, {@code H^2 = R^2 + (k s)^2} with R of all else; s is
 * found from throws with none of it, and corrected once by throws with it.
 */
public final class Throws {
    /** Enough to place the ends of a range to about a twentieth of it. */
    public static final int USUAL_COUNT = 256;

    private static final double TRIED_SPEED = 0.02;
    private static final double LEAST_SHARE = 0.05;

    private final Map<Scattered, Double> deviations;
    private final List<double[]> offsets;
    private final double[] heights;

    private Throws(Map<Scattered, Double> deviations, List<double[]> offsets, double[] heights) {
        this.deviations = deviations;
        this.offsets = offsets;
        this.heights = heights;
    }

    /**
     * How throws are drawn.
     *
     * @param count of throws
     * @param seed the same seed gives the same throws
     * @param threads that fly; they change nothing
     */
    public record Drawn(int count, long seed, int threads) {}

    /**
     * Throws a glider.
     *
     * @param result of the throw as it is meant
     * @param deviations of all of {@link Scattered}; NaN for a speed that follows from the thrower's scatter of heights
     */
    public static Throws of(Result result, Map<Scattered, Double> deviations, Drawn drawn) {
        Map<Scattered, Double> known = new EnumMap<>(deviations);
        if (Double.isNaN(known.get(Scattered.SPEED))) {
            known.put(Scattered.SPEED, speed(result, known, drawn));
        }
        return fly(result, known, drawn);
    }

    private static double speed(Result result, Map<Scattered, Double> deviations, Drawn drawn) {
        double wanted = result.plan().launch().thrower().heightScatter();
        double without = with(0, result, deviations, drawn);
        double speed = TRIED_SPEED;
        double most = wanted * wanted - without * without;
        if (!(most > 0)) {
            return 0;
        }
        for (int i = 0; i < 2; i++) {
            double all = with(speed, result, deviations, drawn);
            double ofSpeed = all * all - without * without;
            speed *= ofSpeed > 0 ? Math.sqrt(most / ofSpeed) : 1;
        }
        return speed;
    }

    private static double with(double speed, Result result, Map<Scattered, Double> deviations, Drawn drawn) {
        Map<Scattered, Double> all = new EnumMap<>(deviations);
        all.put(Scattered.SPEED, speed);
        return fly(result, all, drawn).sample().deviation();
    }

    private static Throws fly(Result result, Map<Scattered, Double> deviations, Drawn drawn) {
        SobolPoints points = new SobolPoints(Scattered.values().length, drawn.seed());
        FlightPlan plan = result.plan();
        double spin = result.outcome().release().spin().rate();
        List<double[]> offsets = new ArrayList<>();
        double[] heights = new double[drawn.count()];
        InOrder.run(
                0,
                drawn.count(),
                drawn.threads(),
                index -> {
                    double[] off = points.point(index);
                    for (Scattered one : Scattered.values()) {
                        off[one.ordinal()] = deviations.get(one) * Draws.cutNormal(off[one.ordinal()]);
                    }
                    heights[index] =
                            Flight.fly(Scattered.thrown(plan, spin, off)).top().height();
                    return off;
                },
                offsets::add,
                () -> false);
        return new Throws(Map.copyOf(deviations), offsets, heights);
    }

    /** How many were thrown. */
    public int count() {
        return heights.length;
    }

    /** Height of the launch of a throw [m]; NaN where it has no top. */
    public double height(int index) {
        return heights[index];
    }

    /** How far a throw was off [SI; shares as 1]. */
    public double off(int index, Scattered in) {
        return offsets.get(index)[in.ordinal()];
    }

    /** Standard deviations that were drawn from [SI; shares as 1]. */
    public Map<Scattered, Double> deviations() {
        return deviations;
    }

    /** Standard deviation that was drawn from [SI; shares as 1]. */
    public double deviation(Scattered in) {
        return deviations.get(in);
    }

    /** The heights of the throws that have a top. */
    public Sample sample() {
        return Sample.of(heights);
    }

    /** What makes the heights differ: the share of their variance that one input explains by itself, the greatest first. */
    public Map<Scattered, Double> shares() {
        Map<Scattered, double[]> inputs = new EnumMap<>(Scattered.class);
        for (Scattered one : Scattered.values()) {
            if (deviation(one) > 0) {
                double[] input = new double[count()];
                for (int i = 0; i < input.length; i++) {
                    input[i] = off(i, one);
                }
                inputs.put(one, input);
            }
        }
        return ShareOfVariance.ranked(inputs, heights, LEAST_SHARE);
    }

    /**
     * The chance that the next throw of this glider is higher than the next one of another, the two thrown independently:
     * over all pairs, equal heights counted half (H. B. Mann and D. R. Whitney, On a test of whether one of two random
     * variables is stochastically larger than the other, Annals of Mathematical Statistics 18, 1947). NaN without throws.
     */
    public double chanceAbove(Throws other) {
        double above = 0;
        long pairs = 0;
        for (double mine : heights) {
            for (double theirs : other.heights) {
                if (!Double.isNaN(mine) && !Double.isNaN(theirs)) {
                    above += mine > theirs ? 1 : mine == theirs ? 0.5 : 0;
                    pairs++;
                }
            }
        }
        return above / pairs;
    }
}
