package org.sawfly.file;

import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/**
 * What a number in a file may be, in the unit of its key.
 *
 * @param low     lowest value
 * @param open    whether the lowest value itself is refused
 * @param high    highest value
 * @param usual   below the first or above the second of these a value is accepted but doubted
 */
record Bounds(double low, boolean open, double high, Usual usual) {
    private static final int DECIMALS = 6;

    /** The range that is met in practice, in the unit of the key. */
    record Usual(double low, double high) {}

    static Bounds above(double low, double high) {
        return new Bounds(low, true, high, new Usual(low, high));
    }

    static Bounds between(double low, double high) {
        return new Bounds(low, false, high, new Usual(low, high));
    }

    /** With the range met in practice. */
    Bounds usually(double from, double to) {
        return new Bounds(low, open, high, new Usual(from, to));
    }

    boolean accepts(double value) {
        return (open ? value > low : value >= low) && value <= high;
    }

    boolean isUsual(double value) {
        return value >= usual.low && value <= usual.high;
    }

    /** "must be above 0 and at most 2000 mm". */
    String words(Unit unit) {
        return "must be " + (open ? "above " : "at least ") + show(low) + " and at most " + withUnit(high, unit);
    }

    /** "usual are 60 to 80 mm". */
    String usualWords(Unit unit) {
        return "usual are " + show(usual.low) + " to " + withUnit(usual.high, unit);
    }

    /** A value as short as it can be said. */
    static String show(double value) {
        return Numbers.shortest(value, DECIMALS);
    }

    static String withUnit(double value, Unit unit) {
        return unit == Unit.NUMBER ? show(value) : show(value) + " " + unit.words();
    }
}
