package org.sawfly.study.log;

import java.util.List;

/**
 * What logs say about thrower and glider.
 *
 * @param drag factor on drag [1]
 * @param meanSpeed mean release speed of these throws [m/s]
 * @param throwsFitted the throws
 * @param correlation of the drag factor with the mean release speed, -1 to 1
 * @param noise standard deviation of the samples about the flights [m]
 * @param skipped launches that could not be used, each with its reason
 */
public record Calibrated(
        Estimate drag,
        Estimate meanSpeed,
        List<Thrown> throwsFitted,
        double correlation,
        double noise,
        List<String> skipped) {
    /**
     * One throw.
     *
     * @param logged as found
     * @param release when it left the hand, by the log's clock [s]
     * @param speed at release [m/s]
     * @param residuals samples less the flight: pairs of time after release [s] and height [m]
     */
    public record Thrown(LoggedLaunch logged, double release, Estimate speed, List<double[]> residuals) {}
}
