package org.sawfly.study.statistics;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How much of an outcome's variance one input explains by itself: Sobol's first-order index, from nothing but pairs of
 * input and outcome. The pairs are put in order of the input and in equal groups; the variance between the groups' means
 * over the whole variance is the correlation ratio of K. Pearson (On the general theory of skew correlation and non-linear
 * regression, 1905). Sees what rises and falls again, which a correlation does not. Nothing is taken off for chance, see
 * {@link #byChance}; points spread as evenly as Sobol's leave less of it in the groups' means.
 */
public final class ShareOfVariance {
    /** An input explains at least so many times what chance gives one that does nothing. */
    private static final double MORE_THAN_CHANCE = 1.5;

    private ShareOfVariance() {}

    /**
     * The index.
     *
     * @param input any numbers
     * @param outcome by the same order; pairs with NaN are left out
     * @return share of the variance, 0 to 1; 0 without variance
     */
    public static double of(double[] input, double[] outcome) {
        double total = Sample.of(paired(input, outcome)).squares();
        return total == 0 ? 0 : 1 - Sample.of(without(input, outcome)).squares() / total;
    }

    /** The outcome less what the input explains of it, in the same order; NaN where one of the two is. */
    public static double[] without(double[] input, double[] outcome) {
        double[] rest = paired(input, outcome);
        Integer[] order = new Integer[rest.length];
        int count = 0;
        for (int i = 0; i < rest.length; i++) {
            if (!Double.isNaN(rest[i])) {
                order[count++] = i;
            }
        }
        int groups = groups(count);
        if (groups < 2) {
            return rest;
        }
        Arrays.sort(order, 0, count, Comparator.comparingDouble(i -> input[i]));
        for (int g = 0; g < groups; g++) {
            int from = g * count / groups;
            int to = (g + 1) * count / groups;
            double mean = 0;
            for (int i = from; i < to; i++) {
                mean += rest[order[i]] / (to - from);
            }
            for (int i = from; i < to; i++) {
                rest[order[i]] -= mean;
            }
        }
        return rest;
    }

    /**
     * The input that explains most first, then the one that explains most of what is left, and so on: among few points two
     * inputs may go together by chance, and the weaker one would borrow from the stronger. Only those that explain more than
     * chance would.
     *
     * @param inputs any numbers, by the same order as the outcome
     * @param outcome where it is NaN the pair does not count
     * @param least share that is named
     * @return shares of the outcome's whole variance, the greatest first
     */
    public static <T> Map<T, Double> ranked(Map<T, double[]> inputs, double[] outcome, double least) {
        Map<T, Double> found = new LinkedHashMap<>();
        Map<T, double[]> left = new LinkedHashMap<>(inputs);
        Sample sample = Sample.of(outcome);
        double total = sample.squares();
        double enough = Math.max(least, MORE_THAN_CHANCE * byChance(sample.size()));
        double[] rest = outcome;
        while (total > 0 && !left.isEmpty()) {
            double[] from = rest;
            T next = Collections.max(left.keySet(), Comparator.comparingDouble(one -> of(left.get(one), from)));
            double share = of(left.get(next), from) * Sample.of(from).squares() / total;
            if (share < enough) {
                break;
            }
            found.put(next, share);
            rest = without(left.remove(next), from);
        }
        Map<T, Double> sorted = new LinkedHashMap<>();
        found.entrySet().stream()
                .sorted(Map.Entry.<T, Double>comparingByValue().reversed())
                .forEach(one -> sorted.put(one.getKey(), one.getValue()));
        return sorted;
    }

    /** What an input that does nothing seems to explain of so many random pairs, on the average. */
    public static double byChance(int pairs) {
        return pairs < 2 ? 1 : (groups(pairs) - 1.0) / (pairs - 1);
    }

    private static int groups(int pairs) {
        return (int) Math.round(Math.sqrt(pairs));
    }

    private static double[] paired(double[] input, double[] outcome) {
        double[] paired = outcome.clone();
        for (int i = 0; i < paired.length; i++) {
            paired[i] = Double.isNaN(input[i]) ? Double.NaN : paired[i];
        }
        return paired;
    }
}
