package org.sawfly.quantity;

/** Words for the two ways in which a number can change, in place of a sign. */
public enum Direction {
    HEIGHT("lower", "higher"),
    WEIGHT("lighter", "heavier"),
    PLACE("forward", "back"),
    AMOUNT("less", "more"),
    TIME("shorter", "longer"),
    SPEED("slower", "faster"),
    SIZE("smaller", "larger"),
    /** Lead, ballast or a battery: said as something to do, before the number. */
    LEAD("take out", "put in", true),
    /** A camber or an elevator whose number grows upwards. */
    UP_DOWN("further down", "further up");

    private final String down;
    private final String up;
    private final boolean before;

    Direction(String down, String up) {
        this(down, up, false);
    }

    Direction(String down, String up, boolean before) {
        this.down = down;
        this.up = up;
        this.before = before;
    }

    /**
     * A likely range in words: "0.2 m lower to 0.3 m higher", "0.1 to 0.3 m lower", "0.1 m lower"; "same to 0.3 m
     * higher" when the other end prints as nothing, "same" when both do, "-" when there is none.
     *
     * @param likely range of after less before, in the unit
     * @param unit whose word stands behind the numbers
     * @param decimals of the numbers
     */
    public String range(Band likely, Unit unit, int decimals) {
        double low = Numbers.rounded(likely.low(), decimals);
        double high = Numbers.rounded(likely.high(), decimals);
        if (Double.isNaN(low) || Double.isNaN(high)) {
            return Numbers.NONE;
        }
        String word = unit == Unit.NUMBER ? "" : " " + unit.words();
        if (low < 0 && high > 0) {
            return say(Numbers.fixed(-low, decimals) + word, false) + " to "
                    + say(Numbers.fixed(high, decimals) + word, true);
        }
        double least = Math.min(Math.abs(low), Math.abs(high));
        double most = Math.max(Math.abs(low), Math.abs(high));
        if (most == 0) {
            return Difference.SAME;
        }
        if (least == 0 && likely.spansZero()) {
            return Difference.SAME + " to " + say(Numbers.fixed(most, decimals) + word, high > 0);
        }
        String sizes = least == most
                ? Numbers.fixed(most, decimals)
                : Numbers.fixed(least, decimals) + " to " + Numbers.fixed(most, decimals);
        return say(sizes + word, high > 0);
    }

    /** The amount, already without sign and with its unit, and the word for its direction. */
    String say(String amount, boolean rises) {
        String word = rises ? up : down;
        return before ? word + " " + amount : amount + " " + word;
    }
}
