package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.study.statistics.Sample;
import org.sawfly.study.statistics.ShareOfVariance;

/**
 * The function of T. Ishigami and T. Homma, An importance quantification technique in uncertainty analysis for computer
 * models (1990), sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1 over a cube of -pi to pi: mean 3.5, variance
 * a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2 = 13.845, first-order indices 0.3139, 0.4424, 0.
 */
class IshigamiTest {
    private static final double MEAN = 3.5;
    private static final double VARIANCE = 13.8446;

    private static double[][] drawn(int count, long seed) {
        SobolPoints points = new SobolPoints(3, seed);
        double[][] columns = new double[4][count];
        for (int i = 0; i < count; i++) {
            double[] x = points.point(i);
            for (int k = 0; k < 3; k++) {
                columns[k][i] = Math.PI * (2 * x[k] - 1);
            }
            double sine = Math.sin(columns[1][i]);
            columns[3][i] = Math.sin(columns[0][i])
                    + 7 * sine * sine
                    + 0.1 * Math.pow(columns[2][i], 4) * Math.sin(columns[0][i]);
        }
        return columns;
    }

    @Test
    void meanAndVarianceAreThePublishedOnes() {
        Sample sample = Sample.of(drawn(1 << 13, 3)[3]);
        assertThat(sample.mean()).isCloseTo(MEAN, within(0.005));
        assertThat(sample.deviation() * sample.deviation()).isCloseTo(VARIANCE, within(0.03));
    }

    @Test
    void firstOrderIndicesAreThePublishedOnes() {
        double[][] d = drawn(1 << 13, 3);
        assertThat(ShareOfVariance.of(d[0], d[3])).isCloseTo(0.3139, within(0.01));
        assertThat(ShareOfVariance.of(d[1], d[3])).isCloseTo(0.4424, within(0.01));
        assertThat(ShareOfVariance.of(d[2], d[3])).isCloseTo(0, within(0.01));
    }

    @Test
    void aFewHundredDrawsRankTheReasons() {
        for (long seed = 0; seed < 16; seed++) {
            double[][] d = drawn(256, seed);
            assertThat(ShareOfVariance.of(d[0], d[3])).as("seed %d", seed).isCloseTo(0.3139, within(0.06));
            assertThat(ShareOfVariance.of(d[1], d[3])).as("seed %d", seed).isCloseTo(0.4424, within(0.06));
            assertThat(ShareOfVariance.of(d[2], d[3])).as("seed %d", seed).isCloseTo(0, within(0.06));
        }
    }

    /**
     * The error of a mean falls at least about as 1/N (H. Niederreiter, Random number generation and quasi-Monte Carlo
     * methods, 1992, theorems 2.11 and 4.10), faster for a function as smooth as this one; with random points as 1/sqrt(N).
     */
    @Test
    void meansConvergeAsTheyShould() {
        double few = meanError(1 << 6);
        double many = meanError(1 << 14);
        double rate = Math.log(few / many) / Math.log(1 << 8);
        assertThat(rate).isGreaterThan(0.85);
        assertThat(meanError(1 << 10)).isLessThan(Math.sqrt(VARIANCE / (1 << 10)) / 5);
    }

    /** Root mean square over some seeds. */
    private static double meanError(int count) {
        double sum = 0;
        int seeds = 16;
        for (long seed = 0; seed < seeds; seed++) {
            double off = Sample.of(drawn(count, seed)[3]).mean() - MEAN;
            sum += off * off / seeds;
        }
        return Math.sqrt(sum);
    }

    /** Draws without an outcome say nothing, not even how much chance explains. */
    @Test
    void whatIsMissingDoesNotCount() {
        for (long seed = 0; seed < 16; seed++) {
            double[][] d = drawn(128, seed);
            double[][] first = new double[4][];
            for (int k = 0; k < 4; k++) {
                first[k] = Arrays.copyOf(d[k], 24);
            }
            Arrays.fill(d[3], 24, 128, Double.NaN);
            assertThat(ranked(d)).as("seed %d", seed).isEqualTo(ranked(first));
        }
    }

    private static Map<Integer, Double> ranked(double[][] columns) {
        return ShareOfVariance.ranked(Map.of(0, columns[0], 1, columns[1], 2, columns[2]), columns[3], 0.01);
    }

    @Test
    void anOutcomeThatNeverVariesHasNoReasons() {
        double[] input = {1, 2, Double.NaN, 3};
        assertThat(ShareOfVariance.of(input, new double[] {1, 1, 1, 1})).isZero();
    }
}
