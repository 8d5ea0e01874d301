package org.sawfly.aero;

import org.sawfly.glider.BoomSwing;

/**
 * What the air does to one glider: immutable, shared between threads. Every flight asks its own evaluator.
 *
 * <p>Contract (tested for every model): the same input gives the same bits whatever was asked before; continuous over all
 * wind directions; no wind gives no force; mirror images mirror; nothing divides by flight speed.
 */
public interface AeroModel {
    /** A new evaluator with scratch of its own. */
    AeroEvaluator evaluator();

    /** Reference lengths and area. */
    Reference reference();

    /**
     * Apparent mass about the CG in body axes, 6 by 6, symmetric, order (x y z, roll pitch yaw) [kg, kg m, kg m2] at the
     * standard density of sea level; it scales with density.
     */
    double[][] apparentMass();

    /**
     * How quickly the boom swings in a plane where the model lets it swing, infinite where it follows its load at once [Hz].
     */
    default double boomFrequency(BoomSwing.Plane plane) {
        return Double.POSITIVE_INFINITY;
    }
}
