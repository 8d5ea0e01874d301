package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.math.Roots;

/**
 * Fits release speeds and one drag factor to the launches of some logs.
 *
 * <p>Nonlinear least squares by Levenberg and Marquardt over the samples from one second after release (before that the
 * speed spoils the sensor) to a little after the top (afterwards the pilot decides). Fitted are the logarithm of the drag
 * factor and, for each throw, speed and moment of release. The ground and whatever {@link ThrowModel} holds are not fitted:
 * what they may be off by is carried over to first order, {@code -(J'J)^-1 J' dh/dheld} times their deviation.
 */
public final class Calibration {
    /** Samples earlier after release are not used [s]. */
    public static final double IGNORED = 1;
    /** Nor later after the top [s]. */
    static final double AFTER_TOP = 1;
    /** Height of the glider in the hand before the throw [m], and how far that may be off; common practice, no source. */
    static final double IN_HAND = 1.2, IN_HAND_DEVIATION = 0.3;
    /** More throws say little more and take long. */
    static final int MOST_THROWS = 60;

    private static final int LEAST_SAMPLES = 4;

    private final ThrowModel model;

    /** With a model of the flights. */
    public Calibration(ThrowModel model) {
        this.model = model;
    }

    /**
     * Fits.
     *
     * @throws NoFitException with the reason, when there is nothing to fit or no fit
     */
    public Calibrated fit(List<HeightLog> logs) {
        List<Piece> pieces = new ArrayList<>();
        List<String> skipped = new ArrayList<>();
        int beyond = 0;
        for (HeightLog log : logs) {
            List<LoggedLaunch> launches = LoggedLaunch.of(log);
            if (launches.isEmpty()) {
                skipped.add(log.name() + ": no throw in it");
            }
            for (LoggedLaunch launch : launches) {
                Piece piece = Piece.of(launch);
                if (Double.isNaN(launch.height())) {
                    skipped.add(launch.place() + ": samples are missing in the climb");
                } else if (piece.times().length < LEAST_SAMPLES) {
                    skipped.add(launch.place() + ": too few samples");
                } else if (pieces.size() == MOST_THROWS) {
                    beyond++;
                } else {
                    pieces.add(piece);
                }
            }
        }
        if (beyond > 0) {
            skipped.add(beyond + " more throws are left out: " + MOST_THROWS + " say enough");
        }
        if (pieces.isEmpty()) {
            throw new NoFitException("no throw can be used. " + String.join("; ", skipped));
        }
        return new LeastSquaresFit(model, pieces).calibrated(skipped);
    }

    /**
     * The samples of one launch that are used.
     *
     * @param logged as found
     * @param times [s]
     * @param heights above the ground [m]
     */
    record Piece(LoggedLaunch logged, double[] times, double[] heights) {
        static Piece of(LoggedLaunch logged) {
            HeightLog log = logged.log();
            FoundLaunch launch = logged.launch();
            int from = log.from(launch.release() + IGNORED);
            int to = log.from(Math.min(launch.end(), launch.topTime() + AFTER_TOP));
            int count = Math.max(0, to - from);
            double[] times = new double[count];
            double[] heights = new double[count];
            for (int i = 0; i < count; i++) {
                times[i] = log.times()[from + i];
                heights[i] = log.heights()[from + i] - launch.ground() + IN_HAND;
            }
            return new Piece(logged, times, heights);
        }

        /** A release speed to begin with: the one that reaches the top seen with the drag as it is [m/s]. */
        double firstSpeed(ThrowModel model) {
            FoundLaunch launch = logged.launch();
            double top = launch.top() - launch.ground() + IN_HAND;
            double after = launch.topTime() - launch.release();
            double[] off = new double[model.held().size()];
            double low = 8;
            double high = 65;
            double atLow = model.flight(low, 1, off).applyAsDouble(after) - top;
            double atHigh = model.flight(high, 1, off).applyAsDouble(after) - top;
            if (!(atLow < 0 && atHigh > 0)) {
                throw new NoFitException("no release speed reaches the " + Math.round(top) + " m of the log");
            }
            return Roots.between(
                    v -> model.flight(v, 1, off).applyAsDouble(after) - top, low, atLow, high, atHigh, 0.1);
        }
    }
}
