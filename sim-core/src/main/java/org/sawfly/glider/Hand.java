package org.sawfly.glider;

/** The throwing hand. A right-hander holds the LEFT wing tip and releases turning nose-left (yaw rate r below 0). */
public enum Hand {
    RIGHT,
    LEFT;

    /** Sign of the yaw rate at release: -1 for a right-hander, +1 for a left-hander. */
    public int yawSign() {
        return this == RIGHT ? -1 : 1;
    }

    /** Side of the peg in the y axis (right positive): -1, the left tip, for a right-hander. */
    public int pegSide() {
        return this == RIGHT ? -1 : 1;
    }
}
