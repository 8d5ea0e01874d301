package org.sawfly.aero;

import org.sawfly.math.Inertia;

/**
 * Mass and inertia that decide the acceleration a tail feels, with the air carried along at standard density.
 *
 * @param mass [kg]
 * @param inertia about the CG [kg m2]
 * @param airY air carried along y [kg]
 * @param airZ air carried along z [kg]
 * @param airPitch about y [kg m2]
 * @param airYaw about z [kg m2]
 */
record Inertial(double mass, Inertia inertia, double airY, double airZ, double airPitch, double airYaw) {}
