package org.sawfly.motion;

/**
 * The classical fourth-order Runge-Kutta method at a fixed step, with a cubic through values and slopes as dense output.
 * Source: Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, sections II.1 and II.6. The
 * ends of the steps come from an index; the last step of a run ends where the run ends.
 */
public final class FixedStep extends Stepping {
    /** Step within 1 mm of launch height of the adaptive one [s]. */
    public static final double USUAL_STEP = 0.010;

    private final double step;
    private double runStart;
    private int index;
    private double[] second;
    private double[] third;
    private double[] fourth;
    private double[] probe;

    /**
     * Made for one flight.
     *
     * @param step [s]
     * @param mostEvaluations in one run
     */
    public FixedStep(double step, int mostEvaluations) {
        super(mostEvaluations);
        if (!(step > 0)) {
            throw new IllegalArgumentException("a step must be above 0 s, not " + step);
        }
        this.step = step;
    }

    @Override
    protected void resize(int size) {
        second = new double[size];
        third = new double[size];
        fourth = new double[size];
        probe = new double[size];
    }

    @Override
    protected void begin(double start, double end) {
        runStart = start;
        index = 0;
    }

    @Override
    protected void advance(double end) {
        index++;
        double t = stepStart;
        double next = runStart + index * step;
        stepEnd = next > end - 1e-6 * step ? end : next;
        double h = stepEnd - t;
        int n = before.length;
        double[] first = rateBefore;
        probe(0.5 * h, first);
        evaluate(t + 0.5 * h, probe, second);
        probe(0.5 * h, second);
        evaluate(t + 0.5 * h, probe, third);
        probe(h, third);
        evaluate(stepEnd, probe, fourth);
        double sixth = h / 6;
        for (int i = 0; i < n; i++) {
            after[i] = before[i] + sixth * (first[i] + 2 * (second[i] + third[i]) + fourth[i]);
        }
        evaluate(stepEnd, after, rateAfter);
        checkFinite(stepEnd, after, rateAfter);
    }

    private void probe(double h, double[] rate) {
        for (int i = 0; i < before.length; i++) {
            probe[i] = before[i] + h * rate[i];
        }
    }

    @Override
    protected void within(double t, double[] state) {
        double h = stepEnd - stepStart;
        double x = (t - stepStart) / h;
        double rest = 1 - x;
        double slopeBefore = h * x * rest * rest;
        double slopeAfter = -h * x * x * rest;
        double valueAfter = x * x * (3 - 2 * x);
        for (int i = 0; i < before.length; i++) {
            state[i] = before[i]
                    + valueAfter * (after[i] - before[i])
                    + slopeBefore * rateBefore[i]
                    + slopeAfter * rateAfter[i];
        }
    }
}
