package org.sawfly.aero;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.aero.Surface.Rib;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Station;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;
import org.sawfly.math.Vec3;

/**
 * Lifting surfaces of a glider in build axes (origin at the wing's root leading edge). The tailplane lies flat, without its
 * decalage; the fin's ribs run from its top down, so that its force is positive to the right.
 */
final class SurfaceOutlines {
    /** Height between two root ribs that differ above and below the boom [m]. */
    private static final double STEP = 1e-6;

    private SurfaceOutlines() {}

    static Surface of(Wing wing) {
        double cos = Math.cos(wing.dihedral());
        double sin = Math.sin(wing.dihedral());
        List<Rib> ribs = new ArrayList<>();
        for (Station station : wing.planform().stations()) {
            Vec3 edge = new Vec3(-station.back(), station.out() * cos, -station.out() * sin);
            ribs.add(new Rib(edge, station.chord(), 0));
        }
        return Surface.mirrored(ribs);
    }

    static Surface of(Tailplane tailplane) {
        List<Rib> ribs = new ArrayList<>();
        for (Station station : tailplane.planform().stations()) {
            Vec3 edge = new Vec3(tailplane.x() - station.back(), station.out(), tailplane.z());
            ribs.add(new Rib(edge, station.chord(), 0));
        }
        return Surface.mirrored(ribs);
    }

    static Surface of(Fin fin) {
        List<Rib> ribs = new ArrayList<>();
        List<Station> above = fin.above().stations();
        for (int i = above.size() - 1; i >= 0; i--) {
            ribs.add(finRib(fin, above.get(i), -above.get(i).out()));
        }
        Planform below = fin.below();
        for (Station station : below.stations()) {
            if (station.out() > 0) {
                ribs.add(finRib(fin, station, station.out()));
            } else if (!station.equals(above.get(0))) {
                ribs.add(finRib(fin, station, STEP));
            }
        }
        return Surface.single(ribs);
    }

    private static Rib finRib(Fin fin, Station station, double down) {
        return new Rib(new Vec3(fin.x() - station.back(), 0, fin.z() + down), station.chord(), 0);
    }
}
