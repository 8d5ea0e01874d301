package org.sawfly.math;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals by the rule of Gauss and Legendre with three points a panel: exact for polynomials up to the fifth power in
 * each panel (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 25.4).
 */
public final class Quadrature {
    /** Points in a panel. */
    public static final int POINTS = 3;

    private static final double[] NODES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
    private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

    private Quadrature() {}

    /** Point k of the panel from a to b. */
    public static double point(int k, double a, double b) {
        return 0.5 * (a + b + NODES[k] * (b - a));
    }

    /** Weight of point k in the panel from a to b. */
    public static double weight(int k, double a, double b) {
        return 0.5 * WEIGHTS[k] * (b - a);
    }

    /** The integral of f from a to b, one panel. */
    public static double integral(DoubleUnaryOperator f, double a, double b) {
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            sum += weight(k, a, b) * f.applyAsDouble(point(k, a, b));
        }
        return sum;
    }

    /** The integral of f from a to b in so many panels of equal width. */
    public static double integral(DoubleUnaryOperator f, double a, double b, int panels) {
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            sum += integral(f, a + (b - a) * i / panels, a + (b - a) * (i + 1) / panels);
        }
        return sum;
    }
}
