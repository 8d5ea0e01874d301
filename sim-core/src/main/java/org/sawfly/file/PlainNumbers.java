package org.sawfly.file;

/**
 * Reads the plain decimal numbers of a line one after another, separated by commas, without a look at anything else: digits with
 * at most one point and a minus sign. With up to 15 digits the value is one correctly rounded division of two exact numbers, the
 * same as {@link Double#parseDouble} gives (Clinger, "How to read floating point numbers accurately", 1990).
 */
final class PlainNumbers {
    private static final int MOST_DIGITS = 15;
    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private final String line;
    private int at;

    PlainNumbers(String line) {
        this.line = line;
    }

    /** The next number and the comma behind it; NaN where something else stands. */
    double next() {
        int length = line.length();
        int i = at;
        boolean negative = i < length && line.charAt(i) == '-';
        i += negative ? 1 : 0;
        long digits = 0;
        int count = 0;
        int decimals = -1;
        for (; i < length; i++) {
            int c = line.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                count++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (c == '.' && decimals < 0 && count > 0) {
                decimals = 0;
            } else {
                break;
            }
        }
        if (count == 0 || count > MOST_DIGITS || i < length && line.charAt(i) != ',') {
            return Double.NaN;
        }
        at = i + 1;
        double value = decimals > 0 ? digits / POWERS_OF_TEN[decimals] : digits;
        return negative ? -value : value;
    }

    /** True when the last number ended the line. */
    boolean atEnd() {
        return at == line.length() + 1;
    }
}
