package org.sawfly.flight;

import org.sawfly.math.Vec3;

/**
 * What loads the rear of the glider at one moment: how its masses are accelerated and what the air does to the tails. Body
 * axes, x forward, y right, z down.
 *
 * @param specificForce acceleration of the CG less gravity [m/s2]
 * @param rates turning rates [rad/s]
 * @param turning their change [rad/s2]
 * @param tailplaneForce air force on the tailplane along z [N]
 * @param tailplaneMoment its moment about y at the quarter point, nose up positive [N m]
 * @param finForce air force on the fin along y [N]
 * @param finMoment its moment about z at the quarter point, nose right positive [N m]
 */
public record RearLoads(
        Vec3 specificForce,
        Vec3 rates,
        Vec3 turning,
        double tailplaneForce,
        double tailplaneMoment,
        double finForce,
        double finMoment) {
    /** Acceleration less gravity at a place, measured from the CG: {@code f + omega' x r + omega x (omega x r)} [m/s2]. */
    public Vec3 specificForceAt(Vec3 place) {
        return specificForce.plus(turning.cross(place)).plus(rates.cross(rates.cross(place)));
    }

    /** The same with no air on the fin. */
    public RearLoads finUnloaded() {
        return new RearLoads(specificForce, rates, turning, tailplaneForce, tailplaneMoment, 0, 0);
    }
}
