package org.sawfly.study;

import java.util.List;
import org.sawfly.glider.BoomSwing.Plane;
import org.sawfly.glider.BoomTube;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.strength.BoomStrength;
import org.sawfly.strength.Reserve;
import org.sawfly.strength.TailEffectiveness;

/** What the numbers of a boom are called and how they are shown. */
public final class BoomQuantities {
    /** The usual weights of the bench [kg]. */
    public static final double LIGHT = Unit.GRAM.toSi(200);
    /** The heavier one. */
    public static final double HEAVY = Unit.GRAM.toSi(500);
    /** Arm of the couple that twists the boom [m]. */
    public static final double ARM = Unit.MILLIMETRE.toSi(100);

    /** Stiffness where it leaves the pod. */
    public static final Quantity<BoomLook> FRONT_STIFFNESS = new Quantity<>(
            "stiffness_front_Nm2",
            "bending stiffness at the pod",
            Unit.NEWTON_SQUARE_METRE,
            1,
            look -> stiffness(look, look.glider().boom().frontX()));
    /** Stiffness at its end. */
    public static final Quantity<BoomLook> END_STIFFNESS = new Quantity<>(
            "stiffness_end_Nm2",
            "bending stiffness at the end",
            Unit.NEWTON_SQUARE_METRE,
            1,
            look -> stiffness(look, look.glider().boom().endX()));
    /** Moved by 200 g. */
    public static final Quantity<BoomLook> MOVES_LIGHT = new Quantity<>(
            "moved_by_200_g_mm", "200 g at the tail moves it", Unit.MILLIMETRE, 1, look -> look.moves(LIGHT));
    /** Moved by 500 g. */
    public static final Quantity<BoomLook> MOVES_HEAVY = new Quantity<>(
            "moved_by_500_g_mm", "500 g at the tail moves it", Unit.MILLIMETRE, 1, look -> look.moves(HEAVY));
    /** Twisted by 500 g on an arm of 100 mm. */
    public static final Quantity<BoomLook> TWISTS = new Quantity<>(
            "twisted_by_500_g_on_100_mm_deg",
            "500 g on an arm of 100 mm twists it",
            Unit.DEGREE,
            1,
            look -> look.twists(HEAVY, ARM));
    /** Where it is held. */
    public static final Quantity<BoomLook> HELD = new Quantity<>(
            "held_behind_mm", "held on the bench behind leading edge", Unit.MILLIMETRE, 0, look -> -look.heldX());
    /** Where the weight hangs. */
    public static final Quantity<BoomLook> HUNG = new Quantity<>(
            "hung_behind_mm", "weight hung behind leading edge", Unit.MILLIMETRE, 0, look -> -look.hungX());
    /** First frequency on the bench, sideways. */
    public static final Quantity<BoomLook> SWING_HELD_SIDE = new Quantity<>(
            "swings_held_sideways_Hz", "swings held, sideways", Unit.HERTZ, 0, look -> look.swingsHeld(Plane.SIDE));
    /** The same up and down. */
    public static final Quantity<BoomLook> SWING_HELD_VERTICAL = new Quantity<>(
            "swings_held_up_down_Hz",
            "swings held, up and down",
            Unit.HERTZ,
            0,
            look -> look.swingsHeld(Plane.VERTICAL));
    /** First frequency in flight, sideways. */
    public static final Quantity<BoomLook> SWING_FLYING_SIDE = new Quantity<>(
            "swings_in_flight_sideways_Hz",
            "swings in flight, sideways",
            Unit.HERTZ,
            0,
            look -> look.swingsInFlight(Plane.SIDE));
    /** The same up and down. */
    public static final Quantity<BoomLook> SWING_FLYING_VERTICAL = new Quantity<>(
            "swings_in_flight_up_down_Hz",
            "swings in flight, up and down",
            Unit.HERTZ,
            0,
            look -> look.swingsInFlight(Plane.VERTICAL));
    /** The least reserve. */
    public static final Quantity<BoomLook> LEAST_RESERVE = new Quantity<>(
            "boom_bears_times",
            "boom bears the throw, times",
            Unit.NUMBER,
            1,
            look -> look.strength().weakest().factor());

    /** All of a boom. */
    public static final List<Quantity<BoomLook>> OF_BOOM = List.of(
            FRONT_STIFFNESS,
            END_STIFFNESS,
            HELD,
            HUNG,
            MOVES_LIGHT,
            MOVES_HEAVY,
            TWISTS,
            SWING_HELD_SIDE,
            SWING_HELD_VERTICAL,
            SWING_FLYING_SIDE,
            SWING_FLYING_VERTICAL,
            LEAST_RESERVE);

    /** Where a spot lies. */
    public static final Quantity<Reserve> PLACE =
            new Quantity<>("behind_mm", "place behind leading edge", Unit.MILLIMETRE, 0, spot -> -spot.x());
    /** Reserve of a spot. */
    public static final Quantity<Reserve> RESERVE =
            new Quantity<>("bears_times", "bears what is asked, times", Unit.NUMBER, 1, Reserve::factor);

    /** The release speed that uses the weakest spot up. */
    public static final Quantity<BoomStrength.Limit> GIVES_WAY = new Quantity<>(
            "gives_way_at_mps",
            "release speed at which it gives way",
            Unit.METRE_PER_SECOND,
            0,
            limit -> limit.speed());

    /** What bending costs at the preset as it is. */
    public static final Quantity<SoftBoom> BENDING_COSTS =
            new Quantity<>("bending_costs_m", "launch height lost to bending", Unit.METRE, 1, SoftBoom::cost);
    /** What re-setting the preset gives back. */
    public static final Quantity<SoftBoom> GIVEN_BACK = new Quantity<>(
            "preset_gives_back_m", "given back by re-setting the preset", Unit.METRE, 1, SoftBoom::givenBack);

    /** What is left of the tailplane for trim. */
    public static final Quantity<TailEffectiveness> TAILPLANE_HELD = new Quantity<>(
            "tailplane_held_pct", "left of the tailplane, held", Unit.PERCENT, 0, TailEffectiveness::tailplaneHeld);
    /** The same in free flight. */
    public static final Quantity<TailEffectiveness> TAILPLANE_FREE = new Quantity<>(
            "tailplane_free_pct", "left of the tailplane, flying", Unit.PERCENT, 0, TailEffectiveness::tailplaneFree);
    /** What is left of the fin, held. */
    public static final Quantity<TailEffectiveness> FIN_HELD =
            new Quantity<>("fin_held_pct", "left of the fin, held", Unit.PERCENT, 0, TailEffectiveness::finHeld);
    /** The same in free flight. */
    public static final Quantity<TailEffectiveness> FIN_FREE =
            new Quantity<>("fin_free_pct", "left of the fin, flying", Unit.PERCENT, 0, TailEffectiveness::finFree);
    /** Speed of these. */
    public static final Quantity<TailEffectiveness> AT_SPEED =
            new Quantity<>("speed_mps", "airspeed", Unit.METRE_PER_SECOND, 0, TailEffectiveness::speed);

    /** All of the tails at a speed. */
    public static final List<Quantity<TailEffectiveness>> OF_TAILS =
            List.of(AT_SPEED, TAILPLANE_HELD, TAILPLANE_FREE, FIN_HELD, FIN_FREE);

    private BoomQuantities() {}

    private static double stiffness(BoomLook look, double x) {
        return BoomTube.of(look.glider().boom()).stiffness(x);
    }
}
