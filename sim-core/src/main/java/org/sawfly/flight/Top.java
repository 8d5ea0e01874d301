package org.sawfly.flight;

/**
 * The top of the launch, where the climb ends.
 *
 * @param height above the ground: the launch height an altimeter shows [m]
 * @param time after release [s]
 * @param speed through the air [m/s]
 * @param course where it lies and how it was come to
 */
public record Top(double height, double time, double speed, Course course) {
    /** None. */
    public static final Top NONE = new Top(Double.NaN, Double.NaN, Double.NaN, Course.NONE);
}
