package org.sawfly.flight;

/**
 * Where and which way a glider leaves the hand.
 *
 * @param height of the CG above the ground [m]
 * @param climb flight path above the horizon [rad]
 * @param bank wings against the horizon about the path, the tip in the hand low positive [rad]
 */
public record ReleasePath(double height, double climb, double bank) {}
