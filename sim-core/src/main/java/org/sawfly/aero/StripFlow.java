package org.sawfly.aero;

import org.sawfly.math.Vec3;

/**
 * Scratch of one {@link StripGroup}: velocities of its strips, circulations in two fixed passes, forces. The result is a smooth
 * function of what is put in and depends on nothing before.
 *
 * <p><b>Velocities.</b> Strip i moves through the air with {@code v + omega x r}, less the velocity of the air there. Its component
 * against the normal at the three-quarter chord gives the angle, that at the quarter chord the direction of lift
 * (Pistolesi's theorem); {@code V^2} is the square of the component in the plane of the section.
 *
 * <p><b>Circulations.</b> {@code Gamma = V c cl(alpha_e)/2}, {@code alpha_e = alpha + w/V}, {@code w = W Gamma} and whatever the other group
 * adds. Start: attached flow, {@code Gamma = M b}, {@code b = V sin(2 (alpha - alpha0))/2 + w_other}, which is V (alpha - alpha0) where flow
 * is attached and closes on itself over the circle. Then two passes of Newton's method with the matrix of attached flow,
 * {@code Gamma += M D (V c cl/2 - Gamma)}, {@code D = diag(2/(a0 c))}: nothing is factored in flight, and since D - W is the inverse of M, w
 * follows from {@code w += D dGamma - D (V c cl/2 - Gamma)} without another product.
 *
 * <p><b>Forces</b> at the quarter chord, per width: lift {@code rho Gamma} times the velocity there turned by {@code W_d Gamma} (Kutta and
 * Joukowski), section drag {@code (rho/2) c [cd V + c_f (V_full - V)]} along the full velocity, with {@code c_f} the skin
 * friction of a laminar plate, section moment with the share {@code -(pi/16) rho V (omega.l) c^3} of a turning chord; see
 * {@link ElementFlow}, which does the same for whole surfaces.
 */
final class StripFlow {
    /** Two sides of a plate in laminar flow, Blasius: 2 x 1.328. */
    private static final double SKIN = 2.656;
    /** Speed below which the angle of an induced velocity fades [m/s]; 0.2, its square. */
    private static final double SLOW_2 = 0.04;

    private static final double TINY = 1e-12;
    private static final int LIFT = Loss.LIFT.ordinal();

    final StripGroup group;
    final int count;
    /** Turn of every strip towards its normal, besides twist [rad]; and angle of its flap [rad]; both put in. */
    final double[] turn, flap;
    /** Velocity of every strip towards its normal [m/s] and of its nose away from it [rad/s], besides the motion; both put in. */
    final double[] heave, nodding;
    /** Velocity along the normals that the other group makes, behind and at the quarter chord [m/s]; put in. */
    final double[] otherBehind, otherQuarter;
    /** Circulations [m2/s]. */
    final double[] gamma;
    /** Angles of attack without what is induced [rad]. */
    final double[] alpha;
    /** Factors on lift and what it induces [1]. */
    final double[] liftFactors;

    private final double inducedFactor;
    private final double dragFactor;
    private final double[] rx, ry, rz;
    private final double[] u, v, w, across, behind, speed, spin, angleOfFlow, induced, seen, right, change, turned;
    private final StripCurves curves;

    /**
     * Scratch for a group.
     *
     * @param cg build axes [m]
     * @param inducedFactor on the drag that comes with lift [1]
     * @param dragFactor on section drag [1]
     */
    StripFlow(StripGroup group, Vec3 cg, double inducedFactor, double dragFactor) {
        this.group = group;
        this.inducedFactor = inducedFactor;
        this.dragFactor = dragFactor;
        int n = group.count;
        this.count = n;
        this.turn = new double[n];
        this.flap = new double[n];
        this.heave = new double[n];
        this.nodding = new double[n];
        this.otherBehind = new double[n];
        this.otherQuarter = new double[n];
        this.gamma = new double[n];
        this.alpha = new double[n];
        this.liftFactors = new double[n];
        this.rx = new double[n];
        this.ry = new double[n];
        this.rz = new double[n];
        this.u = new double[n];
        this.v = new double[n];
        this.w = new double[n];
        this.across = new double[n];
        this.behind = new double[n];
        this.speed = new double[n];
        this.spin = new double[n];
        this.angleOfFlow = new double[n];
        this.induced = new double[n];
        this.seen = new double[n];
        this.right = new double[n];
        this.change = new double[n];
        this.turned = new double[n];
        this.curves = new StripCurves(group.tables);
        for (int i = 0; i < n; i++) {
            rx[i] = group.x[i] - cg.x();
            ry[i] = group.y[i] - cg.y();
            rz[i] = group.z[i] - cg.z();
            liftFactors[i] = 1;
        }
    }

    /**
     * Takes the motion.
     *
     * @param airZ velocity of the air at the strips, down positive, besides what {@link #otherBehind} says [m/s]
     */
    void move(Motion m, double airZ) {
        for (int i = 0; i < count; i++) {
            double ui = m.u + m.q * rz[i] - m.r * ry[i];
            double vi = m.v + m.r * rx[i] - m.p * rz[i];
            double wi = m.w + m.p * ry[i] - m.q * rx[i] - airZ;
            double turning = m.r * group.normalY[i] - m.q * group.normalZ[i] - nodding[i];
            double against = -(vi * group.normalY[i] + wi * group.normalZ[i]) - heave[i];
            double at = against + 0.5 * group.chords[i] * turning;
            u[i] = ui;
            v[i] = vi;
            w[i] = wi;
            across[i] = against;
            spin[i] = turning;
            behind[i] = at;
            speed[i] = Math.sqrt(ui * ui + at * at);
            angleOfFlow[i] = Math.atan2(at, ui);
        }
    }

    /** Circulations of attached flow, after {@link #move} and with all that is put in. */
    void start(double kinematicViscosity) {
        StripGroup g = group;
        for (int i = 0; i < count; i++) {
            curves.prepare(i, speed[i] * g.chords[i] / kinematicViscosity, flap[i] * g.flapShares[i]);
            alpha[i] = angleOfFlow[i] + g.twists[i] + turn[i] + g.flapTurns[i] * flap[i];
            double shift = alpha[i] - angleOfFlow[i] + curves.liftAtZero / g.slopes[i];
            induced[i] = lifting(i, shift);
            right[i] = induced[i] + otherBehind[i];
        }
        StripGroup.multiply(g.attached, right, count, gamma);
        for (int i = 0; i < count; i++) {
            induced[i] = g.sectionShares[i] * gamma[i] - induced[i];
        }
    }

    /** {@code V sin(2 x)/2} with x the angle of the flow and a small shift. */
    private double lifting(int i, double shift) {
        double square = shift * shift;
        double sin = shift * (1 - square / 6 * (1 - square / 20));
        double cos = 1 - square / 2 * (1 - square / 12);
        double along = u[i] * cos - behind[i] * sin;
        double normal = behind[i] * cos + u[i] * sin;
        return along * normal / Math.max(speed[i], TINY);
    }

    /** One pass towards what the sections say; {@link #turn} may have changed since. */
    void pass() {
        StripGroup g = group;
        for (int i = 0; i < count; i++) {
            alpha[i] = angleOfFlow[i] + g.twists[i] + turn[i] + g.flapTurns[i] * flap[i];
            double lift = curves.lift(i, alpha[i] + angleOf(induced[i], speed[i]));
            right[i] = g.sectionShares[i] * (0.5 * speed[i] * g.chords[i] * lift - gamma[i]);
        }
        StripGroup.multiply(g.attached, right, count, change);
        for (int i = 0; i < count; i++) {
            gamma[i] += change[i];
            induced[i] += g.sectionShares[i] * change[i] - right[i];
        }
    }

    private static double angleOf(double velocity, double speed) {
        return velocity / Math.sqrt(speed * speed + SLOW_2);
    }

    /** What the passes have led to: velocities that turn the lift, angles the sections see. */
    void finish() {
        StripGroup.multiply(group.turning, gamma, count, turned);
        for (int i = 0; i < count; i++) {
            turned[i] += otherQuarter[i];
            seen[i] = alpha[i] + angleOf(induced[i], speed[i]);
        }
    }

    /** Lift of some strips along their normals, summed as if they were parallel [N]. */
    double force(double density, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += liftFactors[i] * gamma[i] * u[i] * group.widths[i];
        }
        return density * sum;
    }

    /** Moment of some strips' sections, nose towards the normals, summed as if they were parallel [N m]. */
    double sectionMoment(double density, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            curves.dragAndMoment(i, alpha[i] + angleOf(induced[i], speed[i]));
            sum += moment(i, density);
        }
        return sum;
    }

    private double moment(int i, double density) {
        double plane = Math.sqrt(u[i] * u[i] + across[i] * across[i]);
        double c = group.chords[i];
        return group.widths[i]
                * density
                * c
                * c
                * plane
                * (0.5 * curves.moment * speed[i] - Math.PI / 16 * spin[i] * c);
    }

    /** Mean of c ds V^2 times a factor over some strips: what an attached slope is multiplied with [m2/s2]. */
    double meanSquare(int from, int to) {
        double sum = 0;
        double area = 0;
        for (int i = from; i < to; i++) {
            double part = group.chords[i] * group.widths[i];
            sum += part * speed[i] * speed[i];
            area += part;
        }
        return sum / area;
    }

    /** Mean over the area of some strips of values given by strip. */
    double mean(double[] values, int from, int to) {
        double sum = 0;
        double area = 0;
        for (int i = from; i < to; i++) {
            double part = group.chords[i] * group.widths[i];
            sum += part * values[i];
            area += part;
        }
        return sum / area;
    }

    /**
     * Adds force, moment about the CG and power of some strips, after {@link #finish}.
     *
     * @param profile where the power of section drag and section moment goes
     */
    void addTo(Loads loads, Motion m, int from, int to, Loss profile) {
        double density = m.density;
        double fx = 0;
        double fy = 0;
        double fz = 0;
        double mx = 0;
        double my = 0;
        double mz = 0;
        double liftPower = 0;
        double profilePower = 0;
        for (int i = from; i < to; i++) {
            double ny = group.normalY[i];
            double nz = group.normalZ[i];
            double chord = group.chords[i];
            double plane2 = u[i] * u[i] + across[i] * across[i];
            double plane = Math.sqrt(plane2);
            double full = Math.sqrt(u[i] * u[i] + v[i] * v[i] + w[i] * w[i]);
            curves.dragAndMoment(i, seen[i]);

            double strength = density * group.widths[i] * liftFactors[i] * gamma[i];
            double liftX = strength * (across[i] + inducedFactor * turned[i]);
            double liftY = strength * u[i] * ny;
            double liftZ = strength * u[i] * nz;
            double skin = SKIN * Math.sqrt(m.kinematicViscosity * full / chord) * (1 - plane / Math.max(full, TINY));
            double drag = -0.5 * density * group.widths[i] * chord * dragFactor * (curves.drag * plane + skin);
            double dragX = drag * u[i];
            double dragY = drag * v[i];
            double dragZ = drag * w[i];
            double section = moment(i, density);

            double ku = u[i];
            double kv = v[i];
            double kw = m.w + m.p * ry[i] - m.q * rx[i];
            liftPower -= liftX * ku + liftY * kv + liftZ * kw;
            profilePower -= dragX * ku + dragY * kv + dragZ * kw + section * (spin[i] + nodding[i]);
            double sx = liftX + dragX;
            double sy = liftY + dragY;
            double sz = liftZ + dragZ;
            fx += sx;
            fy += sy;
            fz += sz;
            mx += ry[i] * sz - rz[i] * sy;
            my += rz[i] * sx - rx[i] * sz - section * nz;
            mz += rx[i] * sy - ry[i] * sx + section * ny;
        }
        loads.fx += fx;
        loads.fy += fy;
        loads.fz += fz;
        loads.mx += mx;
        loads.my += my;
        loads.mz += mz;
        loads.power[LIFT] += liftPower;
        loads.power[profile.ordinal()] += profilePower;
    }
}
