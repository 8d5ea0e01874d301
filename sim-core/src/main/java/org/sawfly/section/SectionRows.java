package org.sawfly.section;

import java.util.Arrays;
import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicGrid1;
import org.sawfly.quantity.Unit;

/**
 * Makes a table of rows as a file has them: for every pair of Reynolds number and flap angle a run of angles, in any order.
 * The runs may have different angles. Wherever a run leaves out more than {@value #GAP_DEGREES} degrees of the circle, behind
 * its last row as between two others, the separated plate stands in; the cubic joins the two, over at least
 * {@value #JOIN_DEGREES} degrees.
 */
final class SectionRows {
    static final double GAP_DEGREES = 30;
    static final double JOIN_DEGREES = 10;
    private static final int LEAST_ANGLES = 4;
    private static final double SAME = 1e-6;
    /** Two values for the same angle, at both ends of the circle, may differ by this [1]. */
    private static final double CLOSES = 1e-6;

    private final double[] reynolds;
    private final double[] flaps;
    private final Run[] runs;
    private final double[] alphas;

    SectionRows(double[] reynolds, double[] flap, double[] alpha, double[] cl, double[] cd, double[] cm) {
        int n = alpha.length;
        if (reynolds.length != n || flap.length != n || cl.length != n || cd.length != n || cm.length != n || n == 0) {
            throw new IllegalArgumentException(
                    "rows need the same number of values in every column and at least one row");
        }
        this.reynolds = SectionGrid.union(reynolds, new double[0], SAME);
        this.flaps = SectionGrid.union(flap, new double[0], SAME);
        this.runs = new Run[this.reynolds.length * this.flaps.length];
        for (int i = 0; i < runs.length; i++) {
            runs[i] = new Run();
        }
        for (int i = 0; i < n; i++) {
            runs[run(reynolds[i], flap[i])].add(alpha[i], cl[i], cd[i], cm[i]);
        }
        double[] angles = new double[0];
        for (int i = 0; i < runs.length; i++) {
            if (runs[i].size < LEAST_ANGLES) {
                throw new IllegalArgumentException("Reynolds number " + this.reynolds[i / flaps.length] + " at flap "
                        + Unit.DEGREE.fromSi(flaps[i % flaps.length]) + " deg has " + runs[i].size
                        + " angles, at least 4 are needed; every Reynolds number needs every flap angle");
            }
            runs[i].complete();
            double[] own = runs[i].angles();
            angles = Arrays.equals(angles, own) ? angles : SectionGrid.union(angles, own, SAME);
        }
        this.alphas = angles;
    }

    SectionTable table() {
        SectionGrid grid = new SectionGrid(alphas, reynolds, flaps);
        double[] values = new double[3 * alphas.length * runs.length];
        double[] out = new double[3 * alphas.length];
        for (int r = 0; r < runs.length; r++) {
            runs[r].at(alphas, out);
            for (int i = 0; i < alphas.length; i++) {
                System.arraycopy(out, 3 * i, values, 3 * (i * runs.length + r), 3);
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

    /** The rows of one Reynolds number and flap angle, by growing angle. */
    private static final class Run {
        private double[] angles = new double[64];
        private double[] values = new double[3 * angles.length];
        private int size;

        void add(double alpha, double cl, double cd, double cm) {
            if (!(Math.abs(alpha) <= Math.PI + SAME)) {
                throw new IllegalArgumentException(
                        "angles must lie within half a turn, got " + Unit.DEGREE.fromSi(alpha));
            }
            double place = alpha > Math.PI - SAME ? -Math.PI : alpha;
            int i = index(place);
            if (i < size && angles[i] <= place + SAME) {
                boolean same = Math.abs(values[3 * i] - cl) <= CLOSES
                        && Math.abs(values[3 * i + 1] - cd) <= CLOSES
                        && Math.abs(values[3 * i + 2] - cm) <= CLOSES;
                if (!same) {
                    throw new IllegalArgumentException(
                            "two different rows for the same Reynolds number, flap and angle "
                                    + Unit.DEGREE.fromSi(alpha) + " deg");
                }
                return;
            }
            insert(i, place, cl, cd, cm);
        }

        /** Where an angle stands, or belongs, among those there are; rows mostly come in order. */
        private int index(double place) {
            if (size == 0 || place > angles[size - 1] + SAME) {
                return size;
            }
            int found = Arrays.binarySearch(angles, 0, size, place - SAME);
            return found >= 0 ? found : -found - 1;
        }

        private void insert(int i, double angle, double cl, double cd, double cm) {
            if (size == angles.length) {
                angles = Arrays.copyOf(angles, 2 * size);
                values = Arrays.copyOf(values, 6 * size);
            }
            System.arraycopy(angles, i, angles, i + 1, size - i);
            System.arraycopy(values, 3 * i, values, 3 * i + 3, 3 * (size - i));
            angles[i] = angle;
            values[3 * i] = cl;
            values[3 * i + 1] = cd;
            values[3 * i + 2] = cm;
            size++;
        }

        /** Fills the gaps between neighbours on the circle, where they are wide, with rows of the plate. */
        void complete() {
            double friction = Double.POSITIVE_INFINITY;
            for (int i = 0; i < size; i++) {
                friction = Math.min(friction, values[3 * i + 1]);
            }
            double[] own = angles();
            for (int i = 0; i < own.length; i++) {
                fill(own[i], i + 1 < own.length ? own[i + 1] : own[0] + 2 * Math.PI, friction);
            }
        }

        private void fill(double from, double to, double friction) {
            double gap = to - from;
            if (gap < Unit.DEGREE.toSi(GAP_DEGREES) + SAME) {
                return;
            }
            int steps = (int) Math.floor(gap / Unit.DEGREE.toSi(JOIN_DEGREES) + SAME);
            for (int i = 1; i < steps; i++) {
                double alpha = from + gap * i / steps;
                double place = alpha > Math.PI - SAME ? alpha - 2 * Math.PI : alpha;
                insert(index(place), place, Plate.cl(place), Plate.cd(place) + friction, Plate.cm(place));
            }
        }

        double[] angles() {
            return Arrays.copyOf(angles, size);
        }

        /** cl, cd and cm at other angles; the smooth curve through the rows between them. */
        void at(double[] others, double[] out) {
            double[] own = angles();
            if (Arrays.equals(own, others)) {
                System.arraycopy(values, 0, out, 0, 3 * size);
                return;
            }
            CubicGrid1 curve = new CubicGrid1(CubicAxis.periodic(2 * Math.PI, own), 3, Arrays.copyOf(values, 3 * size));
            double[] one = new double[3];
            for (int i = 0; i < others.length; i++) {
                curve.at(others[i], one);
                System.arraycopy(one, 0, out, 3 * i, 3);
            }
        }
    }
}
