package org.sawfly.motion;

/** Air, wind and gravity over height. Must be smooth; shared between flights. */
@FunctionalInterface
public interface Surroundings {
    /**
     * Writes what there is at a height.
     *
     * @param height above the ground under the thrower [m]
     * @param sample where to write
     */
    void at(double height, AirSample sample);
}
