package org.sawfly.strength;

import org.sawfly.glider.TubeSection;

/**
 * The bending moment at which a long thin tube gives in because its round goes oval.
 *
 * <p>Curvature c flattens the tube by zeta (inward displacement over radius). Its energy per length, with
 * {@code I = pi r^3 t}, is {@code c^2 E_L I (1 - 3/2 zeta)/2} of bending and
 * {@code (3/8) pi E_t t^3 zeta^2/(r (1 - nu_Lt nu_tL))} of the flattened wall. Least energy gives
 * {@code zeta = c^2 r^4 (1 - nu_Lt nu_tL) E_L/(E_t t^2)}; the moment {@code c E_L I (1 - 3/2 zeta)} is greatest at zeta = 2/9:
 *
 * <pre>  M = (2 sqrt(2)/9) pi r t^2 sqrt(E_L E_t/(1 - nu_Lt nu_tL))</pre>
 *
 * With one modulus this is Brazier's (On the flexure of thin cylindrical shells and other thin sections, Proc. Royal
 * Society A 116, 1927; from memory, derived anew). What decides is the geometric mean of both moduli, so fibre along the
 * tube alone helps little.
 */
final class WallBuckling {
    private WallBuckling() {}

    /** The moment [N m] that a tube of this wall bears before it goes flat. */
    static double moment(TubeSection tube, WallMaterial wall) {
        return moment(tube.middleRadius(), tube.wall(), wall);
    }

    /**
     * The same for a thin wall.
     *
     * @param radius of the middle of the wall [m]
     * @param thickness of the wall [m]
     * @param wall its moduli
     */
    static double moment(double radius, double thickness, WallMaterial wall) {
        double modulus = Math.sqrt(wall.along() * wall.around() / (1 - wall.poissonProduct()));
        return 2 * Math.sqrt(2) / 9 * Math.PI * radius * thickness * thickness * modulus;
    }
}
