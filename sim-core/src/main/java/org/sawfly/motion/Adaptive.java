package org.sawfly.motion;

import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/**
 * Dormand and Prince's method of order 5(4) with the coefficients, the error estimate and the rule for the step of
 * Hipparchus, and dense output of order 4. Source: Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, 2nd
 * ed. 1993, section II.5, table 5.2, and section II.6.
 *
 * <p>The loop over the stages is here instead of Hipparchus' own: stage by stage over whole arrays and without allocation it
 * leaves the time to the equations. A test holds the two to the same steps and the same results.
 *
 * <p>A second run goes on with the step the last one would have taken next; a step refused costs six evaluations.
 */
public final class Adaptive extends Stepping {
    /** Relative tolerance of the flights. */
    public static final double USUAL_TOLERANCE = 1e-6;

    /** Bound on the evaluations of one run: some twenty times those of a whole flight. */
    public static final int USUAL_BOUND = 20_000;

    /** Smallest and largest step [s]. */
    static final double SMALLEST_STEP = 1e-9, LARGEST_STEP = 0.25;

    private static final int STAGES = 7;
    /** Weights of the quartic term of the dense output, by stage. */
    private static final double[] QUARTIC = {
        -12715105075.0 / 11282082432.0,
        0,
        87487479700.0 / 32700410799.0,
        -10690763975.0 / 1880347072.0,
        701980252875.0 / 199316789632.0,
        -1453857185.0 / 822651844.0,
        69997945.0 / 29380423.0
    };

    private final Method method;
    private final double relative;
    private final double[] absolute;
    private final double[][] a;
    private final double[] c;
    private final double[][] slopes = new double[STAGES][];
    private double[] probe;
    private double[] quartic;
    private boolean quarticKnown;
    private double nextStep;

    /**
     * Made for one flight.
     *
     * @param relative tolerance of a step, relative
     * @param absolute tolerance of a step in each number of the state
     * @param mostEvaluations in one run
     */
    public Adaptive(double relative, double[] absolute, int mostEvaluations) {
        super(mostEvaluations);
        this.relative = relative;
        this.absolute = absolute.clone();
        method = new Method(absolute, relative);
        a = method.getA();
        c = method.getC();
    }

    /** An integrator for flights: the usual tolerance and bound. */
    public static Adaptive usual() {
        return of(USUAL_TOLERANCE);
    }

    /** An integrator for flights at another relative tolerance; the absolute ones go with it. */
    public static Adaptive of(double relative) {
        double[] absolute = StateLayout.absoluteTolerance();
        for (int i = 0; i < absolute.length; i++) {
            absolute[i] *= relative / USUAL_TOLERANCE;
        }
        return new Adaptive(relative, absolute, USUAL_BOUND);
    }

    /** Sets the first step of the next run [s]. */
    void startWith(double step) {
        nextStep = step;
    }

    @Override
    protected void resize(int size) {
        if (size != absolute.length) {
            throw new IllegalArgumentException("tolerances for " + absolute.length + " numbers, a state of " + size);
        }
        for (int i = 1; i < STAGES - 1; i++) {
            slopes[i] = new double[size];
        }
        probe = new double[size];
        quartic = new double[size];
    }

    @Override
    protected void begin(double start, double end) {
        if (nextStep == 0) {
            nextStep = firstStep();
        }
    }

    /** A first guess: a hundredth of the time in which the state would change by itself, both seen by the tolerances. */
    private double firstStep() {
        double values = 0;
        double changes = 0;
        for (int i = 0; i < before.length; i++) {
            double scale = absolute[i] + relative * Math.abs(before[i]);
            values += before[i] / scale * (before[i] / scale);
            changes += rateBefore[i] / scale * (rateBefore[i] / scale);
        }
        double guess = values > 0 && changes > 0 ? 0.01 * Math.sqrt(values / changes) : SMALLEST_STEP;
        return Math.max(1e-6, Math.min(guess, 0.01));
    }

    @Override
    protected void advance(double end) {
        slopes[0] = rateBefore;
        slopes[STAGES - 1] = rateAfter;
        double exponent = -1.0 / method.getOrder();
        double step = nextStep;
        while (true) {
            boolean cut = stepStart + step >= end - SMALLEST_STEP;
            stepEnd = cut ? end : stepStart + step;
            double h = stepEnd - stepStart;
            stages(h);
            double error = method.error(slopes, before, after, h);
            double factor = Math.min(
                    method.getMaxGrowth(),
                    Math.max(method.getMinReduction(), method.getSafety() * Math.pow(error, exponent)));
            if (error < 1) {
                double wanted = Math.min(LARGEST_STEP, h * factor);
                nextStep = cut ? Math.max(wanted, step) : wanted;
                quarticKnown = false;
                return;
            }
            step = h * (Double.isNaN(error) ? method.getMinReduction() : Math.min(1, factor));
            if (step < SMALLEST_STEP) {
                checkFinite(stepEnd, after, rateAfter);
                throw new IntegrationException(IntegrationException.Reason.STEP_TOO_SMALL, stepStart);
            }
        }
    }

    private void stages(double h) {
        double[] y = before;
        double[] k0 = slopes[0];
        int n = y.length;
        for (int stage = 1; stage < STAGES; stage++) {
            double[] weights = a[stage - 1];
            double[] target = stage == STAGES - 1 ? after : probe;
            double first = h * weights[0];
            for (int i = 0; i < n; i++) {
                target[i] = y[i] + first * k0[i];
            }
            for (int k = 1; k < stage; k++) {
                if (weights[k] != 0) {
                    add(target, h * weights[k], slopes[k]);
                }
            }
            double t = stage == STAGES - 1 ? stepEnd : stepStart + c[stage - 1] * h;
            evaluate(t, target, slopes[stage]);
        }
    }

    private static void add(double[] target, double weight, double[] slope) {
        for (int i = 0; i < target.length; i++) {
            target[i] += weight * slope[i];
        }
    }

    @Override
    protected void within(double t, double[] state) {
        double h = stepEnd - stepStart;
        if (!quarticKnown) {
            Arrays.fill(quartic, 0);
            for (int k = 0; k < STAGES; k++) {
                add(quartic, h * QUARTIC[k], slopes[k]);
            }
            quarticKnown = true;
        }
        double x = (t - stepStart) / h;
        double rest = 1 - x;
        for (int i = 0; i < before.length; i++) {
            double rise = after[i] - before[i];
            double bend = h * rateBefore[i] - rise;
            double twist = rise - h * rateAfter[i] - bend;
            state[i] = before[i] + x * (rise + rest * (bend + x * (twist + rest * quartic[i])));
        }
    }

    /** Hipparchus' method, opened for its error estimate. */
    private static final class Method extends DormandPrince54Integrator {
        Method(double[] absolute, double relative) {
            super(SMALLEST_STEP, LARGEST_STEP, absolute, everywhere(absolute.length, relative));
            sanityChecks(new ODEState(0, new double[absolute.length]), 1);
        }

        private static double[] everywhere(int size, double value) {
            double[] values = new double[size];
            Arrays.fill(values, value);
            return values;
        }

        double error(double[][] slopes, double[] before, double[] after, double h) {
            return estimateError(slopes, before, after, h);
        }
    }
}
