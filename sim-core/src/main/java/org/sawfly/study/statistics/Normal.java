package org.sawfly.study.statistics;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
public final class Normal {
    private static final double ROOT_OF_TWO = Math.sqrt(2);

    private Normal() {}

    /** Probability of a value not above x. */
    public static double cumulative(double x) {
        return 0.5 * Erf.erfc(-x / ROOT_OF_TWO);
    }

    /** The value that is not exceeded with a probability above 0 and below 1. */
    public static double quantile(double probability) {
        return ROOT_OF_TWO * Erf.erfInv(2 * probability - 1);
    }
}
