package org.sawfly.study.statistics;

import java.util.Arrays;

/**
 * Numbers of one kind. What is missing (NaN) is left out.
 */
public final class Sample {
    private final double[] sorted;

    private Sample(double[] sorted) {
        this.sorted = sorted;
    }

    /** Of values in any order. */
    public static Sample of(double... values) {
        double[] sorted = Arrays.stream(values).filter(v -> !Double.isNaN(v)).toArray();
        Arrays.sort(sorted);
        return new Sample(sorted);
    }

    /** How many. */
    public int size() {
        return sorted.length;
    }

    /** Mean; NaN of none. */
    public double mean() {
        double sum = 0;
        for (double value : sorted) {
            sum += value;
        }
        return sum / sorted.length;
    }

    /** Sum of squared distances from the mean. */
    public double squares() {
        double mean = mean();
        double sum = 0;
        for (double value : sorted) {
            sum += (value - mean) * (value - mean);
        }
        return sum;
    }

    /** Standard deviation, by one less than the number; NaN of fewer than two. */
    public double deviation() {
        return sorted.length < 2 ? Double.NaN : Math.sqrt(squares() / (sorted.length - 1));
    }

    /** Middle value; NaN of none. */
    public double median() {
        return quantile(0.5);
    }

    /**
     * The value below which a share of all lies; NaN of none. Between values linear, the k-th of n at (k - 1/3)/(n + 1/3)
     * (R. J. Hyndman and Y. Fan, Sample quantiles in statistical packages, The American Statistician 50, 1996, definition 8).
     */
    public double quantile(double share) {
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double place = Math.max(0, Math.min(sorted.length - 1, (sorted.length + 1 / 3.0) * share - 2 / 3.0));
        int below = (int) Math.floor(place);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** Median distance from the median, times 1.4826: the standard deviation of a normal with that distance. */
    public double robustDeviation() {
        double middle = median();
        double[] off = new double[sorted.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.abs(sorted[i] - middle);
        }
        return of(off).median() / Normal.quantile(0.75);
    }
}
