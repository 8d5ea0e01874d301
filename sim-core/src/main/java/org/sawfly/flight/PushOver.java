package org.sawfly.flight;

/**
 * When the pilot pushes over. Early, normal and late are airspeeds in units of the trimmed glide speed.
 *
 * @param speedRatio airspeed over trimmed glide speed at which the push begins [1], NaN if the time is given
 * @param time after release [s], NaN if the ratio is given
 */
public record PushOver(double speedRatio, double time) {
    /** Pushes early, still fast. */
    public static final PushOver EARLY = new PushOver(3.1, Double.NaN);
    /** The usual push-over. */
    public static final PushOver NORMAL = new PushOver(2.7, Double.NaN);
    /** Pushes late, already slow. */
    public static final PushOver LATE = new PushOver(2.3, Double.NaN);
}
