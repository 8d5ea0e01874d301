package org.sawfly.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one place where a number becomes text: a point as decimal mark whatever the machine speaks, a fixed number of
 * decimals, half rounded away from zero, "-" for none and no minus before a nought.
 *
 * <p>A value is first taken to {@value #DIGITS} significant digits, as it is written to JSON, so that text and JSON
 * round alike.
 */
public final class Numbers {
    /** Significant digits of a number that is written for machines. */
    public static final int DIGITS = 12;

    /** What stands for a number that does not exist. */
    public static final String NONE = "-";

    private static final int SECONDS_IN_A_MINUTE = 60;

    private Numbers() {}

    /** With a fixed number of decimals: "41.2", "-0.3", "0.0", "-" for NaN and infinities. */
    public static String fixed(double value, int decimals) {
        return Double.isFinite(value) ? decimal(value, decimals).toPlainString() : NONE;
    }

    /** The value as {@link #fixed} prints it; NaN stays NaN. */
    public static double rounded(double value, int decimals) {
        return Double.isFinite(value) ? decimal(value, decimals).doubleValue() : Double.NaN;
    }

    /** As few decimals as the value needs, at most so many: "10", "4.5", "0.25". */
    public static String shortest(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NONE;
        }
        BigDecimal plain = decimal(value, decimals).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
    }

    /** For machines: at most {@value #DIGITS} significant digits, "null" for none; JSON's spelling of a number. */
    public static String machine(double value) {
        return machine(value, DIGITS);
    }

    /** As {@link #machine(double)} with at most so many significant digits. */
    public static String machine(double value, int digits) {
        if (!Double.isFinite(value)) {
            return "null";
        }
        BigDecimal number = significant(value, digits).stripTrailingZeros();
        if (number.signum() == 0) {
            return "0";
        }
        int exponent = number.precision() - number.scale() - 1;
        return exponent < -6 || exponent > 20 ? number.toString() : number.toPlainString();
    }

    /** A range: "34.4-35.7", with "to" where a sign stands: "-0.1 to 0.1"; "-" when there is none. */
    public static String range(Band band, int decimals) {
        String low = fixed(band.low(), decimals);
        String high = fixed(band.high(), decimals);
        if (low.equals(NONE) || high.equals(NONE)) {
            return NONE;
        }
        return low.startsWith("-") ? low + " to " + high : low + "-" + high;
    }

    /** A time on the clock: "2:15"; "-" for none. */
    public static String clock(double seconds) {
        if (!Double.isFinite(seconds)) {
            return NONE;
        }
        long whole = decimal(Math.abs(seconds), 0).longValueExact();
        String minutes = (seconds < 0 && whole > 0 ? "-" : "") + whole / SECONDS_IN_A_MINUTE;
        long rest = whole % SECONDS_IN_A_MINUTE;
        return minutes + (rest < 10 ? ":0" : ":") + rest;
    }

    /** A time in words: "2 min 15 s", "48 s"; "-" for none. */
    public static String clockWords(double seconds) {
        String[] parts = clock(seconds).split(":", -1);
        if (parts.length == 1) {
            return NONE;
        }
        String rest = Integer.parseInt(parts[1]) + " s";
        return parts[0].equals("0") ? rest : parts[0] + " min " + rest;
    }

    private static BigDecimal decimal(double value, int decimals) {
        BigDecimal rounded = significant(value, DIGITS).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : rounded;
    }

    private static BigDecimal significant(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
    }
}
