package org.sawfly.math;

/**
 * Newton's method for a few equations in as many unknowns. Slopes are differences at first and are then kept up to date by
 * the steps themselves (Broyden, "A class of methods for solving nonlinear simultaneous equations", Mathematics of
 * Computation 19, 1965); where that serves badly they are differenced anew. Goes on as long as that helps, so that the
 * answer does not depend on where it began by more than rounding. Not for several threads.
 */
public final class Newton {
    private static final int MOST_ITERATIONS = 60;
    private static final int MOST_HALVINGS = 8;
    /** A step that leaves more of the misses than this calls for new slopes [1]. */
    private static final double POOR = 0.4;

    private final Equations equations;
    private final double converged;
    private final double goodEnough;
    private final int n;
    private final double[] miss;
    private final double[] moved;
    private final double[] move;
    private final double[] from;
    private final double[][] slopes;
    private final double[][] used;
    private boolean known;

    /** Equations to be solved. */
    @FunctionalInterface
    public interface Equations {
        /** Writes what each equation misses zero by; may read more of {@code x} than the unknowns. */
        void miss(double[] x, double[] out);
    }

    /**
     * Made for some equations.
     *
     * @param unknowns how many
     * @param converged size of all misses (root of the sum of squares) at which it stops
     * @param goodEnough size of all misses that will do when no step helps any more
     */
    public Newton(int unknowns, Equations equations, double converged, double goodEnough) {
        this.n = unknowns;
        this.equations = equations;
        this.converged = converged;
        this.goodEnough = goodEnough;
        this.miss = new double[n];
        this.moved = new double[n];
        this.move = new double[n];
        this.from = new double[n];
        this.slopes = new double[n][n];
        this.used = new double[n][n];
    }

    /**
     * Solves from a guess.
     *
     * @param x guess, becomes the answer; its first numbers are the unknowns
     * @param differences over which slopes are taken, also the scale of the unknowns
     * @param largestMoves of the unknowns in one step
     * @return whether it settled
     */
    public boolean solve(double[] x, double[] differences, double[] largestMoves) {
        known = false;
        return again(x, differences, largestMoves);
    }

    /** As {@link #solve}, beginning with the slopes the last solution was left with: for a problem much like the last. */
    public boolean again(double[] x, double[] differences, double[] largestMoves) {
        equations.miss(x, miss);
        double size = size(miss);
        for (int iteration = 0; iteration < MOST_ITERATIONS && size > converged; iteration++) {
            boolean fresh = !known;
            if (fresh) {
                difference(x, differences);
            }
            System.arraycopy(x, 0, from, 0, n);
            boolean solvable = direction();
            double reached = solvable ? step(x, share(largestMoves), size, fresh ? MOST_HALVINGS : 1) : Double.NaN;
            if (!(reached < size)) {
                System.arraycopy(from, 0, x, 0, n);
                if (fresh) {
                    return solvable && size < goodEnough;
                }
                known = false;
                continue;
            }
            update(x, differences);
            known = reached < POOR * size;
            System.arraycopy(moved, 0, miss, 0, n);
            size = reached;
        }
        return size < goodEnough;
    }

    private static double size(double[] x) {
        double sum = 0;
        for (double value : x) {
            sum += value * value;
        }
        return Math.sqrt(sum);
    }

    private void difference(double[] x, double[] differences) {
        for (int k = 0; k < n; k++) {
            double held = x[k];
            x[k] = held + differences[k];
            equations.miss(x, moved);
            x[k] = held;
            for (int i = 0; i < n; i++) {
                slopes[i][k] = (moved[i] - miss[i]) / differences[k];
            }
        }
    }

    private boolean direction() {
        for (int i = 0; i < n; i++) {
            System.arraycopy(slopes[i], 0, used[i], 0, n);
            move[i] = -miss[i];
        }
        return LinearSystem.solve(used, move);
    }

    private double share(double[] largestMoves) {
        double share = 1;
        for (int k = 0; k < n; k++) {
            share = Math.min(share, largestMoves[k] / Math.abs(move[k]));
        }
        return share;
    }

    /** Takes the step, shorter and shorter until the misses shrink; their size afterwards. */
    private double step(double[] x, double share, double size, int tries) {
        double reached = Double.NaN;
        double part = share;
        for (int i = 0; i < tries && !(reached < size); i++) {
            for (int k = 0; k < n; k++) {
                x[k] = from[k] + part * move[k];
            }
            equations.miss(x, moved);
            reached = size(moved);
            part /= 2;
        }
        return reached;
    }

    private void update(double[] x, double[] scales) {
        double square = 0;
        for (int k = 0; k < n; k++) {
            double step = (x[k] - from[k]) / scales[k];
            square += step * step;
        }
        for (int i = 0; i < n; i++) {
            double rest = moved[i] - miss[i];
            for (int k = 0; k < n; k++) {
                rest -= slopes[i][k] * (x[k] - from[k]);
            }
            for (int k = 0; k < n; k++) {
                slopes[i][k] += rest * (x[k] - from[k]) / (scales[k] * scales[k] * square);
            }
        }
    }
}
