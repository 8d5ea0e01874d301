package org.sawfly.study;

/** An input that is not known exactly or does not come out the same each time: its name, and how far off it usually is. */
public interface Inexact {
    /**
     * How far off it usually is.
     *
     * @param key of the size, ending in its unit
     * @param words what the input is, in a builder's words
     * @param size [SI; factors and shares as 1]
     */
    record Usual(String key, String words, double size) {}

    /** How far off this one usually is. */
    Usual usually();

    /** Key of its size, ending in its unit. */
    default String key() {
        return usually().key();
    }

    /** What it is, in a builder's words. */
    default String words() {
        return usually().words();
    }

    /** Its size when nobody says otherwise [SI; factors and shares as 1]; NaN when it is to be worked out. */
    default double usual() {
        return usually().size();
    }
}
