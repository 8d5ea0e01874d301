package org.sawfly.aero;

/**
 * How many strips each surface has.
 *
 * @param wing both halves, even
 * @param tailplane both halves, even
 * @param fin from top to foot
 */
record StripCounts(int wing, int tailplane, int fin) {
    /** What is flown. */
    static final StripCounts USUAL = new StripCounts(32, 8, 8);
}
