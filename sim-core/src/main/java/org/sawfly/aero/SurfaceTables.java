package org.sawfly.aero;

import org.sawfly.air.Atmosphere;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Flap;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.math.CubicGrid3;
import org.sawfly.math.TwoThreads;
import org.sawfly.math.Vec3;
import org.sawfly.section.Section;

/**
 * Forces of one surface alone, tabulated once from the strips ({@link LoneSurface}, production setting) over the angle of the
 * flow (whole circle), the speed (sections' Reynolds numbers V c/nu, nu of the standard sea level unless given) and the flap
 * angle; smooth, with all coefficients side by side: one look-up of 0.2 us gives them all. Immutable.
 *
 * <p><b>Use.</b> Once: {@code wing = SurfaceTables.of(wing)}, {@code tail = SurfaceTables.of(tailplane)},
 * {@code fin = SurfaceTables.of(fin)}, then {@code wing = wing.withWake(tail, fin)} for the wake of the wing at the tails. In
 * flight, from the velocity (u, v, w) of the reference point through the air, in body axes, with the {@link #normal() normal} n of
 * the right half (mirror y for the left half):
 *
 * <pre>
 *   vn = -(n . velocity)            velocity of the air along n [m/s]
 *   angle = atan2(vn, u),  speedSquare = u^2 + vn^2
 *   at(angle, incidence, speedSquare, flap, out)
 *   F = density/2 speedSquare S (out[NORMAL] n + out[FORWARD] x)          lift and induced drag
 *   moment about the span axis e = density/2 speedSquare S c out[MOMENT]
 *   friction: density/2 S out[FRICTION] |velocity| against the full velocity
 * </pre>
 *
 * S is {@link #area()} (both halves; half of it for a half wing), c {@link #meanChord()}. A wing or tailplane has n up, e to
 * the right, so moments are nose up positive; the fin has n to the RIGHT, e down: force to the right, moment nose right, its
 * flap is the rudder itself (trailing edge left pushes right), its angle positive in air from the left.
 * {@code incidence} turns the whole surface towards n (decalage, boom bending): forces come back in axes that are not turned.
 * An all-moving tail (flap chord 1) is turned by its flap angle in the same way.
 *
 * <p><b>Wake</b> (after {@code withWake}): {@code out[DOWNWASH]} is the mean downwash at the tailplane over the speed, when
 * both halves see the same flow: take half of each half's. {@code out[SIDEWASH]} is the velocity to the right of the air at the fin,
 * over speed and sideslip (rad), from the drift of the wake. {@link #oddSidewash()} is that, over speed, for +1 rad at the right
 * half and -1 rad at the left. {@link #oddRatio()} is kappa: the part of half the difference of the two halves' angles that
 * counts.
 */
public final class SurfaceTables {
    /** Force along n: lift side positive. */
    public static final int NORMAL = 0;
    /** Force along x, forward positive; without friction. */
    public static final int FORWARD = 1;
    /** Moment about the span axis through the reference point, nose towards n positive. */
    public static final int MOMENT = 2;
    /** Friction along the velocity, backwards positive. */
    public static final int FRICTION = 3;
    /** Downwash angle at the tailplane, after {@link #withWake}. */
    public static final int DOWNWASH = 4;
    /** Sidewash at the fin over sideslip, after {@link #withWake}. */
    public static final int SIDEWASH = 5;
    /** Length of the array to fill. */
    public static final int CHANNELS = 6;

    private static final int OWN = 4;

    private final LoneSurface lone;
    private final SurfaceKnots knots;
    private final boolean allMoving;
    private final double[] values;
    private final double[] circulations;
    private final CubicGrid3 grid;
    private final double oddSidewash;

    private SurfaceTables(LoneSurface lone, SpanSections sections, SurfaceKnots knots, boolean allMoving) {
        this.lone = lone;
        this.knots = knots;
        this.allMoving = allMoving;
        int nodes = knots.size();
        this.values = new double[OWN * nodes];
        this.circulations = new double[lone.count * nodes];
        fill(sections);
        this.grid = knots.grid(OWN, values);
        this.oddSidewash = 0;
    }

    private SurfaceTables(SurfaceTables alone, CubicGrid3 grid, double oddSidewash) {
        this.lone = alone.lone;
        this.knots = alone.knots;
        this.allMoving = alone.allMoving;
        this.values = alone.values;
        this.circulations = alone.circulations;
        this.grid = grid;
        this.oddSidewash = oddSidewash;
    }

    /** The wing: flap is the camber (plus or minus aileron) of the half asked for. */
    public static SurfaceTables of(Wing wing) {
        return of(wing, Atmosphere.STANDARD.kinematicViscosity(0));
    }

    /** The wing in air of another kinematic viscosity [m2/s]. */
    public static SurfaceTables of(Wing wing, double viscosity) {
        return build(
                Strips.cosine(SurfaceOutlines.of(wing), SurfaceKnots.WING_STRIPS),
                wing.root(),
                wing.tip(),
                wing.flaperon(),
                SurfaceKnots.WING,
                viscosity);
    }

    /** The tailplane: flap is the elevator. */
    public static SurfaceTables of(Tailplane tailplane) {
        Surface surface = SurfaceOutlines.of(tailplane);
        Flap elevator = new Flap(tailplane.elevatorChord(), 0, surface.to());
        return build(
                Strips.cosine(surface, SurfaceKnots.TAILPLANE_STRIPS),
                tailplane.section(),
                tailplane.section(),
                elevator,
                SurfaceKnots.TAIL,
                Atmosphere.STANDARD.kinematicViscosity(0));
    }

    /** The tailplane with its flap neutral: one knot of flap angle. */
    static SurfaceTables neutral(Tailplane tailplane) {
        return neutral(SurfaceOutlines.of(tailplane), SurfaceKnots.TAILPLANE_STRIPS, tailplane.section());
    }

    /** The fin with its flap neutral: one knot of flap angle. */
    static SurfaceTables neutral(Fin fin) {
        return neutral(SurfaceOutlines.of(fin), SurfaceKnots.FIN_STRIPS, fin.section());
    }

    private static SurfaceTables neutral(Surface surface, int strips, Section section) {
        return build(
                Strips.cosine(surface, strips),
                section,
                section,
                new Flap(1, 0, surface.to()),
                SurfaceKnots.TAIL,
                Atmosphere.STANDARD.kinematicViscosity(0));
    }

    /** The fin: flap is the rudder. */
    public static SurfaceTables of(Fin fin) {
        Surface surface = SurfaceOutlines.of(fin);
        Flap rudder = new Flap(fin.rudderChord(), 0, surface.to());
        return build(
                Strips.cosine(surface, SurfaceKnots.FIN_STRIPS),
                fin.section(),
                fin.section(),
                rudder,
                SurfaceKnots.TAIL,
                Atmosphere.STANDARD.kinematicViscosity(0));
    }

    private static SurfaceTables build(
            Strips strips, Section root, Section tip, Flap flap, SurfaceKnots knots, double viscosity) {
        boolean allMoving = flap.chordFraction() >= 1;
        double[] shares = strips.shares(flap.from(), flap.to());
        int first = strips.surface.isMirrored() ? strips.count / 2 : 0;
        int count = strips.count - first;
        double[] toTip = new double[count];
        double[] solved = new double[count];
        double[] chords = new double[count];
        for (int i = 0; i < count; i++) {
            toTip[i] = strips.places[first + i] / strips.surface.to();
            solved[i] = allMoving ? 0 : shares[first + i];
            chords[i] = strips.chords[first + i];
        }
        SpanSections sections = new SpanSections(root, tip, toTip, solved, chords, viscosity);
        double[] slopes = sections.slopes(SurfaceKnots.SLOPE_SPEED);
        LoneSurface lone = new LoneSurface(strips, slopes, VortexSystem.Setting.PRODUCTION);
        return new SurfaceTables(lone, sections, allMoving ? knots.withoutFlap() : knots, allMoving);
    }

    /** Fills the tables; of a surface with a flap, which has many, two halves at the same time. */
    private void fill(SpanSections sections) {
        int pairs = knots.speeds() * knots.flaps();
        if (knots.flaps() == 1) {
            fill(sections, 0, pairs);
        } else {
            SpanSections others = sections.copy();
            TwoThreads.run(() -> fill(sections, 0, pairs / 2), () -> fill(others, pairs / 2, pairs));
        }
    }

    /** Fills what belongs to some of the pairs of speed and flap angle. */
    private void fill(SpanSections sections, int from, int to) {
        LoneSurface.Flow flow = lone.flow();
        for (int pair = from; pair < to; pair++) {
            int j = pair / knots.flaps();
            int k = pair % knots.flaps();
            StripPolars polars = sections.polars(knots.speed(j), knots.flap(k));
            for (int i = 0; i < knots.angles(); i++) {
                flow.solve(knots.angle(i), polars);
                int node = knots.node(i, j, k);
                values[OWN * node + NORMAL] = flow.normalForce;
                values[OWN * node + FORWARD] = flow.forwardForce;
                values[OWN * node + MOMENT] = flow.moment;
                values[OWN * node + FRICTION] = flow.friction;
                System.arraycopy(flow.gamma, 0, circulations, node * lone.count, lone.count);
            }
        }
    }

    /** These tables of a wing with its wake at a tailplane and a fin. */
    public SurfaceTables withWake(SurfaceTables tailplane, SurfaceTables fin) {
        WakeAtTail wake = new WakeAtTail(lone.strips);
        double[] down = wake.even(wake.along(tailplane.lone.strips, 0));
        double[] side = wake.even(wake.drift(fin.lone.strips));
        double[] odd = wake.odd(wake.along(fin.lone.strips, 0));
        double[] all = new double[CHANNELS * knots.size()];
        for (int node = 0; node < knots.size(); node++) {
            System.arraycopy(values, OWN * node, all, CHANNELS * node, OWN);
            all[CHANNELS * node + DOWNWASH] = -product(down, circulations, node * lone.count);
            all[CHANNELS * node + SIDEWASH] = product(side, circulations, node * lone.count);
        }
        return new SurfaceTables(this, knots.grid(CHANNELS, all), product(odd, lone.oddCirculation(), 0));
    }

    private static double product(double[] row, double[] values, int from) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * values[from + i];
        }
        return sum;
    }

    /**
     * All coefficients at one flow.
     *
     * @param angle of the flow in the plane of n and x, anywhere on the circle [rad]
     * @param incidence turn of the whole surface towards n [rad]
     * @param speedSquare square of the speed in that plane [m2/s2]
     * @param flap flap angle, trailing edge away from n positive [rad]
     * @param out filled; {@link #CHANNELS} long
     */
    public void at(double angle, double incidence, double speedSquare, double flap, double[] out) {
        double turn = allMoving ? incidence + flap : incidence;
        grid.at(angle + turn, SurfaceKnots.speedPlace(speedSquare), flap, out);
        if (turn != 0) {
            double sin = Math.sin(turn);
            double cos = Math.cos(turn);
            double normal = out[NORMAL];
            double forward = out[FORWARD];
            out[NORMAL] = normal * cos + forward * sin;
            out[FORWARD] = forward * cos - normal * sin;
        }
    }

    /** The coefficients along and across the flow, before any turn of the surface. */
    CoefficientGrid coefficients() {
        double[] all = new double[CoefficientGrid.CHANNELS * knots.size()];
        int perAngle = knots.speeds() * knots.flaps();
        for (int node = 0; node < knots.size(); node++) {
            double cos = Math.cos(knots.angle(node / perAngle));
            double sin = Math.sin(knots.angle(node / perAngle));
            double normal = values[OWN * node + NORMAL];
            double forward = values[OWN * node + FORWARD];
            int at = CoefficientGrid.CHANNELS * node;
            all[at + CoefficientGrid.LIFT] = normal * cos + forward * sin;
            all[at + CoefficientGrid.INDUCED] = normal * sin - forward * cos;
            all[at + CoefficientGrid.PROFILE] = values[OWN * node + FRICTION];
            all[at + CoefficientGrid.MOMENT] = values[OWN * node + MOMENT];
        }
        return new CoefficientGrid(knots.angleAxis(), knots.speedAxis(), knots.flapAxis(), all);
    }

    /** Strips and their influence on each other. */
    LoneSurface lone() {
        return lone;
    }

    /** Area of the unrolled surface, both halves [m2]. */
    public double area() {
        return lone.strips.surface.area();
    }

    /** Mean aerodynamic chord [m]. */
    public double meanChord() {
        return lone.strips.surface.meanChord();
    }

    /**
     * Reference point of the moment, build axes [m]: x at a quarter of the mean aerodynamic chord, y and z at the middle of
     * the (right half's) area.
     */
    public Vec3 referencePoint() {
        return lone.referencePoint;
    }

    /** Direction of positive normal force of the right half, a unit vector without x component. */
    public Vec3 normal() {
        return lone.normal;
    }

    /** Radius of a half's area about the plane of symmetry, along the span: sqrt(int c s^2 ds/S) [m]. */
    public double areaRadius() {
        return lone.strips.surface.areaRadius();
    }

    /** kappa: slope against opposite angles of the halves over that against equal ones, acting at {@link #areaRadius()}. */
    public double oddRatio() {
        return lone.oddRatio();
    }

    /** Velocity of the air to the right at the fin over speed, for +1 rad at the right half and -1 rad at the left one. */
    public double oddSidewash() {
        return oddSidewash;
    }
}
