package org.sawfly.glider;

/**
 * Stresses a wall bears.
 *
 * @param tension along the tube [Pa]
 * @param compression along the tube [Pa]
 * @param shear [Pa]
 * @param source where the figures come from, in words
 */
public record WallStrength(double tension, double compression, double shear, String source) {
    /**
     * For a carbon wall of which nothing is known: about a third of what a perfect sheet of one fibre direction bears
     * (T300/5208: 1500, 1500 and 68 MPa; Tsai and Hahn, Introduction to Composite Materials, 1980, from memory); the third
     * is common practice, no source.
     */
    public static final WallStrength CAUTIOUS =
            new WallStrength(600e6, 500e6, 30e6, "assumed: a third of a perfect carbon sheet");

    public WallStrength {
        Check.positive(tension, "the strength in tension [Pa]");
        Check.positive(compression, "the strength in compression [Pa]");
        Check.positive(shear, "the strength in shear [Pa]");
    }
}
