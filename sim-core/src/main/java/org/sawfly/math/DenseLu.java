package org.sawfly.math;

import java.util.Arrays;

/**
 * Solution of small dense systems A x = b by elimination with row exchange (Golub and Van Loan, Matrix Computations,
 * algorithm 3.4.1: outer products, partial pivoting). Immutable after construction.
 */
public final class DenseLu {
    private final int n;
    private final double[] lu;
    private final int[] rows;

    /**
     * Decomposes A.
     *
     * @param a by rows, {@code a[i * n + j]}, n by n; copied
     * @param n number of unknowns
     * @throws ArithmeticException when A is singular to rounding
     */
    public DenseLu(double[] a, int n) {
        if (a.length != n * n) {
            throw new IllegalArgumentException(
                    "a system of " + n + " unknowns needs " + n * n + " values, got " + a.length);
        }
        this.n = n;
        this.lu = a.clone();
        this.rows = new int[n];
        double largest = 0;
        for (double value : a) {
            largest = Math.max(largest, Math.abs(value));
        }
        for (int i = 0; i < n; i++) {
            rows[i] = i;
        }
        for (int k = 0; k < n; k++) {
            exchange(k, pivot(k));
            double diagonal = lu[k * n + k];
            if (!(Math.abs(diagonal) > 1e-14 * largest)) {
                throw new ArithmeticException("singular system: pivot " + k + " is " + diagonal);
            }
            eliminate(k, diagonal);
        }
    }

    private int pivot(int k) {
        int best = k;
        for (int i = k + 1; i < n; i++) {
            if (Math.abs(lu[i * n + k]) > Math.abs(lu[best * n + k])) {
                best = i;
            }
        }
        return best;
    }

    private void exchange(int k, int other) {
        if (k == other) {
            return;
        }
        int row = rows[k];
        rows[k] = rows[other];
        rows[other] = row;
        for (int j = 0; j < n; j++) {
            double value = lu[k * n + j];
            lu[k * n + j] = lu[other * n + j];
            lu[other * n + j] = value;
        }
    }

    private void eliminate(int k, double diagonal) {
        for (int i = k + 1; i < n; i++) {
            double factor = lu[i * n + k] / diagonal;
            lu[i * n + k] = factor;
            for (int j = k + 1; j < n; j++) {
                lu[i * n + j] -= factor * lu[k * n + j];
            }
        }
    }

    /** Solves A x = b; b and x may be the same array. */
    public void solve(double[] b, double[] x) {
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = b[rows[i]];
            for (int j = 0; j < i; j++) {
                sum -= lu[i * n + j] * y[j];
            }
            y[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = y[i];
            for (int j = i + 1; j < n; j++) {
                sum -= lu[i * n + j] * x[j];
            }
            x[i] = sum / lu[i * n + i];
        }
    }

    /** The inverse of A, by rows. */
    public double[] inverse() {
        double[] result = new double[n * n];
        double[] column = new double[n];
        for (int j = 0; j < n; j++) {
            Arrays.fill(column, 0);
            column[j] = 1;
            solve(column, column);
            for (int i = 0; i < n; i++) {
                result[i * n + j] = column[i];
            }
        }
        return result;
    }
}
