package org.sawfly.math;

import java.util.function.DoubleUnaryOperator;

/**
 * Roots of one function of one variable between two places where its signs differ. Source: Brent, Algorithms for
 * Minimization without Derivatives, 1973, chapter 4. Allocates nothing.
 */
public final class Roots {
    private static final int MOST_STEPS = 200;

    private Roots() {}

    /**
     * A place where {@code f} changes its sign.
     *
     * @param f the function
     * @param low one end
     * @param high the other end; the signs of {@code f} at the two ends must differ, or one value be zero
     * @param tolerance largest distance of the answer from the root
     * @throws IllegalArgumentException when the signs do not differ
     */
    public static double between(DoubleUnaryOperator f, double low, double high, double tolerance) {
        return between(f, low, f.applyAsDouble(low), high, f.applyAsDouble(high), tolerance);
    }

    /** As {@link #between(DoubleUnaryOperator, double, double, double)} with the values at both ends known. */
    public static double between(
            DoubleUnaryOperator f, double low, double atLow, double high, double atHigh, double tolerance) {
        double a = low;
        double fa = atLow;
        double b = high;
        double fb = atHigh;
        if (!(fa <= 0 && fb >= 0 || fa >= 0 && fb <= 0)) {
            throw new IllegalArgumentException(
                    "no change of sign between " + low + " (" + atLow + ") and " + high + " (" + atHigh + ")");
        }
        double c = a;
        double fc = fa;
        double step = b - a;
        double before = step;
        for (int i = 0; i < MOST_STEPS; i++) {
            if (Math.abs(fc) < Math.abs(fb)) {
                a = b;
                b = c;
                c = a;
                fa = fb;
                fb = fc;
                fc = fa;
            }
            double close = 2 * Math.ulp(b) + 0.5 * tolerance;
            double half = 0.5 * (c - b);
            if (Math.abs(half) <= close || fb == 0) {
                return b;
            }
            if (Math.abs(before) < close || Math.abs(fa) <= Math.abs(fb)) {
                step = half;
                before = step;
            } else {
                double s = fb / fa;
                double p;
                double q;
                if (a == c) {
                    p = 2 * half * s;
                    q = 1 - s;
                } else {
                    double u = fa / fc;
                    double v = fb / fc;
                    p = s * (2 * half * u * (u - v) - (b - a) * (v - 1));
                    q = (u - 1) * (v - 1) * (s - 1);
                }
                if (p > 0) {
                    q = -q;
                } else {
                    p = -p;
                }
                if (2 * p < Math.min(3 * half * q - Math.abs(close * q), Math.abs(before * q))) {
                    before = step;
                    step = p / q;
                } else {
                    step = half;
                    before = step;
                }
            }
            a = b;
            fa = fb;
            b += Math.abs(step) > close ? step : Math.copySign(close, half);
            fb = f.applyAsDouble(b);
            if (fb > 0 == fc > 0) {
                c = a;
                fc = fa;
                step = b - a;
                before = step;
            }
        }
        return b;
    }
}
