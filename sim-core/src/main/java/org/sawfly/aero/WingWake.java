package org.sawfly.aero;

import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicGrid1;
import org.sawfly.math.Vec3;
import org.sawfly.quantity.Unit;

/**
 * What the wing's vortices do at the tails, for the fast model: velocities proportional to the wing's circulation, hence to
 * {@code V CL}, with the load spread as attached flow has it.
 *
 * <p>Three loads, see {@link LoneSurface}: both halves alike ({@link #EVEN}, per {@code V CL} of the wing), and opposite, per half the
 * difference of {@code V CL}, right less left: as dihedral in sideslip makes it ({@link #SIDE}) and as turning makes it, more of it
 * outwards ({@link #TURNING}). When the wind comes from the side the wake drifts away from the tails, the half to windward behind
 * them, see {@link DriftingWake}. The mean over a tail weighs each strip by what an angle there adds to the tail's force.
 */
final class WingWake {
    static final int EVEN = 0;
    static final int SIDE = 1;
    static final int TURNING = 2;
    static final int LOADS = 3;

    /** Drift angles [deg] from 0 to 90; at 90 the wake is gone. */
    private static final double[] DRIFTS = {0, 10, 20, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90};

    private final LoneSurface wing;
    private final SurfaceKnots knots;
    private final CoefficientGrid grid;
    private final double[] circulations;
    private final double core;
    private final double oddRatio;
    private final double turningRatio;
    private final double[][] loads;

    /** Wake of a wing. */
    WingWake(LoneSurface wing, SurfaceKnots knots, CoefficientGrid grid, double[] circulations) {
        this.wing = wing;
        this.knots = knots;
        this.grid = grid;
        this.circulations = circulations;
        this.core = StripModel.CORE_SHARE * wing.strips.surface.meanChord();
        this.oddRatio = wing.oddRatio();
        this.turningRatio = wing.turningRatio();
        double[] even = wing.evenCirculation();
        double lift = 0;
        for (int i = 0; i < wing.count; i++) {
            lift += even[i] * wing.strips.widths[wing.first + i];
        }
        double perLift = 0.25 * wing.strips.surface.area() / lift;
        this.loads = new double[][] {
            whole(even, perLift, 1),
            whole(wing.oddCirculation(), perLift / oddRatio, -1),
            whole(wing.turningCirculation(), perLift / turningRatio, -1)
        };
    }

    private double[] whole(double[] right, double factor, double left) {
        int n = right.length;
        double[] all = new double[2 * n];
        for (int i = 0; i < n; i++) {
            all[n + i] = factor * right[i];
            all[n - 1 - i] = left * factor * right[i];
        }
        return all;
    }

    /** See {@link LoneSurface#oddRatio()}. */
    double oddRatio() {
        return oddRatio;
    }

    /** See {@link LoneSurface#turningRatio()}. */
    double turningRatio() {
        return turningRatio;
    }

    /** Reference point of the wing, from which the way to the tails counts, build axes [m]. */
    double middleX() {
        return wing.referencePoint.x();
    }

    /**
     * Mean velocity of the air at a tailplane (down positive) or fin (right positive) for each load, by the sine of the
     * drift angle beta_w, positive in wind from the right [1].
     *
     * @param tail strips where they are on the glider
     * @param alone the same strips, which may be elsewhere
     */
    CubicGrid1 byDrift(Strips tail, LoneSurface alone) {
        boolean mirrored = tail.surface.isMirrored();
        double[] shares = alone.shares();
        int n = DRIFTS.length - 1;
        double[] knots = new double[2 * n + 1];
        double[] values = new double[LOADS * knots.length];
        for (int k = 0; k <= n; k++) {
            double beta = Unit.DEGREE.toSi(DRIFTS[k]);
            knots[n + k] = Math.sin(beta);
            knots[n - k] = -Math.sin(beta);
            if (k == n) {
                continue;
            }
            double[] row = row(tail, alone.group.slopes, shares, beta);
            for (int load = 0; load < LOADS; load++) {
                double sum = 0;
                for (int j = 0; j < row.length; j++) {
                    sum += row[j] * loads[load][j];
                }
                // The mirror image: an odd load changes its sign, a velocity across the plane of symmetry as well
                boolean odd = mirrored ? load != EVEN : load == EVEN;
                double value = k == 0 && odd ? 0 : mirrored ? -sum : sum;
                values[LOADS * (n + k) + load] = value;
                values[LOADS * (n - k) + load] = odd ? -value : value;
            }
        }
        return new CubicGrid1(CubicAxis.of(CubicAxis.Ends.FLAT, knots), LOADS, values);
    }

    /**
     * What the load's real spread adds to the lift coefficient as the downwash at a tailplane sees it, without drift, over the
     * knots of the wing's table: root and tip of different sections, flaps along a part of the span, stall that begins somewhere.
     */
    double[] spread(Strips tail, LoneSurface alone) {
        double[] row = row(tail, alone.group.slopes, alone.shares(), 0);
        int n = wing.count;
        double even = 0;
        for (int j = 0; j < row.length; j++) {
            even += row[j] * loads[EVEN][j];
        }
        double[] values = new double[knots.size()];
        for (int node = 0; node < values.length; node++) {
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += (row[n + i] + row[n - 1 - i]) * circulations[node * n + i];
            }
            values[node] = sum / even - grid.lift(node);
        }
        return values;
    }

    /** Mean velocity along the normals for circulation one on each wing strip [1/m]. */
    private double[] row(Strips tail, double[] slopes, double[] shares, double beta) {
        Vec3 downstream = new Vec3(-Math.cos(beta), -Math.sin(beta), 0);
        double[] row = new double[wing.strips.count];
        for (int i = 0; i < tail.count; i++) {
            Vec3 point = VortexSystem.control(tail, i, slopes[i]);
            for (int j = 0; j < row.length; j++) {
                row[j] += shares[i] * DriftingWake.along(wing.strips, j, downstream, core, point, tail.normals[i]);
            }
        }
        return row;
    }
}
