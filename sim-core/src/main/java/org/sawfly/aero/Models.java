package org.sawfly.aero;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sawfly.glider.Wing;

/**
 * Keeps the tables of wings, so that a study that leaves the wing alone makes them once. The key is the {@link Wing}
 * record; the least recently used of many is dropped. Safe to share between threads.
 */
public final class Models {
    /** How many wings are kept. */
    private static final int KEPT = 16;

    private final Map<Wing, WingTables> wings = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wing, WingTables> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * What depends on the wing alone.
     *
     * @param grid coefficients of the wing, each half in its own plane
     * @param wake its vortices
     */
    record WingTables(CoefficientGrid grid, WingWake wake) {}

    /** Tables of a wing, made now if they are not here yet; others wait meanwhile. */
    synchronized WingTables wing(Wing wing) {
        return wings.computeIfAbsent(wing, Models::tables);
    }

    private static WingTables tables(Wing wing) {
        SurfaceTables tables = SurfaceTables.of(wing);
        return new WingTables(tables.coefficients(), new WingWake(tables.lone()));
    }
}
