package org.sawfly.aero;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.aero.Surface.Rib;
import org.sawfly.math.Vec3;

/** Outlines of flat wings for the checks; span 2 m, quarter chord through x = 0 where unswept. */
final class Outlines {
    private Outlines() {}

    /** Straight taper with straight quarter-chord line; root quarter chord at x = 0. */
    static Surface tapered(double aspect, double taper, double sweep, double dihedral) {
        double root = 2 * 2 / (aspect * (1 + taper));
        double out = Math.cos(dihedral);
        return Surface.mirrored(List.of(
                new Rib(new Vec3(root / 4, 0, 0), root, 0),
                new Rib(new Vec3(root * taper / 4 - Math.tan(sweep), out, -Math.sin(dihedral)), root * taper, 0)));
    }

    static Surface rectangular(double aspect) {
        return tapered(aspect, 1, 0, 0);
    }

    /** Elliptic chord, quarter chord straight; ribs so close that straight lines between them do not show. */
    static Surface elliptic(double aspect) {
        double root = 4 * 2 / (Math.PI * aspect);
        List<Rib> ribs = new ArrayList<>();
        int n = 2000;
        for (int i = 0; i <= n; i++) {
            double y = Math.sin(0.5 * Math.PI * i / n);
            double chord = root * Math.cos(0.5 * Math.PI * i / n);
            ribs.add(new Rib(new Vec3(chord / 4, y, 0), Math.max(chord, 0), 0));
        }
        return Surface.mirrored(ribs);
    }
}
