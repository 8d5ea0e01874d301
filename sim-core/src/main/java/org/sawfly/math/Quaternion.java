package org.sawfly.math;

/**
 * Unit quaternions in arrays, scalar part first: {@code q[at]} is cos(half angle), the next three are the axis times
 * sin(half angle). A quaternion here turns vectors of the turning (body) axes into the fixed (earth) axes. Nothing
 * allocates. Source: Stevens and Lewis, Aircraft Control and Simulation, 2nd ed. 2003, section 1.2.
 *
 * <p>Matrices are nine numbers by rows: {@code m[3 * row + column]}. A quaternion that is not quite of length one is taken
 * as the rotation of its direction.
 */
public final class Quaternion {
    private Quaternion() {}

    /** Writes the rotation matrix of the quaternion at {@code q[at]} to {@code matrix}. */
    public static void toMatrix(double[] q, int at, double[] matrix) {
        double w = q[at];
        double x = q[at + 1];
        double y = q[at + 2];
        double z = q[at + 3];
        double ww = w * w;
        double xx = x * x;
        double yy = y * y;
        double zz = z * z;
        double scale = 1 / (ww + xx + yy + zz);
        double twice = 2 * scale;
        matrix[0] = (ww + xx - yy - zz) * scale;
        matrix[1] = (x * y - w * z) * twice;
        matrix[2] = (x * z + w * y) * twice;
        matrix[3] = (x * y + w * z) * twice;
        matrix[4] = (ww - xx + yy - zz) * scale;
        matrix[5] = (y * z - w * x) * twice;
        matrix[6] = (x * z - w * y) * twice;
        matrix[7] = (y * z + w * x) * twice;
        matrix[8] = (ww - xx - yy + zz) * scale;
    }

    /**
     * Writes the attitude reached by turning from the earth axes first by yaw about z, then by pitch about the new y, then
     * by roll about the new x.
     *
     * @param roll right wing down positive [rad]
     * @param pitch nose up positive [rad]
     * @param yaw nose right (clockwise seen from above) positive [rad]
     * @param q where to write
     * @param at first place to write
     */
    public static void fromAngles(double roll, double pitch, double yaw, double[] q, int at) {
        double cr = Math.cos(roll / 2);
        double sr = Math.sin(roll / 2);
        double cp = Math.cos(pitch / 2);
        double sp = Math.sin(pitch / 2);
        double cy = Math.cos(yaw / 2);
        double sy = Math.sin(yaw / 2);
        q[at] = cr * cp * cy + sr * sp * sy;
        q[at + 1] = sr * cp * cy - cr * sp * sy;
        q[at + 2] = cr * sp * cy + sr * cp * sy;
        q[at + 3] = cr * cp * sy - sr * sp * cy;
    }

    /**
     * Writes the time derivative of the quaternion at {@code q[at]} under turning rates given in the turning axes to
     * {@code rate[at]}, with a pull of {@code restoring} [1/s] towards length one.
     */
    public static void derivative(
            double[] q, int at, double p, double qRate, double r, double restoring, double[] rate) {
        double w = q[at];
        double x = q[at + 1];
        double y = q[at + 2];
        double z = q[at + 3];
        double pull = restoring * (1 - (w * w + x * x + y * y + z * z));
        rate[at] = -0.5 * (x * p + y * qRate + z * r) + pull * w;
        rate[at + 1] = 0.5 * (w * p + y * r - z * qRate) + pull * x;
        rate[at + 2] = 0.5 * (w * qRate + z * p - x * r) + pull * y;
        rate[at + 3] = 0.5 * (w * r + x * qRate - y * p) + pull * z;
    }

    /** Brings the quaternion at {@code q[at]} to length one. */
    public static void normalise(double[] q, int at) {
        double n = Math.sqrt(q[at] * q[at] + q[at + 1] * q[at + 1] + q[at + 2] * q[at + 2] + q[at + 3] * q[at + 3]);
        for (int i = at; i < at + 4; i++) {
            q[i] /= n;
        }
    }

    /** Roll angle of a rotation matrix, right wing down positive, -pi to pi [rad]. */
    public static double roll(double[] matrix) {
        return Math.atan2(matrix[7], matrix[8]);
    }

    /** Pitch angle of a rotation matrix, nose up positive, -pi/2 to pi/2 [rad]. */
    public static double pitch(double[] matrix) {
        return Math.asin(Math.max(-1, Math.min(1, -matrix[6])));
    }

    /** Yaw angle of a rotation matrix, clockwise from north seen from above positive, -pi to pi [rad]. */
    public static double yaw(double[] matrix) {
        return Math.atan2(matrix[3], matrix[0]);
    }
}
