package org.sawfly.flight;

/** When the pilot of a changed version pushes over. */
public enum PushRule {
    /** As the launch says: the same pilot flies every version. */
    SAME,
    /** At the airspeed that gives each version its greatest settled height. */
    BEST
}
