package org.sawfly.glider;

/**
 * Cloth laid round the boom, or a plug glued into it, where it is cracked or drilled; the tube stays whole.
 *
 * @param x middle of it, build axes [m]
 * @param sleeve what is laid round or glued in
 * @param glue mass of resin or glue besides [kg]
 */
public record BoomWrap(double x, SleeveStock sleeve, double glue) implements DesignChange {
    public BoomWrap {
        Check.finite(x, "the place of the wrap [m]");
        Check.notNegative(glue, "the mass of glue [kg]");
    }

    @Override
    public Glider apply(Glider before) {
        if (x >= before.boom().frontX() || x <= before.boom().endX()) {
            throw new DesignException("a wrap " + Words.place(x) + " does not lie on the boom");
        }
        return sleeve.put(before, "wrap", x, false, glue);
    }
}
