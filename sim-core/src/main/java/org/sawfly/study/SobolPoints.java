package org.sawfly.study;

import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points of Sobol's sequence (I. M. Sobol, On the distribution of points in a cube and the approximate evaluation of
 * integrals, USSR Computational Mathematics and Mathematical Physics 7, 1967; direction numbers of Joe and Kuo), all moved
 * by one random vector and wrapped around (Cranley and Patterson, Randomization of number theoretic methods for multiple
 * integration, SIAM J. Numerical Analysis 13, 1976), so that seeds give different and equally good sets. Each point is
 * known by its index alone; for any thread.
 */
final class SobolPoints {
    private final SobolSequenceGenerator sequence;
    private final double[] shift;

    /**
     * A sequence.
     *
     * @param dimensions of a point
     * @param seed of the move
     */
    SobolPoints(int dimensions, long seed) {
        sequence = new SobolSequenceGenerator(dimensions);
        SplittableRandom random = new SplittableRandom(seed);
        shift = random.doubles(dimensions).toArray();
    }

    /** A point, each number at least 0 and below 1. */
    double[] point(int index) {
        double[] point;
        synchronized (sequence) {
            point = sequence.skipTo(index);
        }
        for (int i = 0; i < point.length; i++) {
            double moved = point[i] + shift[i];
            point[i] = moved - Math.floor(moved);
        }
        return point;
    }
}
