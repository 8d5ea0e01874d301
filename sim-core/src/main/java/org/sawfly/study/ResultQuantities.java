package org.sawfly.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.glider.MassProperties;
import org.sawfly.motion.Glide;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.BalanceQuantities;

/** Every number of a result: its own and those of its parts, in the order in which they are listed. */
public final class ResultQuantities {
    /** Mass, ready to fly. */
    public static final Quantity<Result> MASS = new Quantity<>("mass_g", "mass", Unit.GRAM, 1, r -> mass(r).mass());
    /** Nose lead. */
    public static final Quantity<Result> NOSE_LEAD = new Quantity<>(
            "nose_lead_g", "nose lead", Unit.GRAM, 1, r -> r.rebalanced().leadMass());
    /** How far the battery was moved. */
    public static final Quantity<Result> BATTERY_FORWARD = new Quantity<>(
            "battery_forward_mm",
            "battery moved forward",
            Unit.MILLIMETRE,
            1,
            r -> r.rebalanced().batteryForward());
    /** Balance point. */
    public static final Quantity<Result> CG = new Quantity<>(
            "cg_mm",
            "CG behind leading edge",
            Unit.MILLIMETRE,
            1,
            r -> r.margins().cg());
    /** Inertia about the roll axis. */
    public static final Quantity<Result> IXX = new Quantity<>(
            "ixx_kgm2",
            "inertia in roll",
            Unit.KILOGRAM_SQUARE_METRE,
            4,
            r -> mass(r).inertia().ixx());
    /** Inertia about the pitch axis. */
    public static final Quantity<Result> IYY = new Quantity<>(
            "iyy_kgm2",
            "inertia in pitch",
            Unit.KILOGRAM_SQUARE_METRE,
            4,
            r -> mass(r).inertia().iyy());
    /** Inertia about the yaw axis. */
    public static final Quantity<Result> IZZ = new Quantity<>(
            "izz_kgm2",
            "inertia in yaw",
            Unit.KILOGRAM_SQUARE_METRE,
            4,
            r -> mass(r).inertia().izz());
    /** Least sink of all settings. */
    public static final Quantity<Result> MIN_SINK = new Quantity<>(
            "min_sink_mps",
            "least sink",
            Unit.METRE_PER_SECOND,
            2,
            r -> glide(r.polar().leastSink(), Glide::sink));
    /** Speed of the least sink. */
    public static final Quantity<Result> MIN_SINK_SPEED = new Quantity<>(
            "min_sink_speed_mps",
            "speed of least sink",
            Unit.METRE_PER_SECOND,
            1,
            r -> glide(r.polar().leastSink(), Glide::speed));
    /** Best glide of all settings. */
    public static final Quantity<Result> BEST_GLIDE = new Quantity<>(
            "best_glide_ratio",
            "best glide",
            Unit.NUMBER,
            1,
            r -> glide(r.polar().bestGlide(), Glide::ratio));
    /** Elevator in the cruise, up positive. */
    public static final Quantity<Result> CRUISE_ELEVATOR_UP = new Quantity<>(
            "cruise_elevator_up_mm", "elevator in cruise, up", Unit.MILLIMETRE, 1, Result::cruiseElevatorUp);

    /** Margins. */
    public static final Quantity<Result> NEUTRAL_POINT = BalanceQuantities.NEUTRAL_POINT.of(Result::margins);
    /** Margin at the glide. */
    public static final Quantity<Result> STATIC_MARGIN = BalanceQuantities.STATIC_MARGIN.of(Result::margins);
    /** Margin at launch speed. */
    public static final Quantity<Result> LAUNCH_MARGIN = BalanceQuantities.LAUNCH_MARGIN.of(Result::margins);
    /** Tail volume of the tailplane. */
    public static final Quantity<Result> TAIL_VOLUME_H = BalanceQuantities.TAIL_VOLUME_H.of(Result::volumes);
    /** Tail volume of the fin. */
    public static final Quantity<Result> TAIL_VOLUME_V = BalanceQuantities.TAIL_VOLUME_V.of(Result::volumes);
    /** Launch height. */
    public static final Quantity<Result> APEX_HEIGHT = OutcomeQuantities.APEX_HEIGHT.of(Result::outcome);
    /** Settled height. */
    public static final Quantity<Result> SETTLED_HEIGHT = OutcomeQuantities.SETTLED_HEIGHT.of(Result::outcome);
    /** First swing. */
    public static final Quantity<Result> FIRST_SWING = OutcomeQuantities.FIRST_SWING.of(Result::outcome);
    /** How far it rolls at first. */
    public static final Quantity<Result> ROLLED = OutcomeQuantities.ROLLED.of(Result::outcome);
    /** Lean of the climb. */
    public static final Quantity<Result> SLANT = OutcomeQuantities.SLANT.of(Result::outcome);
    /** Place of the top, sideways. */
    public static final Quantity<Result> DRIFT = OutcomeQuantities.DRIFT.of(Result::outcome);
    /** Still-air time in circles. */
    public static final Quantity<Result> STILL_AIR_CIRCLING = OutcomeQuantities.STILL_AIR_CIRCLING.of(Result::outcome);

    /** All of them: keys and words are unique. */
    public static final List<Quantity<Result>> ALL = all();

    private ResultQuantities() {}

    private static List<Quantity<Result>> all() {
        List<Quantity<Result>> all = new ArrayList<>(List.of(MASS, NOSE_LEAD, BATTERY_FORWARD, CG));
        BalanceQuantities.OF_MARGINS.forEach(quantity -> all.add(quantity.of(Result::margins)));
        BalanceQuantities.OF_VOLUMES.forEach(quantity -> all.add(quantity.of(Result::volumes)));
        all.addAll(List.of(IXX, IYY, IZZ));
        OutcomeQuantities.ALL.forEach(quantity -> all.add(quantity.of(Result::outcome)));
        all.addAll(List.of(MIN_SINK, MIN_SINK_SPEED, BEST_GLIDE, CRUISE_ELEVATOR_UP));
        return List.copyOf(all);
    }

    private static MassProperties mass(Result result) {
        return result.plan().craft().mass();
    }

    private static double glide(Glide glide, ToDoubleFunction<Glide> of) {
        return glide == null ? Double.NaN : of.applyAsDouble(glide);
    }
}
