package org.sawfly.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class AxisTest {
    @Test
    void ticksAreEvenAndNice() {
        Axis cut = Axis.fixed("mm off", 0, 80).every(5);
        assertThat(cut.ticks()).hasSize(17).startsWith(0).endsWith(80);
        for (double range = 0.037; range < 5000; range *= 1.7) {
            Axis axis = Axis.around("x", 0, 1, 1 + range);
            double[] ticks = axis.ticks();
            assertThat(ticks.length).as("range %s", range).isBetween(3, 9);
            assertThat(ticks[0]).isCloseTo(axis.low(), org.assertj.core.data.Offset.offset(1e-9 * range));
            assertThat(axis.low()).isLessThanOrEqualTo(1);
            assertThat(axis.high()).isGreaterThanOrEqualTo(1 + range - 1e-9);
            double leading = axis.step() / Math.pow(10, Math.floor(Math.log10(axis.step()) + 1e-9));
            assertThat(Arrays.asList(1.0, 2.0, 5.0)).anyMatch(nice -> Math.abs(nice - leading) < 1e-6);
        }
    }

    @Test
    void labelsHaveTheDecimalsOfTheStep() {
        Axis sink = Axis.around("sink", 0.2, 0.27);
        assertThat(sink.label(0.25)).isEqualTo("0.25");
        assertThat(Axis.fixed("m", 37, 45).label(41)).isEqualTo("41");
        assertThat(Axis.fixed("deg", -10, 10).words("nose right", "nose left").label(-5))
                .isEqualTo("5");
        assertThat(Axis.fixed("deg", -10, 10).label(-5)).isEqualTo("-5");
    }

    @Test
    void aSmallChangeLooksSmall() {
        Axis height = Axis.around("m", 8, 41.2, 40.9);
        assertThat(height.high() - height.low()).isGreaterThanOrEqualTo(8);
    }

    @Test
    void nothingToShowIsNoTrouble() {
        Axis axis = Axis.around("m", 8, Double.NaN);
        assertThat(axis.low()).isZero();
        assertThat(axis.high()).isEqualTo(8);
        assertThatIllegalArgumentException().isThrownBy(() -> Axis.fixed("m", 2, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Axis.fixed("m", 0, Double.POSITIVE_INFINITY));
    }

    @Test
    void whatIsOnlyDrawnHasNoTicks() {
        assertThat(Axis.fixed("boom", -60, 60).bare().ticks()).isEmpty();
    }

    @Test
    void equalValuesStillHaveAnAxis() {
        Axis axis = Axis.around("m", 0, 5, 5);
        assertThat(axis.high()).isGreaterThan(axis.low());
        assertThat(axis.ticks().length).isBetween(2, 9);
    }
}
