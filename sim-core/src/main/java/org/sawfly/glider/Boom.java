package org.sawfly.glider;

import java.util.Collections;
import java.util.LinkedHashMap;
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
 * @param build its wall, and what was done to it besides round holes
 */
public record Boom(
        double mass,
        double frontX,
        double endX,
        double z,
        double frontDiameter,
        double endDiameter,
        BoomStiffness stiffness,
        Map<String, BoomHole> holes,
        BoomBuild build) {
    /** A boom of the usual wall, neither slotted nor spliced. */
    public Boom(
            double mass,
            double frontX,
            double endX,
            double z,
            double frontDiameter,
            double endDiameter,
            BoomStiffness stiffness,
            Map<String, BoomHole> holes) {
        this(mass, frontX, endX, z, frontDiameter, endDiameter, stiffness, holes, BoomBuild.PLAIN);
    }

    public Boom {
        Check.positive(mass, "the mass of the boom [kg]");
        Check.finite(frontX, "the place where the boom leaves the pod [m]");
        Check.finite(endX, "the place of the boom's end [m]");
        Check.finite(z, "the height of the boom [m]");
        Check.positive(frontDiameter, "the front diameter of the boom [m]");
        Check.positive(endDiameter, "the end diameter of the boom [m]");
        if (endX >= frontX) {
            throw new IllegalArgumentException("the boom's end must lie behind the place where it leaves the pod");
        }
        holes = Collections.unmodifiableMap(new LinkedHashMap<>(holes));
    }

    /** The same with one more sleeve, or another of that name. */
    Boom withSleeve(String name, BoomSleeve sleeve) {
        return new Boom(
                mass, frontX, endX, z, frontDiameter, endDiameter, stiffness, holes, build.withSleeve(name, sleeve));
    }

    /** From the pod to the end [m]. */
    public double length() {
        return frontX - endX;
    }
}
