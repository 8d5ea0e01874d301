package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LinearSystemTest {
    @Test
    void solves() {
        Random random = new Random(5);
        for (int n = 1; n < 8; n++) {
            double[][] a = new double[n][n];
            double[] x = new double[n];
            double[] b = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = random.nextGaussian();
                for (int k = 0; k < n; k++) {
                    a[i][k] = random.nextGaussian();
                }
            }
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < n; k++) {
                    b[i] += a[i][k] * x[k];
                }
            }
            assertThat(LinearSystem.solve(a, b)).isTrue();
            assertThat(b).containsExactly(x, within(1e-10));
        }
    }

    @Test
    void noticesASingularMatrix() {
        assertThat(LinearSystem.solve(new double[][] {{1, 2}, {2, 4}}, new double[] {1, 1}))
                .isFalse();
        assertThat(LinearSystem.solve(new double[][] {{Double.NaN}}, new double[] {1}))
                .isFalse();
    }

    @Test
    void invertsABlockAmongZeros() {
        double[][] inverse = LinearSystem.inverseOfBlock(
                new double[][] {{2, 9, 1}, {9, 9, 9}, {1, 9, 3}}, new boolean[] {true, false, true});
        assertThat(inverse[0]).containsExactly(new double[] {0.6, 0, -0.2}, within(1e-15));
        assertThat(inverse[1]).containsExactly(0, 0, 0);
        assertThat(inverse[2]).containsExactly(new double[] {-0.2, 0, 0.4}, within(1e-15));
    }
}
