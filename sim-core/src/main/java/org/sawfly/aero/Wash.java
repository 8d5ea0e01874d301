package org.sawfly.aero;

import org.sawfly.math.CubicGrid1;

/**
 * What the wing's wake does at the tails, see {@link WingWake}: channels are its loads.
 *
 * @param tailplane downwash over V CL by the sine of the drift angle [1]
 * @param spread what the load's spread adds to the CL that the downwash sees, over the knots of the wing's table, see
 *     {@link WingWake#spread} [1]
 * @param tailplaneArm from the wing's to the tailplane's quarter point [m]
 * @param fin sidewash, to the right, over V CL by the sine of the drift angle [1]
 * @param finArm from the wing's to the fin's quarter point [m]
 */
record Wash(CubicGrid1 tailplane, double[] spread, double tailplaneArm, CubicGrid1 fin, double finArm) {
    /**
     * What a wake does at the tails.
     *
     * @param tailplaneAlone strips of the tailplane, wherever they are
     * @param finAlone strips of the fin, wherever they are
     */
    static Wash of(WingWake wake, Surface tailplane, LoneSurface tailplaneAlone, Surface fin, LoneSurface finAlone) {
        Strips strips = Strips.cosine(tailplane, tailplaneAlone.strips.count);
        return new Wash(
                wake.byDrift(strips, tailplaneAlone),
                wake.spread(strips, tailplaneAlone),
                wake.middleX() - quarterX(tailplane),
                wake.byDrift(Strips.cosine(fin, finAlone.strips.count), finAlone),
                wake.middleX() - quarterX(fin));
    }

    private static double quarterX(Surface surface) {
        return surface.meanChordX() - 0.25 * surface.meanChord();
    }
}
