package org.sawfly.math;

/** The step S(x) = x^3 (10 - 15 x + 6 x^2) between 0 and 1: value, slope and curvature are continuous at both ends. */
public final class SmoothStep {
    private SmoothStep() {}

    /** S(x): 0 below 0, 1 above 1. */
    public static double at(double x) {
        if (x <= 0) {
            return 0;
        }
        if (x >= 1) {
            return 1;
        }
        return x * x * x * (10 + x * (-15 + 6 * x));
    }

    /** dS/dx: 0 outside 0..1. */
    public static double slope(double x) {
        if (x <= 0 || x >= 1) {
            return 0;
        }
        double y = x * (1 - x);
        return 30 * y * y;
    }

    /**
     * A value held between two bounds without corners: equal to x in the middle half of the range, bent by a hyperbolic
     * tangent in the outer quarters, never outside the bounds.
     */
    public static double between(double low, double high, double x) {
        double middle = 0.5 * (low + high);
        double half = 0.5 * (high - low);
        double inner = 0.5 * half;
        double d = x - middle;
        double over = Math.abs(d) - inner;
        if (over <= 0) {
            return x;
        }
        return middle + Math.copySign(inner + (half - inner) * Math.tanh(over / (half - inner)), d);
    }
}
