package org.sawfly.cli.answer;

import org.sawfly.quantity.Numbers;
import org.sawfly.stability.Mode;
import org.sawfly.stability.ModeQuantities;

/** How a glider left to itself moves, in a pilot's words. */
final class ModeWords {
    /** A swing this small is gone [1]: less than what an eye sees of it. */
    private static final double GONE = 0.1;
    /** Slower than this it neither grows nor dies for a pilot [s]. */
    private static final double FOREVER = 300;

    private ModeWords() {}

    /** What the mode is called; the trade's own word in brackets. */
    static String name(Mode.Kind kind) {
        return switch (kind) {
            case NOSE_UP_DOWN -> "nose up-down (short period)";
            case SPEED_AND_HEIGHT -> "speed and height (phugoid)";
            case NOSE_LEFT_RIGHT -> "nose left-right (Dutch roll)";
            case ROLL -> "roll";
            case CIRCLE -> "circle (spiral)";
        };
    }

    /** What it does; the numbers go into the fields. */
    static String of(Mode mode, Fields fields) {
        fields.putAll(ModeQuantities.ALL, mode);
        if (mode.kind() == Mode.Kind.ROLL && !mode.swings()) {
            return roll(mode, fields);
        }
        if (mode.kind() == Mode.Kind.CIRCLE && !mode.swings()) {
            return circle(mode, fields);
        }
        return mode.swings() ? swing(mode, fields) : creep(mode, fields);
    }

    private static String roll(Mode mode, Fields fields) {
        if (!mode.dies()) {
            return "goes on by itself after the stick";
        }
        String time = fields.put("over_s", -1 / mode.growth() * Math.log(1 / GONE), 1);
        return "stops " + time + " s after the stick";
    }

    /** Whether a bank grows by itself fast enough for a pilot to see. */
    static boolean tightens(Mode mode) {
        return !mode.dies() && mode.halfOrDouble() < FOREVER;
    }

    private static String circle(Mode mode, Fields fields) {
        double time = mode.halfOrDouble();
        if (!(time < FOREVER)) {
            return "stays as it was set";
        }
        String seconds = fields.put("bank_s", time, 0);
        return mode.dies()
                ? "straightens by itself, half the bank in " + seconds + " s"
                : "tightens by itself, twice the bank in " + seconds + " s";
    }

    private static String swing(Mode mode, Fields fields) {
        String period = ModeQuantities.PERIOD.text(mode);
        String start = period + " s a swing, ";
        double swings = mode.halfOrDouble() / mode.period();
        if (!mode.dies()) {
            return start + "grows: twice as large after " + counted(fields, "swings_to_double", swings);
        }
        double gone = swings * Math.log(1 / GONE) / Math.log(2);
        if (gone <= 1.5) {
            fields.put("swings_until_gone", gone, 1);
            return start + "gone after one";
        }
        return start + "half gone after " + counted(fields, "swings_to_half", swings);
    }

    private static String counted(Fields fields, String key, double swings) {
        double rounded = swings < 0.75 ? Numbers.rounded(swings, 1) : Numbers.rounded(swings, 0);
        String number = fields.put(key, rounded, swings < 0.75 ? 1 : 0);
        return number.equals("1") ? "one" : number + " swings";
    }

    private static String creep(Mode mode, Fields fields) {
        if (!mode.dies()) {
            return "does not come back: twice as far in " + fields.put("double_shown_s", mode.halfOrDouble(), 1) + " s";
        }
        String time = fields.put("over_s", Math.log(1 / GONE) / -mode.growth(), 1);
        return "no swing, over in " + time + " s";
    }
}
