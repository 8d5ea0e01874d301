package org.sawfly.math;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** The place of the minimum of one function of one variable (Brent's method, by Hipparchus). */
public final class Minimum {
    private static final int MOST_EVALUATIONS = 200;
    private static final double RELATIVE = 1e-9;

    private Minimum() {}

    /**
     * Where {@code f} is least between two places; one of several local minima if there are such.
     *
     * @param f the function
     * @param low one end
     * @param high the other end
     * @param tolerance distance to which the place is sought
     */
    public static double between(DoubleUnaryOperator f, double low, double high, double tolerance) {
        return between(f, low, 0.5 * (low + high), high, tolerance);
    }

    /**
     * Looks at so many places evenly from end to end first and then between the neighbours of the least: for functions with
     * several hollows or with steps.
     */
    public static double scanned(DoubleUnaryOperator f, double low, double high, int places, double tolerance) {
        double step = (high - low) / (places - 1);
        double best = low;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < places; i++) {
            double at = low + i * step;
            double value = f.applyAsDouble(at);
            if (value < least) {
                least = value;
                best = at;
            }
        }
        double from = Math.max(low, best - step);
        double to = Math.min(high, best + step);
        return between(f, from, Math.max(from + 0.1 * step, Math.min(to - 0.1 * step, best)), to, tolerance);
    }

    /** As {@link #between(DoubleUnaryOperator, double, double, double)}, beginning at a place between the two. */
    public static double between(DoubleUnaryOperator f, double low, double start, double high, double tolerance) {
        return new BrentOptimizer(RELATIVE, tolerance)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        new UnivariateObjectiveFunction(f::applyAsDouble),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high, start))
                .getPoint();
    }
}
