package org.sawfly.glider;

/**
 * A slot along the boom, rounded at its ends.
 *
 * @param frontX its forward end, build axes [m]
 * @param endX its rear end, build axes [m]
 * @param width around the boom [m]
 * @param side where on the boom
 */
public record BoomSlot(double frontX, double endX, double width, BoomHole.Side side) {
    public BoomSlot {
        Check.finite(frontX, "the forward end of a slot [m]");
        Check.finite(endX, "the rear end of a slot [m]");
        Check.positive(width, "the width of a slot [m]");
        if (endX >= frontX) {
            throw new IllegalArgumentException("the rear end of a slot must lie behind its forward end");
        }
    }

    BoomSlot forward(double shift) {
        return new BoomSlot(frontX + shift, endX + shift, width, side);
    }
}
