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
public record Reference(double area, double span, double meanChord, double meanChordX, double cgX) {
    /** Of a wing with dihedral [rad] and a CG [m]. */
    static Reference of(Surface wing, double dihedral, double cgX) {
        double outwards = Math.cos(dihedral);
        return new Reference(wing.area() * outwards, wing.span() * outwards, wing.meanChord(), wing.meanChordX(), cgX);
    }
}
