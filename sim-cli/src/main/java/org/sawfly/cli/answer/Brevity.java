package org.sawfly.cli.answer;

/**
 * How much of a comparison is printed, so that it stays on one page. What is left out first is what can best be missed; JSON
 * has all of it at every level.
 *
 * @param level 0 for everything, each further one a little less, up to {@link #SHORTEST}
 */
record Brevity(int level) {
    static final int SHORTEST = 5;

    /** Lines of a page. */
    static final int MOST_LINES = 30;

    /** Whether numbers that are too small to see stand in one sentence and not in rows. */
    boolean folds() {
        return level >= 1;
    }

    /** Whether the grams are told: of a single version always. */
    boolean grams(boolean single) {
        return single || level < 2;
    }

    /** Whether a line is left free over the table. */
    boolean gap() {
        return level < 3;
    }

    /** Whether it is told what too much glue would cost. */
    boolean glue() {
        return level < 3;
    }

    /** Whether a foretaste is told. */
    boolean tryFirst() {
        return level < 4;
    }

    /** Whether it is told how much each of several versions damps. */
    boolean damping() {
        return level < 5;
    }
}
