package org.sawfly.strength;

import org.sawfly.aero.BoomFlex;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;

/**
 * How much of the tails is left at a speed because the boom gives way, 1 for a stiff one.
 *
 * <p>Held: {@code 1/(1 + q S a theta_F)}, the air's load alone, what trim shows. In free flight the glider gives way too, and
 * the inertia of tails and boom bends against the air's load: for the tailplane a pull-up by the wing, see {@link BoomFlex};
 * for the fin its own force alone, which accelerates the tail by {@code F (1/m + x^2/Izz)}, hence
 * {@code 1/(1 + q S a [theta_F - theta_f (1/m + x^2/Izz)])}.
 *
 * @param speed [m/s]
 * @param tailplaneHeld [1]
 * @param tailplaneFree [1]
 * @param finHeld [1]
 * @param finFree [1]
 */
public record TailEffectiveness(
        double speed, double tailplaneHeld, double tailplaneFree, double finHeld, double finFree) {
    /** At a speed [m/s] in air of a density [kg/m3]. */
    public static TailEffectiveness of(
            Glider glider, MassProperties mass, TailVolumeModel model, double speed, double density) {
        Fin fin = glider.fin();
        BoomFlex flex = model.finFlex();
        double arm = fin.x() - fin.quarterPointBack() - mass.cg().x();
        double perAngle = 0.5 * density * speed * speed * fin.area() * model.finSlope(speed);
        double perForce = 1 / mass.mass() + arm * arm / mass.inertia().izz();
        double free = 1 / (1 + perAngle * (flex.force() - flex.inertia() * perForce));
        return new TailEffectiveness(
                speed,
                model.heldEffectiveness(speed, density),
                model.freeEffectiveness(speed, density),
                flex.held(perAngle),
                free);
    }
}
