package org.sawfly.glider;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quadrature;
import org.sawfly.math.Vec3;

/**
 * Everything that hangs on the boom: masses at places, and what is spread along it, the boom itself with strings and rods.
 */
public final class RearMasses {
    /** Panels of three points into which what is spread is cut for the boom's swing. */
    private static final int SWING_PANELS = 10;

    /**
     * A mass at a place.
     *
     * @param mass [kg]
     * @param place build axes [m]
     * @param inertia about its own balance point [kg m2]
     */
    public record Mass(double mass, Vec3 place, Inertia inertia) {}

    /** Mass spread along x from one place back to another [kg/m at x]; y and z of {@code place} count. */
    private record Line(double fromX, double toX, Vec3 place, DoubleUnaryOperator density) {
        /** The part behind x in so many panels, as masses. */
        void cut(double x, int panels, List<Mass> masses) {
            double from = Math.min(fromX, x);
            double step = (from - toX) / panels;
            for (int i = 0; i < panels && step > 0; i++) {
                double a = from - i * step;
                for (int k = 0; k < Quadrature.POINTS; k++) {
                    double at = Quadrature.point(k, a - step, a);
                    double mass = density.applyAsDouble(at) * Quadrature.weight(k, a - step, a);
                    masses.add(new Mass(mass, new Vec3(at, place.y(), place.z()), Inertia.ZERO));
                }
            }
        }
    }

    private final List<Mass> points = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final double frontX;

    private RearMasses(double frontX) {
        this.frontX = frontX;
    }

    /** All behind the place where the boom leaves the pod. */
    public static RearMasses of(Glider glider) {
        RearMasses masses = new RearMasses(glider.boom().frontX());
        for (Piece piece : Piece.all(glider)) {
            masses.add(glider, piece);
        }
        BoomTube tube = BoomTube.of(glider.boom());
        masses.lines.add(new Line(
                masses.frontX,
                glider.boom().endX(),
                new Vec3(0, 0, glider.boom().z()),
                tube::massPerLength));
        return masses;
    }

    private void add(Glider glider, Piece piece) {
        MassProperties p = piece.properties();
        Part part = glider.parts().get(piece.name());
        double half = part == null || part.mount() != Part.Mount.ALONG_BOOM
                ? 0
                : part.place().x() - glider.boom().endX();
        if (half > 0) {
            double density = part.mass() / (2 * half);
            double end = glider.boom().endX();
            lines.add(new Line(Math.min(frontX, end + 2 * half), end, part.place(), x -> density));
        } else if (!piece.name().equals(Piece.BOOM) && p.mass() > 0 && p.cg().x() < frontX) {
            points.add(new Mass(p.mass(), p.cg(), p.inertia()));
        }
    }

    /** All as masses at places, for the boom's swing. */
    List<Mass> all() {
        return behind(frontX, SWING_PANELS);
    }

    /**
     * What lies behind a place.
     *
     * @param x build axes [m]
     * @param panels of three points into which what is spread is cut
     */
    public List<Mass> behind(double x, int panels) {
        List<Mass> masses = new ArrayList<>();
        for (Mass point : points) {
            if (point.place().x() < x) {
                masses.add(point);
            }
        }
        for (Line line : lines) {
            line.cut(x, panels, masses);
        }
        return masses;
    }

    /** Where the boom leaves the pod, build axes [m]. */
    public double frontX() {
        return frontX;
    }

    /** Mass behind the pod [kg]. */
    public double total() {
        double sum = 0;
        for (Mass mass : all()) {
            sum += mass.mass();
        }
        return sum;
    }
}
