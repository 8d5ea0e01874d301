package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;

/** The data of a panel as shapes on the sheet. */
final class Shapes {
    private static final double CLOSE = 3;
    private static final int MOST_PIECES = 1000;

    private Shapes() {}

    /** The unbroken pieces of a line, each as {x, y} in points. */
    static List<double[][]> line(Series.Line line, Scale scale) {
        return Runs.of(scale.across(line.x()), scale.down(line.y()));
    }

    /** The outlines of a band, each as {x, y} in points: there along the lower edge and back along the upper one. */
    static List<double[][]> ribbon(Series.Ribbon ribbon, Scale scale) {
        double[] x = scale.across(ribbon.x());
        List<double[][]> low = Runs.of(x, scale.down(ribbon.low()));
        List<double[][]> high = Runs.of(x, scale.down(ribbon.high()));
        List<double[][]> outlines = new ArrayList<>();
        for (int i = 0; i < Math.min(low.size(), high.size()); i++) {
            outlines.add(around(low.get(i), high.get(i)));
        }
        return outlines;
    }

    /** The scatter of throws is grey and full; a likely range is a pale shade of its line. */
    static double opacity(Series.Ribbon ribbon) {
        return ribbon.hue() == Hue.SCATTER ? 0.75 : 0.25;
    }

    /** The same line with points at most three apart. */
    static double[][] dense(double[][] run) {
        List<double[]> points = new ArrayList<>();
        for (int i = 1; i < run[0].length; i++) {
            double dx = run[0][i] - run[0][i - 1];
            double dy = run[1][i] - run[1][i - 1];
            int pieces = (int) Math.max(1, Math.min(MOST_PIECES, Math.ceil(Math.hypot(dx, dy) / CLOSE)));
            for (int k = 0; k < pieces; k++) {
                double share = (double) k / pieces;
                points.add(new double[] {run[0][i - 1] + share * dx, run[1][i - 1] + share * dy});
            }
        }
        int last = run[0].length - 1;
        points.add(new double[] {run[0][last], run[1][last]});
        double[][] dense = new double[2][points.size()];
        for (int i = 0; i < points.size(); i++) {
            dense[0][i] = points.get(i)[0];
            dense[1][i] = points.get(i)[1];
        }
        return dense;
    }

    private static double[][] around(double[][] there, double[][] back) {
        int first = there[0].length;
        double[][] outline = new double[2][first + back[0].length];
        for (int axis = 0; axis < 2; axis++) {
            System.arraycopy(there[axis], 0, outline[axis], 0, first);
            for (int i = 0; i < back[axis].length; i++) {
                outline[axis][outline[axis].length - 1 - i] = back[axis][i];
            }
        }
        return outline;
    }
}
