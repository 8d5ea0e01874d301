package org.sawfly.air;

/**
 * Steady wind along one direction, growing with height by a power law: {@code W = W10 (h/10 m)^n}, the same below half a
 * metre as there (the law's slope has no bound at the ground). Common practice, no source for an exponent over grass: 0.14
 * to 0.2; 0 is the same wind at every height.
 *
 * @param speed at {@value #REFERENCE_HEIGHT} m above the ground [m/s]; its sign is the caller's
 * @param exponent of the power law [1]
 */
public record Wind(double speed, double exponent) {
    /** No wind. */
    public static final Wind CALM = new Wind(0, 0);

    /** Where the speed is stated, above the ground [m]. */
    public static final double REFERENCE_HEIGHT = 10;

    /** Below this height the wind no longer changes, above the ground [m]. */
    public static final double LOWEST_CHANGE = 0.5;

    /** Checks that both are numbers and the wind does not fall with height. */
    public Wind {
        if (!Double.isFinite(speed)) {
            throw new IllegalArgumentException("the wind speed must be a number, not " + speed);
        }
        if (!(exponent >= 0 && exponent <= 1)) {
            throw new IllegalArgumentException("the exponent of the wind must be between 0 and 1, not " + exponent);
        }
    }

    /** Speed [m/s] at a height above the ground [m]; allocates nothing. */
    public double at(double height) {
        if (exponent == 0 || speed == 0) {
            return speed;
        }
        return speed * Math.pow(Math.max(height, LOWEST_CHANGE) / REFERENCE_HEIGHT, exponent);
    }

    /** Change of speed with height [1/s] at a height above the ground [m]; allocates nothing. */
    public double gradient(double height) {
        return height <= LOWEST_CHANGE ? 0 : exponent * at(height) / height;
    }
}
