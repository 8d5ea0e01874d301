package org.sawfly.aero;

import java.util.Arrays;
import java.util.List;
import org.sawfly.math.DenseLu;
import org.sawfly.math.Vec3;

/**
 * One surface alone in even flow, by strips: lift, induced drag, moment and friction from any section polars. Of a
 * mirrored surface only the right half is solved, with the left half's influence folded in.
 *
 * <p><b>Flow.</b> In the plane of the half (normal n, the mean of its strips' normals): forward velocity {@code u = V cos a}, velocity
 * of the air along n {@code V sin a}; strip i sees {@code V sin a (n.n_i)}, which gives its V_i and phi_i, and
 * {@code alpha_i = phi_i + twist_i}.
 *
 * <p><b>Solution.</b> {@code Gamma_i = V_i c_i cl(alpha_i + w_i/V_i)/2}, {@code w = W Gamma} ({@link VortexSystem}). Start: attached flow,
 * {@code (D - W) Gamma = b}, {@code D = diag(2/(a0 c))}, {@code b_i = V_i sin(2 (alpha_i - alpha0_i))/2}, alpha0 from the polar at zero.
 * Then a FIXED number of passes (fewer only when nothing but rounding would move) of Newton's method for a correction {@code Gamma += S a} in the first smooth loads
 * {@code S_in = sin(n theta_i)} (Glauert 1926; odd n on a mirrored surface), by least residual over the area:
 * {@code S^T F (D - R W) S a = S^T F D (V c cl/2 - Gamma)}, F the widths, R the ratios of the sections' own slopes to a0. Loads as fine as the
 * strips stay those of attached flow: with falling slopes they have no unique solution and would grow to a sawtooth.
 * R is at most 0.9, and minus half the ratio where the slope falls, which keeps a pass from overshooting.
 *
 * <p><b>Forces.</b> Strip force {@code V_i Gamma_i} per density and width, at right angles to the flow turned by
 * {@code (W_d Gamma)_i/V_i}; section moment {@code V_i^2 c^2 cm/2}; friction {@code V_i^2 c cd/2} along the flow, kept apart.
 * Coefficients on V, the unrolled area and the mean aerodynamic chord.
 *
 * <p>Immutable; {@link Flow} holds scratch and results.
 */
final class LoneSurface {
    /** Passes after the attached start. */
    static final int PASSES = 5;

    /** Change of a lift coefficient below which further passes would only move rounding [1]. */
    private static final double SETTLED = 1e-9;

    private static final double LARGEST_RATIO = 0.9;
    private static final int LARGEST_MODES = 6;
    private static final int LEAST_MODES = 3;
    private static final int STRIPS_A_MODE = 3;
    private static final double FALLING = -0.5;

    final Strips strips;
    /** Strips solved: the right half of a mirrored surface, else all. */
    final int count;
    /** Index of the first strip solved. */
    final int first;
    /** Mean normal of the half (of the surface). */
    final Vec3 normal;
    /** Reference point of moments: quarter of the mean aerodynamic chord, at the middle of the half's area [m]. */
    final Vec3 referencePoint;

    private final double area;
    private final double meanChord;
    private final double[] tilts;
    private final double[] ahead;
    private final double[] above;
    private final double[] share;
    private final double[] w;
    private final double[] wd;
    private final double[] attached;
    private final double[] attachedOdd;
    private final int modes;
    private final double[] loads;
    private final double[] weighted;
    private final double[] induce;
    private final double[] shareOfLoads;

    /**
     * Prepares the matrices.
     *
     * @param slopes lift slopes of the strips solved [1/rad]
     */
    LoneSurface(Strips strips, double[] slopes, VortexSystem.Setting setting) {
        this.strips = strips;
        boolean mirrored = strips.surface.isMirrored();
        this.count = mirrored ? strips.count / 2 : strips.count;
        this.first = strips.count - count;
        double[] all = new double[strips.count];
        for (int i = 0; i < count; i++) {
            all[first + i] = slopes[i];
            all[strips.count - 1 - first - i] = mirrored ? slopes[i] : all[strips.count - 1 - first - i];
        }
        VortexSystem system = new VortexSystem(setting, 0, all, List.of(strips));
        this.area = strips.surface.area();
        this.meanChord = strips.surface.meanChord();
        this.normal = meanNormal();
        this.referencePoint = middle();
        this.tilts = new double[count];
        this.ahead = new double[count];
        this.above = new double[count];
        this.share = new double[count];
        for (int i = 0; i < count; i++) {
            Vec3 arm = strips.quarters[first + i].minus(referencePoint);
            tilts[i] = strips.normals[first + i].dot(normal);
            ahead[i] = arm.x();
            above[i] = arm.dot(normal);
            share[i] = system.sectionShare(first + i);
        }
        this.w = new double[count * count];
        this.wd = new double[count * count];
        double[] odd = new double[count * count];
        for (int j = 0; j < count; j++) {
            int image = strips.count - 1 - first - j;
            for (int i = 0; i < count; i++) {
                double own = system.w(first + i, first + j);
                double other = mirrored ? system.w(first + i, image) : 0;
                w[j * count + i] = own + other;
                odd[j * count + i] = own - other;
                wd[j * count + i] = system.wd(first + i, first + j) + (mirrored ? system.wd(first + i, image) : 0);
            }
        }
        this.attached = inverse(w);
        this.attachedOdd = inverse(odd);
        this.modes = Math.min(Math.max(count / STRIPS_A_MODE, LEAST_MODES), Math.min(count, LARGEST_MODES));
        this.loads = new double[modes * count];
        this.weighted = new double[modes * count];
        this.induce = new double[modes * count];
        this.shareOfLoads = new double[modes * modes];
        prepareLoads(mirrored ? 2 : 1);
    }

    /** Load n and its velocity W S_n at strip i are at {@code [n * count + i]}. */
    private void prepareLoads(int step) {
        double[] load = new double[count];
        for (int n = 0; n < modes; n++) {
            for (int i = 0; i < count; i++) {
                load[i] = Math.sin((1 + step * n) * Math.PI * (first + i + 0.5) / strips.count);
                loads[n * count + i] = load[i];
                weighted[n * count + i] = load[i] * strips.widths[first + i];
            }
            System.arraycopy(times(w, load, new double[count]), 0, induce, n * count, count);
        }
        for (int m = 0; m < modes; m++) {
            for (int n = 0; n < modes; n++) {
                for (int i = 0; i < count; i++) {
                    shareOfLoads[m * modes + n] += weighted[m * count + i] * share[i] * loads[n * count + i];
                }
            }
        }
    }

    /** (D - W)^-1 by columns. */
    private double[] inverse(double[] byColumns) {
        double[] k = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                k[i * count + j] = (i == j ? share[i] : 0) - byColumns[j * count + i];
            }
        }
        double[] rows = new DenseLu(k, count).inverse();
        double[] columns = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                columns[j * count + i] = rows[i * count + j];
            }
        }
        return columns;
    }

    private Vec3 meanNormal() {
        Vec3 sum = Vec3.ZERO;
        for (int i = first; i < strips.count; i++) {
            sum = sum.plus(strips.normals[i].times(strips.chords[i] * strips.widths[i]));
        }
        double length = sum.norm();
        return new Vec3(0, sum.y() / length, sum.z() / length);
    }

    private Vec3 middle() {
        Vec3 sum = Vec3.ZERO;
        double total = 0;
        for (int i = first; i < strips.count; i++) {
            double part = strips.chords[i] * strips.widths[i];
            sum = sum.plus(strips.quarters[i].times(part));
            total += part;
        }
        double x = strips.surface.meanChordX() - 0.25 * meanChord;
        return new Vec3(x, sum.y() / total, sum.z() / total);
    }

    /**
     * Circulations of the right half when it sees +1 rad more and the left half 1 rad less, per unit of speed, attached [m].
     * The lesser slope against opposite angles is what dihedral in sideslip and aileron work with.
     */
    double[] oddCirculation() {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return times(attachedOdd, ones, new double[count]);
    }

    /** Circulations of the right half when both see +1 rad, per unit of speed, attached [m]. */
    double[] evenCirculation() {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return times(attached, ones, new double[count]);
    }

    /**
     * Lift slope against opposite angles on the two halves over that against equal ones, such that {@code kappa} times the
     * symmetric normal force, acting at the radius of the half's area, gives the rolling moment the strips find.
     */
    double oddRatio() {
        double[] even = evenCirculation();
        double[] odd = oddCirculation();
        double force = 0;
        double moment = 0;
        for (int i = 0; i < count; i++) {
            force += even[i] * strips.widths[first + i];
            moment += odd[i] * strips.widths[first + i] * strips.places[first + i];
        }
        return moment / (force * strips.surface.areaRadius());
    }

    /** New scratch. */
    Flow flow() {
        return new Flow();
    }

    private static double[] times(double[] columns, double[] x, double[] product) {
        int n = x.length;
        Arrays.fill(product, 0);
        for (int j = 0; j < n; j++) {
            double factor = x[j];
            int at = j * n;
            for (int i = 0; i < n; i++) {
                product[i] += columns[at + i] * factor;
            }
        }
        return product;
    }

    /** Scratch and results of one flow after another; the result depends on the last one alone. */
    final class Flow {
        /** Force along n, towards lift positive [1]. */
        double normalForce;
        /** Force along x, forward positive: lift and induced drag, without friction [1]. */
        double forwardForce;
        /** Moment about the span through the reference point, nose towards n positive [1]. */
        double moment;
        /** Friction (section drag) along the flow [1]. */
        double friction;
        /** Circulation over V, by strip solved [m]. */
        final double[] gamma = new double[count];
        /** Largest change in the last pass, as a lift coefficient: 2 Gamma/(V c) [1]. */
        double lastChange;

        private final double[] speeds = new double[count];
        private final double[] angles = new double[count];
        private final double[] b = new double[count];
        private final double[] change = new double[count];
        private final double[] newton = new double[modes * modes];
        private final double[] amounts = new double[modes];
        private final double[] ratios = new double[count];
        private final double[] rows = new double[count];
        private final double[] induced = new double[count];
        private final double[] out = new double[3];

        /**
         * Solves one flow for V = 1.
         *
         * @param angle angle a in the plane of the half [rad]
         * @param polars cl, cd, cm of the strips solved
         */
        void solve(double angle, StripPolars polars) {
            double u = Math.cos(angle);
            double across = Math.sin(angle);
            for (int i = 0; i < count; i++) {
                double wn = across * tilts[i];
                speeds[i] = Math.sqrt(u * u + wn * wn);
                angles[i] = Math.atan2(wn, u);
                polars.at(i, 0, out);
                double zeroLift = -0.5 * share[i] * strips.chords[first + i] * out[0];
                b[i] = 0.5 * speeds[i] * Math.sin(2 * (angles[i] + strips.twists[first + i] - zeroLift));
            }
            times(attached, b, gamma);
            lastChange = 1;
            for (int k = 0; k < PASSES && lastChange > SETTLED; k++) {
                pass(polars);
            }
            sum(polars);
        }

        private void pass(StripPolars polars) {
            times(w, gamma, induced);
            for (int i = 0; i < count; i++) {
                double chord = strips.chords[first + i];
                polars.lift(i, seen(i), out);
                double slope = 0.5 * share[i] * chord * out[1];
                ratios[i] = Math.min(slope < 0 ? FALLING * slope : slope, LARGEST_RATIO);
                b[i] = share[i] * (0.5 * speeds[i] * chord * out[0] - gamma[i]);
            }
            System.arraycopy(shareOfLoads, 0, newton, 0, newton.length);
            for (int m = 0; m < modes; m++) {
                double residual = 0;
                for (int i = 0; i < count; i++) {
                    double weight = weighted[m * count + i];
                    residual += weight * b[i];
                    rows[i] = weight * ratios[i];
                }
                amounts[m] = residual;
                for (int n = 0; n < modes; n++) {
                    double sum = 0;
                    for (int i = 0; i < count; i++) {
                        sum += rows[i] * induce[n * count + i];
                    }
                    newton[m * modes + n] -= sum;
                }
            }
            new DenseLu(newton, modes).solve(amounts, amounts);
            Arrays.fill(change, 0);
            for (int n = 0; n < modes; n++) {
                for (int i = 0; i < count; i++) {
                    change[i] += amounts[n] * loads[n * count + i];
                }
            }
            lastChange = 0;
            for (int i = 0; i < count; i++) {
                gamma[i] += change[i];
                lastChange = Math.max(lastChange, 2 * Math.abs(change[i]) / strips.chords[first + i]);
            }
        }

        private double seen(int i) {
            return angles[i] + strips.twists[first + i] + induced[i] / speeds[i];
        }

        private void sum(StripPolars polars) {
            double along = 0;
            double forward = 0;
            double pitch = 0;
            double drag = 0;
            times(w, gamma, induced);
            times(wd, gamma, b);
            for (int i = 0; i < count; i++) {
                polars.at(i, seen(i), out);
                double speed = speeds[i];
                double width = strips.widths[first + i];
                double chord = strips.chords[first + i];
                double direction = angles[i] + b[i] / speed;
                double force = 2 * speed * gamma[i] * width;
                double towardsNormal = force * Math.cos(direction) * tilts[i];
                double forwards = force * Math.sin(direction);
                along += towardsNormal;
                forward += forwards;
                pitch +=
                        ahead[i] * towardsNormal - above[i] * forwards + speed * speed * chord * chord * width * out[2];
                drag += speed * speed * chord * width * out[1];
            }
            double scale = (first > 0 ? 2 : 1) / area;
            normalForce = along * scale;
            forwardForce = forward * scale;
            moment = pitch * scale / meanChord;
            friction = drag * scale;
        }
    }
}
