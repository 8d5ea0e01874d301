package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/**
 * A launch as a log shows it.
 *
 * @param log in which it stands
 * @param launch as found
 * @param height of the top above the ground [m]; NaN when samples are missing in the climb
 * @param wind as written down from release to top [m/s]; NaN when it was not
 */
public record LoggedLaunch(HeightLog log, FoundLaunch launch, double height, double wind) {
    /** Launches with a longer hole in the climb are not used [s]. */
    private static final double LONGEST_GAP = 1;

    /** Samples so near to the highest one are looked at to find the top [s]. */
    private static final double NEAR_TOP = 0.75;

    private static final int LEAST_SAMPLES = 5;

    /** Where it stands: "a.csv at 15 s". */
    public String place() {
        return log.name() + " at " + Math.round(launch.release()) + " s";
    }

    /** Every launch of a log, in order. */
    public static List<LoggedLaunch> of(HeightLog log) {
        List<LoggedLaunch> all = new ArrayList<>();
        for (FoundLaunch launch : new LaunchFinder(log).find()) {
            boolean whole = launch.gap() <= LONGEST_GAP;
            double height = whole ? top(log, launch) - launch.ground() + Calibration.IN_HAND : Double.NaN;
            all.add(new LoggedLaunch(log, launch, height, log.wind(launch.release(), launch.topTime())));
        }
        return all;
    }

    /**
     * The top by a parabola through the samples around the highest one: that one alone stands too high by the luckiest
     * noise of its neighbours, the more so the faster the log.
     */
    private static double top(HeightLog log, FoundLaunch launch) {
        int from = log.from(launch.topTime() - NEAR_TOP);
        int to = log.from(launch.topTime() + NEAR_TOP);
        if (to - from < LEAST_SAMPLES) {
            return launch.top();
        }
        double[][] powers = new double[to - from][3];
        double[] heights = new double[to - from];
        for (int i = 0; i < heights.length; i++) {
            double t = (log.times()[from + i] - launch.topTime()) / NEAR_TOP;
            powers[i][0] = 1;
            powers[i][1] = t;
            powers[i][2] = t * t;
            heights[i] = log.heights()[from + i];
        }
        try {
            double[] at = new QRDecomposition(new Array2DRowRealMatrix(powers, false), 1e-9)
                    .getSolver()
                    .solve(new ArrayRealVector(heights, false))
                    .toArray();
            double where = at[2] < 0 ? Math.max(-1, Math.min(1, -at[1] / (2 * at[2]))) : 0;
            return at[0] + where * (at[1] + where * at[2]);
        } catch (MathRuntimeException e) {
            return launch.top();
        }
    }
}
