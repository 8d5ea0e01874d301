package org.sawfly.cli.answer;

import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;

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

    /** More throws a side than this nobody does. */
    private static final int MOST_THROWS = 500;

    /**
     * Both quantiles of the normal distribution added and squared: a true difference is told from none at 5 % one-sided
     * and found 4 times in 5 (Student, "The Probable Error of a Mean", 1908, for large numbers): (1.645 + 0.842)^2.
     */
    private static final double CERTAINTY = 6.18;

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

    /** How many throws a side, with a scatter [m] from throw to throw, show a difference [m]. */
    static double throwsASide(double difference, double scatter) {
        double ratio = scatter / difference;
        return Math.ceil(2 * CERTAINTY * ratio * ratio);
    }

    /** "about 70 throws a side would show" or "no number of throws will show"; the number goes into the fields. */
    static String throwsWords(Fields fields, double difference, double scatter) {
        double needed = throwsASide(Math.abs(difference), scatter);
        fields.put("throws_a_side", Double.isFinite(needed) ? needed : Double.NaN, 0);
        if (!(needed <= MOST_THROWS)) {
            return "which no number of throws will show you";
        }
        double round = needed > 100 ? 10 * Math.ceil(needed / 10) : needed;
        if (needed < FEW_THROWS) {
            fields.put("throws_a_side_shown", round, 0);
            return "which a few throws a side would show";
        }
        return "which about " + fields.put("throws_a_side_shown", round, 0) + " throws a side would show";
    }
}
