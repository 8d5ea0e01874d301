package org.sawfly.stability;

/**
 * One way in which a glider left to itself swings or settles: a pair of eigenvalues, or a single real one.
 *
 * @param kind which
 * @param growth real part; of the slower of two real ones [1/s], negative when it dies away
 * @param swing imaginary part, 0 or above [rad/s]
 * @param otherGrowth the faster of two real ones [1/s], NaN when there is none
 */
public record Mode(Kind kind, double growth, double swing, double otherGrowth) {
    /** Which way. */
    public enum Kind {
        /** Phugoid: speed is traded for height. */
        SPEED_AND_HEIGHT,
        /** Short period: the angle of attack comes back. */
        NOSE_UP_DOWN,
        /** Dutch roll: the nose swings from side to side. */
        NOSE_LEFT_RIGHT,
        /** Roll damping. */
        ROLL,
        /** Spiral: a bank grows or shrinks by itself. */
        CIRCLE
    }

    /** Whether it swings. */
    public boolean swings() {
        return swing > 0;
    }

    /** Whether it dies away by itself. */
    public boolean dies() {
        return growth < 0 && !(otherGrowth >= 0);
    }

    /** Time of one swing [s], NaN when there is none. */
    public double period() {
        return swings() ? 2 * Math.PI / swing : Double.NaN;
    }

    /** Time in which half of it is gone, or in which it doubles [s]; infinite when it stays as it is. */
    public double halfOrDouble() {
        double grows = otherGrowth > growth ? otherGrowth : growth;
        return Math.log(2) / Math.abs(grows > 0 ? grows : growth);
    }

    /** Undamped angular frequency: the root of the product of both eigenvalues' magnitudes [rad/s]. */
    public double frequency() {
        return Double.isNaN(otherGrowth)
                ? Math.hypot(growth, swing)
                : Math.sqrt(Math.abs(growth) * Math.abs(otherGrowth));
    }

    /** Damping ratio [1]; 1 or more, or below -1, when it does not swing. */
    public double damping() {
        double sum = Double.isNaN(otherGrowth) ? 2 * growth : growth + otherGrowth;
        return -0.5 * sum / frequency();
    }
}
