package org.sawfly.strength;

import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.BoomWall;

/**
 * Elastic moduli of a laid-up tube wall taken as one orthotropic sheet, axes along and around the tube.
 *
 * @param along Young's modulus along the tube, E_L [Pa]
 * @param around Young's modulus around it, E_t [Pa]
 * @param shear shear modulus in the sheet, G [Pa]
 * @param poisson contraction around per stretch along, nu_Lt [1]
 */
record WallMaterial(double along, double around, double shear, double poisson) {
    WallMaterial {
        positive(along, "the modulus along the tube [Pa]");
        positive(around, "the modulus around the tube [Pa]");
        positive(shear, "the shear modulus [Pa]");
        if (!(poisson >= 0 && poisson * poisson * around < along)) {
            throw new IllegalArgumentException("a contraction ratio of " + poisson + " does not go with the moduli "
                    + along + " and " + around + " Pa: its square must be below their ratio");
        }
    }

    /** The same in all directions: {@code G = E/(2 (1 + nu))}. */
    static WallMaterial isotropic(double modulus, double poisson) {
        return new WallMaterial(modulus, modulus, modulus / (2 * (1 + poisson)), poisson);
    }

    /** The wall of a boom: along it as stiff as the boom's bending shows, else as its wall is described. */
    static WallMaterial of(Boom boom) {
        BoomWall wall = boom.build().wall();
        return new WallMaterial(BoomTube.of(boom).modulus(), wall.around(), wall.shear(), wall.poisson());
    }

    /** Product of both contraction ratios, {@code nu_Lt nu_tL = nu_Lt^2 E_t/E_L} [1]. */
    double poissonProduct() {
        return poisson * poisson * around / along;
    }

    private static void positive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be above 0, got " + value);
        }
    }
}
