package org.sawfly.math;

/**
 * A place on a {@link CubicAxis}: the knots that count there and their weights, found once for any number of functions. Scratch,
 * filled by {@link CubicAxis#locate}; not for several threads.
 */
public final class AxisPlace {
    /** The interval the place lies in. */
    public int cell = -1;
    /** Indices of the four knots. */
    public int n0, n1, n2, n3;
    /** Their weights. */
    public double w0, w1, w2, w3;
}
