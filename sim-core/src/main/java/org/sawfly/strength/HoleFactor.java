package org.sawfly.strength;

/**
 * How much higher the stress is at the edge of a small round hole than far from it, in a wide orthotropic sheet pulled
 * along its first axis:
 *
 * <pre>  K = 1 + sqrt(2 (sqrt(E_L/E_t) - nu_Lt) + E_L/G)</pre>
 *
 * (Lekhnitskii, Anisotropic Plates, 1968, chapter on openings.) A sheet that is the same in all directions gives 3 for any
 * material (Kirsch 1898); fibre that runs along the tube only gives 6 or 7. The hole is taken as small against the tube.
 */
final class HoleFactor {
    private HoleFactor() {}

    /** The factor [1] for a pull along the tube. */
    static double of(WallMaterial wall) {
        double ratio = Math.sqrt(wall.along() / wall.around());
        return 1 + Math.sqrt(2 * (ratio - wall.poisson()) + wall.along() / wall.shear());
    }
}
