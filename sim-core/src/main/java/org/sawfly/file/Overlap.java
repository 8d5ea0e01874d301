package org.sawfly.file;

import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Tailplane;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/** Sees that tailplane, fin, wing and boom do not stand in each other's way. */
final class Overlap {
    /** Less than this is measuring error [m]. */
    private static final double NEAR = 1e-3;

    /** A tailplane further ahead of the fin than this share of the wing's root chord is unusual; common practice, no source. */
    private static final double FAR = 0.8;

    private Overlap() {}

    static void check(In in, Glider glider) {
        Tailplane tail = glider.tailplane();
        Fin fin = glider.fin();
        double tailEnd = -tail.x() + tail.planform().stations().get(0).chord();
        double over = tailEnd - finEdge(fin, fin.z() - tail.z());
        double finEnd = -fin.x() + fin.above().stations().get(0).chord();
        if (over > NEAR && -tail.x() < finEnd) {
            in.problem(
                    "tailplane",
                    "reaches " + millimetres(over) + " into the fin",
                    "leading_edge_behind_mm is measured from the wing's root leading edge, not from its trailing edge");
        }
        double root = glider.wing().planform().stations().get(0).chord();
        if (-tail.x() < root) {
            in.problem(
                    "tailplane",
                    "begins under the wing, " + millimetres(-tail.x()) + " behind its root leading edge",
                    "leading_edge_behind_mm was measured from the wing's trailing edge");
        }
        double ahead = -fin.x() - tailEnd;
        if (ahead > FAR * root) {
            in.doubt(
                    "tailplane",
                    "ends " + millimetres(ahead) + " ahead of the fin",
                    "its leading edge was measured from the wing's trailing edge");
        }
        double boomEnd = -glider.boom().endX();
        if (-fin.x() > boomEnd) {
            in.problem(
                    "fin",
                    "begins " + millimetres(-fin.x() - boomEnd) + " behind the end of the boom",
                    "boom.end_behind_mm is measured from the wing's root leading edge");
        }
        if (-tail.x() > boomEnd) {
            in.problem("tailplane", "begins " + millimetres(-tail.x() - boomEnd) + " behind the end of the boom", "");
        }
    }

    /** Leading edge of the fin behind the wing's at a height above the boom's axis [m]; very far when it is not there. */
    private static double finEdge(Fin fin, double height) {
        Planform part = height >= 0 ? fin.above() : fin.below();
        double out = Math.abs(height);
        return out > part.span() ? Double.POSITIVE_INFINITY : -fin.x() + part.backAt(out);
    }

    private static String millimetres(double length) {
        return Numbers.shortest(Unit.MILLIMETRE.fromSi(length), 1) + " mm";
    }
}
