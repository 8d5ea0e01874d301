package org.sawfly.aero;

import java.util.List;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.math.TwoThreads;

/** Makes the fast model's tables of a surface: its coefficients alone ({@link LoneSurface}) at all knots. */
final class SurfaceTables {
    private final LoneSurface lone;
    private final SurfaceKnots knots;
    private final double[] values;
    private final double[] circulations;

    private SurfaceTables(LoneSurface lone, SurfaceKnots knots) {
        this.lone = lone;
        this.knots = knots;
        this.values = new double[CoefficientGrid.CHANNELS * knots.size()];
        this.circulations = new double[lone.count * knots.size()];
    }

    /** The wing's strips alone. */
    static LoneSurface lone(Wing wing, StripGroup group) {
        return new LoneSurface(Strips.cosine(SurfaceOutlines.of(wing), group.count), group);
    }

    /** The tailplane's strips alone. */
    static LoneSurface lone(Tailplane tailplane, StripTable section) {
        Strips strips = Strips.cosine(SurfaceOutlines.of(tailplane), StripCounts.USUAL.tailplane());
        return new LoneSurface(
                strips,
                new StripGroup(
                        List.of(StripGroup.Part.of(strips, tailplane.section(), section, tailplane.elevatorChord())),
                        0));
    }

    /** The fin's strips alone. */
    static LoneSurface lone(Fin fin, StripTable section) {
        Strips strips = Strips.cosine(SurfaceOutlines.of(fin), StripCounts.USUAL.fin());
        return new LoneSurface(
                strips,
                new StripGroup(List.of(StripGroup.Part.of(strips, fin.section(), section, fin.rudderChord())), 0));
    }

    /** Tables of a surface. */
    static SurfaceTables of(LoneSurface lone, SurfaceKnots knots) {
        SurfaceTables tables = new SurfaceTables(lone, knots);
        int pairs = knots.speeds() * knots.flaps();
        TwoThreads.run(() -> tables.fill(0, pairs / 2), () -> tables.fill(pairs / 2, pairs));
        return tables;
    }

    /** Coefficients at all knots. */
    CoefficientGrid coefficients() {
        return new CoefficientGrid(knots.angleAxis(), knots.speedAxis(), knots.flapAxis(), values);
    }

    /** Circulations over the speed at all knots, by strip of the right half (of the surface) [m]. */
    double[] circulations() {
        return circulations;
    }

    /** Fills what belongs to some of the pairs of speed and flap angle. */
    private void fill(int from, int to) {
        LoneSurface.Flow flow = lone.flow();
        for (int pair = from; pair < to; pair++) {
            int j = pair / knots.flaps();
            int k = pair % knots.flaps();
            for (int i = 0; i < knots.angles(); i++) {
                int node = knots.node(i, j, k);
                int at = CoefficientGrid.CHANNELS * node;
                flow.solve(knots.angle(i), knots.speed(j), knots.flap(k), StripModel.STANDARD_VISCOSITY, values, at);
                flow.circulations(knots.speed(j), circulations, lone.count * node);
            }
        }
    }
}
