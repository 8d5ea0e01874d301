package org.sawfly.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** What the numbers of errors on the bench are called and how they are shown. */
public final class ToleranceQuantities {
    /** Length of the part. */
    public static final Quantity<Sensitivity> LENGTH = new Quantity<>(
            "over_mm",
            "length of the part",
            Unit.MILLIMETRE,
            0,
            one -> one.error().isAngle() ? one.length() : Double.NaN);
    /** What costs the launch. */
    public static final Quantity<Sensitivity> COSTS_HEIGHT = new Quantity<>(
            "costs_launch_mm", "error that costs launch height", Unit.MILLIMETRE, 1, Sensitivity::heightReading);
    /** The same as an angle. */
    public static final Quantity<Sensitivity> COSTS_HEIGHT_ANGLE =
            new Quantity<>("costs_launch_deg", "the same as an angle", Unit.DEGREE, 1, Sensitivity::heightAngle);
    /** What costs sink. */
    public static final Quantity<Sensitivity> COSTS_SINK =
            new Quantity<>("costs_sink_mm", "error that costs sink", Unit.MILLIMETRE, 1, Sensitivity::sinkReading);
    /** All. */
    public static final List<Quantity<Sensitivity>> OF_ERROR =
            List.of(LENGTH, COSTS_HEIGHT, COSTS_HEIGHT_ANGLE, COSTS_SINK);

    /** Launch height. */
    public static final Quantity<Tolerance> HEIGHT =
            cost("launch_change_m", "launch", Unit.METRE, 2, Tolerance::height);
    /** Sink. */
    public static final Quantity<Tolerance> SINK =
            cost("sink_change_mps", "sink", Unit.METRE_PER_SECOND, 3, Tolerance::sink);
    /** Elevator in cruise. */
    public static final Quantity<Tolerance> ELEVATOR =
            cost("elevator_down_mm", "elevator in cruise, down", Unit.MILLIMETRE, 1, Tolerance::elevatorDown);
    /** First swing. */
    public static final Quantity<Tolerance> SWING =
            cost("first_swing_change_deg", "first swing", Unit.DEGREE, 1, Tolerance::swing);
    /** All. */
    public static final List<Quantity<Tolerance>> OF_SIZE = List.of(HEIGHT, SINK, ELEVATOR, SWING);

    /** Roll. */
    public static final Quantity<Astray> ROLLED = new Quantity<>(
            "rolled_right_change_deg", "roll in the first half second, right", Unit.DEGREE, 1, Astray::rolled);
    /** Heading. */
    public static final Quantity<Astray> HEADING =
            new Quantity<>("heading_right_change_deg", "heading at the top, right", Unit.DEGREE, 1, Astray::heading);
    /** Place of the top. */
    public static final Quantity<Astray> DRIFT =
            new Quantity<>("top_right_change_m", "top, to the right", Unit.METRE, 1, Astray::drift);
    /** All. */
    public static final List<Quantity<Astray>> SIDEWAYS = List.of(ROLLED, HEADING, DRIFT);

    private ToleranceQuantities() {}

    private static Quantity<Tolerance> cost(
            String key, String words, Unit unit, int decimals, ToDoubleFunction<Tolerance> getter) {
        return new Quantity<>(key, words, unit, decimals, getter);
    }
}
