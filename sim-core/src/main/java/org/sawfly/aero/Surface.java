package org.sawfly.aero;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.math.Vec3;

/**
 * Outline of a lifting surface: ribs along one line, straight in between; a wing or a tailplane of two halves alike, or a
 * single line such as a fin. Build axes: x forward, y right, z down [m].
 *
 * <p>Place along the surface: {@code s}, measured in the y-z plane (the surface unrolled). On a mirrored surface s = 0 is
 * the plane of symmetry and s grows to the right; on a single line it starts at 0 with the first rib.
 *
 * <p>Directions: {@code e} along growing s, with no x component; normal {@code n = e x (1, 0, 0)}: up on a wing whose s
 * grows to the right, to the RIGHT on a fin whose s grows downwards. Lift, twist and angle of attack are positive towards
 * n; a flap is positive with its trailing edge away from n.
 */
final class Surface {
    /**
     * A rib: its leading edge in build axes [m], chord [m], twist, nose towards n positive [rad].
     *
     * @param leadingEdge build axes [m]
     * @param chord [m]
     * @param twist [rad]
     */
    record Rib(Vec3 leadingEdge, double chord, double twist) {}

    private final boolean mirrored;
    private final List<Rib> ribs;
    private final double[] places;

    private Surface(List<Rib> ribs, boolean mirrored) {
        this.ribs = List.copyOf(ribs);
        this.mirrored = mirrored;
        this.places = new double[ribs.size()];
        if (ribs.size() < 2) {
            throw new IllegalArgumentException("a surface needs at least two ribs, got " + ribs.size());
        }
        for (int i = 1; i < places.length; i++) {
            Vec3 step = ribs.get(i).leadingEdge().minus(ribs.get(i - 1).leadingEdge());
            places[i] = places[i - 1] + Math.hypot(step.y(), step.z());
            if (!(places[i] > places[i - 1])) {
                throw new IllegalArgumentException(
                        "ribs " + (i - 1) + " and " + i + " of a surface are at the same place");
            }
        }
    }

    /** Two halves alike: ribs of the RIGHT half from the plane of symmetry (y = 0) outwards. */
    static Surface mirrored(List<Rib> rightHalf) {
        if (rightHalf.get(0).leadingEdge().y() != 0) {
            throw new IllegalArgumentException("the first rib of a mirrored surface lies at y = 0");
        }
        return new Surface(rightHalf, true);
    }

    /** One line of ribs, such as a fin from its top to its foot. */
    static Surface single(List<Rib> ribs) {
        return new Surface(ribs, false);
    }

    /** Whether there is a left half, the mirror image of the right one. */
    boolean isMirrored() {
        return mirrored;
    }

    /** Smallest s [m]. */
    double from() {
        return mirrored ? -to() : 0;
    }

    /** Largest s [m]. */
    double to() {
        return places[places.length - 1];
    }

    /** Length along the surface from tip to tip [m]. */
    double span() {
        return to() - from();
    }

    /** Number of ribs given. */
    int ribCount() {
        return places.length;
    }

    /** s of the i-th rib given [m]. */
    double place(int i) {
        return places[i];
    }

    /** The rib at s, straight between the given ones [m]. */
    Rib at(double s) {
        double out = mirrored ? Math.abs(s) : s;
        int i = 0;
        while (i < places.length - 2 && out > places[i + 1]) {
            i++;
        }
        double t = Math.min(Math.max((out - places[i]) / (places[i + 1] - places[i]), 0), 1);
        Rib a = ribs.get(i);
        Rib b = ribs.get(i + 1);
        Vec3 edge = a.leadingEdge().times(1 - t).plus(b.leadingEdge().times(t));
        Vec3 placed = mirrored && s < 0 ? new Vec3(edge.x(), -edge.y(), edge.z()) : edge;
        return new Rib(placed, (1 - t) * a.chord() + t * b.chord(), (1 - t) * a.twist() + t * b.twist());
    }

    /** Area of the unrolled surface, both halves [m2]. */
    double area() {
        return integral(s -> 1);
    }

    /** Mean aerodynamic chord: integral of c^2 ds over the area [m]. */
    double meanChord() {
        return integral(s -> at(s).chord()) / area();
    }

    /** Leading edge of the mean aerodynamic chord: integral of c x ds over the area, build axes [m]. */
    double meanChordX() {
        return integral(s -> at(s).leadingEdge().x()) / area();
    }

    /** Height of the area's middle: integral of c z ds over the area, build axes, down positive [m]. */
    double meanZ() {
        return integral(s -> at(s).leadingEdge().z()) / area();
    }

    /** Place of the mean aerodynamic chord on one half: integral of c s ds over the half's area [m]. */
    double meanChordPlace() {
        return integral(s -> s) / area();
    }

    /** Radius of the area about s = 0: square root of the integral of c s^2 ds over the area [m]. */
    double areaRadius() {
        return Math.sqrt(integral(s -> s * s) / area());
    }

    /** Integral of c f ds between ribs, both halves: exact (Simpson's rule) where f is at most a parabola. */
    private double integral(DoubleUnaryOperator f) {
        double sum = 0;
        for (int i = 1; i < places.length; i++) {
            double a = places[i - 1];
            double b = places[i];
            double m = 0.5 * (a + b);
            sum += (b - a) / 6 * (weighted(f, a) + 4 * weighted(f, m) + weighted(f, b));
        }
        return mirrored ? 2 * sum : sum;
    }

    private double weighted(DoubleUnaryOperator f, double s) {
        return at(s).chord() * f.applyAsDouble(s);
    }
}
