package org.sawfly.stability;

import java.util.Arrays;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;

/** Eigenvalues of a small real matrix. */
final class Eigenvalues {
    private Eigenvalues() {}

    /**
     * All of them, in no promised order.
     *
     * @throws IllegalArgumentException if an element is not finite: the decomposition itself would let it pass
     */
    static Complex[] of(double[][] matrix) {
        boolean zero = true;
        for (double[] row : matrix) {
            for (double element : row) {
                if (!Double.isFinite(element)) {
                    throw new IllegalArgumentException("a matrix element is " + element);
                }
                zero &= element == 0;
            }
        }
        if (zero) {
            // the decomposition refuses a matrix without size
            Complex[] none = new Complex[matrix.length];
            Arrays.fill(none, Complex.ZERO);
            return none;
        }
        return new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(matrix)).getEigenvalues();
    }
}
