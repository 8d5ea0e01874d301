package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuadraticAxisTest {
    private static double value(QuadraticAxis axis, double[] coefficients, double place) {
        double x = axis.wrap(place);
        int i = axis.piece(x);
        double t = axis.fraction(x, i);
        double low = axis.weightBefore(i, t);
        double high = axis.weightAfter(i, t);
        return low * coefficients[axis.indexBefore(i)]
                + (1 - low - high) * coefficients[i]
                + high * coefficients[axis.indexAfter(i)];
    }

    private static double[] coefficients(QuadraticAxis axis, double... values) {
        double[] c = values.clone();
        axis.coefficients(c, 0, 1);
        return c;
    }

    @Test
    void passes_through_the_values_on_uneven_knots() {
        double[] knots = {-2, -1, 0.5, 1, 3, 3.2};
        double[] values = {1, -2, 0.3, 4, 4, -7};
        QuadraticAxis open = QuadraticAxis.open(knots);
        QuadraticAxis closed = QuadraticAxis.closed(6, knots);
        for (int i = 0; i < knots.length; i++) {
            assertThat(value(open, coefficients(open, values), knots[i])).isCloseTo(values[i], within(1e-12));
            assertThat(value(closed, coefficients(closed, values), knots[i])).isCloseTo(values[i], within(1e-9));
            assertThat(value(closed, coefficients(closed, values), knots[i] + 12))
                    .isCloseTo(values[i], within(1e-9));
        }
    }

    @Test
    void value_and_slope_are_continuous_also_across_ends() {
        double[] knots = {0, 1, 1.5, 3, 5};
        double[] values = {2, 0, 1, -1, 3};
        for (QuadraticAxis axis : new QuadraticAxis[] {QuadraticAxis.open(knots), QuadraticAxis.closed(7, knots)}) {
            double[] c = coefficients(axis, values);
            double h = 1e-5;
            for (double x = -2; x < 8; x += h * 37) {
                double before = (value(axis, c, x) - value(axis, c, x - h)) / h;
                double after = (value(axis, c, x + h) - value(axis, c, x)) / h;
                assertThat(after).as("at %s", x).isCloseTo(before, within(30 * h * 10));
            }
        }
    }

    @Test
    void ends_of_an_open_axis_are_held() {
        QuadraticAxis axis = QuadraticAxis.open(1, 2, 4, 5);
        double[] c = coefficients(axis, 3, 1, 2, 8);
        assertThat(value(axis, c, -50)).isEqualTo(3);
        assertThat(value(axis, c, 50)).isEqualTo(8);
        QuadraticAxis single = QuadraticAxis.open(0.7);
        assertThat(value(single, coefficients(single, 4), -1)).isEqualTo(4);
        assertThat(value(single, coefficients(single, 4), 9)).isEqualTo(4);
    }

    /** A smooth curve between even knots: the error falls with the third power of their distance. */
    @Test
    void converges_with_the_third_power() {
        double coarse = error(20);
        double fine = error(40);
        assertThat(fine).isLessThan(coarse / 7);
    }

    private static double error(int n) {
        double[] knots = new double[n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            knots[i] = 2 * Math.PI * i / n;
            values[i] = Math.sin(knots[i]);
        }
        QuadraticAxis axis = QuadraticAxis.closed(2 * Math.PI, knots);
        double[] c = coefficients(axis, values);
        double worst = 0;
        for (double x = 0; x < 6.3; x += 0.01) {
            worst = Math.max(worst, Math.abs(value(axis, c, x) - Math.sin(x)));
        }
        return worst;
    }
}
