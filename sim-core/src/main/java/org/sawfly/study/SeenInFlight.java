package org.sawfly.study;

/**
 * What was seen of today's glider in flight. A draw of what is uncertain in which it would not have flown so is left out,
 * and ranges become narrower. How near is near enough: common practice, no source.
 *
 * @param elevatorUp elevator in the cruise, at the root trailing edge, up positive [m]; NaN when not seen
 * @param dive what it does when left alone in a dive; null when not tried
 * @param leastSink from a log in calm air [m/s]; NaN when not seen
 */
public record SeenInFlight(double elevatorUp, Dive dive, double leastSink) {
    /** Nothing was seen. */
    public static final SeenInFlight NOTHING = new SeenInFlight(Double.NaN, null, Double.NaN);

    private static final double ELEVATOR_NEAR = 0.001;
    private static final double SINK_NEAR = 0.03;

    /** What a glider does when left alone in a dive, and the margins at launch speed [1] with which it may. */
    public enum Dive {
        PULLS_OUT_HARD(0.03, Double.POSITIVE_INFINITY),
        PULLS_OUT_GENTLY(0, 0.06),
        NEUTRAL(-0.02, 0.02),
        TUCKS(Double.NEGATIVE_INFINITY, 0.01);

        private final double least;
        private final double most;

        Dive(double least, double most) {
            this.least = least;
            this.most = most;
        }
    }

    /** The same without the elevator, where its place was taken for granted. */
    public SeenInFlight withoutElevator() {
        return new SeenInFlight(Double.NaN, dive, leastSink);
    }

    /** Whether anything was seen. */
    public boolean anything() {
        return !Double.isNaN(elevatorUp) || dive != null || !Double.isNaN(leastSink);
    }

    /** Whether a glider that answers so may have been seen so. */
    public boolean agrees(Result today) {
        double margin = ResultQuantities.LAUNCH_MARGIN.si(today);
        return (dive == null || margin >= dive.least && margin <= dive.most)
                && near(elevatorUp, today.cruiseElevatorUp(), ELEVATOR_NEAR)
                && near(leastSink, ResultQuantities.MIN_SINK.si(today), SINK_NEAR);
    }

    private static boolean near(double seen, double worked, double within) {
        return Double.isNaN(seen) || Math.abs(worked - seen) <= within;
    }
}
