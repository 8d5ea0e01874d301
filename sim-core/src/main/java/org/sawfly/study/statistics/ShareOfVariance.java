package org.sawfly.study.statistics;

import java.util.Arrays;
import java.util.Comparator;

/**
 * How much of an outcome's variance one input explains by itself: Sobol's first-order index, from nothing but pairs of
 * input and outcome. The pairs are put in order of the input and in equal groups; the variance between the groups' means
 * over the whole variance is the correlation ratio of K. Pearson (On the general theory of skew correlation and non-linear
 * regression, 1905). Sees what rises and falls again, which a correlation does not. Nothing is taken off for chance: points
 * spread as evenly as Sobol's leave next to none of it in the groups' means. (Of random points, groups over pairs.)
 */
public final class ShareOfVariance {
    private ShareOfVariance() {}

    /**
     * The index.
     *
     * @param input any numbers
     * @param outcome by the same order; pairs with NaN are left out
     * @return share of the variance, 0 to 1; 0 without variance
     */
    public static double of(double[] input, double[] outcome) {
        Integer[] order = new Integer[input.length];
        int count = 0;
        for (int i = 0; i < input.length; i++) {
            if (!Double.isNaN(input[i]) && !Double.isNaN(outcome[i])) {
                order[count++] = i;
            }
        }
        int groups = (int) Math.round(Math.sqrt(count));
        if (groups < 2 || count < 2 * groups) {
            return 0;
        }
        Arrays.sort(order, 0, count, Comparator.comparingDouble(i -> input[i]));
        double[] all = new double[count];
        double within = 0;
        for (int g = 0; g < groups; g++) {
            int from = g * count / groups;
            int to = (g + 1) * count / groups;
            double[] group = new double[to - from];
            for (int i = from; i < to; i++) {
                group[i - from] = outcome[order[i]];
                all[i] = group[i - from];
            }
            within += Sample.of(group).squares();
        }
        double total = Sample.of(all).squares();
        return total == 0 ? 0 : 1 - within / total;
    }
}
