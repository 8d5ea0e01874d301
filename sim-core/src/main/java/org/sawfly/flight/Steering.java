package org.sawfly.flight;

/**
 * Which controls the pilot moves. One that is switched off stays where the launch preset puts it and then where the trimmed
 * glide has it.
 *
 * @param elevator holds the nose
 * @param rudder damps the yawing
 * @param aileron levels the wings
 */
public record Steering(boolean elevator, boolean rudder, boolean aileron) {
    /** All of them. */
    public static final Steering FULL = new Steering(true, true, true);
    /** None: hands off. */
    public static final Steering NONE = new Steering(false, false, false);
}
