package org.sawfly.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Comparator;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class ModesTest {
    /** Roots as printed by Nelson (from memory, recomputed: short period -2.5105 +- 2.5918i, Dutch roll -.4870 +- 2.3472i, spiral -.0082). */
    @Test
    void publishedAeroplane() {
        Modes modes = Modes.of(Navion.longitudinal(), Navion.lateral());
        assertThat(modes.speedAndHeight().growth()).isCloseTo(-0.0171, withinPercentage(1));
        assertThat(modes.speedAndHeight().swing()).isCloseTo(0.213, withinPercentage(1));
        assertThat(modes.noseUpDown().growth()).isCloseTo(-2.51, withinPercentage(1));
        assertThat(modes.noseUpDown().swing()).isCloseTo(2.59, withinPercentage(1));
        assertThat(modes.noseLeftRight().growth()).isCloseTo(-0.487, withinPercentage(1));
        assertThat(modes.noseLeftRight().swing()).isCloseTo(2.335, withinPercentage(1));
        assertThat(modes.roll().growth()).isCloseTo(-8.435, withinPercentage(1));
        assertThat(modes.circle().growth()).isCloseTo(-0.0088, withinPercentage(7));
        assertThat(modes.all()).allMatch(Mode::dies);
    }

    @Test
    void recomputedRootsOfThePublishedAeroplane() {
        Modes modes = Modes.of(Navion.longitudinal(), Navion.lateral());
        assertThat(modes.noseUpDown().growth()).isCloseTo(-2.5105, within(1e-3));
        assertThat(modes.noseUpDown().swing()).isCloseTo(2.5918, within(1e-3));
        assertThat(modes.noseLeftRight().swing()).isCloseTo(2.3472, within(1e-3));
        assertThat(modes.circle().growth()).isCloseTo(-0.0082, within(1e-4));
    }

    @Test
    void anotherLibraryFindsTheSameEigenvalues() {
        for (double[][] matrix : new double[][][] {
            Navion.longitudinal(),
            Navion.lateral(),
            PloverGlide.linear().longitudinal(),
            PloverGlide.linear().lateral()
        }) {
            Complex[] ours = Eigenvalues.of(matrix);
            var theirs = DecompositionFactory_DDRM.eig(matrix.length, false);
            assertThat(theirs.decompose(new DMatrixRMaj(matrix))).isTrue();
            double[][] sorted = new double[ours.length][];
            double[][] others = new double[ours.length][];
            for (int i = 0; i < ours.length; i++) {
                Complex_F64 other = theirs.getEigenvalue(i);
                sorted[i] = new double[] {ours[i].getReal(), ours[i].getImaginary()};
                others[i] = new double[] {other.getReal(), other.getImaginary()};
            }
            Comparator<double[]> order = Comparator.<double[]>comparingDouble(a -> Math.round(1e6 * a[0]))
                    .thenComparingDouble(a -> a[1]);
            Arrays.sort(sorted, order);
            Arrays.sort(others, order);
            for (int i = 0; i < sorted.length; i++) {
                assertThat(sorted[i]).containsExactly(others[i], within(1e-8));
            }
        }
    }

    @Test
    void twoRealRootsDoNotSwing() {
        double[][] longitudinal = {{-0.1, 0, 0, 0}, {0, 0.5, 0, 0}, {0, 0, -4, 0}, {0, 0, 0, -9}};
        double[][] lateral = {{-1, 3, 0, 0}, {-3, -1, 0, 0}, {0, 0, -12, 0}, {0, 0, 0, 0.02}};
        Modes modes = Modes.of(longitudinal, lateral);
        assertThat(modes.speedAndHeight().swings()).isFalse();
        assertThat(modes.speedAndHeight().period()).isNaN();
        assertThat(modes.speedAndHeight().dies()).isFalse();
        assertThat(modes.speedAndHeight().halfOrDouble()).isCloseTo(Math.log(2) / 0.5, within(1e-9));
        assertThat(modes.noseUpDown().growth()).isCloseTo(-4, within(1e-9));
        assertThat(modes.noseUpDown().otherGrowth()).isCloseTo(-9, within(1e-9));
        assertThat(modes.noseUpDown().frequency()).isCloseTo(6, within(1e-9));
        assertThat(modes.noseUpDown().damping()).isCloseTo(13.0 / 12, within(1e-9));
        assertThat(modes.noseLeftRight().period()).isCloseTo(2 * Math.PI / 3, within(1e-9));
        assertThat(modes.roll().growth()).isCloseTo(-12, within(1e-9));
        assertThat(modes.circle().dies()).isFalse();
    }

    @Test
    void lagOfTheDownwashIsNoMode() {
        double[][] five = {
            {-0.1, 1, 0, 0, 0}, {-1, -0.1, 0, 0, 0}, {0, 0, -3, 5, 0}, {0, 0, -5, -3, 0}, {0, 0, 0, 0, -10}
        };
        double[][] four = {{-0.1, 1, 0, 0}, {-1, -0.1, 0, 0}, {0, 0, -3, 5}, {0, 0, -5, -3}};
        assertThat(Modes.of(five, four).noseUpDown().swing()).isCloseTo(5, within(1e-9));
        assertThat(Modes.of(five, four).speedAndHeight().swing()).isCloseTo(1, within(1e-9));
    }

    @Test
    void rollAndCircleMaySwingTogether() {
        double[][] four = {{-0.1, 1, 0, 0}, {-1, -0.1, 0, 0}, {0, 0, -3, 5}, {0, 0, -5, -3}};
        Modes modes = Modes.of(four, four);
        assertThat(modes.noseLeftRight().swing()).isCloseTo(5, within(1e-9));
        assertThat(modes.roll().swing()).isCloseTo(1, within(1e-9));
        assertThat(modes.circle().growth()).isEqualTo(modes.roll().growth());
    }

    @Test
    void nothingAtAllAndNoNumber() {
        assertThat(Eigenvalues.of(new double[3][3])).hasSize(3).allMatch(Complex::isZero);
        assertThatIllegalArgumentException().isThrownBy(() -> Eigenvalues.of(new double[][] {{Double.NaN}}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Eigenvalues.of(new double[][] {{1, 0}, {0, Double.POSITIVE_INFINITY}}));
    }
}
