package org.sawfly.section;

/**
 * Fully separated flow: a flat plate whose force is normal to it, {@code CN = 2.0 sin(alpha)}, acting at a point that
 * moves from the quarter chord at 0 to the half chord soon after the stall and to three quarters at half a turn.
 *
 * <p>The size agrees with 2.02 to 2.08 measured at 90 degrees on the NACA 0012 (Critzos, Heyson and Boswinkle, NACA TN
 * 3361, 1955, text of the summary); the form in between is common practice, no source.
 */
final class Plate {
    /** Normal-force coefficient at 90 degrees [1]. */
    static final double NORMAL_FORCE = 2.0;

    /** Drag of an edge that has lost its suction, over sin^2(alpha): lift times tan(alpha) at a slope near 5 [1]. */
    static final double EDGE_LOSS = 5;

    private Plate() {}

    static double cl(double alpha) {
        return NORMAL_FORCE * Math.sin(alpha) * Math.cos(alpha);
    }

    /** Drag of the normal force alone [1]; friction comes on top. */
    static double cd(double alpha) {
        double s = Math.sin(alpha);
        return NORMAL_FORCE * s * s;
    }

    /** Moment about the quarter chord [1]. */
    static double cm(double alpha) {
        double c = Math.cos(alpha);
        double c3 = c * c * c;
        double c15 = c3 * c3 * c3 * c3 * c3;
        return -NORMAL_FORCE * Math.sin(alpha) * 0.25 * (1 - c15);
    }
}
