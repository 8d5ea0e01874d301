package org.sawfly.glider;

/**
 * The room between tailplane and fin along the boom, in the plane of symmetry and at every position of elevator and
 * rudder up to a throw. With the tailplane in front the elevator's trailing edge comes near the fin's leading edge; with
 * the fin in front the rudder's trailing edge comes near the tailplane's leading edge.
 */
public final class TailClearance {
    /** Full throw of elevator and rudder where nothing else is said [rad], 25 degrees; common practice, no source. */
    public static final double FULL_THROW = 0.4363;

    /** An all-moving surface turns about this part of its chord. */
    private static final double ALL_MOVING_AXIS = 0.25;

    private static final int POSITIONS = 10;

    private TailClearance() {}

    /**
     * Smallest gap along x [m]; below 0 when the two run into each other, infinite when one passes above the other.
     *
     * @param fullThrow elevator and rudder each way [rad]
     */
    public static double gap(Tailplane tailplane, Fin fin, double fullThrow) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = -POSITIONS; i <= POSITIONS; i++) {
            double angle = fullThrow * i / POSITIONS;
            double gap = tailplane.x() > fin.x()
                    ? elevatorToFin(tailplane, fin, angle)
                    : rudderToTailplane(tailplane, fin, angle);
            least = Math.min(least, gap);
        }
        return least;
    }

    private static double elevatorToFin(Tailplane tailplane, Fin fin, double angle) {
        double chord = tailplane.planform().chordAt(0);
        double axis = axis(tailplane.elevatorChord());
        double trailingEdgeX = tailplane.x() - chord * (axis + (1 - axis) * Math.cos(angle));
        double height = fin.z() - (tailplane.z() + chord * (1 - axis) * Math.sin(angle));
        Planform half = height >= 0 ? fin.above() : fin.below();
        if (Math.abs(height) > half.span()) {
            return Double.POSITIVE_INFINITY;
        }
        return trailingEdgeX - (fin.x() - half.backAt(Math.abs(height)));
    }

    private static double rudderToTailplane(Tailplane tailplane, Fin fin, double angle) {
        double height = fin.z() - tailplane.z();
        Planform half = height >= 0 ? fin.above() : fin.below();
        double out = Math.abs(height);
        if (out > half.span()) {
            return Double.POSITIVE_INFINITY;
        }
        double chord = half.chordAt(out);
        double axis = axis(fin.rudderChord());
        double trailingEdgeX = fin.x() - half.backAt(out) - chord * (axis + (1 - axis) * Math.cos(angle));
        double side = chord * (1 - axis) * Math.abs(Math.sin(angle));
        return trailingEdgeX - (tailplane.x() - tailplane.planform().backAt(side));
    }

    /** Where the moving part turns, as a part of the chord. */
    private static double axis(double movingChord) {
        return movingChord == 1 ? ALL_MOVING_AXIS : 1 - movingChord;
    }
}
