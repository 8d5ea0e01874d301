package org.sawfly.aero;

import org.sawfly.math.Vec3;

/**
 * Velocity that the vortices of a wing make at a tail surface, along its normals, mean over its strips weighted with their
 * area, at the half chord between bound vortex and control point. The legs run straight back, or drift sideways by an
 * angle of sideslip: with the wind from the right they drift to the left. Legs have a core of 0.15 of the wing's mean chord
 * ({@link Horseshoe}), so that nothing hangs on whether a strip lies near one.
 */
final class WakeAtTail {
    private static final double CORE_SHARE = 0.15;
    private static final double DRIFT = 0.02;

    private final Strips wing;
    private final double core;

    WakeAtTail(Strips wing) {
        this.wing = wing;
        this.core = CORE_SHARE * wing.surface.meanChord();
    }

    /** Mean velocity along n for circulation one on each wing strip, legs drifting with sideslip beta [1/m]. */
    double[] along(Strips tail, double beta) {
        Vec3 downstream = new Vec3(-Math.cos(beta), -Math.sin(beta), 0);
        double[] row = new double[wing.count];
        double[] velocity = new double[3];
        double total = 0;
        for (int i = 0; i < tail.count; i++) {
            double weight = tail.chords[i] * tail.widths[i];
            Vec3 point = tail.quarters[i].plus(VortexSystem.BACK.times(0.25 * tail.chords[i]));
            Vec3 n = tail.normals[i];
            total += weight;
            for (int j = 0; j < wing.count; j++) {
                velocity[0] = 0;
                velocity[1] = 0;
                velocity[2] = 0;
                Horseshoe.addLegs(wing.edges[j], wing.edges[j + 1], downstream, core, point, velocity);
                Horseshoe.addBound(wing.edges[j], wing.edges[j + 1], point, velocity);
                row[j] += weight * (velocity[0] * n.x() + velocity[1] * n.y() + velocity[2] * n.z());
            }
        }
        for (int j = 0; j < row.length; j++) {
            row[j] /= total;
        }
        return row;
    }

    /** Derivative of {@link #along} with sideslip at zero [1/m]. */
    double[] drift(Strips tail) {
        double[] plus = along(tail, DRIFT);
        double[] minus = along(tail, -DRIFT);
        for (int j = 0; j < plus.length; j++) {
            plus[j] = (plus[j] - minus[j]) / (2 * DRIFT);
        }
        return plus;
    }

    /** What a row does to equal circulations on both halves, by strip of the right half. */
    double[] even(double[] row) {
        return folded(row, 1);
    }

    /** What a row does to circulations of the right half and their opposites on the left, by strip of the right half. */
    double[] odd(double[] row) {
        return folded(row, -1);
    }

    private static double[] folded(double[] row, double sign) {
        int half = row.length / 2;
        double[] folded = new double[half];
        for (int i = 0; i < half; i++) {
            folded[i] = row[half + i] + sign * row[half - 1 - i];
        }
        return folded;
    }
}
