package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class CubicGridTest {
    private static final double[] STRETCHED = {-2, -1.7, -1, -0.2, 0, 0.1, 0.5, 1.5, 2};

    private static CubicGrid1 curve(CubicAxis axis, DoubleUnaryOperator f) {
        double[] values = new double[axis.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = f.applyAsDouble(axis.knot(i));
        }
        return new CubicGrid1(axis, values);
    }

    @Test
    void passesThroughItsKnots() {
        CubicGrid1 curve = curve(CubicAxis.of(CubicAxis.Ends.FLAT, STRETCHED), Math::exp);
        for (double x : STRETCHED) {
            assertThat(curve.value(x)).isCloseTo(Math.exp(x), within(1e-15));
        }
    }

    @Test
    void reproducesParabolasOnUnevenKnotsAndGoesOnAsALine() {
        DoubleUnaryOperator f = x -> 3 - 2 * x + 0.7 * x * x;
        CubicGrid1 curve = curve(CubicAxis.of(CubicAxis.Ends.LINE, STRETCHED), f);
        for (double x = -2; x <= 2; x += 0.01) {
            assertThat(curve.value(x)).isCloseTo(f.applyAsDouble(x), within(1e-13));
            assertThat(curve.slope(x)).isCloseTo(-2 + 1.4 * x, within(1e-12));
        }
        assertThat(curve.value(5)).isCloseTo(f.applyAsDouble(2) + 3 * 0.8, within(1e-12));
        assertThat(curve.value(-3)).isCloseTo(f.applyAsDouble(-2) + 4.8, within(1e-12));
        assertThat(curve.slope(7)).isCloseTo(0.8, within(1e-12));
    }

    @Test
    void holdsTheEndValueWithoutAKink() {
        CubicGrid1 curve = curve(CubicAxis.uniform(CubicAxis.Ends.FLAT, 0, 3, 7), Math::exp);
        assertThat(curve.value(-4)).isEqualTo(1);
        assertThat(curve.value(10)).isCloseTo(Math.exp(3), within(1e-14));
        assertThat(curve.slope(0)).isEqualTo(0);
        assertThat(curve.slope(3)).isCloseTo(0, within(1e-12));
        assertThat(curve.slope(11)).isCloseTo(0, within(1e-12));
    }

    @Test
    void closesOnItself() {
        double[] knots = new double[24];
        for (int i = 0; i < 24; i++) {
            knots[i] = -Math.PI + 2 * Math.PI * i / 24;
        }
        CubicGrid1 curve = curve(CubicAxis.periodic(2 * Math.PI, knots), Math::sin);
        for (double x = -9; x < 9; x += 0.037) {
            assertThat(curve.value(x)).isCloseTo(Math.sin(x), within(2e-3));
            assertThat(curve.value(x + 2 * Math.PI)).isCloseTo(curve.value(x), within(1e-13));
        }
        assertThat(curve.value(Math.PI - 1e-9)).isCloseTo(curve.value(-Math.PI + 1e-9), within(1e-8));
        assertThat(curve.slope(Math.PI - 1e-9)).isCloseTo(curve.slope(-Math.PI + 1e-9), within(1e-7));
    }

    @Test
    void theSlopeIsTheDerivativeAndHasNoJumpAnywhere() {
        Random random = new Random(11);
        double[] values = random.doubles(STRETCHED.length, -1, 1).toArray();
        for (CubicAxis.Ends ends : CubicAxis.Ends.values()) {
            CubicGrid1 curve = new CubicGrid1(CubicAxis.of(ends, STRETCHED), values);
            for (double x = -3; x < 3; x += 0.0173) {
                double difference = (curve.value(x + 1e-6) - curve.value(x - 1e-6)) / 2e-6;
                assertThat(curve.slope(x)).isCloseTo(difference, within(2e-4));
            }
            for (double knot : STRETCHED) {
                assertThat(curve.slope(knot - 1e-9)).isCloseTo(curve.slope(knot + 1e-9), within(1e-6));
            }
        }
    }

    @Test
    void oneTwoAndThreeKnotsWork() {
        assertThat(new CubicGrid1(CubicAxis.of(CubicAxis.Ends.FLAT, 4), new double[] {7}).value(-1))
                .isEqualTo(7);
        CubicGrid1 line = new CubicGrid1(CubicAxis.of(CubicAxis.Ends.LINE, 0, 2), new double[] {1, 5});
        assertThat(line.value(0.5)).isCloseTo(2, within(1e-15));
        assertThat(line.value(3)).isCloseTo(7, within(1e-15));
        assertThat(line.slope(-1)).isCloseTo(2, within(1e-15));
        CubicGrid1 three = new CubicGrid1(CubicAxis.of(CubicAxis.Ends.LINE, 0, 1, 3), new double[] {0, 1, 9});
        assertThat(three.value(2)).isCloseTo(4, within(1e-14));
    }

    @Test
    void gridsOfThreeDirectionsReproduceProductsOfParabolas() {
        CubicAxis x = CubicAxis.of(CubicAxis.Ends.LINE, STRETCHED);
        CubicAxis y = CubicAxis.uniform(CubicAxis.Ends.LINE, 0, 2, 5);
        CubicAxis z = CubicAxis.of(CubicAxis.Ends.LINE, -1, 0, 2);
        double[] three = new double[2 * x.size() * y.size() * z.size()];
        for (int i = 0; i < x.size(); i++) {
            for (int j = 0; j < y.size(); j++) {
                for (int k = 0; k < z.size(); k++) {
                    int at = ((i * y.size() + j) * z.size() + k) * 2;
                    three[at] = f(x.knot(i), y.knot(j)) * g(z.knot(k));
                    three[at + 1] = y.knot(j);
                }
            }
        }
        CubicGrid3 body = new CubicGrid3(x, y, z, 2, three);
        double[] out = new double[2];
        Random random = new Random(5);
        for (int n = 0; n < 200; n++) {
            double a = -2 + 4 * random.nextDouble();
            double b = 2 * random.nextDouble();
            double c = -1 + 3 * random.nextDouble();
            body.at(a, b, c, out);
            assertThat(out[0]).isCloseTo(f(a, b) * g(c), within(1e-11));
            assertThat(out[1]).isCloseTo(b, within(1e-13));
            body.slopesFirst(a, b, c, out);
            assertThat(out[0]).isCloseTo((2 * a - 1) * (b * b + 1) * g(c), within(1e-10));
            body.slopesSecond(a, b, c, out);
            assertThat(out[0]).isCloseTo((a * a - a + 1) * 2 * b * g(c), within(1e-10));
            body.slopesThird(a, b, c, out);
            assertThat(out[0]).isCloseTo(f(a, b) * (2 * c + 0.5), within(1e-10));
        }
    }

    @Test
    void refusesKnotsOutOfOrderAndValuesThatDoNotFit() {
        assertThatThrownBy(() -> CubicAxis.of(CubicAxis.Ends.LINE, 0, 1, 1)).hasMessageContaining("knot 2");
        assertThatThrownBy(() -> CubicAxis.periodic(1, 0, 0.2, 0.4, 1)).isInstanceOf(IllegalArgumentException.class);
        CubicAxis axis = CubicAxis.of(CubicAxis.Ends.LINE, 0, 1);
        assertThatThrownBy(() -> new CubicGrid1(axis, new double[3])).hasMessageContaining("2 values");
    }

    private static double f(double x, double y) {
        return (x * x - x + 1) * (y * y + 1);
    }

    private static double g(double z) {
        return z * z + 0.5 * z - 2;
    }

    @Test
    void alongTheFirstAxisStandTheValuesAtItsKnots() {
        Random random = new Random(5);
        CubicAxis x = CubicAxis.periodic(3, 0, 0.5, 1, 2, 2.5);
        CubicAxis y = CubicAxis.of(CubicAxis.Ends.FLAT, STRETCHED);
        CubicAxis z = CubicAxis.of(CubicAxis.Ends.LINE, -1, 0, 2);
        double[] values =
                random.doubles((long) x.size() * y.size() * z.size() * 2).toArray();
        CubicGrid3 grid = new CubicGrid3(x, y, z, 2, values);
        double[] line = new double[2 * x.size()];
        double[] point = new double[2];
        for (double[] place : new double[][] {{0.3, 0.7}, {-5, 3}, {0, 0}}) {
            grid.alongFirst(place[0], place[1], line);
            for (int i = 0; i < x.size(); i++) {
                grid.at(x.knot(i), place[0], place[1], point);
                assertThat(line[2 * i]).isCloseTo(point[0], within(1e-14));
                assertThat(line[2 * i + 1]).isCloseTo(point[1], within(1e-14));
            }
        }
    }
}
