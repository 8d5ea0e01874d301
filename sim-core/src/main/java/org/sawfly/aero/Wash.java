package org.sawfly.aero;

import org.sawfly.math.CubicGrid1;

/**
 * What the wing's wake does at the tails, see {@link WingWake}.
 *
 * @param tailplane downwash over V CL by the sine of the drift angle [1]
 * @param tailplaneArm from the wing's to the tailplane's quarter point [m]
 * @param fin sidewash, to the right, over V CL by the sine of the drift angle [1]
 * @param finOdd sidewash over half the difference of V CL, right less left [1]
 * @param finArm from the wing's to the fin's quarter point [m]
 */
record Wash(CubicGrid1 tailplane, double tailplaneArm, CubicGrid1 fin, double finOdd, double finArm) {
    /** What a wake does at the tails. */
    static Wash of(WingWake wake, Surface tailplane, Surface fin) {
        return new Wash(
                wake.byDrift(tailplane),
                wake.middleX() - quarterX(tailplane),
                wake.byDrift(fin),
                wake.odd(fin),
                wake.middleX() - quarterX(fin));
    }

    private static double quarterX(Surface surface) {
        return surface.meanChordX() - 0.25 * surface.meanChord();
    }
}
