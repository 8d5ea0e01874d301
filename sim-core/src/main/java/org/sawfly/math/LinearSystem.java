package org.sawfly.math;

/** Small dense systems of linear equations by Gauss elimination with the largest pivot of the column. */
public final class LinearSystem {
    private LinearSystem() {}

    /**
     * Solves {@code a x = b} in place: {@code a} is used up, {@code b} becomes the answer.
     *
     * @return false when the matrix is singular or holds a value that is not a number; {@code b} is then meaningless
     */
    public static boolean solve(double[][] a, double[] b) {
        int n = b.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) {
                    pivot = row;
                }
            }
            double[] pivotRow = a[pivot];
            if (!(Math.abs(pivotRow[column]) > 0)) {
                return false;
            }
            a[pivot] = a[column];
            a[column] = pivotRow;
            double value = b[pivot];
            b[pivot] = b[column];
            b[column] = value;
            for (int row = column + 1; row < n; row++) {
                double factor = a[row][column] / pivotRow[column];
                for (int k = column + 1; k < n; k++) {
                    a[row][k] -= factor * pivotRow[k];
                }
                b[row] -= factor * value;
            }
        }
        for (int row = n - 1; row >= 0; row--) {
            double sum = b[row];
            for (int k = row + 1; k < n; k++) {
                sum -= a[row][k] * b[k];
            }
            b[row] = sum / a[row][row];
        }
        return true;
    }

    /**
     * The inverse of the block of a square matrix where {@code free} is true; rows and columns outside it are zero.
     *
     * @throws IllegalArgumentException when the block is singular
     */
    public static double[][] inverseOfBlock(double[][] matrix, boolean[] free) {
        int size = matrix.length;
        int n = 0;
        int[] place = new int[size];
        for (int i = 0; i < size; i++) {
            if (free[i]) {
                place[n++] = i;
            }
        }
        double[][] inverse = new double[size][size];
        for (int column = 0; column < n; column++) {
            double[][] block = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < n; k++) {
                    block[i][k] = matrix[place[i]][place[k]];
                }
            }
            double[] unit = new double[n];
            unit[column] = 1;
            if (!solve(block, unit)) {
                throw new IllegalArgumentException("the block is singular");
            }
            for (int i = 0; i < n; i++) {
                inverse[place[i]][place[column]] = unit[i];
            }
        }
        return inverse;
    }
}
