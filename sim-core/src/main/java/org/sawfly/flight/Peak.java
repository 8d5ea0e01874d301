package org.sawfly.flight;

/**
 * A maximum of samples, refined by the parabola through the three around it. Keeps the first local maximum that is positive
 * and the greatest of all.
 */
final class Peak {
    private double t0 = Double.NaN;
    private double t1 = Double.NaN;
    private double f0;
    private double f1;
    private double firstTime = Double.NaN;
    private double firstValue = Double.NaN;
    private double greatest = Double.NEGATIVE_INFINITY;

    /** Adds a sample; times grow. A sample at the same time as the last is passed over. */
    void add(double t, double f) {
        if (t == t1) {
            return;
        }
        greatest = Math.max(greatest, f);
        if (!Double.isNaN(t0) && f1 >= f0 && f1 > f) {
            refine(t, f);
        }
        t0 = t1;
        f0 = f1;
        t1 = t;
        f1 = f;
    }

    private void refine(double t, double f) {
        double left = (f1 - f0) / (t1 - t0);
        double right = (f - f1) / (t - t1);
        double curve = (right - left) / (t - t0);
        double slope = left + curve * (t1 - t0);
        double shift = curve < 0 ? -slope / (2 * curve) : 0;
        double value = f1 + shift * (slope + shift * curve);
        greatest = Math.max(greatest, value);
        if (Double.isNaN(firstTime) && f1 > 0) {
            firstTime = t1 + shift;
            firstValue = value;
        }
    }

    /** True once a positive local maximum has been passed. */
    boolean passed() {
        return !Double.isNaN(firstTime);
    }

    /** Time of the first positive local maximum, NaN if there was none. */
    double time() {
        return firstTime;
    }

    /** The first positive local maximum, 0 if there was none. */
    double value() {
        return passed() ? firstValue : 0;
    }

    /** The greatest value seen. */
    double greatest() {
        return greatest;
    }
}
