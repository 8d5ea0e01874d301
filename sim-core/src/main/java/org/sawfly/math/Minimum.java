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
