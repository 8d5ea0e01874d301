package org.sawfly.section;

import java.util.List;
import org.sawfly.section.Measurements.Point;
import org.sawfly.section.SectionCorrelation.Drag;
import org.sawfly.section.SectionCorrelation.Lift;

/**
 * Fits the correlation to measured points: lift over angle first, then moment, then drag at equal lift (angles are uncertain
 * by 0.3 to 0.5 degrees between models and tunnels, so drag is not compared at equal angle).
 */
final class CorrelationFit {
    private static final double CL_ERROR = 0.05;
    private static final double CM_ERROR = 0.015;
    /** Weak knowledge that keeps numbers the points hardly tell from wandering: number, expected value, its scatter. */
    private static final double[][] EXPECTED_LIFT = {
        {Lift.CLOSE.ordinal(), 0.7, 0.3}, {Lift.CLOSE_RE.ordinal(), 4, 0.5}, {Lift.CLOSE_WIDTH.ordinal(), 1.5, 0.2}
    };

    private static final double[][] EXPECTED_DRAG = {
        {Drag.EDGE.ordinal(), 13, 2},
        {Drag.EDGE_CAMBER.ordinal(), 3, 0.5},
        {Drag.EDGE_CAMBER_LOWER.ordinal(), -1, 1},
        {Drag.EDGE_THICKNESS.ordinal(), 2.5, 0.3},
        {Drag.EDGE_WIDTH.ordinal(), 2.5, 0.3},
        {Drag.BUBBLE_RE.ordinal(), 1.75, 0.2},
        {Drag.BUBBLE_CAMBER.ordinal(), 0.13, 0.03},
        {Drag.BUBBLE_WIDTH.ordinal(), 0.24, 0.03}
    };

    private CorrelationFit() {}

    static SectionCorrelation fit(List<Point> lift, List<Point> drag) {
        return drag(drag, moment(lift, lift(lift)));
    }

    private static SectionCorrelation lift(List<Point> points) {
        SectionCorrelation start = SectionCorrelation.FITTED;
        double[] out = new double[3];
        double[] best = LeastSquares.fit(
                (p, r) -> {
                    SectionCorrelation c = new SectionCorrelation(p, start.drag(), start.moment());
                    Polars polars = new Polars(c);
                    for (int i = 0; i < points.size(); i++) {
                        polars.of(points.get(i)).at(points.get(i).alpha(), out);
                        r[i] = (out[0] - points.get(i).cl()) / CL_ERROR;
                    }
                    expect(EXPECTED_LIFT, p, points.size(), r);
                },
                points.size() + EXPECTED_LIFT.length,
                start.lift());
        return new SectionCorrelation(best, start.drag(), start.moment());
    }

    private static SectionCorrelation moment(List<Point> all, SectionCorrelation start) {
        List<Point> points = all.stream()
                .filter(p -> !Double.isNaN(p.value()) && Math.abs(p.alpha()) < Math.toRadians(10))
                .toList();
        double[] out = new double[3];
        double[] best = LeastSquares.fit(
                (p, r) -> {
                    Polars polars = new Polars(new SectionCorrelation(start.lift(), start.drag(), p));
                    for (int i = 0; i < r.length; i++) {
                        polars.of(points.get(i)).at(points.get(i).alpha(), out);
                        r[i] = (out[2] - points.get(i).value()) / CM_ERROR;
                    }
                },
                points.size(),
                start.moment());
        return new SectionCorrelation(start.lift(), start.drag(), best);
    }

    private static SectionCorrelation drag(List<Point> all, SectionCorrelation start) {
        Polars lift = new Polars(start);
        List<Point> points = all.stream()
                .filter(p -> !Double.isNaN(lift.of(p).angleOf(p.cl())))
                .toList();
        double[] angles =
                points.stream().mapToDouble(p -> lift.of(p).angleOf(p.cl())).toArray();
        double[] out = new double[3];
        int n = points.size();
        double[] best = LeastSquares.fit(
                (p, r) -> {
                    SectionCorrelation c = new SectionCorrelation(start.lift(), p, start.moment());
                    Polars polars = new Polars(c);
                    for (int i = 0; i < n; i++) {
                        Point point = points.get(i);
                        polars.of(point).at(angles[i], out);
                        r[i] = Math.log(Math.max(out[1], 1e-4) / point.value()) / error(point.reynolds());
                    }
                    expect(EXPECTED_DRAG, p, n, r);
                },
                n + EXPECTED_DRAG.length,
                start.drag());
        return new SectionCorrelation(start.lift(), best, start.moment());
    }

    private static void expect(double[][] expected, double[] p, int from, double[] r) {
        for (int k = 0; k < expected.length; k++) {
            r[from + k] = (p[(int) expected[k][0]] - expected[k][1]) / expected[k][2];
        }
    }

    private static double error(double reynolds) {
        return reynolds < 5e4 ? 0.4 : reynolds < 8e4 ? 0.2 : reynolds < 1.25e5 ? 0.12 : reynolds < 1.75e5 ? 0.1 : 0.08;
    }
}
