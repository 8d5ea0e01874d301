package org.sawfly.aero;

/**
 * Reference lengths of a glider.
 *
 * @param area wing area, projected on the horizontal plane [m2]
 * @param span projected [m]
 * @param meanChord mean aerodynamic chord [m]
 * @param meanChordX its leading edge in build axes, forward positive [m]
 * @param cgX the CG in build axes [m]
 */
public record Reference(double area, double span, double meanChord, double meanChordX, double cgX) {}
