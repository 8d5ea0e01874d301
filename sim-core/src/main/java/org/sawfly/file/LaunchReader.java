package org.sawfly.file;

import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import java.util.List;
import org.sawfly.flight.Launch;
import org.sawfly.flight.LaunchDoubts;
import org.sawfly.flight.Preset;
import org.sawfly.flight.PushOver;
import org.sawfly.flight.ReleasePath;
import org.sawfly.flight.Thrower;
import org.sawfly.flight.Weather;
import org.sawfly.glider.Hand;
import org.sawfly.quantity.Unit;

/** Reads a launch: a thrower as seen on the field, the preset, the climb, the air. */
final class LaunchReader {
    /**
     * A launch as read.
     *
     * @param launch         itself
     * @param calibratedWith file of the glider with which the usual height was seen; null when not named
     * @param in             where it stands
     */
    record Read(Launch launch, String calibratedWith, In in) {}

    private enum When {
        EARLY,
        NORMAL,
        LATE;

        PushOver pushOver() {
            return switch (this) {
                case EARLY -> PushOver.EARLY;
                case NORMAL -> PushOver.NORMAL;
                case LATE -> PushOver.LATE;
            };
        }
    }

    private LaunchReader() {}

    static Read read(In in) {
        String name = in.text("launch", "club", "name of this way of launching");
        GliderReader.format(in);
        String[] calibrated = new String[1];
        In[] where = new In[1];
        Thrower thrower = in.map("thrower", "who throws, as seen on the field", t -> {
            where[0] = t;
            calibrated[0] =
                    t.optionalText("calibrated_with", "plover.yaml", "glider with which the usual height was seen");
            return thrower(t);
        });
        Preset preset =
                in.map("preset", "deflections held from release, from the cruise position", LaunchReader::preset);
        double climb =
                in.assume("climb_deg", between(20, 90).usually(50, 88), 80, 5, "nose above the horizon in the climb");
        When when = in.choice("push_over", List.of(When.values()), null, "when the pilot pushes over");
        double at = in.optional(
                "push_over_at_s",
                between(0.3, 6).usually(0.6, 3),
                1.5,
                "push-over after release, in place of push_over");
        if (when != null && in.has("push_over_at_s")) {
            in.problem("push_over_at_s", "push_over is given as well", "leave out one of the two");
        }
        PushOver pushOver =
                Double.isNaN(at) ? (when == null ? When.NORMAL : when).pushOver() : new PushOver(Double.NaN, at);
        double[] release = in.map("release", "how it leaves the hand", r -> new double[] {
            r.assume("height_m", between(0.3, 3), 1.7, 0.2, "height of the hand"),
            r.assume("climb_deg", between(0, 60), 10, 5, "flight path above the horizon"),
            bank(r)
        });
        Weather weather = in.map("air", "the air on the field", LaunchReader::air);
        LaunchDoubts doubts = in.map(
                "throw_correction", "what is other in the throw than was meant; 0 is neutral", LaunchReader::doubts);
        UncertaintyReader.ofThrow(in);
        ScatterReader.read(in);
        Launch launch = new Launch(
                name,
                thrower,
                preset,
                climb,
                pushOver,
                new ReleasePath(release[0], release[1], release[2]),
                weather,
                doubts);
        return new Read(launch, calibrated[0], where[0]);
    }

    private static Thrower thrower(In in) {
        Hand hand = in.choice(
                "hand", List.of(Hand.values()), Hand.RIGHT, "throwing hand; the right one holds the left tip");
        double height = in.optional(
                "usual_height_m",
                between(5, 120).usually(20, 75),
                41,
                "launch height of a good ordinary throw in calm air");
        double speed =
                in.optional("release_speed_mps", between(5, 70).usually(20, 50), 33, "over the ground, when measured");
        double swing = in.optional(
                "first_swing_deg", between(1, 80).usually(5, 40), 15, "how far the nose swings past the flight path");
        double turns = in.optional(
                "release_turns_per_s", between(0, 6).usually(0.5, 4), 1.8, "turning left at release, when measured");
        double reach = in.assume(
                "reach_mm", between(300, 1300).usually(550, 950), 720, 50, "middle of the chest to the fingertips");
        double runUp = in.assume("run_up_mps", between(0, 10).usually(0, 7), 3, 1, "run-up");
        double scatter = in.assume(
                "height_scatter_m", between(0, 15).usually(0.5, 5), 2, 0.7, "standard deviation of your throws");
        double arm = in.assume(
                "arm_mass_kg", above(0, 5).usually(0.3, 1.5), 0.75, 0.25, "mass that shares the throw with the glider");
        if (in.has("usual_height_m") && in.has("release_speed_mps")) {
            in.problem(
                    "release_speed_mps",
                    "usual_height_m is given as well, and the speed follows from it",
                    "drop release_speed_mps unless it was measured; then drop usual_height_m");
        }
        if (in.has("first_swing_deg") && in.has("release_turns_per_s")) {
            in.problem(
                    "release_turns_per_s",
                    "first_swing_deg is given as well, and the turning follows from it",
                    "drop release_turns_per_s unless it was measured; then drop first_swing_deg");
        }
        if (Double.isNaN(speed)) {
            height = in.orAssume(height, "usual_height_m", 41, 5, "usual launch height");
        }
        if (Double.isNaN(turns)) {
            swing = in.orAssume(swing, "first_swing_deg", Math.toRadians(15), 8, "first swing of the nose");
        }
        return new Thrower(hand, height, speed, swing, turns, reach, runUp, scatter, arm);
    }

    private static Preset preset(In in) {
        double elevator = SeenReader.signed(in, "elevator_up_mm", "elevator_down_mm", "elevator");
        double camber = SeenReader.signed(in, "camber_up_mm", "camber_down_mm", "camber, up is reflex");
        double rudder = SeenReader.signed(in, "rudder_left_mm", "rudder_right_mm", "rudder");
        elevator = in.orAssume(elevator, "elevator_up_mm", Unit.MILLIMETRE.toSi(0.8), 0.5, "elevator in the launch");
        camber = in.orAssume(camber, "camber_up_mm", Unit.MILLIMETRE.toSi(1.5), 1, "reflex in the launch");
        double aileron =
                SeenReader.signed(in, "aileron_right_mm", "aileron_left_mm", "flaperons apart, to roll that way");
        double hold = in.assume("hold_s", between(0, 3).usually(0.1, 1), 0.35, 0.1, "how long the preset is held");
        return new Preset(elevator, camber, orNone(rudder), orNone(aileron), hold);
    }

    /** Wings against the horizon, the tip in the hand low positive [rad]. */
    private static double bank(In in) {
        Bounds bounds = between(0, 80).usually(0, 30);
        double low = in.optional("held_tip_low_deg", bounds, 5, "wings banked, the tip in the hand low");
        double high = in.optional("held_tip_high_deg", bounds, 5, "wings banked, the tip in the hand high");
        if (in.has("held_tip_low_deg") && in.has("held_tip_high_deg")) {
            in.problem("held_tip_high_deg", "held_tip_low_deg is given as well", "leave out one of the two");
        }
        return orNone(Double.isNaN(low) ? -high : low);
    }

    private static double orNone(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    private static LaunchDoubts doubts(In in) {
        return new LaunchDoubts(
                in.neutral("nose_out_deg", between(-20, 20), 0, "nose further outward at release"),
                in.neutral("climb_steeper_deg", between(-20, 20), 0, "nose higher in the climb"),
                in.neutral("preset_up_deg", between(-10, 10), 0, "elevator further up in the preset"),
                in.neutral("push_over_faster_mps", between(-10, 10), 0, "push-over begins at a higher speed"),
                in.neutral("late_s", between(-1, 1), 0, "preset ends later, and a push-over given as a time"),
                in.neutral("bank_deg", between(-40, 40), 0, "tip in the hand lower at release, where roll is free"));
    }

    private static Weather air(In in) {
        return new Weather(
                in.neutral("wind_mps", between(0, 20).usually(0, 10), 0, "wind against the throw, 10 m up"),
                in.neutral("wind_exponent", between(0, 0.5), 0, "how the wind grows with height; 0 is not at all"),
                in.neutral("temperature_c", between(-30, 50), 15, "on the field"),
                in.neutral("field_above_sea_m", between(0, 4000), 0, "height of the field"));
    }
}
