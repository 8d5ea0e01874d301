package org.sawfly.aero;

import org.sawfly.math.Vec3;

/**
 * One surface, or one half of the wing, as a single lifting element: all its air is that of one reference point.
 *
 * <p>Directions: {@code down} is the unit vector against positive lift (z for a tailplane, y for a fin whose lift is
 * positive to the left, leaning outwards for a wing half with dihedral) and {@code axis} the unit vector about which a
 * positive moment turns the nose towards positive lift. Both lie in the y-z plane.
 *
 * @param area [m2]
 * @param chord mean aerodynamic chord [m]
 * @param cubedChord integral of c^3 ds [m4]
 * @param place quarter point of the mean chord, from the CG, body axes [m]
 * @param down unit vector against positive lift
 * @param axis unit vector of the moment
 * @param table coefficients on this area and chord
 */
record Element(double area, double chord, double cubedChord, Vec3 place, Vec3 down, Vec3 axis, CoefficientGrid table) {
    /** Integral of c^3 ds along a surface, both halves [m4]; exact for straight edges. */
    static double cubedChord(Surface surface) {
        double sum = 0;
        for (int i = 1; i < surface.ribCount(); i++) {
            double a = surface.at(surface.place(i - 1)).chord();
            double b = surface.at(surface.place(i)).chord();
            double length = surface.place(i) - surface.place(i - 1);
            sum += 0.25 * length * (a + b) * (a * a + b * b);
        }
        return surface.isMirrored() ? 2 * sum : sum;
    }
}
