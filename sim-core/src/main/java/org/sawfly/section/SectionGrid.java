package org.sawfly.section;

import java.util.Arrays;
import org.sawfly.math.CubicAxis;
import org.sawfly.quantity.Unit;

/**
 * Knots of a section table: closed over the angle of attack, held without a kink beyond the first and last Reynolds
 * number and flap angle.
 *
 * @param alphas angles of attack [rad], increasing, within one turn
 * @param reynolds Reynolds numbers [1], increasing
 * @param flaps flap angles [rad], increasing; a single 0 for a section without a flap
 */
public record SectionGrid(double[] alphas, double[] reynolds, double[] flaps) {
    private static final double TURN = 2 * Math.PI;
    private static final double HALF_TURN_DEG = Unit.DEGREE.fromSi(Math.PI);
    /** Ends and steps [deg] of the angles, from one end to the other: fine where sections stall, coarse on the plate. */
    private static final double[] ENDS = {-HALF_TURN_DEG, -60, -30, -20, 22, 30, 60, HALF_TURN_DEG};

    private static final double[] STEPS = {15, 7.5, 2.5, 1, 2, 7.5, 15};
    private static final double[] REYNOLDS = {1e4, 1.6e4, 3e4, 4.5e4, 6.5e4, 9e4, 1.3e5, 2e5, 3.5e5, 6.5e5, 1e6};
    private static final double[] FLAPS = {-30, -20, -12, -6, 0, 6, 12, 20, 30};

    public SectionGrid {
        if (alphas.length < 4 || reynolds.length == 0 || flaps.length == 0 || !(reynolds[0] > 0)) {
            throw new IllegalArgumentException(
                    "a section table needs at least 4 angles, one Reynolds number above 0" + " and one flap angle");
        }
        alphas = alphas.clone();
        reynolds = reynolds.clone();
        flaps = flaps.clone();
    }

    /** Knots on which an estimate is reproduced closely, from Reynolds number 1e4 to 1e6 and 30 degrees of flap. */
    public static SectionGrid usual(boolean flapped) {
        int count = 0;
        for (int i = 0; i < STEPS.length; i++) {
            count += (int) Math.round((ENDS[i + 1] - ENDS[i]) / STEPS[i]);
        }
        double[] alphas = new double[count];
        int n = 0;
        for (int i = 0; i < STEPS.length; i++) {
            int steps = (int) Math.round((ENDS[i + 1] - ENDS[i]) / STEPS[i]);
            for (int k = 0; k < steps; k++) {
                alphas[n++] = Unit.DEGREE.toSi(ENDS[i] + k * STEPS[i]);
            }
        }
        double[] flaps = new double[flapped ? FLAPS.length : 1];
        for (int i = 0; i < flaps.length; i++) {
            flaps[i] = flapped ? Unit.DEGREE.toSi(FLAPS[i]) : 0;
        }
        return new SectionGrid(alphas, REYNOLDS, flaps);
    }

    CubicAxis alphaAxis() {
        return CubicAxis.periodic(TURN, alphas);
    }

    CubicAxis reynoldsAxis() {
        double[] logs = new double[reynolds.length];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.log(reynolds[i]);
        }
        return CubicAxis.of(CubicAxis.Ends.FLAT, logs);
    }

    CubicAxis flapAxis() {
        return CubicAxis.of(CubicAxis.Ends.FLAT, flaps);
    }

    boolean sameAs(SectionGrid other) {
        return Arrays.equals(alphas, other.alphas)
                && Arrays.equals(reynolds, other.reynolds)
                && Arrays.equals(flaps, other.flaps);
    }

    /** A grid with the knots of both; knots nearer than {@code same} are one. */
    SectionGrid joined(SectionGrid other, double same) {
        return new SectionGrid(
                union(alphas, other.alphas, same),
                union(reynolds, other.reynolds, same),
                union(flaps, other.flaps, same));
    }

    /** All values of both in increasing order without those that follow another by less than {@code same}. */
    static double[] union(double[] a, double[] b, double same) {
        double[] all = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, all, a.length, b.length);
        Arrays.sort(all);
        int n = 0;
        for (double value : all) {
            if (n == 0 || value - all[n - 1] > same) {
                all[n++] = value;
            }
        }
        return Arrays.copyOf(all, n);
    }
}
