package org.sawfly.section;

import java.util.HashMap;
import java.util.Map;
import org.sawfly.section.Measurements.Point;

/** Polars of a correlation for measured points, made once for each shape and Reynolds number. */
final class Polars {
    /** A polar and the angle at which it has a given lift. */
    static final class Run {
        private static final double LOWEST = Math.toRadians(-12);
        private static final double HIGHEST = Math.toRadians(16);
        private static final int STEPS = 280;
        private final SectionPolar polar;
        private double[] lifts;

        Run(SectionPolar polar) {
            this.polar = polar;
        }

        void at(double alpha, double[] out) {
            polar.at(alpha, out);
        }

        double maximum() {
            int top = 0;
            for (int i = 0; i <= STEPS; i++) {
                top = lifts()[i] > lifts()[top] ? i : top;
            }
            return lifts()[top];
        }

        /** Angle [rad] between the stalls with this lift; NaN where the polar does not reach it. */
        double angleOf(double cl) {
            double[] c = lifts();
            int top = 0;
            for (int i = 0; i <= STEPS; i++) {
                top = c[i] > c[top] ? i : top;
            }
            for (int i = top; i > 0; i--) {
                if (c[i - 1] <= cl && cl < c[i]) {
                    double step = (HIGHEST - LOWEST) / STEPS;
                    return LOWEST + step * (i - 1 + (cl - c[i - 1]) / (c[i] - c[i - 1]));
                }
            }
            return Double.NaN;
        }

        private double[] lifts() {
            if (lifts == null) {
                lifts = new double[STEPS + 1];
                double[] out = new double[3];
                for (int i = 0; i <= STEPS; i++) {
                    polar.at(LOWEST + (HIGHEST - LOWEST) * i / STEPS, out);
                    lifts[i] = out[0];
                }
            }
            return lifts;
        }
    }

    private final SectionCorrelation correlation;
    private final Map<SectionShape, Map<Double, Run>> runs = new HashMap<>();

    Polars(SectionCorrelation correlation) {
        this.correlation = correlation;
    }

    Run of(Point point) {
        return runs.computeIfAbsent(point.shape(), s -> new HashMap<>())
                .computeIfAbsent(
                        point.reynolds(), re -> new Run(new SectionPolar(correlation, point.shape(), 0, re, 0)));
    }
}
