package org.sawfly.glider;

/** What every number of a glider must be; the file's readers know narrower bounds. */
final class Check {
    private Check() {}

    static void finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a number (it is " + value + ")");
        }
    }

    static void positive(double value, String what) {
        finite(value, what);
        if (value <= 0) {
            throw new IllegalArgumentException(what + " must be above 0 (it is " + value + ")");
        }
    }

    static void notNegative(double value, String what) {
        finite(value, what);
        if (value < 0) {
            throw new IllegalArgumentException(what + " must not be below 0 (it is " + value + ")");
        }
    }

    static void between(double value, double least, double most, String what) {
        finite(value, what);
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    what + " must be between " + least + " and " + most + " (it is " + value + ")");
        }
    }
}
