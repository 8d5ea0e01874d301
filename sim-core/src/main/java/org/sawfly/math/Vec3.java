package org.sawfly.math;

/**
 * A vector in three dimensions, immutable; for building and for tests. The hot path keeps its numbers in fields.
 *
 * @param x first component
 * @param y second component
 * @param z third component
 */
public record Vec3(double x, double y, double z) {
    /** The zero vector. */
    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    /** Sum of this vector and another. */
    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    /** This vector less another. */
    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    /** This vector times a number. */
    public Vec3 times(double k) {
        return new Vec3(k * x, k * y, k * z);
    }

    /** Scalar product. */
    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    /** Vector product, right-handed. */
    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    /** Length. */
    public double norm() {
        return Math.sqrt(dot(this));
    }

    /** The vector of length one in this direction. */
    public Vec3 unit() {
        return times(1 / norm());
    }
}
