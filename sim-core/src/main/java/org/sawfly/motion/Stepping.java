package org.sawfly.motion;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.math.Roots;

/**
 * What integrators of one step at a time share: the loop over steps, the roots of stop events on the dense output, the
 * watchers, the bound on evaluations. Allocates nothing once the size of the system is known.
 */
abstract class Stepping implements Integrator, Step {
    /** How closely the root of an event is found [s]. */
    private static final double ROOT_TOLERANCE = 1e-10;

    private final int mostEvaluations;
    private final DoubleUnaryOperator onStep = this::eventAt;
    private int evaluations;
    private int runEvaluations;
    private Equations equations;
    private StopEvent sought;
    private double[] scratch = new double[0];
    private double[] eventValues = new double[0];
    private double shownEnd;

    /** Ends of the current step [s]. */
    protected double stepStart, stepEnd;
    /** State and its derivative at the ends of the current step. */
    protected double[] before = new double[0], after = new double[0], rateBefore, rateAfter;

    /** Made with a bound on the evaluations in one run. */
    protected Stepping(int mostEvaluations) {
        this.mostEvaluations = mostEvaluations;
    }

    @Override
    public final Stop run(
            Equations system,
            double start,
            double[] state,
            double end,
            List<StopEvent> stops,
            List<StepWatcher> watchers) {
        equations = system;
        runEvaluations = 0;
        prepare(system.size(), stops.size());
        System.arraycopy(state, 0, before, 0, system.size());
        evaluate(start, before, rateBefore);
        checkFinite(start, before, rateBefore);
        for (int i = 0; i < stops.size(); i++) {
            eventValues[i] = stops.get(i).value(start, before);
        }
        stepStart = start;
        begin(start, end);
        int stop = Stop.AT_END;
        while (stop == Stop.AT_END && stepStart < end) {
            advance(end);
            shownEnd = stepEnd;
            for (int i = 0; i < stops.size(); i++) {
                double value = stops.get(i).value(stepEnd, after);
                if (stops.get(i).crossed(eventValues[i], value)) {
                    double root = rootOf(stops.get(i), eventValues[i], value);
                    if (stop == Stop.AT_END || root < shownEnd) {
                        stop = i;
                        shownEnd = root;
                    }
                }
                eventValues[i] = value;
            }
            for (int i = 0; i < watchers.size(); i++) {
                watchers.get(i).watch(this);
            }
            at(shownEnd, state);
            swap();
        }
        return new Stop(shownEnd, stop);
    }

    private void prepare(int size, int events) {
        if (before.length != size) {
            before = new double[size];
            after = new double[size];
            rateBefore = new double[size];
            rateAfter = new double[size];
            scratch = new double[size];
            resize(size);
        }
        if (eventValues.length < events) {
            eventValues = new double[events];
        }
    }

    private void swap() {
        stepStart = stepEnd;
        double[] held = before;
        before = after;
        after = held;
        held = rateBefore;
        rateBefore = rateAfter;
        rateAfter = held;
    }

    /** First time at which the event counts as passed, within the current step. */
    private double rootOf(StopEvent event, double valueBefore, double valueAfter) {
        sought = event;
        double root = Roots.between(onStep, stepStart, valueBefore, stepEnd, valueAfter, ROOT_TOLERANCE);
        for (double beyond = ROOT_TOLERANCE; !event.crossed(valueBefore, eventAt(root)); beyond *= 2) {
            root = Math.min(stepEnd, root + beyond);
            if (root >= stepEnd) {
                return stepEnd;
            }
        }
        return root;
    }

    private double eventAt(double t) {
        at(t, scratch);
        return sought.value(t, scratch);
    }

    /** Evaluates the equations, counted. */
    protected final void evaluate(double t, double[] state, double[] rates) {
        evaluations++;
        if (++runEvaluations > mostEvaluations) {
            throw new IntegrationException(IntegrationException.Reason.TOO_MANY_EVALUATIONS, t);
        }
        equations.derivatives(t, state, rates);
    }

    /** Stops a motion that has left the numbers. */
    protected static void checkFinite(double t, double[] state, double[] rates) {
        double sum = 0;
        for (int i = 0; i < state.length; i++) {
            sum += 0 * state[i] + 0 * rates[i];
        }
        if (Double.isNaN(sum)) {
            throw new IntegrationException(IntegrationException.Reason.NOT_FINITE, t);
        }
    }

    /** Makes room for a system of a size. */
    protected abstract void resize(int size);

    /** Begins a run. */
    protected abstract void begin(double start, double end);

    /** Goes one step on from stepStart, not beyond end: sets stepEnd, after and rateAfter. */
    protected abstract void advance(double end);

    /** Writes the state at a time within the whole step, ends excluded. */
    protected abstract void within(double t, double[] state);

    @Override
    public final double start() {
        return stepStart;
    }

    @Override
    public final double end() {
        return shownEnd;
    }

    @Override
    public final void at(double t, double[] state) {
        if (t == stepEnd) {
            System.arraycopy(after, 0, state, 0, after.length);
        } else if (t == stepStart) {
            System.arraycopy(before, 0, state, 0, before.length);
        } else {
            within(t, state);
        }
    }

    @Override
    public final int evaluations() {
        return evaluations;
    }
}
