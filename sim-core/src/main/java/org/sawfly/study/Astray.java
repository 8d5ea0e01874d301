package org.sawfly.study;

import java.util.List;
import org.sawfly.flight.Course;
import org.sawfly.flight.FlightLog;

/**
 * Where an error of building sends the launch when the glider is free to roll: half the difference between the error one
 * way and the other way, so that what the throw itself does is not counted. Positive to the right, for the direction of
 * the error that its words name. NaN where a flight has no top.
 *
 * @param error which
 * @param amount its size [rad], for a balance [m]
 * @param rolled change of the turn about its own long axis in the first half second [rad]
 * @param heading change of the heading at the top [rad]
 * @param drift change of the place of the top, sideways [m]
 */
public record Astray(BenchError error, double amount, double rolled, double heading, double drift) {
    /** How long the roll is looked at [s]. */
    public static final double ROLLING = 0.5;

    /** One flight. */
    record Seen(double rolled, Course course) {
        static final Seen NONE = new Seen(Double.NaN, Course.NONE);

        static Seen of(List<FlightLog.Row> rows, Course course) {
            int row = (int) Math.round(ROLLING / FlightLog.INTERVAL);
            return row < rows.size() ? new Seen(rows.get(row).side().rolled(), course) : NONE;
        }
    }

    /** Of two flights. */
    static Astray of(BenchError error, double amount, Seen one, Seen other) {
        Course to = one.course();
        Course from = other.course();
        return new Astray(
                error,
                amount,
                0.5 * (one.rolled() - other.rolled()),
                0.5 * Math.IEEEremainder(to.heading() - from.heading(), 2 * Math.PI),
                0.5 * (to.drift() - from.drift()));
    }
}
