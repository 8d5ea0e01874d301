package org.sawfly.motion;

/** Which freedoms of motion are flown. */
public enum Axes {
    /** Point mass plus pitch in a vertical plane. */
    PITCH,
    /** Pitch and yaw with the roll rate prescribed. */
    PITCH_YAW,
    /** The whole rigid body. */
    ALL
}
