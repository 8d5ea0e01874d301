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

    /** The amount, already without sign and with its unit, and the word for its direction. */
    String say(String amount, boolean rises) {
        String word = rises ? up : down;
        return before ? word + " " + amount : amount + " " + word;
    }
}
