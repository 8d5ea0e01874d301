package org.sawfly.stability;

import org.sawfly.aero.Reference;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Tailplane;

/**
 * Tail volumes: {@code Vh = S_h l_h / (S c)}, {@code Vv = S_v l_v / (S b)}, arms from the CG to the quarter of the tail's own
 * mean aerodynamic chord (Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, sections 2.2 and 3.9).
 *
 * @param horizontal Vh [1]
 * @param vertical Vv [1]
 * @param horizontalArm l_h [m]
 * @param verticalArm l_v [m]
 * @param finShareBelow area of the fin below the boom over its whole [1]
 */
public record TailVolumes(
        double horizontal, double vertical, double horizontalArm, double verticalArm, double finShareBelow) {

    /** Of a glider with these reference lengths. */
    public static TailVolumes of(Glider glider, Reference reference) {
        Tailplane t = glider.tailplane();
        double tailArea = 2 * t.planform().area();
        double tailArm = reference.cgX() - (t.x() - quarter(t.planform()));
        Fin f = glider.fin();
        double above = f.above().area();
        double below = f.below().area();
        double finX = f.x() - (above * quarter(f.above()) + below * quarter(f.below())) / (above + below);
        double finArm = reference.cgX() - finX;
        return new TailVolumes(
                tailArea * tailArm / (reference.area() * reference.meanChord()),
                (above + below) * finArm / (reference.area() * reference.span()),
                tailArm,
                finArm,
                below / (above + below));
    }

    /** Quarter of the mean aerodynamic chord behind the root leading edge of the surface [m]. */
    private static double quarter(Planform planform) {
        return planform.area() == 0 ? 0 : planform.meanChordBack() + 0.25 * planform.meanChord();
    }
}
