package org.sawfly.study.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.sawfly.quantity.Band;

/**
 * Whether the launches of set-up B are higher than those of A. Rules, fixed before any number is looked at:
 *
 * <ul>
 *   <li>A launch is left out when it lies further than 3.5 robust standard deviations from the median of its own set, that
 *       deviation being at least {@link #LEAST_DEVIATION} (B. Iglewicz and D. C. Hoaglin, How to detect and handle outliers,
 *       1993: the modified z-score).
 *   <li>With no more than that the difference of the means is judged by the test of B. L. Welch (The generalization of
 *       Student's problem when several different population variances are involved, Biometrika 34, 1947).
 *   <li>Where the sets alternate in time, a steady drift over the order of throws, and where a wind is given for every
 *       launch and was not always the same, its effect, are fitted along with the difference (analysis of covariance), and
 *       that difference counts; not with few launches, nor where wind and set-up changed together. Sets thrown one after
 *       the other cannot be told from drift: said, not corrected.
 * </ul>
 *
 * @param difference B less A [m]
 * @param likely its range 9 times in 10 [m]
 * @param confidence probability that B is higher, from 0 to 1, nothing being known beforehand
 * @param order how the throws were ordered
 * @param drift by how much launches rose from each throw to the next [m]; NaN when not fitted
 * @param perWind launch height for each m/s of wind [s]; NaN when not fitted
 * @param leftOut launches of each set left out by the rule
 * @param deviation standard deviation of one launch, what is fitted taken out [m]
 * @param more launches more each that a difference of this size would need to be shown; 0 when it is shown
 */
public record Verdict(
        double difference,
        Band likely,
        double confidence,
        Order order,
        double drift,
        double perWind,
        List<Launched> leftOut,
        double deviation,
        int more) {
    /** Least robust deviation by which outliers are judged [m]: what an altimeter shows by itself. */
    public static final double LEAST_DEVIATION = 0.5;

    /** Robust deviations from the middle of its set beyond which a launch is left out. */
    public static final double OUTLIER = 3.5;

    private static final double UPPER = 0.95;
    /** Shown when the two-sided test at 5 % says so. */
    private static final double SHOWN = 1 - ThrowsNeeded.LEVEL / 2;
    /** Throws over unknowns from which drift and wind are fitted. */
    private static final int SPARE = 4;

    private static final int MIXED_CHANGES = 3;

    /** How the throws of the two sets follow each other. */
    public enum Order {
        UNKNOWN,
        /** One set after the other. */
        BLOCKS,
        /** Mixed so that drift can be told from a difference. */
        MIXED
    }

    /**
     * A launch.
     *
     * @param height [m]
     * @param time when, by one clock for both sets, in any unit; NaN if not known
     * @param wind against the throw [m/s]; NaN if not known
     */
    public record Launched(double height, double time, double wind) {}

    private record Entry(Launched launched, boolean b) {}

    private record Found(double difference, double error, double freedoms, double drift, double wind, double sigma) {}

    /**
     * Judges.
     *
     * @throws IllegalArgumentException with words, when a set has fewer than two launches after the outliers went
     */
    public static Verdict of(List<Launched> a, List<Launched> b) {
        List<Launched> leftOut = new ArrayList<>();
        List<Entry> kept = new ArrayList<>();
        kept(a, leftOut).forEach(one -> kept.add(new Entry(one, false)));
        int inA = kept.size();
        kept(b, leftOut).forEach(one -> kept.add(new Entry(one, true)));
        int inB = kept.size() - inA;
        if (inA < 2 || inB < 2) {
            throw new IllegalArgumentException(
                    "each set needs two launches or more: " + inA + " and " + inB + " are left");
        }
        Order order = order(kept);
        Found found = covariance(kept, order == Order.MIXED, windsVary(kept));
        if (found == null) {
            found = welch(kept);
        }
        double half = StudentT.quantile(UPPER, found.freedoms) * found.error;
        double t = found.error == 0 ? Math.signum(found.difference) * 1e6 : found.difference / found.error;
        double confidence = StudentT.cumulative(t, found.freedoms);
        boolean shown = Math.max(confidence, 1 - confidence) > SHOWN;
        int needed = shown ? 0 : ThrowsNeeded.aSide(found.difference, found.sigma);
        int more = shown ? 0 : needed == Integer.MAX_VALUE ? needed : Math.max(1, needed - Math.min(inA, inB));
        return new Verdict(
                found.difference,
                Band.around(found.difference, half),
                confidence,
                order,
                found.drift,
                found.wind,
                List.copyOf(leftOut),
                found.sigma,
                more);
    }

    /** The launches of a set that the rule leaves out. */
    public static List<Launched> outliers(List<Launched> set) {
        Sample sample = Sample.of(set.stream().mapToDouble(Launched::height).toArray());
        double limit = OUTLIER * Math.max(LEAST_DEVIATION, sample.robustDeviation());
        return set.stream()
                .filter(one -> !(Math.abs(one.height() - sample.median()) <= limit))
                .toList();
    }

    private static List<Launched> kept(List<Launched> set, List<Launched> leftOut) {
        List<Launched> out = outliers(set);
        leftOut.addAll(out);
        return set.stream().filter(one -> !out.contains(one)).toList();
    }

    private static boolean windsVary(List<Entry> all) {
        Sample winds =
                Sample.of(all.stream().mapToDouble(one -> one.launched.wind).toArray());
        return winds.size() == all.size() && winds.squares() > 0;
    }

    /** Sorts by time, and tells how often the set changes. */
    private static Order order(List<Entry> all) {
        if (all.stream().anyMatch(one -> Double.isNaN(one.launched.time))) {
            return Order.UNKNOWN;
        }
        all.sort(Comparator.comparingDouble(one -> one.launched.time));
        int changes = 0;
        for (int i = 1; i < all.size(); i++) {
            changes += all.get(i).b == all.get(i - 1).b ? 0 : 1;
        }
        return changes >= MIXED_CHANGES ? Order.MIXED : Order.BLOCKS;
    }

    private static Found welch(List<Entry> all) {
        Sample a = heights(all, false);
        Sample b = heights(all, true);
        double va = a.squares() / (a.size() - 1) / a.size();
        double vb = b.squares() / (b.size() - 1) / b.size();
        double sum = va + vb;
        double freedoms = sum == 0
                ? a.size() + b.size() - 2.0
                : sum * sum / (va * va / (a.size() - 1) + vb * vb / (b.size() - 1));
        double pooled = Math.sqrt((a.squares() + b.squares()) / (a.size() + b.size() - 2));
        return new Found(b.mean() - a.mean(), Math.sqrt(sum), freedoms, Double.NaN, Double.NaN, pooled);
    }

    private static Sample heights(List<Entry> all, boolean b) {
        return Sample.of(all.stream()
                .filter(one -> one.b == b)
                .mapToDouble(one -> one.launched.height)
                .toArray());
    }

    /** Least squares on set, order and wind; null with too few launches or when they cannot be told apart. */
    private static Found covariance(List<Entry> all, boolean drifts, boolean winds) {
        int unknowns = 2 + (drifts ? 1 : 0) + (winds ? 1 : 0);
        int n = all.size();
        if (unknowns == 2 || n < unknowns + SPARE) {
            return null;
        }
        double[][] rows = new double[n][unknowns];
        double[] heights = new double[n];
        for (int i = 0; i < n; i++) {
            Entry one = all.get(i);
            rows[i][0] = 1;
            rows[i][1] = one.b ? 1 : 0;
            if (drifts) {
                rows[i][2] = i - 0.5 * (n - 1);
            }
            if (winds) {
                rows[i][unknowns - 1] = one.launched.wind;
            }
            heights[i] = one.launched.height;
        }
        try {
            RealMatrix x = new Array2DRowRealMatrix(rows, false);
            RealMatrix inverse = new QRDecomposition(x.transposeMultiply(x), 1e-9)
                    .getSolver()
                    .getInverse();
            double[] at = inverse.operate(x.transpose().operate(heights));
            ArrayRealVector off = new ArrayRealVector(heights).subtract(new ArrayRealVector(x.operate(at)));
            double sigma = off.getNorm() / Math.sqrt(n - unknowns);
            double error = sigma * Math.sqrt(inverse.getEntry(1, 1));
            double drift = drifts ? at[2] : Double.NaN;
            return new Found(at[1], error, n - unknowns, drift, winds ? at[unknowns - 1] : Double.NaN, sigma);
        } catch (MathRuntimeException e) {
            return null;
        }
    }
}
