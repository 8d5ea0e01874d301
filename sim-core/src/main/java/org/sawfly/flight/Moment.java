package org.sawfly.flight;

/**
 * One remarkable moment of a flight.
 *
 * @param kind
 * @param time after release [s]
 * @param height above the ground [m]
 * @param distance over the ground along the throw [m]
 * @param speed through the air [m/s]
 * @param pathAngle above the horizon [rad]
 */
public record Moment(Kind kind, double time, double height, double distance, double speed, double pathAngle) {
    /** Which moment. */
    public enum Kind {
        RELEASE,
        WAG_OVER,
        PULLED_UP,
        PUSH_OVER,
        TOP,
        GLIDING
    }
}
