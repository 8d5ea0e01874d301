package org.sawfly.cli.answer;

import org.sawfly.quantity.Band;

/** Usual ranges of such gliders, in the unit of their quantity; common practice, no source. */
public final class Usual {
    /** Tail volume of the tailplane. */
    public static final Band TAIL_VOLUME_H = new Band(0.34, 0.45);
    /** Tail volume of the fin. */
    public static final Band TAIL_VOLUME_V = new Band(0.022, 0.033);
    /** Static margin in percent of the mean chord. */
    public static final Band STATIC_MARGIN = new Band(3, 10);

    private Usual() {}
}
