package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Heights over time as a logger wrote them: any rate, with gaps, from any zero.
 *
 * @param name for messages
 * @param times growing [s]
 * @param heights above the logger's own zero [m]
 */
public record HeightLog(String name, double[] times, double[] heights) {
    private static final double LONGEST_STEP = 5;
    private static final double HIGHEST_LAUNCH = 95;

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException with words for the user, when times do not grow or nothing is there
     */
    public HeightLog {
        if (times.length != heights.length || times.length < 2) {
            throw new IllegalArgumentException(name + ": fewer than two samples");
        }
        for (int i = 0; i < times.length; i++) {
            if (!Double.isFinite(times[i]) || !Double.isFinite(heights[i])) {
                throw new IllegalArgumentException(name + ": sample " + (i + 1) + " is not a number");
            }
            if (i > 0 && !(times[i] > times[i - 1])) {
                throw new IllegalArgumentException(
                        name + ": the time of sample " + (i + 1) + " does not come after that of the one before");
            }
        }
    }

    /** Median time from one sample to the next [s]. */
    public double interval() {
        double[] steps = new double[times.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = times[i + 1] - times[i];
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    /** What looks as if it were in other units, in words; empty when nothing does. */
    public List<String> suspicions() {
        List<String> suspicions = new ArrayList<>();
        if (interval() > LONGEST_STEP) {
            suspicions.add("samples are " + Math.round(interval()) + " s apart: are the times in milliseconds?");
        }
        for (Launch launch : new LaunchFinder(this).find()) {
            double won = launch.top() - launch.ground();
            if (won > HIGHEST_LAUNCH) {
                suspicions.add("a launch of " + Math.round(won) + " m: are the heights in feet?");
                break;
            }
        }
        return suspicions;
    }

    /** Index of the first sample at or after a time. */
    int from(double time) {
        int found = Arrays.binarySearch(times, time);
        return found < 0 ? -found - 1 : found;
    }
}
