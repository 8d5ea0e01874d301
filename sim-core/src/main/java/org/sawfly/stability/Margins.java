package org.sawfly.stability;

import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.ModelChoice;
import org.sawfly.aero.Models;
import org.sawfly.aero.Reference;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.air.Air;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;

/**
 * How far the CG lies ahead of the neutral point, lengths behind the root leading edge [m].
 *
 * <p>At the glide the boom counts as rigid. At launch speed, and at its lift coefficient and Reynolds numbers, it bends: with
 * the air load alone, as a change of trim with speed shows it ("tuck"), the tailplane's slope is worth
 * {@code eta = 1/(1 + q S_t a_t theta_F)} of itself. (In a pull-up the boom's own inertia gives back more than that; see
 * {@link org.sawfly.aero.BoomFlex}.)
 *
 * @param cg balance point behind the root leading edge [m]
 * @param neutralPoint at the usual lift and speed, rigid boom, behind the root leading edge [m]
 * @param neutralPointSlow the same at lift coefficient 0.6 [m]
 * @param neutralPointLaunch at launch speed and lift coefficient 0.1, with the boom bent as it is there [m]
 * @param boomHeld what the bending boom leaves of the tailplane at launch speed [1]
 * @param meanChord mean aerodynamic chord [m]
 * @param meanChordBack its leading edge behind the root leading edge [m]
 */
public record Margins(
        double cg,
        double neutralPoint,
        double neutralPointSlow,
        double neutralPointLaunch,
        double boomHeld,
        double meanChord,
        double meanChordBack) {
    private static final double RIGID = 1e6;
    private static final double SLOW_LIFT = 0.6;
    private static final double SLOW_SPEED = 6;
    /** Lift coefficient of a pull-up of some five g at launch speed [1]. */
    private static final double LAUNCH_LIFT = 0.1;

    /** Of a glider in an air, for a launch speed [m/s]. */
    public static Margins of(Glider glider, Corrections c, Models models, Air air, double launchSpeed) {
        return of(glider, c, models, ModelChoice.TAIL_VOLUME, air, launchSpeed);
    }

    /**
     * The same by a model of choice. What the bending boom leaves of the tailplane is a closed form that both models share.
     */
    public static Margins of(
            Glider glider, Corrections c, Models models, ModelChoice model, Air air, double launchSpeed) {
        MassProperties mass = MassProperties.of(glider);
        TailVolumeModel flown = TailVolumeModel.of(glider, mass, c, models);
        AeroModel rigid = model.of(glider, mass, c.withBoomStiffness(RIGID), models);
        double held = flown.heldEffectiveness(launchSpeed, air.density());
        AeroModel bent = model.of(glider, mass, c.withBoomStiffness(RIGID).withTailSlope(c.tailSlope() * held), models);
        Reference reference = flown.reference();
        return new Margins(
                -mass.cg().x(),
                NeutralPoint.of(rigid, air, 0, NeutralPoint.USUAL_LIFT, NeutralPoint.USUAL_SPEED),
                NeutralPoint.of(rigid, air, 0, SLOW_LIFT, SLOW_SPEED),
                NeutralPoint.of(bent, air, 0, LAUNCH_LIFT, Math.max(SLOW_SPEED, launchSpeed)),
                held,
                reference.meanChord(),
                -reference.meanChordX());
    }

    /** The margin at the glide alone, as a share of the mean chord [1]; what rebalancing asks for. */
    public static double share(Glider glider, Corrections c, Models models, Air air) {
        return share(glider, c, models, ModelChoice.TAIL_VOLUME, air);
    }

    /** The same by a model of choice. */
    public static double share(Glider glider, Corrections c, Models models, ModelChoice model, Air air) {
        MassProperties mass = MassProperties.of(glider);
        AeroModel rigid = model.of(glider, mass, c.withBoomStiffness(RIGID), models);
        double neutral = NeutralPoint.of(rigid, air, 0, NeutralPoint.USUAL_LIFT, NeutralPoint.USUAL_SPEED);
        return (neutral + mass.cg().x()) / rigid.reference().meanChord();
    }

    /** Margin at the glide [m]. */
    public double margin() {
        return neutralPoint - cg;
    }

    /** Margin at the glide as a share of the mean chord [1]. */
    public double marginShare() {
        return margin() / meanChord;
    }

    /** Margin left at launch speed [m]. */
    public double marginLaunch() {
        return neutralPointLaunch - cg;
    }

    /** Margin left at launch speed as a share of the mean chord [1]. */
    public double marginLaunchShare() {
        return marginLaunch() / meanChord;
    }
}
