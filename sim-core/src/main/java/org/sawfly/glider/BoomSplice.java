package org.sawfly.glider;

/**
 * The boom sawn through, a piece taken out or none, and both ends joined by a sleeve in them or round them. Whatever sits
 * behind moves forward by the piece.
 *
 * @param x forward face of the cut, build axes [m]
 * @param length taken out [m]; 0 for a clean break
 * @param sleeve what joins it, in the middle of which the joint lies
 * @param glue mass of glue [kg]
 */
public record BoomSplice(double x, double length, SleeveStock sleeve, double glue) implements DesignChange {
    public BoomSplice {
        Check.finite(x, "the place of the splice [m]");
        Check.notNegative(length, "the length taken out [m]");
        Check.notNegative(glue, "the mass of glue [kg]");
    }

    @Override
    public Glider apply(Glider before) {
        double rear = Math.min(before.tailplane().x(), before.fin().x());
        if (x <= rear || x >= before.boom().frontX()) {
            throw new DesignException(
                    "a splice " + Words.place(x) + " does not lie on the boom ahead of the rear tail");
        }
        Glider cut = new BoomCut(BoomCut.Where.MIDDLE, x, length, 0, true).apply(before);
        return sleeve.put(cut, "splice", x, true, glue);
    }
}
