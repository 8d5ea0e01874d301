package org.sawfly.study.log;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/** Logs made from known flights, as a logger would have written them. */
final class MadeLog {
    /** Quiet time before each release [s]. */
    static final double QUIET = 15;
    /** Time from one release to the next [s]. */
    static final double BETWEEN = 60;

    private static final double SINK = 0.5;

    private MadeLog() {}

    /**
     * A log of some throws.
     *
     * @param flights heights above the ground over the time after release
     * @param inHand height of the glider in the hand before each throw [m]
     * @param rate samples a second
     * @param noise standard deviation of a sample [m]
     * @param dropouts share of samples that are missing
     * @param random also moves clock and zero; null for a plain log without noise
     */
    static HeightLog of(
            DoubleUnaryOperator[] flights,
            double inHand,
            double rate,
            double noise,
            double dropouts,
            SplittableRandom random) {
        double clock = random == null ? 3 : 1000 * random.nextDouble();
        double zero = random == null ? 17.3 : 200 * random.nextDouble() - 100;
        double phase = random == null ? 0.5 : random.nextDouble();
        int count = (int) (flights.length * BETWEEN * rate);
        double[] times = new double[count];
        double[] heights = new double[count];
        int kept = 0;
        for (int i = 0; i < count; i++) {
            double t = (i + phase) / rate;
            boolean lost = dropouts > 0 && random.nextDouble() < dropouts;
            if (!lost) {
                int n = (int) (t / BETWEEN);
                double after = t - n * BETWEEN - QUIET;
                double height = after < 0 ? inHand : Math.max(0, flown(flights[n], after));
                times[kept] = clock + t;
                heights[kept] = zero + height + (noise == 0 ? 0 : noise * random.nextGaussian());
                kept++;
            }
        }
        return new HeightLog("made.csv", java.util.Arrays.copyOf(times, kept), java.util.Arrays.copyOf(heights, kept));
    }

    /** The flight as long as it was worked out, then a plain glide, then down so as to begin the next throw quietly. */
    private static double flown(DoubleUnaryOperator flight, double after) {
        double glides = 6;
        if (after < glides) {
            return flight.applyAsDouble(after);
        }
        double height = flight.applyAsDouble(glides) - SINK * (after - glides);
        return after < 30 ? height : Math.max(1.2, height - 4 * (after - 30));
    }
}
