package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;

/** Which of several sink curves is the lowest where, and the speeds to fly against a wind. Plain geometry. */
public final class Envelope {
    private static final int STEPS = 2000;

    private final List<double[][]> curves;
    private final double from;
    private final double to;

    /**
     * The lowest of some curves.
     *
     * @param curves each as {speed, sink}, speeds rising
     * @param from first speed looked at
     * @param to last speed looked at
     */
    public Envelope(List<double[][]> curves, double from, double to) {
        this.curves = List.copyOf(curves);
        this.from = from;
        this.to = to;
    }

    /**
     * A range of speeds in which one curve is the lowest.
     *
     * @param curve number of the curve
     * @param from lower speed
     * @param to upper speed
     */
    public record Range(int curve, double from, double to) {}

    /**
     * Where a ray from a headwind on the axis touches the envelope: the speed that sinks least for the way made good.
     *
     * @param wind headwind
     * @param speed speed to fly
     * @param sink sink there
     */
    public record Touch(double wind, double speed, double sink) {}

    /** The ranges from the slowest to the fastest. */
    public List<Range> ranges() {
        List<Range> ranges = new ArrayList<>();
        int before = -1;
        double start = from;
        double last = from;
        for (int i = 0; i <= STEPS; i++) {
            double speed = from + (to - from) * i / STEPS;
            int best = best(speed);
            if (best != before) {
                double middle = i == 0 ? speed : (last + speed) / 2;
                if (before >= 0) {
                    ranges.add(new Range(before, start, middle));
                }
                start = middle;
            }
            before = best;
            last = speed;
        }
        if (before >= 0) {
            ranges.add(new Range(before, start, to));
        }
        return ranges;
    }

    /** The touching point for a headwind; NaN for speed and sink when no curve lies beyond the wind. */
    public Touch touch(double wind) {
        double speed = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            double tried = from + (to - from) * i / STEPS;
            double slope = tried > wind ? sink(tried) / (tried - wind) : Double.NaN;
            if (slope < least) {
                least = slope;
                speed = tried;
            }
        }
        return new Touch(wind, speed, sink(speed));
    }

    /** The sink of the lowest curve; NaN where there is none. */
    public double sink(double speed) {
        int best = best(speed);
        return best < 0 ? Double.NaN : at(curves.get(best), speed);
    }

    private int best(double speed) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < curves.size(); i++) {
            double sink = at(curves.get(i), speed);
            if (sink < least) {
                least = sink;
                best = i;
            }
        }
        return best;
    }

    /** A curve between its points, by straight lines; NaN outside. */
    static double at(double[][] curve, double speed) {
        double[] x = curve[0];
        for (int i = 1; i < x.length; i++) {
            if (speed >= x[i - 1] && speed <= x[i]) {
                double share = (speed - x[i - 1]) / (x[i] - x[i - 1]);
                return (1 - share) * curve[1][i - 1] + share * curve[1][i];
            }
        }
        return Double.NaN;
    }
}
