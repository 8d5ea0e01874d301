package org.sawfly.study;

/**
 * Where a study takes something to have given out; NaN where nothing is asked.
 *
 * @param marginBelow      static margin over the mean chord [1]
 * @param tailVolumeHBelow of the tailplane [1]
 * @param tailVolumeVBelow of the fin [1]
 * @param firstSwingAbove  of the nose after release [rad]
 */
public record StopWhen(double marginBelow, double tailVolumeHBelow, double tailVolumeVBelow, double firstSwingAbove) {
    /** Nothing is asked. */
    public static final StopWhen NEVER = new StopWhen(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
