package org.sawfly.flight;

import org.sawfly.glider.Hand;

/**
 * A thrower. Either the usual height is given and the release speed is solved from it, or the release speed is.
 *
 * @param hand
 * @param usualHeight launch height of a good ordinary throw in calm air [m], NaN if the release speed is given
 * @param releaseSpeed over the ground [m/s], NaN if the usual height is given
 * @param firstSwing how far the nose swings past the flight path after release [rad], NaN if the turning rate is given
 * @param releaseRate yaw rate left at release, magnitude [rad/s], NaN if the first swing is given
 * @param reach middle of the chest to the fingertips [m]
 * @param runUp [m/s]
 * @param heightScatter standard deviation of launch height from throw to throw [m]
 * @param armMass arm-equivalent mass that shares the throw's energy [kg]
 */
public record Thrower(
        Hand hand,
        double usualHeight,
        double releaseSpeed,
        double firstSwing,
        double releaseRate,
        double reach,
        double runUp,
        double heightScatter,
        double armMass) {}
