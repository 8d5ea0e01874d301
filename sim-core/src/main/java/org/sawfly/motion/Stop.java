package org.sawfly.motion;

/**
 * How a run ended.
 *
 * @param time at which [s]
 * @param event index of the event in the list given, or {@link #AT_END}
 */
public record Stop(double time, int event) {
    /** In place of an index: the run went to the end of the time asked for. */
    public static final int AT_END = -1;
}
