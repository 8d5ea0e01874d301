package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RootsTest {
    @Test
    void findsRoots() {
        assertThat(Roots.between(x -> Math.cos(x) - x, 0, 1, 1e-14)).isCloseTo(0.7390851332151607, within(1e-14));
        assertThat(Roots.between(x -> Math.pow(x - 1, 9), 0, 5, 1e-9)).isCloseTo(1, within(1e-9));
        assertThat(Roots.between(x -> x < 0.3 ? -1 : 1, 0, 1, 1e-12)).isCloseTo(0.3, within(1e-12));
        assertThat(Roots.between(x -> x, 0, 1, 1e-12)).isZero();
    }

    @Test
    void takesFewEvaluationsOnSmoothFunctions() {
        int[] count = {0};
        Roots.between(
                x -> {
                    count[0]++;
                    return Math.exp(x) - 2;
                },
                0,
                2,
                1e-12);
        assertThat(count[0]).isLessThan(14);
    }

    @Test
    void refusesWhatHasNoChangeOfSign() {
        assertThatThrownBy(() -> Roots.between(x -> x * x + 1, -1, 1, 1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no change of sign");
        assertThatThrownBy(() -> Roots.between(x -> Double.NaN, -1, 1, 1e-9))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
