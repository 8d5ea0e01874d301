package org.sawfly.stability;

import java.util.List;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** What margins and tail volumes are called and how they are shown. */
public final class BalanceQuantities {
    /** Neutral point. */
    public static final Quantity<Margins> NEUTRAL_POINT =
            new Quantity<>("neutral_point_mm", "neutral point", Unit.MILLIMETRE, 1, Margins::neutralPoint);
    /** Neutral point at slow flight. */
    public static final Quantity<Margins> NEUTRAL_POINT_SLOW = new Quantity<>(
            "neutral_point_slow_mm", "neutral point, slow", Unit.MILLIMETRE, 1, Margins::neutralPointSlow);
    /** Margin as a length. */
    public static final Quantity<Margins> MARGIN =
            new Quantity<>("margin_mm", "margin", Unit.MILLIMETRE, 1, Margins::margin);
    /** Margin as a share of the chord. */
    public static final Quantity<Margins> STATIC_MARGIN =
            new Quantity<>("static_margin_pct", "margin, glide", Unit.PERCENT, 1, Margins::marginShare);
    /** Margin at launch speed as a length. */
    public static final Quantity<Margins> LAUNCH_MARGIN_LENGTH =
            new Quantity<>("launch_margin_mm", "margin at launch speed", Unit.MILLIMETRE, 1, Margins::marginLaunch);
    /** Margin at launch speed as a share of the chord. */
    public static final Quantity<Margins> LAUNCH_MARGIN =
            new Quantity<>("launch_margin_pct", "margin, launch speed", Unit.PERCENT, 1, Margins::marginLaunchShare);
    /** What the bending boom leaves of the tailplane. */
    public static final Quantity<Margins> BOOM_HELD =
            new Quantity<>("boom_held_pct", "tailplane left at launch speed", Unit.PERCENT, 0, Margins::boomHeld);
    /** Mean chord. */
    public static final Quantity<Margins> MEAN_CHORD =
            new Quantity<>("mean_chord_mm", "mean chord", Unit.MILLIMETRE, 1, Margins::meanChord);

    /** Everything about margins. */
    public static final List<Quantity<Margins>> OF_MARGINS = List.of(
            NEUTRAL_POINT,
            NEUTRAL_POINT_SLOW,
            MARGIN,
            STATIC_MARGIN,
            LAUNCH_MARGIN_LENGTH,
            LAUNCH_MARGIN,
            BOOM_HELD,
            MEAN_CHORD);

    /** Tail volume of the tailplane. */
    public static final Quantity<TailVolumes> TAIL_VOLUME_H =
            new Quantity<>("tail_volume_h", "tail volume, tailplane", Unit.NUMBER, 3, TailVolumes::horizontal);
    /** Tail volume of the fin. */
    public static final Quantity<TailVolumes> TAIL_VOLUME_V =
            new Quantity<>("tail_volume_v", "tail volume, fin", Unit.NUMBER, 4, TailVolumes::vertical);
    /** Arm of the tailplane. */
    public static final Quantity<TailVolumes> TAILPLANE_ARM =
            new Quantity<>("tailplane_arm_mm", "arm of the tailplane", Unit.MILLIMETRE, 0, TailVolumes::horizontalArm);
    /** Arm of the fin. */
    public static final Quantity<TailVolumes> FIN_ARM =
            new Quantity<>("fin_arm_mm", "arm of the fin", Unit.MILLIMETRE, 0, TailVolumes::verticalArm);
    /** Share of the fin below the boom. */
    public static final Quantity<TailVolumes> FIN_BELOW =
            new Quantity<>("fin_below_boom_pct", "fin below the boom", Unit.PERCENT, 0, TailVolumes::finShareBelow);

    /** Everything about tail volumes. */
    public static final List<Quantity<TailVolumes>> OF_VOLUMES =
            List.of(TAIL_VOLUME_H, TAIL_VOLUME_V, TAILPLANE_ARM, FIN_ARM, FIN_BELOW);

    private BalanceQuantities() {}
}
