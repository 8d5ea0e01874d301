package org.sawfly.glider;

import java.util.Map;

/**
 * The boom, a tapered tube.
 *
 * @param mass of the whole tube from front to end [kg]
 * @param frontX where it leaves the pod, build axes, forward positive [m]
 * @param endX its very end, build axes [m]
 * @param z height of its axis in build axes, down positive [m]
 * @param frontDiameter outer [m]
 * @param endDiameter outer [m]
 * @param stiffness how stiff it is: from a bend test or from the material
 * @param holes by name
 */
public record Boom(
        double mass,
        double frontX,
        double endX,
        double z,
        double frontDiameter,
        double endDiameter,
        BoomStiffness stiffness,
        Map<String, BoomHole> holes) {}
