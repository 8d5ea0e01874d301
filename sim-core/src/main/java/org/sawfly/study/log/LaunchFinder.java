package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sawfly.study.statistics.Sample;

/**
 * Finds launches in a log: a quiet stretch, then a rise that nothing but a throw makes. The quiet stretch gives the ground:
 * the glider lies or is held there. The last second before the rise is left out: in the spin the sensor's pressure is wrong.
 */
final class LaunchFinder {
    /** A throw rises faster than this over about a second [m/s]; thermals do not. */
    private static final double CLIMB = 5;
    /** And to this height at least [m]. */
    private static final double LEAST_HEIGHT = 8;
    /** The top comes no later after release [s]. */
    private static final double LATEST_TOP = 8;

    private static final double QUIET_BEFORE = 12;
    private static final double SPIN = 1;
    private static final double QUIET_DEVIATION = 1.5;
    /** A rise that was no launch is passed over by this [s]. */
    private static final double REFUSED = 0.5;

    private static final double LONGEST_STEP = 1.5;
    /** Height above the hand by which a rise is recognised [m], and when after release it is passed [s]. */
    private static final double PASSED = 2, PASSED_AFTER = 0.25;

    private final double[] times;
    private final double[] heights;
    private final HeightLog log;

    /** For one log. */
    LaunchFinder(HeightLog log) {
        this.log = log;
        this.times = log.times();
        this.heights = log.heights();
    }

    /** All launches, in order. */
    List<FoundLaunch> find() {
        List<FoundLaunch> found = new ArrayList<>();
        int from = 0;
        while (from < times.length - 1) {
            int rise = nextRise(from);
            if (rise < 0) {
                break;
            }
            FoundLaunch launch = at(rise, from);
            if (launch == null) {
                from = Math.max(rise + 1, log.from(times[rise] + REFUSED));
            } else {
                found.add(launch);
                from = log.from(launch.topTime() + SPIN);
            }
        }
        return ended(found);
    }

    /** The first sample from which the log climbs as only a throw does; -1 when there is none. */
    private int nextRise(int from) {
        int ahead = from;
        for (int i = from; i < times.length - 1; i++) {
            ahead = Math.max(ahead, i + 1);
            while (ahead < times.length - 1 && times[ahead] - times[i] < 1 - 1e-9) {
                ahead++;
            }
            double span = times[ahead] - times[i];
            if (span <= LONGEST_STEP && heights[ahead] - heights[i] > CLIMB * span) {
                return i;
            }
        }
        return -1;
    }

    private FoundLaunch at(int rise, int from) {
        int first = Math.max(from, log.from(times[rise] - QUIET_BEFORE));
        int last = log.from(times[rise] - SPIN);
        if (last - first < 3) {
            return null;
        }
        Sample quiet = Sample.of(Arrays.copyOfRange(heights, first, last));
        double ground = quiet.median();
        if (quiet.robustDeviation() > QUIET_DEVIATION) {
            return null;
        }
        int passed = rise;
        while (passed < times.length && heights[passed] < ground + PASSED) {
            passed++;
        }
        if (passed >= times.length || passed == 0) {
            return null;
        }
        double share = (ground + PASSED - heights[passed - 1]) / (heights[passed] - heights[passed - 1]);
        double crossing = times[passed - 1] + Math.max(0, Math.min(1, share)) * (times[passed] - times[passed - 1]);
        double release = crossing - PASSED_AFTER;
        int top = passed;
        for (int i = passed; i < times.length && times[i] < release + LATEST_TOP; i++) {
            top = heights[i] > heights[top] ? i : top;
        }
        if (heights[top] - ground < LEAST_HEIGHT) {
            return null;
        }
        return new FoundLaunch(release, ground, times[top], heights[top], Double.NaN, gap(release + 1, times[top] + 1));
    }

    private double gap(double from, double to) {
        double longest = 0;
        for (int i = Math.max(1, log.from(from)); i < times.length && times[i - 1] < to; i++) {
            longest = Math.max(longest, times[i] - times[i - 1]);
        }
        return longest;
    }

    /** Ends each flight where it comes down, the next one begins, or the log ends. */
    private List<FoundLaunch> ended(List<FoundLaunch> found) {
        List<FoundLaunch> ended = new ArrayList<>();
        for (int n = 0; n < found.size(); n++) {
            FoundLaunch launch = found.get(n);
            double end = n + 1 < found.size() ? found.get(n + 1).release() - SPIN : times[times.length - 1];
            int i = log.from(launch.topTime());
            while (i < times.length && times[i] < end && heights[i] > launch.ground() + PASSED) {
                i++;
            }
            double down = i < times.length ? Math.min(end, times[i]) : end;
            ended.add(new FoundLaunch(
                    launch.release(), launch.ground(), launch.topTime(), launch.top(), down, launch.gap()));
        }
        return ended;
    }
}
