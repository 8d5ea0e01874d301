package org.sawfly.flight;

/** The phases of a flight as the pilot flies them. */
public enum Phase {
    /** The launch preset is held. */
    PRESET,
    /** Climbing to the climb angle and holding it. */
    CLIMB,
    /** The nose is brought down to the glide. */
    PUSH_OVER,
    /** Gliding at the trimmed speed. */
    GLIDE
}
