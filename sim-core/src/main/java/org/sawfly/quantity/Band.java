package org.sawfly.quantity;

/**
 * A likely range, 9 times in 10 unless said otherwise, in the unit of the number it belongs to.
 *
 * @param low lower end
 * @param high upper end, not below the lower one; both may be NaN when there is no answer
 */
public record Band(double low, double high) {
    /** Checks the order of the ends. */
    public Band {
        if (low > high) {
            throw new IllegalArgumentException("a band from " + low + " to " + high + " is upside down");
        }
    }

    /** Value plus and minus a half width. */
    public static Band around(double middle, double half) {
        return new Band(middle - half, middle + half);
    }

    /** Whether both signs are likely, so that nothing is clear. */
    public boolean spansZero() {
        return low < 0 && high > 0;
    }

    /** Whether a value lies inside or on an end. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** The same range in another unit, from SI. */
    public Band fromSi(Unit unit) {
        return new Band(unit.fromSi(low), unit.fromSi(high));
    }

    /** The range seen from the other side: 1 to 3 lower instead of -3 to -1 higher. */
    public Band negated() {
        return new Band(-high, -low);
    }
}
