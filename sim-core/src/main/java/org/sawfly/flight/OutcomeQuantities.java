package org.sawfly.flight;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** What the numbers of a launch are called and how they are shown. */
public final class OutcomeQuantities {
    /** Release speed. */
    public static final Quantity<Outcome> RELEASE_SPEED = new Quantity<>(
            "release_speed_mps",
            "release speed",
            Unit.METRE_PER_SECOND,
            1,
            o -> o.release().speed());
    /** Turning left at release. */
    public static final Quantity<Outcome> RELEASE_TURNS = new Quantity<>(
            "release_turns_per_s",
            "still turning at release",
            Unit.TURNS_PER_SECOND,
            1,
            o -> o.release().yawRate());
    /** Launch height. */
    public static final Quantity<Outcome> APEX_HEIGHT = new Quantity<>(
            "apex_height_m", "launch height", Unit.METRE, 1, o -> o.top().height());
    /** Time to the top. */
    public static final Quantity<Outcome> APEX_TIME = new Quantity<>(
            "apex_time_s", "time to the top", Unit.SECOND, 1, o -> o.top().time());
    /** Speed at the top. */
    public static final Quantity<Outcome> APEX_SPEED = new Quantity<>(
            "apex_speed_mps",
            "speed at the top",
            Unit.METRE_PER_SECOND,
            1,
            o -> o.top().speed());
    /** Settled height. */
    public static final Quantity<Outcome> SETTLED_HEIGHT = new Quantity<>(
            "settled_height_m",
            "settled height",
            Unit.METRE,
            1,
            o -> o.settled().height());
    /** Lost from the top to the glide. */
    public static final Quantity<Outcome> TRANSITION_LOSS = new Quantity<>(
            "transition_loss_m",
            "lost on the way to the glide",
            Unit.METRE,
            1,
            o -> o.settled().transitionLoss());
    /** First swing. */
    public static final Quantity<Outcome> FIRST_SWING = new Quantity<>(
            "first_swing_deg",
            "first swing of the nose",
            Unit.DEGREE,
            0,
            o -> o.swing().first());
    /** Swing back. */
    public static final Quantity<Outcome> SWING_BACK = new Quantity<>(
            "swing_back_deg", "swing back", Unit.DEGREE, 0, o -> o.swing().back());
    /** How long the fin is stalled. */
    public static final Quantity<Outcome> FIN_STALLED = new Quantity<>(
            "fin_stalled_s", "fin stalled for", Unit.SECOND, 2, o -> o.swing().finStalledFor());
    /** Greatest load. */
    public static final Quantity<Outcome> MAX_LOAD =
            new Quantity<>("max_load_g", "greatest load", Unit.LOAD, 1, Outcome::maxLoad);
    /** Still-air time, straight on. */
    public static final Quantity<Outcome> STILL_AIR_TIME = new Quantity<>(
            "still_air_time_s",
            "still air, straight",
            Unit.SECOND,
            0,
            o -> o.settled().straightTime());
    /** Still-air time in circles. */
    public static final Quantity<Outcome> STILL_AIR_CIRCLING = new Quantity<>(
            "still_air_circling_s",
            "still air, circling",
            Unit.SECOND,
            0,
            o -> o.settled().circlingTime());

    /** How far it rolls at first. */
    public static final Quantity<Outcome> ROLLED =
            right("rolled_right_deg", "rolled after release, right", Unit.DEGREE, 0, c -> c.rolled());
    /** Slant of the climb. */
    public static final Quantity<Outcome> SLANT =
            right("climb_leans_right_deg", "lean of the climb, right", Unit.DEGREE, 0, c -> c.slant());
    /** Heading at the top. */
    public static final Quantity<Outcome> HEADING =
            right("heading_right_at_top_deg", "heading at the top, right", Unit.DEGREE, 0, c -> c.heading());
    /** Drift of the top. */
    public static final Quantity<Outcome> DRIFT =
            right("top_to_the_right_m", "top to the right", Unit.METRE, 1, c -> c.drift());

    /** All of them. */
    public static final List<Quantity<Outcome>> ALL = List.of(
            RELEASE_SPEED,
            RELEASE_TURNS,
            APEX_HEIGHT,
            APEX_TIME,
            APEX_SPEED,
            SETTLED_HEIGHT,
            TRANSITION_LOSS,
            FIRST_SWING,
            SWING_BACK,
            FIN_STALLED,
            MAX_LOAD,
            STILL_AIR_TIME,
            STILL_AIR_CIRCLING,
            ROLLED,
            SLANT,
            HEADING,
            DRIFT);

    private OutcomeQuantities() {}

    private static Quantity<Outcome> right(
            String key, String words, Unit unit, int decimals, ToDoubleFunction<Course> getter) {
        return new Quantity<>(
                key, words, unit, decimals, o -> getter.applyAsDouble(o.top().course()));
    }
}
