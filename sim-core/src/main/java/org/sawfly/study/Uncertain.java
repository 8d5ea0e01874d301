package org.sawfly.study;

import java.util.function.ToDoubleFunction;
import org.sawfly.aero.Corrections;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Unit;

/**
 * What nobody at the bench can measure well, each with the key it is changed by and how far off it usually is: the half
 * width of the range 9 times in 10. Sizes: common practice, no source, but for the section drag (spread of measured
 * sections against the estimate) and the inertia of a built glider.
 *
 * <p>A balance point measured wrong acts on a flight as a neutral point that lies the other way, and is drawn as that.
 */
public enum Uncertain implements Inexact {
    DRAG(
            "drag_pct",
            "drag of wing and tails",
            "correction.drag_pct",
            Kind.FACTOR,
            0.10,
            s -> model(s).drag().wing()),
    BODY_DRAG(
            "body_drag_pct",
            "drag of pod and boom",
            "correction.body_drag_pct",
            Kind.FACTOR,
            0.25,
            s -> model(s).drag().bodies()),
    TAIL_SLOPE(
            "tail_slope_pct",
            "grip of the tails",
            "correction.tail_slope_pct",
            Kind.FACTOR,
            0.07,
            s -> model(s).tailSlope()),
    FIN_BEYOND_STALL(
            "fin_beyond_stall_pct",
            "fin beyond its stall",
            "correction.fin_beyond_stall_pct",
            Kind.FACTOR,
            0.20,
            s -> model(s).finBeyondStall()),
    DOWNWASH(
            "downwash_pct",
            "downwash at the tailplane",
            "correction.downwash_pct",
            Kind.FACTOR,
            0.15,
            s -> model(s).downwash()),
    BOOM_STIFFNESS(
            "boom_stiffness_pct",
            "stiffness of the boom",
            "correction.boom_stiffness_pct",
            Kind.FACTOR,
            0.20,
            s -> model(s).boomStiffness()),
    YAW_INERTIA(
            "yaw_inertia_pct",
            "inertia in yaw",
            "correction.yaw_inertia_pct",
            Kind.FACTOR,
            0.05,
            s -> model(s).yawInertia()),
    CG(
            "cg_mm",
            "balance point as measured",
            "correction.neutral_point_back_mm",
            Kind.BACKWARDS,
            0.001,
            s -> model(s).neutralPointBack()),
    NEUTRAL_POINT(
            "neutral_point_mm",
            "neutral point",
            "correction.neutral_point_back_mm",
            Kind.SHIFT,
            0.003,
            s -> model(s).neutralPointBack()),
    FIRST_SWING(
            "release_rate_pct",
            "turning left at release",
            "thrower.first_swing_deg",
            Kind.SHARE,
            0.20,
            s -> s.launch().thrower().firstSwing()),
    RELEASE_RATE(
            "release_rate_pct",
            "turning left at release",
            "thrower.release_turns_per_s",
            Kind.SHARE,
            0.20,
            s -> s.launch().thrower().releaseRate()),
    NOSE_OUT(
            "nose_out_deg",
            "nose outward at release",
            "throw_correction.nose_out_deg",
            Kind.SHIFT,
            deg(3),
            s -> s.launch().doubts().noseOut()),
    CLIMB(
            "climb_deg",
            "steepness of the climb",
            "throw_correction.climb_steeper_deg",
            Kind.SHIFT,
            deg(5),
            s -> s.launch().doubts().steeper()),
    PRESET(
            "preset_deg",
            "elevator in the preset",
            "throw_correction.preset_up_deg",
            Kind.SHIFT,
            deg(0.5),
            s -> s.launch().doubts().presetUp()),
    PUSH_OVER(
            "push_over_mps",
            "speed of the push-over",
            "throw_correction.push_over_faster_mps",
            Kind.SHIFT,
            1,
            s -> s.launch().doubts().pushFaster()),
    TIMING(
            "timing_s",
            "timing of the pilot",
            "throw_correction.late_s",
            Kind.SHIFT,
            0.1,
            s -> s.launch().doubts().late()),
    BANK(
            "bank_deg",
            "bank at release",
            "throw_correction.bank_deg",
            Kind.SHIFT,
            deg(8),
            s -> s.axes() == Axes.ALL ? s.launch().doubts().bank() : Double.NaN);

    /** Whose uncertainty it is. */
    public enum Of {
        MODEL,
        THROW
    }

    private enum Kind {
        /** A factor that is 1 when neutral. */
        FACTOR,
        /** An offset that is 0 when neutral. */
        SHIFT,
        /** An offset drawn the other way round. */
        BACKWARDS,
        /** A share of a value that was seen; nothing where it was not given. */
        SHARE
    }

    private final Usual usually;
    private final String path;
    private final Kind kind;
    private final ToDoubleFunction<Scenario> value;

    Uncertain(String key, String words, String path, Kind kind, double halfWidth, ToDoubleFunction<Scenario> value) {
        this.usually = new Usual(key, words, halfWidth);
        this.path = path;
        this.kind = kind;
        this.value = value;
    }

    /** Half width of its range 9 times in 10. */
    @Override
    public Usual usually() {
        return usually;
    }

    /** Whether the model or the throw is in doubt. */
    public Of of() {
        return path.startsWith("correction") ? Of.MODEL : Of.THROW;
    }

    /** Path of the setting that a draw makes. */
    String path() {
        return path;
    }

    /** The setting that makes it neutral; null where nothing is neutral. */
    Setting neutral() {
        return switch (kind) {
            case FACTOR -> Setting.of(path, unit().fromSi(1));
            case SHIFT, BACKWARDS -> Setting.of(path, 0);
            case SHARE -> null;
        };
    }

    /** Whether there is anything to be uncertain about in a scenario. */
    boolean applies(Scenario scenario) {
        return !Double.isNaN(value.applyAsDouble(scenario));
    }

    /**
     * What a key that stood at {@code before} (0 or 1 when neutral) becomes when this is off by {@code off} [SI].
     */
    double moved(double before, double off) {
        return switch (kind) {
            case FACTOR, SHARE -> before * (1 + off);
            case SHIFT -> before + off;
            case BACKWARDS -> before - off;
        };
    }

    /** How the key stands in a scenario, seen against the same scenario with everything neutral [SI]. */
    double now(Scenario scenario, Scenario neutral) {
        double here = value.applyAsDouble(scenario);
        return switch (kind) {
            case FACTOR -> here / value.applyAsDouble(neutral);
            case SHIFT, BACKWARDS -> here - value.applyAsDouble(neutral);
            case SHARE -> here;
        };
    }

    /** The setting of a value in SI, held within what files accept. */
    Setting setting(double si) {
        double written = unit().fromSi(si);
        return Setting.of(path, kind == Kind.FACTOR || this == FIRST_SWING ? Math.max(1, written) : written);
    }

    private Unit unit() {
        return Unit.of(path);
    }

    private static Corrections model(Scenario scenario) {
        return scenario.corrections();
    }

    private static double deg(double degrees) {
        return Unit.DEGREE.toSi(degrees);
    }
}
