package org.sawfly.glider;

/**
 * Another boom in place of the one there is. Where its end lies elsewhere, tails and whatever sits on the end go there and
 * strings are cut to length.
 *
 * @param boom the new boom
 */
public record BoomReplacement(Boom boom) implements DesignChange {
    @Override
    public Glider apply(Glider before) {
        double shift = boom.endX() - before.boom().endX();
        double firstTail = Math.max(before.tailplane().x(), before.fin().x());
        if (firstTail + shift > boom.frontX()) {
            throw new DesignException("the new boom is too short: its end must lie at least "
                    + Words.length(firstTail - before.boom().endX()) + " behind the pod to carry the tails");
        }
        return BoomEnd.moved(before, boom, shift, true);
    }
}
