package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sawfly.quantity.Numbers;

/**
 * Heights over time as a logger wrote them: any rate, with gaps, from any zero.
 *
 * @param name for messages
 * @param times growing [s]
 * @param heights above the logger's own zero [m]
 * @param winds against the throw [m/s], NaN where nobody wrote one down; empty when nobody ever did
 */
public record HeightLog(String name, double[] times, double[] heights, double[] winds) {
    /** Time between samples that a launch can be followed by [s]: between 100 and 2 a second, with some slack. */
    private static final double SHORTEST_STEP = 0.009, LONGEST_STEP = 0.55;
    /** Two to 50 a second in milliseconds. */
    private static final double SHORTEST_IN_MS = 19, LONGEST_IN_MS = 510;

    private static final double HIGHEST_LAUNCH = 95;

    /**
     * Something that looks as if it were in other units.
     *
     * @param what is odd
     * @param maybe what was probably meant; empty when there is no guess
     */
    public record Suspicion(String what, String maybe) {}

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException with words for the user, when times do not grow or nothing is there
     */
    public HeightLog {
        if (times.length != heights.length || times.length < 2 || winds.length != 0 && winds.length != times.length) {
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

    /** Without winds. */
    public HeightLog(String name, double[] times, double[] heights) {
        this(name, times, heights, new double[0]);
    }

    /** What looks as if it were in other units; empty when nothing does. */
    public List<Suspicion> suspicions() {
        List<Suspicion> suspicions = new ArrayList<>();
        double interval = interval();
        String apart = "samples are " + Numbers.shortest(interval, interval < 1 ? 5 : 1)
                + " s apart: two to a hundred a second are needed to follow a launch";
        if (interval > LONGEST_STEP) {
            boolean milliseconds = interval >= SHORTEST_IN_MS && interval <= LONGEST_IN_MS;
            suspicions.add(
                    new Suspicion(apart, milliseconds ? "the times are in milliseconds: call the column time_ms" : ""));
        } else if (interval < SHORTEST_STEP) {
            suspicions.add(new Suspicion(apart, "the times are in minutes, or the log is to be thinned out"));
        } else {
            for (FoundLaunch launch : new LaunchFinder(this).find()) {
                double won = launch.top() - launch.ground();
                if (won > HIGHEST_LAUNCH) {
                    suspicions.add(new Suspicion(
                            "a launch of " + Math.round(won) + " m, higher than anybody throws",
                            "the heights are in feet: divide by 3.281"));
                    break;
                }
            }
        }
        return suspicions;
    }

    /** Mean of the winds written down between two times [m/s]; NaN when there is none. */
    public double wind(double begin, double end) {
        double sum = 0;
        int count = 0;
        for (int i = from(begin); i < winds.length && times[i] <= end; i++) {
            if (!Double.isNaN(winds[i])) {
                sum += winds[i];
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Index of the first sample at or after a time. */
    int from(double time) {
        int found = Arrays.binarySearch(times, time);
        return found < 0 ? -found - 1 : found;
    }
}
