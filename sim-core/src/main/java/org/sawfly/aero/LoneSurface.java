package org.sawfly.aero;

import java.util.Arrays;
import org.sawfly.math.Vec3;

/**
 * One surface alone, by the strips that the strip model flies ({@link StripGroup}, {@link StripFlow}): its coefficients in even flow for
 * the fast model's tables, and the loads with which attached flow answers to equal and to opposite angles of its halves.
 *
 * <p>Of a mirrored surface the right half's forces are taken, in the plane of its mean normal n; both halves see the same. The
 * two passes of the strip model are made, no more: so both models have the same surface, stalled or not.
 *
 * <p>Immutable; {@link Flow} holds scratch.
 */
final class LoneSurface {
    /** Density at which dynamic pressure is the square of the speed [kg/m3]. */
    private static final double DENSITY = 2;

    final Strips strips;
    final StripGroup group;
    /** Strips whose flow is solved: those whose forces are taken. */
    private final StripGroup solved;
    /** Strips whose forces are taken: the right half of a mirrored surface, else all. */
    final int count;
    /** Index of the first of them. */
    final int first;
    /** Mean normal of the half (of the surface). */
    final Vec3 normal;
    /** Reference point of moments: quarter of the mean aerodynamic chord, at the middle of the half's area [m]. */
    final Vec3 referencePoint;

    /**
     * Of strips and their group.
     *
     * @param group of these strips alone
     */
    LoneSurface(Strips strips, StripGroup group) {
        this.strips = strips;
        this.group = group;
        this.count = strips.surface.isMirrored() ? strips.count / 2 : strips.count;
        this.first = strips.count - count;
        this.solved = first > 0 ? group.folded() : group;
        this.normal = meanNormal();
        this.referencePoint = middle();
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
        double x = strips.surface.meanChordX() - 0.25 * strips.surface.meanChord();
        return new Vec3(x, sum.y() / total, sum.z() / total);
    }

    /** Circulations of the right half when both see +1 rad, per unit of speed, attached [m]. */
    double[] evenCirculation() {
        return half(1, false);
    }

    /**
     * Circulations of the right half when it sees +1 rad more and the left half 1 rad less, per unit of speed, attached [m].
     * The lesser slope against opposite angles is what dihedral in sideslip and aileron work with.
     */
    double[] oddCirculation() {
        return half(-1, false);
    }

    /** The same of angles that grow with the distance from the middle, 1 rad at the radius of the half's area. */
    double[] turningCirculation() {
        return half(-1, true);
    }

    private double[] half(double left, boolean growing) {
        double[] angles = new double[strips.count];
        for (int i = 0; i < strips.count; i++) {
            double out = Math.abs(strips.places[i]) / strips.surface.areaRadius();
            angles[i] = (i < first ? left : 1) * (growing ? out : 1);
        }
        double[] gamma = new double[strips.count];
        StripGroup.multiply(group.attached, angles, strips.count, gamma);
        return Arrays.copyOfRange(gamma, first, strips.count);
    }

    /**
     * Lift slope against opposite angles on the two halves over that against equal ones, such that {@code kappa} times the
     * symmetric normal force, acting at the radius of the half's area, gives the rolling moment the strips find.
     */
    double oddRatio() {
        return ratio(oddCirculation());
    }

    /** The same against angles that grow outwards, as those of a turning wing do. */
    double turningRatio() {
        return ratio(turningCirculation());
    }

    private double ratio(double[] odd) {
        double[] even = evenCirculation();
        double force = 0;
        double moment = 0;
        for (int i = 0; i < count; i++) {
            force += even[i] * strips.widths[first + i];
            moment += odd[i] * strips.widths[first + i] * strips.places[first + i];
        }
        return moment / (force * strips.surface.areaRadius());
    }

    /** What an angle at each strip adds to the normal force of the surface, their sum being one [1]. */
    double[] shares() {
        double[] shares = new double[strips.count];
        double total = 0;
        for (int j = 0; j < strips.count; j++) {
            for (int i = 0; i < strips.count; i++) {
                shares[j] += strips.widths[i] * group.attached[j * strips.count + i];
            }
            total += shares[j];
        }
        for (int j = 0; j < strips.count; j++) {
            shares[j] /= total;
        }
        return shares;
    }

    /** New scratch. */
    Flow flow() {
        return new Flow();
    }

    /** Scratch of one flow after another; the result depends on the last one alone. */
    final class Flow {
        private final StripFlow flow = new StripFlow(solved, referencePoint, 1, 1);
        private final Motion motion = new Motion();
        private final Loads loads = new Loads();
        private final double area = strips.surface.area() * count / strips.count;

        /**
         * Solves one flow.
         *
         * @param angle of the flow in the plane of x and n [rad]
         * @param speed [m/s]
         * @param flap flap angle, trailing edge away from n positive [rad]
         * @param viscosity kinematic viscosity [m2/s]
         * @param out filled with coefficients as {@link CoefficientGrid} has them, from {@code at} on
         */
        void solve(double angle, double speed, double flap, double viscosity, double[] out, int at) {
            double across = speed * Math.sin(angle);
            motion.density = DENSITY;
            motion.kinematicViscosity = viscosity;
            motion.u = speed * Math.cos(angle);
            motion.v = first > 0 ? 0 : -across * normal.y();
            motion.w = first > 0 ? -across / normal.z() : -across * normal.z();
            Arrays.fill(flow.flap, flap);
            flow.move(motion, 0);
            flow.start(viscosity);
            flow.pass();
            flow.pass();
            flow.finish();
            loads.clear();
            flow.addTo(loads, motion, 0, count, Loss.WING_PROFILE);
            coefficients(angle, speed, out, at);
        }

        /** Circulations of the last flow over its speed, by strip of the right half (of the surface) [m]. */
        void circulations(double speed, double[] to, int at) {
            for (int i = 0; i < count; i++) {
                to[at + i] = flow.gamma[i] / speed;
            }
        }

        private void coefficients(double angle, double speed, double[] out, int at) {
            double full2 = motion.u * motion.u + motion.v * motion.v + motion.w * motion.w;
            double drag = loads.power[Loss.WING_PROFILE.ordinal()] / full2;
            double forward = loads.fx + drag * motion.u;
            double along = (loads.fy + drag * motion.v) * normal.y() + (loads.fz + drag * motion.w) * normal.z();
            double scale = 1 / (speed * speed * area);
            double moment = loads.mz * normal.y() - loads.my * normal.z();
            out[at + CoefficientGrid.LIFT] = scale * (along * Math.cos(angle) + forward * Math.sin(angle));
            out[at + CoefficientGrid.INDUCED] = scale * (along * Math.sin(angle) - forward * Math.cos(angle));
            out[at + CoefficientGrid.PROFILE] = scale * speed * drag;
            out[at + CoefficientGrid.MOMENT] = scale * moment / strips.surface.meanChord();
        }
    }
}
