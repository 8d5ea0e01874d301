package org.sawfly.glider;

import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/** Lengths and masses as a builder says them, for messages. */
final class Words {
    private Words() {}

    static String length(double metres) {
        return Numbers.shortest(Unit.MILLIMETRE.fromSi(metres), 1) + " mm";
    }

    static String mass(double kilograms) {
        return Numbers.shortest(Unit.GRAM.fromSi(kilograms), 1) + " g";
    }

    /** A place along the glider: "69 mm behind the root leading edge". */
    static String place(double x) {
        return length(Math.abs(x)) + (x > 0 ? " ahead of" : " behind") + " the root leading edge";
    }
}
