package org.sawfly.glider;

/**
 * The pod with its hatch, up to where the boom begins.
 *
 * @param mass [kg]
 * @param cgX balance point in build axes, forward positive [m]
 * @param noseX nose tip in build axes [m]
 * @param z height of its axis in build axes, down positive [m]
 * @param width [m]
 * @param height [m]
 */
public record Pod(double mass, double cgX, double noseX, double z, double width, double height) {
    public Pod {
        Check.notNegative(mass, "the mass of the pod [kg]");
        Check.finite(cgX, "the balance point of the pod [m]");
        Check.finite(noseX, "the place of the nose [m]");
        Check.finite(z, "the height of the pod [m]");
        Check.positive(width, "the width of the pod [m]");
        Check.positive(height, "the height of the pod [m]");
    }
}
