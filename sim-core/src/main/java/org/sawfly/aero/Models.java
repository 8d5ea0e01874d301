package org.sawfly.aero;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.math.TwoThreads;
import org.sawfly.section.Section;

/**
 * Keeps the tables of surfaces, so that a study makes those of a surface that it leaves alone once. A surface is known by its
 * outline, sections and flap; its mass and its place on the glider do not count. Of too many the one not asked for the
 * longest is dropped. Safe to share between threads; what it gives does not depend on what it was asked before.
 */
public final class Models {
    private static final int WINGS = 16;
    private static final int TAILS = 64;

    private final Map<Wing, WingTables> wings = new Kept<>(WINGS);
    private final Map<Places, Wash> washes = new Kept<>(TAILS);
    private final Map<Tailplane, TailTables> tailplanes = new Kept<>(TAILS);
    private final Map<Fin, TailTables> fins = new Kept<>(TAILS);
    private final Map<Cut, StripGroup> wingStrips = new Kept<>(WINGS);
    private final Map<Cover, StripTable> sections = new Kept<>(WINGS);

    /**
     * What depends on the wing alone.
     *
     * @param grid coefficients of the wing, each half in its own plane
     * @param wake its vortices
     */
    record WingTables(CoefficientGrid grid, WingWake wake) {}

    /**
     * What depends on a tail alone.
     *
     * @param grid coefficients
     * @param allMoving whether the flap is the whole surface, and not in the table
     * @param alone its strips, wherever they are
     */
    record TailTables(CoefficientGrid grid, boolean allMoving, LoneSurface alone) {}

    /** Wake of a wing and tails in it. */
    private record Places(WingWake wake, Tailplane tailplane, Fin fin) {}

    /** A wing cut into so many strips. */
    private record Cut(Wing wing, int count) {}

    /** A section as a surface uses it: as it is, or alike on both sides. */
    private record Cover(Section section, boolean symmetric) {}

    /** Makes what is missing for a glider, where its wing has not been met before on two threads. */
    void make(Glider glider) {
        boolean met;
        synchronized (wings) {
            met = wings.containsKey(bare(glider.wing()));
        }
        if (!met) {
            TwoThreads.run(() -> wing(glider.wing()), () -> {
                tailplane(glider.tailplane());
                fin(glider.fin());
            });
        }
    }

    /** Tables of a wing. They take long, so that others wait meanwhile rather than make them too. */
    WingTables wing(Wing wing) {
        synchronized (wings) {
            return wings.computeIfAbsent(bare(wing), this::make);
        }
    }

    /** A wing cut into strips. They take long too. */
    StripGroup strips(Wing wing, int count) {
        synchronized (wingStrips) {
            return wingStrips.computeIfAbsent(
                    new Cut(bare(wing), count), cut -> StripModel.wing(cut.wing(), cut.count()));
        }
    }

    /** A section laid out for strips. */
    StripTable section(Section section, boolean symmetric) {
        return kept(
                sections,
                new Cover(section, symmetric),
                cover -> cover.symmetric() ? StripTable.symmetric(cover.section()) : StripTable.of(cover.section()));
    }

    private static Wing bare(Wing wing) {
        return new Wing(0, wing.planform(), wing.dihedral(), wing.root(), wing.tip(), wing.flaperon(), Hand.RIGHT);
    }

    /** Tables of a tailplane. */
    TailTables tailplane(Tailplane tailplane) {
        Tailplane bare =
                new Tailplane(0, tailplane.planform(), 0, 0, 0, tailplane.section(), tailplane.elevatorChord());
        return kept(tailplanes, bare, this::make);
    }

    /** Tables of a fin, which is taken as its own mirror image. */
    TailTables fin(Fin fin) {
        Fin bare = new Fin(0, fin.above(), fin.below(), 0, 0, fin.section(), fin.rudderChord());
        return kept(fins, bare, this::make);
    }

    /** What the wing does at the tails; mass, decalage and flaps of the tails do not count. */
    Wash wash(Glider glider) {
        WingWake wake = wing(glider.wing()).wake();
        Tailplane tailplane = glider.tailplane();
        Fin fin = glider.fin();
        Places places = new Places(
                wake,
                new Tailplane(0, tailplane.planform(), tailplane.x(), tailplane.z(), 0, tailplane.section(), 1),
                new Fin(0, fin.above(), fin.below(), fin.x(), fin.z(), fin.section(), 1));
        return kept(
                washes,
                places,
                key -> Wash.of(
                        wake,
                        SurfaceOutlines.of(tailplane),
                        tailplane(tailplane).alone(),
                        SurfaceOutlines.of(fin),
                        fin(fin).alone()));
    }

    /** Made outside the lock: two threads may make the same tables once each, neither waits. */
    private static <K, V> V kept(Map<K, V> map, K key, Function<K, V> maker) {
        synchronized (map) {
            V found = map.get(key);
            if (found != null) {
                return found;
            }
        }
        V made = maker.apply(key);
        synchronized (map) {
            map.put(key, made);
        }
        return made;
    }

    private WingTables make(Wing wing) {
        LoneSurface lone = SurfaceTables.lone(wing, strips(wing, StripCounts.USUAL.wing()));
        SurfaceTables tables = SurfaceTables.of(lone, SurfaceKnots.WING);
        CoefficientGrid grid = tables.coefficients();
        return new WingTables(grid, new WingWake(lone, SurfaceKnots.WING, grid, tables.circulations()));
    }

    private TailTables make(Tailplane tailplane) {
        LoneSurface lone = SurfaceTables.lone(tailplane, section(tailplane.section(), false));
        return tail(lone, tailplane.elevatorChord());
    }

    private TailTables make(Fin fin) {
        TailTables tables = tail(SurfaceTables.lone(fin, section(fin.section(), true)), fin.rudderChord());
        return new TailTables(tables.grid().mirrored(), tables.allMoving(), tables.alone());
    }

    private static TailTables tail(LoneSurface lone, double flapChord) {
        boolean allMoving = flapChord >= 1;
        SurfaceKnots knots = allMoving ? SurfaceKnots.TAIL.withoutFlap() : SurfaceKnots.TAIL;
        return new TailTables(SurfaceTables.of(lone, knots).coefficients(), allMoving, lone);
    }

    /** A map that drops what was not asked for the longest. */
    private static final class Kept<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1L;
        private final int most;

        Kept(int most) {
            super(most, 0.75f, true);
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
        }
    }
}
