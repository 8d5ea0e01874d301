package org.sawfly.flight;

/**
 * Where a launch goes that is not meant to: seen from behind the thrower, to the right positive. Nothing of it in flights
 * in a vertical plane.
 *
 * @param rolled how far it rolls at first, the largest turn about its own long axis in the first second [rad]
 * @param rolledTime when [s]
 * @param slant the climb leans to this side: of the line from the hand to the push-over, or to the top if that comes
 *     first [rad]
 * @param heading of the path over the ground at the top against the direction of the throw [rad]
 * @param drift of the top from the vertical plane of the throw [m]
 */
public record Course(double rolled, double rolledTime, double slant, double heading, double drift) {
    /** Not flown so far. */
    public static final Course NONE = new Course(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
