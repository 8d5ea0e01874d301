package org.sawfly.aero;

import org.sawfly.math.Vec3;

/**
 * Velocity that a horseshoe vortex of circulation one makes: Biot and Savart's law for straight pieces (Katz and Plotkin,
 * Low-Speed Aerodynamics, 2nd ed. 2001, section 10.4.5; Prandtl's horseshoe).
 *
 * <p>Circulation is positive along growing s, so that air coming from ahead gives a force towards n (see {@link Surface}):
 * in from downstream at the first edge a, along the bound piece a to b, back downstream at b. With r the way from a
 * point of the vortex to the field point P:
 *
 * <ul>
 *   <li>leg from a in direction t to infinity: {@code (t x r)/(4 pi |r| (|r| - t.r))};
 *   <li>the same with a core: {@code (t x r)(1 + t.r/|r|)/(4 pi (h^2 + core^2))}, {@code h = |t x r|};
 *   <li>piece a to b: {@code (r_a x r_b)(|r_a| + |r_b|)/(4 pi |r_a||r_b|(|r_a||r_b| + r_a.r_b))}.
 * </ul>
 *
 * On the vortex itself the velocity is taken as zero (equal circulations on both sides cancel there).
 */
final class Horseshoe {
    private static final double FOUR_PI = 4 * Math.PI;
    /** Squared sine of an angle below which a point counts as lying on the vortex. */
    private static final double ON_LINE = 1e-20;

    private Horseshoe() {}

    /**
     * Adds the velocity of the two legs at P.
     *
     * @param downstream direction of the legs, a unit vector, usually (-1, 0, 0)
     * @param core radius of the core [m]
     * @param sum velocity for circulation one, x y z [1/m]; added to
     */
    static void addLegs(Vec3 a, Vec3 b, Vec3 downstream, double core, Vec3 p, double[] sum) {
        addLeg(a, downstream, core, p, -1, sum);
        addLeg(b, downstream, core, p, 1, sum);
    }

    private static void addLeg(Vec3 from, Vec3 t, double core, Vec3 p, double sign, double[] sum) {
        double x = p.x() - from.x();
        double y = p.y() - from.y();
        double z = p.z() - from.z();
        double square = x * x + y * y + z * z;
        double cx = t.y() * z - t.z() * y;
        double cy = t.z() * x - t.x() * z;
        double cz = t.x() * y - t.y() * x;
        double h2 = cx * cx + cy * cy + cz * cz;
        if (h2 <= ON_LINE * square) {
            return;
        }
        double r = Math.sqrt(square);
        double along = t.x() * x + t.y() * y + t.z() * z;
        double ahead = 1 + along / r;
        double factor = core > 0 || along > 0 ? ahead / (h2 + core * core) : 1 / (r * (r - along));
        double k = sign * factor / FOUR_PI;
        sum[0] += k * cx;
        sum[1] += k * cy;
        sum[2] += k * cz;
    }

    /** Adds the velocity of the bound piece from a to b at P, for circulation one [1/m]. */
    static void addBound(Vec3 a, Vec3 b, Vec3 p, double[] sum) {
        double ax = p.x() - a.x();
        double ay = p.y() - a.y();
        double az = p.z() - a.z();
        double bx = p.x() - b.x();
        double by = p.y() - b.y();
        double bz = p.z() - b.z();
        double cx = ay * bz - az * by;
        double cy = az * bx - ax * bz;
        double cz = ax * by - ay * bx;
        double a2 = ax * ax + ay * ay + az * az;
        double b2 = bx * bx + by * by + bz * bz;
        if (cx * cx + cy * cy + cz * cz <= ON_LINE * a2 * b2) {
            return;
        }
        double ra = Math.sqrt(a2);
        double rb = Math.sqrt(b2);
        double k = (ra + rb) / (FOUR_PI * ra * rb * (ra * rb + ax * bx + ay * by + az * bz));
        sum[0] += k * cx;
        sum[1] += k * cy;
        sum[2] += k * cz;
    }
}
