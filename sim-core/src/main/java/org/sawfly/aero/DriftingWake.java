package org.sawfly.aero;

import java.util.List;
import org.sawfly.math.CubicAxis;
import org.sawfly.math.Vec3;
import org.sawfly.quantity.Unit;

/**
 * Velocities that the wing's vortices make at every strip of the tails, along its normal, for a wake that drifts sideways by
 * an angle beta_w: rows of W (behind the quarter chord, see {@link VortexSystem}) and of W_d (at the quarter chord), tabulated over
 * beta_w every 10 degrees while the tails trail (every 5 where the edge of the wake sweeps past them), coarser where they lead,
 * and blended by cubics that are smooth all round. Legs have a core; what single legs passing a strip make between two knots, up to
 * a twentieth of the downwash, is smoothed over, as the sheet they stand for is smooth. Immutable.
 */
final class DriftingWake {
    private static final double[] SIDE = {0, 10, 20, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 105, 120, 150};
    private static final double TURN = 2 * Math.PI;

    private final CubicAxis drift;
    private final int wingCount;
    /** Numbers a column: W of every tail strip, then W_d. */
    private final int rows;

    private final double[] columns;

    /**
     * Rows for tail strips.
     *
     * @param slopes lift slopes of the tails' sections, surface after surface [1/rad]
     * @param core radius of the legs' core [m]
     * @param factors on the rows of each tail surface [1]
     */
    DriftingWake(Strips wing, List<Strips> tails, double[] slopes, double core, double[] factors) {
        int n = SIDE.length;
        double[] knots = new double[2 * n];
        knots[0] = -0.5 * TURN;
        for (int k = 0; k < n; k++) {
            knots[n + k] = Unit.DEGREE.toSi(SIDE[k]);
            if (k > 0) {
                knots[n - k] = -knots[n + k];
            }
        }
        this.drift = CubicAxis.periodic(TURN, knots);
        this.wingCount = wing.count;
        this.rows = 2 * slopes.length;
        this.columns = new double[knots.length * wingCount * rows];
        for (int k = 0; k <= n; k++) {
            double beta = k == n ? 0.5 * TURN : knots[n + k];
            fill(wing, tails, slopes, core, factors, beta, k == n ? 0 : n + k);
        }
        for (int k = 1; k < n; k++) {
            mirror(tails, n + k, n - k);
        }
    }

    private void fill(
            Strips wing, List<Strips> tails, double[] slopes, double core, double[] factors, double beta, int knot) {
        Vec3 downstream = new Vec3(-Math.cos(beta), -Math.sin(beta), 0);
        int row = 0;
        for (int surface = 0; surface < tails.size(); surface++) {
            Strips tail = tails.get(surface);
            for (int i = 0; i < tail.count; i++, row++) {
                Vec3 behind = VortexSystem.control(tail, i, slopes[row]);
                for (int j = 0; j < wingCount; j++) {
                    int at = (knot * wingCount + j) * rows + row;
                    columns[at] = factors[surface] * along(wing, j, downstream, core, behind, tail.normals[i]);
                    columns[at + rows / 2] =
                            factors[surface] * along(wing, j, downstream, core, tail.quarters[i], tail.normals[i]);
                }
            }
        }
    }

    /** Velocity along a normal at a point for circulation one on strip j of a wing [1/m]. */
    static double along(Strips wing, int j, Vec3 downstream, double core, Vec3 point, Vec3 normal) {
        double[] velocity = new double[3];
        Horseshoe.addLegs(wing.edges[j], wing.edges[j + 1], downstream, core, point, velocity);
        Horseshoe.addBound(wing.edges[j], wing.edges[j + 1], point, velocity);
        return velocity[0] * normal.x() + velocity[1] * normal.y() + velocity[2] * normal.z();
    }

    /** Drift to the other side: the mirror image; on a surface in the plane of symmetry the normal changes its side. */
    private void mirror(List<Strips> tails, int from, int to) {
        int first = 0;
        for (Strips tail : tails) {
            boolean mirrored = tail.surface.isMirrored();
            for (int i = 0; i < tail.count; i++) {
                int row = first + i;
                int image = mirrored ? first + tail.count - 1 - i : row;
                double sign = mirrored ? 1 : -1;
                for (int j = 0; j < wingCount; j++) {
                    int target = (to * wingCount + j) * rows;
                    int source = (from * wingCount + wingCount - 1 - j) * rows;
                    columns[target + row] = sign * columns[source + image];
                    columns[target + rows / 2 + row] = sign * columns[source + rows / 2 + image];
                }
            }
            first += tail.count;
        }
    }

    /** Length of what {@link #velocities} fills: W of every tail strip, then W_d. */
    int size() {
        return rows;
    }

    /**
     * Velocities at the tail strips.
     *
     * @param beta drift angle beta_w [rad]
     * @param gamma circulations of the wing [m2/s]
     * @param out filled [m/s]
     */
    void velocities(double beta, double[] gamma, double[] out) {
        double at = drift.wrap(beta);
        int cell = drift.cell(at);
        double t = drift.fraction(at, cell);
        double w0 = drift.weight(cell, 0, t);
        double w1 = drift.weight(cell, 1, t);
        double w2 = drift.weight(cell, 2, t);
        double w3 = drift.weight(cell, 3, t);
        int knot = wingCount * rows;
        int k0 = drift.node(cell, 0) * knot;
        int k1 = drift.node(cell, 1) * knot;
        int k2 = drift.node(cell, 2) * knot;
        int k3 = drift.node(cell, 3) * knot;
        for (int i = 0; i < rows; i++) {
            out[i] = 0;
        }
        for (int j = 0; j < wingCount; j++) {
            double f0 = w0 * gamma[j];
            double f1 = w1 * gamma[j];
            double f2 = w2 * gamma[j];
            double f3 = w3 * gamma[j];
            for (int i = 0; i < rows; i++) {
                out[i] += columns[k0 + i] * f0 + columns[k1 + i] * f1 + columns[k2 + i] * f2 + columns[k3 + i] * f3;
            }
            k0 += rows;
            k1 += rows;
            k2 += rows;
            k3 += rows;
        }
    }
}
