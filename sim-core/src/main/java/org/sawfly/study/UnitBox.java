package org.sawfly.study;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;
import org.sawfly.math.Minimum;

/**
 * One search: the ends taken to 0 and 1, the best place seen kept, evaluations counted. What has no value counts as a little
 * worse than the worst seen, so that a search turns back from it.
 */
final class UnitBox {
    private static final double FIRST_REGION = 0.2;
    private static final double LAST_REGION = 1e-6;
    private static final double FIRST_CLOUD = 0.3;
    private static final double SMALLEST_CHANGE = 1e-13;
    private static final double BRENT_TOLERANCE = 1e-6;

    private final ToDoubleFunction<double[]> function;
    private final double[] low;
    private final double[] span;
    private final double[] start;
    private final int most;
    private double[] best;
    private double least = Double.NaN;
    private double worst;
    private int evaluations;

    /** The evaluations are used up. */
    private static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    UnitBox(ToDoubleFunction<double[]> function, double[] start, double[] low, double[] high, int most) {
        this.function = function;
        this.low = low.clone();
        this.most = most;
        this.span = new double[low.length];
        this.start = new double[low.length];
        this.best = start.clone();
        for (int i = 0; i < low.length; i++) {
            span[i] = high[i] - low[i];
            if (!(span[i] > 0) || !(start[i] >= low[i] && start[i] <= high[i])) {
                throw new IllegalArgumentException(
                        "start " + start[i] + " between ends " + low[i] + " and " + high[i] + " of number " + i);
            }
            this.start[i] = (start[i] - low[i]) / span[i];
        }
    }

    Optimiser.Found byQuadraticModels() {
        int n = start.length;
        try {
            ask(start);
            if (n == 1) {
                Minimum.between(x -> ask(new double[] {x}), 0, 1, BRENT_TOLERANCE);
            } else {
                new BOBYQAOptimizer(2 * n + 1, FIRST_REGION, LAST_REGION)
                        .optimize(
                                new MaxEval(2 * most),
                                new ObjectiveFunction(this::ask),
                                GoalType.MINIMIZE,
                                new InitialGuess(start),
                                new SimpleBounds(new double[n], ones(n)));
            }
        } catch (Spent | MathRuntimeException e) {
            // the best place seen is the answer, however the search ended
            return found();
        }
        return found();
    }

    Optimiser.Found byEvolution(long seed) {
        int n = start.length;
        int population = 4 + (int) (3 * Math.log(n));
        try {
            ask(start);
            for (int run = 0; evaluations < most; run++) {
                double[] from = run == 0 ? start : anew(run, seed);
                evolve(n, population << run, from, seed + run);
            }
        } catch (Spent e) {
            return found();
        }
        return found();
    }

    private double[] anew(int run, long seed) {
        return new SobolPoints(start.length, seed).point(run);
    }

    private void evolve(int n, int population, double[] from, long seed) {
        double[] cloud = new double[n];
        Arrays.fill(cloud, FIRST_CLOUD);
        try {
            new CMAESOptimizer(
                            most,
                            Double.NEGATIVE_INFINITY,
                            true,
                            0,
                            0,
                            new Well19937c(seed),
                            false,
                            new SimpleValueChecker(SMALLEST_CHANGE, SMALLEST_CHANGE))
                    .optimize(
                            new MaxEval(2 * most),
                            new ObjectiveFunction(this::ask),
                            GoalType.MINIMIZE,
                            new InitialGuess(from),
                            new SimpleBounds(new double[n], ones(n)),
                            new CMAESOptimizer.Sigma(cloud),
                            new CMAESOptimizer.PopulationSize(population));
        } catch (MathRuntimeException e) {
            // a cloud that has shrunk to nothing ends this run; the next one starts afresh
            evaluations++;
        }
    }

    private double ask(double[] unit) {
        if (evaluations >= most) {
            throw new Spent();
        }
        evaluations++;
        double[] at = new double[unit.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = low[i] + span[i] * Math.max(0, Math.min(1, unit[i]));
        }
        double value = function.applyAsDouble(at);
        if (Double.isNaN(value)) {
            return worst + 0.1 * (1 + Math.abs(worst));
        }
        worst = Double.isNaN(least) ? value : Math.max(worst, value);
        if (!(value >= least)) {
            least = value;
            best = at;
        }
        return value;
    }

    private Optimiser.Found found() {
        return new Optimiser.Found(best.clone(), least, evaluations);
    }

    private static double[] ones(int n) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }
}
