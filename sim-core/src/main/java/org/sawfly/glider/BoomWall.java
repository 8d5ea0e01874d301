package org.sawfly.glider;

/**
 * What the wall of the boom is made of. The modulus along the tube is not here: it follows from stiffness and density.
 *
 * @param thickness [m]; NaN if not measured: then it follows from mass per length, diameter and density
 * @param density [kg/m3]
 * @param around Young's modulus around the tube [Pa]
 * @param shear shear modulus of the wall [Pa]
 * @param poisson contraction around per stretch along [1]
 * @param strength what it bears
 */
public record BoomWall(
        double thickness, double density, double around, double shear, double poisson, WallStrength strength) {
    /**
     * A wall of carbon whose fibre runs along for the most part, nothing measured: cured carbon and epoxy weigh 1500 to 1600
     * kg/m3; across the fibre T300/5208 has 10.3 GPa, in shear 7.17 (Tsai and Hahn, Introduction to Composite Materials,
     * 1980), of which three quarters and rather more than half are taken, hand-laid as it is (common practice, no source).
     */
    public static final BoomWall USUAL = new BoomWall(Double.NaN, 1550, 8e9, 4e9, 0.3, WallStrength.CAUTIOUS);

    public BoomWall {
        if (!Double.isNaN(thickness)) {
            Check.positive(thickness, "the wall of the boom [m]");
        }
        Check.positive(density, "the density of the boom [kg/m3]");
        Check.positive(around, "the modulus around the boom [Pa]");
        Check.positive(shear, "the shear modulus of the boom [Pa]");
        Check.between(poisson, 0, 0.5, "the contraction ratio of the boom");
    }
}
