package org.sawfly.study.statistics;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;
import org.sawfly.math.Roots;

/**
 * Student's t, central and noncentral. The noncentral one as published by R. V. Lenth, Algorithm AS 243: Cumulative
 * distribution function of the non-central t distribution, Applied Statistics 38 (1989) 185-189: a series of incomplete beta
 * functions weighted by Poisson terms, each from the one before by recurrence.
 */
public final class StudentT {
    private static final double ENOUGH = 1e-12;
    private static final int MOST_TERMS = 20_000;
    /** Beyond it the first weight of the series is not a number any more. */
    private static final double LARGEST_NONCENTRALITY = 37;

    private static final double LOG_ROOT_OF_PI = 0.5 * Math.log(Math.PI);

    private StudentT() {}

    /** Probability of a value not above t. */
    public static double cumulative(double t, double freedoms) {
        double tail = 0.5 * Beta.regularizedBeta(freedoms / (freedoms + t * t), 0.5 * freedoms, 0.5);
        return t > 0 ? 1 - tail : tail;
    }

    /** The value that is not exceeded with a probability above 0 and below 1. */
    public static double quantile(double probability, double freedoms) {
        double p = Math.max(probability, 1 - probability);
        if (p == 0.5) {
            return 0;
        }
        double high = 1;
        while (cumulative(high, freedoms) < p) {
            high *= 2;
        }
        double found = Roots.between(t -> cumulative(t, freedoms) - p, 0, high, 1e-12 * high);
        return probability < 0.5 ? -found : found;
    }

    /**
     * Probability of a noncentral t not above t.
     *
     * @param freedoms degrees of freedom, above 0
     * @param noncentrality mean of the normal in the numerator, at most 37 in size
     */
    public static double cumulative(double t, double freedoms, double noncentrality) {
        if (!(Math.abs(noncentrality) <= LARGEST_NONCENTRALITY) || !(freedoms > 0)) {
            throw new IllegalArgumentException(
                    "noncentral t with " + freedoms + " degrees of freedom and noncentrality " + noncentrality);
        }
        double above =
                t < 0 ? 1 - positivePart(-t, freedoms, -noncentrality) : positivePart(t, freedoms, noncentrality);
        return Math.max(0, Math.min(1, above));
    }

    /** Lenth's series for t not below 0. Legend: p, q Poisson weights; xOdd, xEven incomplete betas; gOdd, gEven steps. */
    private static double positivePart(double t, double freedoms, double delta) {
        double below = Normal.cumulative(-delta);
        double x = t * t / (t * t + freedoms);
        if (x <= 0) {
            return below;
        }
        double lambda = delta * delta;
        double p = 0.5 * Math.exp(-0.5 * lambda);
        double q = Math.sqrt(2 / Math.PI) * p * delta;
        double left = 0.5 - p;
        double a = 0.5;
        double b = 0.5 * freedoms;
        double restToB = Math.pow(freedoms / (freedoms + t * t), b);
        double logBeta = LOG_ROOT_OF_PI + Gamma.logGamma(b) - Gamma.logGamma(a + b);
        double xOdd = Beta.regularizedBeta(x, a, b);
        double gOdd = 2 * restToB * Math.exp(a * Math.log(x) - logBeta);
        double xEven = 1 - restToB;
        double gEven = b * x * restToB;
        double sum = p * xOdd + q * xEven;
        for (int n = 1; n <= MOST_TERMS; n++) {
            a += 1;
            xOdd -= gOdd;
            xEven -= gEven;
            gOdd *= x * (a + b - 1) / a;
            gEven *= x * (a + b - 0.5) / (a + 0.5);
            p *= lambda / (2 * n);
            q *= lambda / (2 * n + 1);
            left -= p;
            sum += p * xOdd + q * xEven;
            if (n > 0.5 * lambda && Math.abs(2 * left * (xOdd - gOdd)) < ENOUGH) {
                break;
            }
        }
        return sum + below;
    }
}
