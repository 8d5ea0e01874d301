package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OptimiserTest {
    /** H. H. Rosenbrock, An automatic method for finding the greatest or least value of a function, 1960: 0 at (1, 1). */
    private static double rosenbrock(double[] x) {
        double sum = 0;
        for (int i = 0; i + 1 < x.length; i++) {
            double a = x[i + 1] - x[i] * x[i];
            sum += 100 * a * a + (1 - x[i]) * (1 - x[i]);
        }
        return sum;
    }

    /** L. A. Rastrigin, Systems of extremal control, 1974: 0 at the origin, a hollow at every whole number. */
    private static double rastrigin(double[] x) {
        double sum = 0;
        for (double one : x) {
            sum += 10 + one * one - 10 * Math.cos(2 * Math.PI * one);
        }
        return sum;
    }

    private static double[] all(int n, double value) {
        double[] all = new double[n];
        java.util.Arrays.fill(all, value);
        return all;
    }

    @Test
    void bothFindRosenbrocksMinimum() {
        Optimiser.Found smooth =
                Optimiser.smooth(2000).least(OptimiserTest::rosenbrock, new double[] {-1.2, 1}, all(2, -2), all(2, 3));
        assertThat(smooth.at()).containsExactly(all(2, 1), within(1e-3));
        assertThat(smooth.value()).isLessThan(1e-6);
        Optimiser.Found rugged = Optimiser.rugged(6000, 1)
                .least(OptimiserTest::rosenbrock, new double[] {-1.2, 1, 1}, all(3, -2), all(3, 3));
        assertThat(rugged.at()).containsExactly(all(3, 1), within(1e-3));
    }

    @Test
    void theRuggedOneFindsRastriginsMinimum() {
        for (int seed = 0; seed < 3; seed++) {
            Optimiser.Found found = Optimiser.rugged(12_000, seed)
                    .least(OptimiserTest::rastrigin, all(3, 3.3), all(3, -5.12), all(3, 5.12));
            assertThat(found.at()).as("seed %d", seed).containsExactly(all(3, 0), within(1e-3));
            assertThat(found.evaluations()).isLessThanOrEqualTo(12_000);
        }
    }

    @Test
    void aMinimumOutsideIsFoundAtTheEnd() {
        Optimiser.Found found =
                Optimiser.smooth(500).least(x -> x[0] + (x[1] - 0.3) * (x[1] - 0.3), all(2, 0.5), all(2, 0), all(2, 1));
        assertThat(found.at()[0]).isCloseTo(0, within(1e-4));
        assertThat(found.at()[1]).isCloseTo(0.3, within(1e-3));
    }

    @Test
    void oneNumberIsEnough() {
        Optimiser.Found found =
                Optimiser.smooth(100).least(x -> Math.pow(x[0] - 7, 2), all(1, 1), all(1, 0), all(1, 10));
        assertThat(found.at()[0]).isCloseTo(7, within(1e-4));
    }

    @Test
    void placesWithoutValueAreAvoidedAndNeverTheAnswer() {
        Optimiser.Found found = Optimiser.smooth(500)
                .least(
                        x -> x[0] > 0.8 ? Double.NaN : Math.pow(x[0] - 0.75, 2) + x[1] * x[1],
                        all(2, 0.5),
                        all(2, 0),
                        all(2, 1));
        assertThat(found.value()).isLessThan(1e-3);
        Optimiser.Found none = Optimiser.smooth(200).least(x -> Double.NaN, all(2, 0.5), all(2, 0), all(2, 1));
        assertThat(none.value()).isNaN();
    }

    @Test
    void aStartOutsideIsRefused() {
        assertThatThrownBy(() -> Optimiser.smooth(10).least(x -> x[0], all(2, 2), all(2, 0), all(2, 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
