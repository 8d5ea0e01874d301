package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DenseLuTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 40})
    void solvesAndInverts(int n) {
        Random random = new Random(n);
        double[] a = random.doubles((long) n * n, -1, 1).toArray();
        a[0] = 0.0 + (n == 1 ? 2 : 0); // a zero in the corner needs the exchange of rows
        double[] x = random.doubles(n, -1, 1).toArray();
        double[] b = times(a, x, n);
        DenseLu lu = new DenseLu(a, n);
        double[] found = new double[n];
        lu.solve(b, found);
        double[] inverse = times(lu.inverse(), b, n);
        for (int i = 0; i < n; i++) {
            assertThat(found[i]).as("seed %d", n).isCloseTo(x[i], within(1e-10));
            assertThat(inverse[i]).as("seed %d", n).isCloseTo(x[i], within(1e-10));
        }
    }

    @Test
    void refusesASingularSystem() {
        assertThatThrownBy(() -> new DenseLu(new double[] {1, 2, 2, 4}, 2)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new DenseLu(new double[] {Double.NaN}, 1)).isInstanceOf(ArithmeticException.class);
    }

    private static double[] times(double[] a, double[] x, int n) {
        double[] b = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                b[i] += a[i * n + j] * x[j];
            }
        }
        return b;
    }
}
