package org.sawfly.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
    /** Percentage points of t as in any table (E. S. Pearson and H. O. Hartley, Biometrika Tables, table 12; from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.95, 1, 6.314",
        "0.95, 5, 2.015",
        "0.95, 10, 1.812",
        "0.975, 2, 4.303",
        "0.975, 10, 2.228",
        "0.975, 30, 2.042",
        "0.995, 20, 2.845"
    })
    void quantilesAreThoseOfTheTables(double probability, double freedoms, double expected) {
        assertThat(StudentT.quantile(probability, freedoms)).isCloseTo(expected, within(0.0006));
        assertThat(StudentT.quantile(1 - probability, freedoms)).isCloseTo(-expected, within(0.0006));
    }

    @Test
    void quantilesAgreeWithAnIndependentImplementation() {
        for (double freedoms : new double[] {1, 2.5, 7, 58, 1998}) {
            for (double p : new double[] {0.001, 0.3, 0.5, 0.9, 0.9995}) {
                double expected = new TDistribution(freedoms).inverseCumulativeProbability(p);
                assertThat(StudentT.quantile(p, freedoms))
                        .as(freedoms + " " + p)
                        .isCloseTo(expected, within(1e-7 * (1 + Math.abs(expected))));
            }
        }
    }

    @Test
    void noncentralAgreesWithTheIntegralThatDefinesIt() {
        for (double freedoms : new double[] {2, 5, 18, 126}) {
            for (double delta : new double[] {-1.5, 0, 0.7, 2.8, 6}) {
                for (double t : new double[] {-2, -0.3, 0, 0.5, 1.98, 4, 9}) {
                    assertThat(StudentT.cumulative(t, freedoms, delta))
                            .as(freedoms + " " + delta + " " + t)
                            .isCloseTo(integral(t, freedoms, delta), within(1e-9));
                }
            }
        }
    }

    /** P(Z + delta <= t sqrt(chi2/f)) as an integral over the chi distribution. */
    private static double integral(double t, double f, double delta) {
        double mode = Math.sqrt(Math.max(0, f - 1));
        double low = Math.max(0, mode - 9);
        double width = (mode + 9 - low) / 60;
        double log = (1 - f / 2) * Math.log(2) - Gamma.logGamma(f / 2);
        double sum = 0;
        for (int piece = 0; piece < 60; piece++) {
            double from = low + piece * width;
            sum += new GaussIntegratorFactory()
                    .legendre(12, from, from + width)
                    .integrate(s -> Math.exp(log + (f - 1) * Math.log(s) - s * s / 2)
                            * Normal.cumulative(t * s / Math.sqrt(f) - delta));
        }
        return sum;
    }

    @Test
    void refusesWhatTheSeriesCannotDo() {
        assertThatThrownBy(() -> StudentT.cumulative(1, 10, 40)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StudentT.cumulative(1, 10, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
