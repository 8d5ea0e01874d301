package org.sawfly.cli.answer;

import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.study.statistics.ThrowsNeeded;

/** What a log, a film or many throws can show of a difference. */
final class Seeing {
    /** The least a log shows of launch heights on one evening [m]; common practice, no source. */
    static final double HEIGHT_M = 0.3;
    /** The least a film shows of a swing [deg]; common practice, no source. */
    static final double SWING_DEG = 1.5;
    /** The least a log shows of the sink in still air [m/s]; common practice, no source. */
    static final double SINK_MPS = 0.015;
    /** The least a stopwatch shows between two still-air flights [s]; common practice, no source. */
    static final double TIME_S = 3;

    /** Fewer throws a side than this are called a few. */
    private static final int FEW_THROWS = 5;

    private Seeing() {}

    /** A difference, or that there is none, or that it is too small to see (a height is told all the same). */
    static String words(Difference difference, Direction direction, double smallest) {
        double amount = Math.abs(difference.amount());
        if (Double.isNaN(amount)) {
            return Numbers.NONE;
        }
        if (amount == 0) {
            return Difference.NOT_CLEAR;
        }
        if (amount >= smallest) {
            return difference.words(direction);
        }
        boolean told = direction == Direction.HEIGHT;
        return told ? difference.words(direction) + ", " + Difference.TOO_SMALL : Difference.TOO_SMALL;
    }

    /** "about 70 throws a side would show" or "no number of throws will show"; the number goes into the fields. */
    static String throwsWords(Fields fields, double difference, double scatter) {
        int needed = ThrowsNeeded.aSide(difference, scatter);
        boolean many = needed > ThrowsNeeded.CEILING;
        fields.put("throws_a_side", needed == Integer.MAX_VALUE ? Double.NaN : needed, 0);
        if (many) {
            return "which no number of throws will show you";
        }
        int shown = ThrowsNeeded.shown(needed);
        fields.put("throws_a_side_shown", shown);
        return needed < FEW_THROWS
                ? "which a few throws a side would show"
                : "which about " + shown + " throws a side would show";
    }
}
