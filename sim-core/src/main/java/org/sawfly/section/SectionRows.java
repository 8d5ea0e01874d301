package org.sawfly.section;

import java.util.Arrays;
import java.util.TreeMap;
import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicGrid1;
import org.sawfly.quantity.Unit;

/**
 * Makes a table of rows as a file has them: for every pair of Reynolds number and flap angle a run of angles, in any order.
 * The runs may have different angles. What a run lacks of the whole circle is filled from the separated plate; the cubic
 * joins the two, over at least {@value #JOIN_DEGREES} degrees.
 */
final class SectionRows {
    static final double JOIN_DEGREES = 10;
    private static final double SAME = 1e-6;
    /** Two values for the same angle, at both ends of the circle, may differ by this [1]. */
    private static final double CLOSES = 1e-6;

    private final double[] reynolds;
    private final double[] flaps;
    private final TreeMap<Double, double[]>[] runs;
    private final double[] alphas;

    SectionRows(double[] reynolds, double[] flap, double[] alpha, double[] cl, double[] cd, double[] cm) {
        int n = alpha.length;
        if (reynolds.length != n || flap.length != n || cl.length != n || cd.length != n || cm.length != n || n == 0) {
            throw new IllegalArgumentException(
                    "rows need the same number of values in every column and at least one row");
        }
        this.reynolds = SectionGrid.union(reynolds, new double[0], SAME);
        this.flaps = SectionGrid.union(flap, new double[0], SAME);
        @SuppressWarnings({"unchecked", "rawtypes"})
        TreeMap<Double, double[]>[] all = new TreeMap[this.reynolds.length * this.flaps.length];
        this.runs = all;
        for (int i = 0; i < runs.length; i++) {
            runs[i] = new TreeMap<>();
        }
        for (int i = 0; i < n; i++) {
            put(runs[run(reynolds[i], flap[i])], alpha[i], new double[] {cl[i], cd[i], cm[i]});
        }
        double[] angles = new double[0];
        for (int i = 0; i < runs.length; i++) {
            complete(i);
            angles = SectionGrid.union(angles, keys(runs[i]), SAME);
        }
        this.alphas = angles;
    }

    SectionTable table() {
        SectionGrid grid = new SectionGrid(alphas, reynolds, flaps);
        double[] values = new double[3 * alphas.length * runs.length];
        double[] out = new double[3];
        for (int r = 0; r < runs.length; r++) {
            double[] knots = keys(runs[r]);
            double[] run = new double[3 * knots.length];
            int n = 0;
            for (double[] row : runs[r].values()) {
                System.arraycopy(row, 0, run, 3 * n++, 3);
            }
            CubicGrid1 curve = new CubicGrid1(CubicAxis.periodic(2 * Math.PI, knots), 3, run);
            for (int i = 0; i < alphas.length; i++) {
                curve.at(alphas[i], out);
                System.arraycopy(out, 0, values, 3 * (i * runs.length + r), 3);
            }
        }
        return new SectionTable(grid, values);
    }

    private int run(double re, double flap) {
        int i = nearest(reynolds, re);
        int j = nearest(flaps, flap);
        return i * flaps.length + j;
    }

    private static int nearest(double[] sorted, double value) {
        int i = Arrays.binarySearch(sorted, value);
        return i >= 0 ? i : Math.max(0, -i - 2);
    }

    private static void put(TreeMap<Double, double[]> run, double alpha, double[] row) {
        if (!(Math.abs(alpha) <= Math.PI + SAME)) {
            throw new IllegalArgumentException("angles must lie within half a turn, got " + Unit.DEGREE.fromSi(alpha));
        }
        double place = alpha > Math.PI - SAME ? -Math.PI : alpha;
        Double near = run.ceilingKey(place - SAME);
        double[] before = near != null && near <= place + SAME ? run.get(near) : null;
        if (before == null) {
            run.put(place, row);
            return;
        }
        for (int c = 0; c < 3; c++) {
            if (Math.abs(before[c] - row[c]) > CLOSES) {
                throw new IllegalArgumentException("two different rows for the same Reynolds number, flap and angle "
                        + Unit.DEGREE.fromSi(alpha) + " deg");
            }
        }
    }

    /** Fills the widest gap of a run, where it is wider than the join, with rows of the plate. */
    private void complete(int index) {
        TreeMap<Double, double[]> run = runs[index];
        if (run.size() < 4) {
            throw new IllegalArgumentException("Reynolds number " + reynolds[index / flaps.length] + " at flap "
                    + Unit.DEGREE.fromSi(flaps[index % flaps.length]) + " deg has " + run.size()
                    + " angles, at least 4 are needed; every Reynolds number needs every flap angle");
        }
        double last = run.lastKey();
        double first = run.firstKey() + 2 * Math.PI;
        double friction = Double.POSITIVE_INFINITY;
        for (double[] row : run.values()) {
            friction = Math.min(friction, row[1]);
        }
        double join = Unit.DEGREE.toSi(JOIN_DEGREES);
        int steps = (int) Math.floor((first - last) / join + SAME);
        for (int i = 1; i < steps; i++) {
            double alpha = last + (first - last) * i / steps;
            double place = alpha > Math.PI ? alpha - 2 * Math.PI : alpha;
            run.put(place, new double[] {Plate.cl(place), Plate.cd(place) + friction, Plate.cm(place)});
        }
    }

    private static double[] keys(TreeMap<Double, double[]> run) {
        double[] keys = new double[run.size()];
        int n = 0;
        for (double key : run.keySet()) {
            keys[n++] = key;
        }
        return keys;
    }
}
