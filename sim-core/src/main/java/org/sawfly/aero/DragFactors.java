package org.sawfly.aero;

/**
 * Factors on the drag by where it comes from [1].
 *
 * @param wing on the section drag of the wing
 * @param tails on the section drag of tailplane and fin
 * @param bodies on the drag of pod, boom and peg
 * @param induced on the drag that comes with lift (the component of the lift force along the local flow)
 */
public record DragFactors(double wing, double tails, double bodies, double induced) {
    /** No change. */
    public static final DragFactors NONE = new DragFactors(1, 1, 1, 1);
}
