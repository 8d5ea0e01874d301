package org.sawfly.aero;

import java.util.List;
import org.sawfly.air.Atmosphere;
import org.sawfly.air.Standard;
import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.math.Vec3;

/**
 * The strip model: horseshoe vortices on wing, tailplane and fin with the section table at every strip, each strip at its own
 * velocity. The reference for the fast model, and the one for the full motion after release, where tip and tip differ in
 * speed and the fin stands beyond stall.
 *
 * <p>The wing is solved first and acts on the tails through its wake ({@link DriftingWake}, drifting by
 * {@code beta_w = atan2(v - r l_t/2, u)}, fading out when the air comes from more than 60 degrees below or above); both tails are
 * solved together. What the tails induce at the wing, far ahead of them, is left out: 0.2 % of the lift slope, as a test shows.
 *
 * <p><b>Downwash lag.</b> One number, as in the fast model: e [m/s], the mean downwash at the tailplane as it arrives there. The
 * matrix gives the mean e_now that belongs to the present circulations; all tail strips are in air that moves down by
 * {@code e - e_now} on top of it, and {@code e' = (e_now - e) V/l_t}, V at least 2 m/s.
 *
 * <p><b>Boom.</b> Bends as in {@link BoomFlex}, solved along with the two passes from the slope of attached flow; just after
 * release it swings ({@link BoomMode}) in both planes.
 *
 * <p><b>Bench errors.</b> Tails lean and stand aside with their strips, skew and twist add to angles; the influence of strips on each
 * other stays that of a glider built squarely.
 *
 * <p>Left out besides: twist of the wing under load, ground effect, the growth of circulation in time. Immutable, shared between
 * threads.
 */
final class StripModel implements AeroModel {
    static final double STANDARD_VISCOSITY = Atmosphere.STANDARD.kinematicViscosity(0);
    /** Radius of the core of legs that pass another surface, over the wing's mean chord [1]. */
    static final double CORE_SHARE = 0.15;
    /** Speed at which the fin's angle of stall is taken [m/s]. */
    private static final double USUAL = 10;

    private final Parts parts;
    private final Reference reference;
    private final ApparentMass apparent;

    /**
     * What an evaluator works with.
     *
     * @param wing its strips
     * @param tails strips of the tailplane, then of the fin
     * @param tailplane on its boom
     * @param fin on its boom
     * @param wake of the wing at the tails
     * @param bodies pod, boom and peg
     * @param inertial masses for the boom's bending
     * @param corrections doubts about all this
     * @param cg build axes [m]
     */
    record Parts(
            StripGroup wing,
            StripGroup tails,
            StripTail tailplane,
            StripTail fin,
            DriftingWake wake,
            Bodies bodies,
            Inertial inertial,
            Corrections corrections,
            Vec3 cg) {}

    private StripModel(Parts parts, Reference reference, ApparentMass apparent) {
        this.parts = parts;
        this.reference = reference;
        this.apparent = apparent;
    }

    /** The model of a glider. Strips of a wing that {@code models} has met before are taken from there. */
    static StripModel of(Glider glider, MassProperties mass, Corrections corrections, Models models) {
        return of(glider, mass, corrections, models, StripCounts.USUAL);
    }

    static StripModel of(
            Glider glider, MassProperties mass, Corrections corrections, Models models, StripCounts counts) {
        Vec3 cg = mass.cg();
        Surface wing = SurfaceOutlines.of(glider.wing());
        Tailplane tailplane = glider.tailplane();
        Fin fin = glider.fin();
        Strips tailplaneStrips = Strips.cosine(SurfaceOutlines.of(tailplane), counts.tailplane());
        Strips finStrips = Strips.cosine(SurfaceOutlines.of(fin), counts.fin());
        double core = CORE_SHARE * wing.meanChord();
        StripGroup tails = new StripGroup(
                List.of(
                        StripGroup.Part.of(
                                tailplaneStrips,
                                tailplane.section(),
                                models.section(tailplane.section(), false),
                                tailplane.elevatorChord()),
                        StripGroup.Part.of(
                                finStrips, fin.section(), models.section(fin.section(), true), fin.rudderChord())),
                core);
        int first = tailplaneStrips.count;
        double frontX = glider.boom().frontX();
        BenchErrors bench = corrections.bench();
        StripGroup asBuilt = bench.equals(BenchErrors.NONE)
                ? tails
                : tails.leaning(0, first, tailplane.z(), bench.tailplaneTilt(), frontX, bench)
                        .leaning(first, tails.count, fin.z(), bench.finTilt(), frontX, bench);
        DriftingWake wake = new DriftingWake(
                Strips.cosine(wing, counts.wing()),
                List.of(tailplaneStrips, finStrips),
                tails.slopes,
                core,
                new double[] {corrections.downwash(), 1});
        ApparentMass apparent = new ApparentMass(Standard.DENSITY, cg)
                .add(wing)
                .add(tailplaneStrips.surface)
                .add(finStrips.surface);
        double[][] air = apparent.matrix();
        double wingX = wing.meanChordX() - 0.25 * wing.meanChord();
        double finStall = Math.sin(models.fin(fin).grid().stallAngle(USUAL));
        Parts parts = new Parts(
                models.strips(glider.wing(), counts.wing()),
                asBuilt,
                StripTail.of(
                        glider, tailplaneStrips.surface, tails, 0, tailplaneStrips.count, wingX, cg, corrections, 1),
                StripTail.of(
                        glider,
                        finStrips.surface,
                        tails,
                        tailplaneStrips.count,
                        tails.count,
                        wingX,
                        cg,
                        corrections,
                        finStall),
                wake,
                new Bodies(glider, cg, corrections.drag().bodies()),
                new Inertial(mass.mass(), mass.inertia(), air[1][1], air[2][2], air[4][4], air[5][5]),
                corrections,
                cg);
        return new StripModel(parts, Reference.of(wing, glider.wing().dihedral(), cg.x()), apparent);
    }

    /** Strips of a wing alone. */
    static StripGroup wing(Wing wing, int count) {
        Strips strips = Strips.cosine(SurfaceOutlines.of(wing), count);
        return new StripGroup(List.of(StripGroup.Part.of(strips, wing)), 0);
    }

    @Override
    public AeroEvaluator evaluator() {
        return new StripEvaluator(parts);
    }

    @Override
    public Reference reference() {
        return reference;
    }

    @Override
    public double boomFrequency(BoomSwing.Plane plane) {
        StripTail tail = plane == BoomSwing.Plane.SIDE ? parts.fin() : parts.tailplane();
        return tail.boom().frequency();
    }

    @Override
    public double[][] apparentMass() {
        return apparent.matrix();
    }
}
