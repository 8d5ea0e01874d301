package org.sawfly.aero;

import java.util.Arrays;
import org.sawfly.math.QuadraticAxis;
import org.sawfly.section.Section;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

/**
 * A section table laid out for strips: on the same knots as the {@link SectionTable} and through the same values, with parabolas
 * between them ({@link QuadraticAxis}), which costs less than half of the cubics. Coefficients of cl, cd and cm lie side by side
 * along the angle of attack, one row for each Reynolds number and flap angle. Reynolds numbers are taken by their square root,
 * in which the knots are nearly even and friction is nearly straight. Immutable.
 */
final class StripTable {
    static final int CHANNELS = 3;
    /** Knots nearer to each other than this are one [rad]. */
    private static final double SAME = 1e-6;

    private static final double TURN = 2 * Math.PI;

    final QuadraticAxis alphas;
    /** Square roots of Reynolds numbers. */
    final QuadraticAxis reynolds;

    final QuadraticAxis flaps;
    /** Channel c of the coefficient before, at and after piece i: {@code row + 3 (i + 0, 1, 2) + c}. */
    final double[] values;
    /** Coefficients of cl at no angle of attack, by Reynolds number and flap angle. */
    final double[] liftAtZero;
    /** Length of one row. */
    final int row;
    /** Length of all rows of one Reynolds number. */
    final int block;

    /** Of any section; as a table already, or put on the usual knots. */
    static StripTable of(Section section) {
        return new StripTable(table(section));
    }

    /** Of a section and its mirror image, the mean of both on knots alike on both sides: for a fin, which has no underside. */
    static StripTable symmetric(Section section) {
        SectionGrid grid = table(section).grid();
        SectionGrid even =
                new SectionGrid(bothSides(grid.alphas(), 0.5 * TURN), grid.reynolds(), bothSides(grid.flaps(), TURN));
        double[] image = new double[CHANNELS];
        return new StripTable(SectionTable.of(
                (alpha, reynolds, flap, out) -> {
                    section.at(alpha, reynolds, flap, out);
                    section.at(-alpha, reynolds, -flap, image);
                    out[0] = 0.5 * (out[0] - image[0]);
                    out[1] = 0.5 * (out[1] + image[1]);
                    out[2] = 0.5 * (out[2] - image[2]);
                },
                even));
    }

    /** Sections between root and tip by t from 0 to 1: coefficients mix as values do. */
    static StripTable[] between(SectionTable root, SectionTable tip, double[] toTip) {
        StripTable[] tables = new StripTable[toTip.length];
        StripTable first = new StripTable(root == tip ? root : SectionTable.blend(root, tip, 0));
        Arrays.fill(tables, first);
        if (root != tip) {
            StripTable last = new StripTable(SectionTable.blend(root, tip, 1));
            for (int i = 0; i < tables.length; i++) {
                tables[i] = new StripTable(first, last, toTip[i]);
            }
        }
        return tables;
    }

    private StripTable(StripTable a, StripTable b, double t) {
        this.alphas = a.alphas;
        this.reynolds = a.reynolds;
        this.flaps = a.flaps;
        this.row = a.row;
        this.block = a.block;
        this.values = mix(a.values, b.values, t);
        this.liftAtZero = mix(a.liftAtZero, b.liftAtZero, t);
    }

    private static double[] mix(double[] a, double[] b, double t) {
        double[] mixed = new double[a.length];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = a[i] + t * (b[i] - a[i]);
        }
        return mixed;
    }

    static SectionTable table(Section section) {
        return section instanceof SectionTable table ? table : SectionTable.of(section, SectionGrid.usual(true));
    }

    /** All knots and their opposites, growing; of those half a turn away only the negative one. */
    private static double[] bothSides(double[] knots, double half) {
        double[] all = new double[2 * knots.length];
        for (int i = 0; i < knots.length; i++) {
            all[2 * i] = -Math.abs(knots[i]);
            all[2 * i + 1] = Math.abs(knots[i]);
        }
        Arrays.sort(all);
        int n = 0;
        for (double knot : all) {
            boolean again = n > 0 && knot - all[n - 1] < SAME;
            if (!again && knot < half - SAME) {
                all[n++] = knot;
            }
        }
        return Arrays.copyOf(all, n);
    }

    private StripTable(SectionTable table) {
        SectionGrid grid = table.grid();
        double[] angles = grid.alphas();
        double[] numbers = grid.reynolds();
        double[] deflections = grid.flaps();
        double[] roots = new double[numbers.length];
        for (int j = 0; j < roots.length; j++) {
            roots[j] = Math.sqrt(numbers[j]);
        }
        this.alphas = QuadraticAxis.closed(TURN, angles);
        this.reynolds = QuadraticAxis.open(roots);
        this.flaps = QuadraticAxis.open(deflections);
        int n = angles.length;
        this.row = CHANNELS * (n + 2);
        this.block = deflections.length * row;
        this.values = new double[roots.length * block];
        double[] polar = new double[CHANNELS * n];
        for (int j = 0; j < roots.length; j++) {
            for (int k = 0; k < deflections.length; k++) {
                table.polar(numbers[j], deflections[k], polar);
                for (int c = 0; c < CHANNELS; c++) {
                    alphas.coefficients(polar, c, CHANNELS);
                }
                int from = j * block + k * row;
                for (int i = 0; i < n + 2; i++) {
                    System.arraycopy(polar, CHANNELS * Math.floorMod(i - 1, n), values, from + CHANNELS * i, CHANNELS);
                }
            }
        }
        for (int j = 0; j < roots.length; j++) {
            for (int i = 0; i < row; i++) {
                flaps.coefficients(values, j * block + i, row);
            }
        }
        for (int i = 0; i < block; i++) {
            reynolds.coefficients(values, i, block);
        }
        this.liftAtZero = new double[roots.length * deflections.length];
        double x = alphas.wrap(0);
        int piece = alphas.piece(x);
        double t = alphas.fraction(x, piece);
        double low = alphas.weightBefore(piece, t);
        double high = alphas.weightAfter(piece, t);
        for (int r = 0; r < liftAtZero.length; r++) {
            int at = r * row + CHANNELS * piece;
            liftAtZero[r] =
                    low * values[at] + (1 - low - high) * values[at + CHANNELS] + high * values[at + 2 * CHANNELS];
        }
    }
}
