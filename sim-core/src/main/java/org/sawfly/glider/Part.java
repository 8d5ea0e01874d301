package org.sawfly.glider;

import org.sawfly.math.Vec3;

/**
 * Anything else that has mass: battery, servos, receiver, glue, strings, ballast.
 *
 * @param mass [kg]
 * @param place in build axes [m]
 * @param mount what carries it: what is on the boom's end moves with it
 * @param slideForward how far it can be moved forward [m]
 * @param slideBack how far it can be moved back [m]
 */
public record Part(double mass, Vec3 place, Mount mount, double slideForward, double slideBack) {
    /** What a part is fastened to. */
    public enum Mount {
        FIXED,
        BOOM_END,
        TAILPLANE
    }
}
