package org.sawfly.quantity;

/**
 * The difference of two printed numbers. It equals the numbers beside it: both are rounded first, then subtracted. Words
 * take the place of signs.
 *
 * @param before first number in its unit, as printed
 * @param after second number in its unit, as printed
 * @param unit unit of both
 * @param decimals decimals of both
 */
public record Difference(double before, double after, Unit unit, int decimals) {
    /** Said when the printed numbers are equal. */
    public static final String SAME = "same";

    /** Said when the likely range holds both signs. */
    public static final String NOT_CLEAR = "no clear difference";

    /** Said when no film and no log could show it. */
    public static final String TOO_SMALL = "too small to see";

    private static final int WHOLE = 100;

    /** Rounds both numbers. */
    public Difference {
        before = Numbers.rounded(before, decimals);
        after = Numbers.rounded(after, decimals);
    }

    /** From one result to another. */
    public static <T> Difference of(Quantity<T> quantity, T before, T after) {
        return new Difference(quantity.value(before), quantity.value(after), quantity.unit(), quantity.decimals());
    }

    /** After less before, in the unit; NaN when one of them is missing. */
    public double amount() {
        return Numbers.rounded(after - before, decimals);
    }

    /** Whether the two print alike. */
    public boolean same() {
        return amount() == 0;
    }

    /** "1.0 g lighter", "take out 0.9 g", "same"; "-" when one of the numbers is missing. */
    public String words(Direction direction) {
        double amount = amount();
        if (Double.isNaN(amount)) {
            return Numbers.NONE;
        }
        return amount == 0 ? SAME : direction.say(magnitude() + unitWords(), amount > 0);
    }

    /** As {@link #words(Direction)} without the unit: "0.1 lower". */
    public String wordsWithoutUnit(Direction direction) {
        return new Difference(before, after, Unit.NUMBER, decimals).words(direction);
    }

    /** As {@link #words(Direction)}, but "too small to see" below what film or log can show, in the unit. */
    public String words(Direction direction, double smallestSeen) {
        return Math.abs(amount()) < smallestSeen ? TOO_SMALL : words(direction);
    }

    /**
     * With the likely range of the difference: "0.1 m lower (0.0-0.3)"; "no clear difference" when the range spans zero or
     * lies on the other side, "too small to see" when all of it is below what film or log can show. A range that
     * prints as one number is left out.
     *
     * @param direction words for the two ways
     * @param likely range of the difference after less before, in the unit
     * @param smallestSeen the least that can be seen, in the unit; 0 when everything counts
     */
    public String words(Direction direction, Band likely, double smallestSeen) {
        double amount = amount();
        if (Double.isNaN(amount)) {
            return Numbers.NONE;
        }
        if (Math.max(Math.abs(likely.low()), Math.abs(likely.high())) < smallestSeen) {
            return TOO_SMALL;
        }
        if (likely.spansZero() || amount * (likely.low() + likely.high()) < 0) {
            return NOT_CLEAR;
        }
        Band sizes = amount < 0 || amount == 0 && likely.high() <= 0 ? likely.negated() : likely;
        String low = Numbers.fixed(sizes.low(), decimals);
        boolean wide = !low.equals(Numbers.fixed(sizes.high(), decimals));
        return words(direction) + (wide ? " (" + Numbers.range(sizes, decimals) + ")" : "");
    }

    /** In whole percent of the first printed number: "6 % less", "same"; "-" when there is none. */
    public String percentWords() {
        double percent = percent();
        if (Double.isNaN(percent)) {
            return Numbers.NONE;
        }
        return percent == 0 ? SAME : Direction.AMOUNT.say(Numbers.fixed(Math.abs(percent), 0) + " %", percent > 0);
    }

    /** After less before in whole percent of before [%], from the printed numbers; NaN when there is none. */
    public double percent() {
        return Numbers.rounded(WHOLE * (after - before) / Math.abs(before), 0);
    }

    private String magnitude() {
        return Numbers.fixed(Math.abs(amount()), decimals);
    }

    private String unitWords() {
        return unit == Unit.NUMBER ? "" : " " + unit.words();
    }
}
