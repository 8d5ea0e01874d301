package org.sawfly.flight;

/**
 * The top of the launch, where the climb ends.
 *
 * @param height above the ground: the launch height an altimeter shows [m]
 * @param time after release [s]
 * @param speed through the air [m/s]
 */
public record Top(double height, double time, double speed) {}
