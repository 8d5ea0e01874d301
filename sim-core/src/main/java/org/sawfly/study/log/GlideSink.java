package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Band;
import org.sawfly.study.statistics.Sample;
import org.sawfly.study.statistics.StudentT;

/**
 * Sink rate from the glide after a launch, without its last ten seconds, which are the landing. It is cut into pieces of
 * ten seconds with a straight line through each; the mean of their slopes counts, and how they differ from one another
 * says how still the air was. It need not have been: air that rises evenly does not show.
 *
 * @param sink [m/s]; NaN when the glide is too short
 * @param likely range 9 times in 10 if the air as a whole stood still
 * @param unrest standard deviation of the pieces' slopes [m/s]
 * @param pieces how many
 */
public record GlideSink(double sink, Band likely, double unrest, int pieces) {
    /** More unrest than this is not calm air [m/s]; common practice, no source. */
    public static final double CALM = 0.15;

    private static final GlideSink NONE = new GlideSink(Double.NaN, new Band(Double.NaN, Double.NaN), Double.NaN, 0);

    private static final double SETTLED_AFTER_TOP = 5;
    private static final double LANDING = 10;
    /** Length of a piece [s]. */
    public static final double PIECE = 10;

    private static final int LEAST_PIECES = 3;
    /** The shortest glide that tells a sink, from the top [s]. */
    public static final double SHORTEST = SETTLED_AFTER_TOP + LEAST_PIECES * PIECE + LANDING;

    private static final int LEAST_SAMPLES = 5;

    /** Of one launch. */
    public static GlideSink of(HeightLog log, FoundLaunch launch) {
        List<Double> slopes = new ArrayList<>();
        double start = launch.topTime() + SETTLED_AFTER_TOP;
        for (double from = start; from + PIECE <= launch.end() - LANDING; from += PIECE) {
            int first = log.from(from);
            int last = log.from(from + PIECE);
            if (last - first >= LEAST_SAMPLES) {
                slopes.add(-slope(log, first, last));
            }
        }
        return slopes.size() < LEAST_PIECES
                ? NONE
                : mean(slopes.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * What several glides say together. Those in restless air and the short ones are left out; the others differ by the
     * air they met, and that says how well their mean is known.
     *
     * @return with the number of glides in place of pieces, and the standard deviation between them as unrest (that of a
     *     single one's pieces when it is alone); sink NaN when no glide was calm
     */
    public static GlideSink of(List<GlideSink> glides) {
        List<GlideSink> calm = glides.stream().filter(GlideSink::calm).toList();
        if (calm.size() < 2) {
            return calm.isEmpty() ? NONE : new GlideSink(calm.get(0).sink, calm.get(0).likely, calm.get(0).unrest, 1);
        }
        return mean(calm.stream().mapToDouble(GlideSink::sink).toArray());
    }

    private static GlideSink mean(double[] sinks) {
        Sample sample = Sample.of(sinks);
        int n = sample.size();
        double half = StudentT.quantile(0.95, n - 1.0) * sample.deviation() / Math.sqrt(n);
        return new GlideSink(sample.mean(), Band.around(sample.mean(), half), sample.deviation(), n);
    }

    /** Whether the air was calm as far as the pieces show. */
    public boolean calm() {
        return unrest < CALM;
    }

    private static double slope(HeightLog log, int first, int last) {
        double time = 0;
        double height = 0;
        for (int i = first; i < last; i++) {
            time += log.times()[i] / (last - first);
            height += log.heights()[i] / (last - first);
        }
        double product = 0;
        double square = 0;
        for (int i = first; i < last; i++) {
            product += (log.times()[i] - time) * (log.heights()[i] - height);
            square += (log.times()[i] - time) * (log.times()[i] - time);
        }
        return product / square;
    }
}
