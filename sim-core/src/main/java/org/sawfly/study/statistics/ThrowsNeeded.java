package org.sawfly.study.statistics;

import org.sawfly.math.Roots;

/**
 * How many throws a side show a difference: Student's two-sample test at 5 %, both sides, that finds it 4 times in 5.
 * Exact: with n throws a side the statistic is a noncentral t with 2n - 2 degrees of freedom about
 * {@code (difference/deviation) sqrt(n/2)} (Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd ed. 1988,
 * chapter 2 and its appendix).
 */
public final class ThrowsNeeded {
    /** More are not worth throwing. */
    public static final int CEILING = 500;

    /** Probability of seeing a difference where there is none. */
    public static final double LEVEL = 0.05;
    /** Probability of seeing one that is there. */
    public static final double POWER = 0.80;

    private static final double SURELY = 37;

    private ThrowsNeeded() {}

    /**
     * Probability that the test finds a difference.
     *
     * @param throwsASide at least 2
     * @param ratio difference over the standard deviation of one throw
     */
    public static double power(double throwsASide, double ratio) {
        double freedoms = 2 * throwsASide - 2;
        double noncentrality = Math.abs(ratio) * Math.sqrt(throwsASide / 2);
        if (noncentrality >= SURELY) {
            return 1;
        }
        double limit = StudentT.quantile(1 - LEVEL / 2, freedoms);
        return 1
                - StudentT.cumulative(limit, freedoms, noncentrality)
                + StudentT.cumulative(-limit, freedoms, noncentrality);
    }

    /**
     * Least number of throws a side, 2 or more; {@link Integer#MAX_VALUE} when more than a million.
     *
     * @param difference to be shown
     * @param deviation standard deviation of one throw, in the same unit
     */
    public static int aSide(double difference, double deviation) {
        double ratio = Math.abs(difference) / deviation;
        double most = 1e6;
        if (!(ratio > 0) || power(most, ratio) < POWER) {
            return Integer.MAX_VALUE;
        }
        if (power(2, ratio) >= POWER) {
            return 2;
        }
        double high = 4;
        while (power(high, ratio) < POWER) {
            high *= 2;
        }
        double exact = Roots.between(n -> power(n, ratio) - POWER, high / 2, high, 1e-6);
        int whole = (int) Math.ceil(exact - 1e-5);
        return Math.max(2, whole);
    }

    /** In words, with a ceiling: "about 60 throws a side", "more than 500 throws a side: leave it". */
    public static String words(int aSide) {
        if (aSide > CEILING) {
            return "more than " + CEILING + " throws a side: leave it";
        }
        return (step(aSide) == 1 ? "" : "about ") + shown(aSide) + " throws a side";
    }

    /** A number of throws as it is told: rounded up, the coarser the more there are. */
    public static int shown(int aSide) {
        int step = step(aSide);
        return (aSide + step - 1) / step * step;
    }

    private static int step(int aSide) {
        return aSide < 20 ? 1 : aSide < 100 ? 5 : 10;
    }
}
