package org.sawfly.study.log;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.Step;
import org.sawfly.motion.StepWatcher;

/**
 * Height over time of one flight: cubic between steps' points through heights and climb rates. Goes straight on after the
 * end, so that a fit finds a height there too.
 */
final class HeightCurve implements StepWatcher, DoubleUnaryOperator {
    private static final double SPACING = 0.02;

    private final double[] state = new double[StateLayout.SIZE];
    private final double[] rotation = new double[9];
    private double[] times = new double[512];
    private double[] heights = new double[512];
    private double[] climbs = new double[512];
    private int count;

    @Override
    public void watch(Step step) {
        if (count == 0) {
            add(step, step.start());
        }
        int pieces = (int) Math.max(1, Math.ceil((step.end() - step.start()) / SPACING));
        for (int i = 1; i <= pieces; i++) {
            add(step, i == pieces ? step.end() : step.start() + (step.end() - step.start()) * i / pieces);
        }
    }

    private void add(Step step, double t) {
        if (count > 0 && t <= times[count - 1]) {
            return;
        }
        if (count == times.length) {
            times = Arrays.copyOf(times, 2 * count);
            heights = Arrays.copyOf(heights, 2 * count);
            climbs = Arrays.copyOf(climbs, 2 * count);
        }
        step.at(t, state);
        Kinematics.rotation(state, rotation);
        times[count] = t;
        heights[count] = Kinematics.height(state);
        climbs[count] = Kinematics.climbRate(state, rotation);
        count++;
    }

    @Override
    public double applyAsDouble(double time) {
        int last = count - 1;
        if (time >= times[last]) {
            return heights[last] + climbs[last] * (time - times[last]);
        }
        if (time <= times[0]) {
            return heights[0] + climbs[0] * (time - times[0]);
        }
        int found = Arrays.binarySearch(times, 0, count, time);
        int i = found >= 0 ? Math.min(found, last - 1) : -found - 2;
        double h = times[i + 1] - times[i];
        double x = (time - times[i]) / h;
        double rest = 1 - x;
        return heights[i] * rest * rest * (1 + 2 * x)
                + heights[i + 1] * x * x * (3 - 2 * x)
                + h * x * rest * (climbs[i] * rest - climbs[i + 1] * x);
    }
}
