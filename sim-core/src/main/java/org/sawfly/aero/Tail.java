package org.sawfly.aero;

/**
 * A tail as the fast model knows it. Immutable.
 *
 * @param element its place and coefficients
 * @param allMoving whether its flap is the whole surface and turns its angle
 * @param flex how the boom turns it
 * @param incidence of its chord line, towards positive lift [rad]
 * @param slope lift slope in attached flow [1/rad]
 * @param liftFactor on lift and what it induces [1]
 * @param beyondStall further factor on lift beyond stall [1]
 * @param stallSine sine of the angle of stall [1]
 */
record Tail(
        Element element,
        boolean allMoving,
        BoomFlex flex,
        double incidence,
        double slope,
        double liftFactor,
        double beyondStall,
        double stallSine) {}
