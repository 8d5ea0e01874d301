package org.sawfly.study;

import java.util.function.ToDoubleFunction;

/** Looks for the least value of a function of several numbers, each within its ends. */
@FunctionalInterface
public interface Optimiser {
    /**
     * Looks.
     *
     * @param function NaN where it has no value; it is never asked outside the ends
     * @param start within the ends
     * @param low lower ends
     * @param high upper ends
     */
    Found least(ToDoubleFunction<double[]> function, double[] start, double[] low, double[] high);

    /**
     * What was found.
     *
     * @param at where
     * @param value there; NaN if the function had no value anywhere
     * @param evaluations how many it took
     */
    record Found(double[] at, double value, int evaluations) {}

    /**
     * For smooth functions with one hollow: quadratic models in a region of trust (M. J. D. Powell, The BOBYQA algorithm
     * for bound constrained optimization without derivatives, DAMTP 2009/NA06), by Hipparchus.
     *
     * @param most evaluations
     */
    static Optimiser smooth(int most) {
        return (function, start, low, high) -> new UnitBox(function, start, low, high, most).byQuadraticModels();
    }

    /**
     * For functions with many hollows: evolution of a normal cloud (N. Hansen, The CMA evolution strategy: a comparing
     * review, 2006), by Hipparchus, started again with twice the population as long as evaluations are left (A. Auger and
     * N. Hansen, A restart CMA evolution strategy with increasing population size, CEC 2005).
     *
     * @param most evaluations
     * @param seed the same seed takes the same way
     */
    static Optimiser rugged(int most, long seed) {
        return (function, start, low, high) -> new UnitBox(function, start, low, high, most).byEvolution(seed);
    }
}
