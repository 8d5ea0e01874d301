package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The unbroken pieces of a line, thinned to what a sheet can show. */
final class Runs {
    /** Most points of a line that are drawn. */
    static final int MOST = 2000;

    private Runs() {}

    /** Pieces without NaN, each as {x, y}. */
    static List<double[][]> of(double[] x, double[] y) {
        List<double[][]> runs = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= x.length; i++) {
            boolean there = i < x.length && Double.isFinite(x[i]) && Double.isFinite(y[i]);
            if (there && start < 0) {
                start = i;
            } else if (!there && start >= 0) {
                runs.add(thinned(Arrays.copyOfRange(x, start, i), Arrays.copyOfRange(y, start, i)));
                start = -1;
            }
        }
        return runs;
    }

    /** Keeps the first and last point and, of each of equal parts, the lowest and the highest, in their order. */
    private static double[][] thinned(double[] x, double[] y) {
        if (x.length <= MOST) {
            return new double[][] {x, y};
        }
        int parts = MOST / 2 - 1;
        double[][] kept = new double[2][MOST];
        int count = keep(kept, 0, x, y, 0);
        for (int part = 0; part < parts; part++) {
            int from = 1 + (int) ((long) part * (x.length - 2) / parts);
            int to = 1 + (int) ((long) (part + 1) * (x.length - 2) / parts);
            int low = from;
            int high = from;
            for (int i = from; i < to; i++) {
                low = y[i] < y[low] ? i : low;
                high = y[i] > y[high] ? i : high;
            }
            count = keep(kept, count, x, y, Math.min(low, high));
            count = low == high ? count : keep(kept, count, x, y, Math.max(low, high));
        }
        count = keep(kept, count, x, y, x.length - 1);
        return new double[][] {Arrays.copyOf(kept[0], count), Arrays.copyOf(kept[1], count)};
    }

    private static int keep(double[][] kept, int count, double[] x, double[] y, int index) {
        kept[0][count] = x[index];
        kept[1][count] = y[index];
        return count + 1;
    }
}
