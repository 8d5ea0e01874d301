package org.sawfly.stability;

import java.util.Arrays;
import org.sawfly.math.LinearSystem;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Linear;

/**
 * What the classical short formulas make of the modes, to stand beside {@link Modes}. With the equations turned into axes
 * along the path, the downwash settled, and the elements of the matrices named by row and column:
 *
 * <pre>
 *   speed and height  omega^2 = g (Zu Mw - Mu Zw) / (Zw Mq - (U + Zq) Mw)
 *     of a stiff glider  period = pi sqrt(2) U / g        (Lanchester, Aerodonetics, 1908)
 *   nose up-down      omega^2 = Zw Mq - (U + Zq) Mw,  2 zeta omega = -(Zw + Mq)
 *   nose left-right   omega^2 = Yv Nr + Nv (U - Yr),  2 zeta omega = -(Yv + Nr)
 *   roll              growth  = Lp
 *   circle            growth  = g (Lv Nr - Lr Nv) / (U (Nv Lp - Lv Np) + Yv (Lp Nr - Np Lr)), and smaller terms
 * </pre>
 *
 * <p>The first keeps what Lanchester's limit drops, the angle of attack giving way: with a small margin that is most of the
 * period. Source: Nelson, Flight Stability and Automatic Control, 2nd ed. 1998, chapters 4 and 5 (all but
 * the first and last); Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, section 6.3: the first is E/C of the quartic there,
 * recomputed, without speed derivatives of the forward force. The last lets slip and rates settle to a bank (derived here); what the
 * carried air lends to roll and yaw counts among the smaller terms.
 *
 * @param speedAndHeight undamped angular frequency; NaN when the formula has no swing [rad/s]
 * @param stiffPeriod Lanchester's period [s]
 * @param noseUpDown undamped angular frequency; NaN when the formula has no swing [rad/s]
 * @param noseUpDownDamping damping ratio [1]
 * @param noseLeftRight undamped angular frequency; NaN when the formula has no swing [rad/s]
 * @param noseLeftRightDamping damping ratio [1]
 * @param rollGrowth [1/s]
 * @param circleGrowth [1/s]
 */
public record ClassicalModes(
        double speedAndHeight,
        double stiffPeriod,
        double noseUpDown,
        double noseUpDownDamping,
        double noseLeftRight,
        double noseLeftRightDamping,
        double rollGrowth,
        double circleGrowth) {
    private static final int U = 0, W = 1, Q = 2, LAG = 4;
    private static final int V = 0, P = 1, R = 2, BANK = 3;

    /** Around a glide, for the gravity in which it was trimmed [m/s2]. */
    public static ClassicalModes of(Linear linear, Glide glide, double gravity) {
        double[][] a = turned(settled(linear.longitudinal()), U, W, glide.alpha());
        double[][] b = turned(linear.lateral(), P, R, glide.alpha());
        double stiffness = a[W][W] * a[Q][Q] - a[W][Q] * a[Q][W];
        double exchange = gravity * (a[W][U] * a[Q][W] - a[Q][U] * a[W][W]);
        double side = b[V][V] * b[R][R] - b[R][V] * b[V][R];
        double fast = Math.sqrt(stiffness);
        double wag = Math.sqrt(side);
        return new ClassicalModes(
                Math.sqrt(exchange / stiffness),
                Math.PI * Math.sqrt(2) * glide.speed() / gravity,
                fast,
                -0.5 * (a[W][W] + a[Q][Q]) / fast,
                wag,
                -0.5 * (b[V][V] + b[R][R]) / wag,
                b[P][P],
                circle(b));
    }

    /** How fast a bank grows when slip and rates have settled to it. */
    private static double circle(double[][] b) {
        double[][] fast = new double[BANK][];
        double[] settled = new double[BANK];
        for (int i = 0; i < BANK; i++) {
            fast[i] = Arrays.copyOf(b[i], BANK);
            settled[i] = -b[i][BANK];
        }
        if (!LinearSystem.solve(fast, settled)) {
            return Double.NaN;
        }
        return b[BANK][V] * settled[V] + b[BANK][P] * settled[P] + b[BANK][R] * settled[R];
    }

    /** The equations without the lag of the downwash: as slow motions find it, settled. */
    private static double[][] settled(double[][] full) {
        double[][] settled = new double[LAG][LAG];
        for (int i = 0; i < LAG; i++) {
            for (int k = 0; k < LAG; k++) {
                settled[i][k] = full[i][k] - full[i][LAG] * full[LAG][k] / full[LAG][LAG];
            }
        }
        return settled;
    }

    /** In axes turned by the angle of attack: number i along the path, number k down from it. */
    private static double[][] turned(double[][] matrix, int i, int k, double alpha) {
        int n = matrix.length;
        double cos = Math.cos(alpha);
        double sin = Math.sin(alpha);
        double[][] rows = new double[n][];
        for (int row = 0; row < n; row++) {
            rows[row] = matrix[row].clone();
        }
        for (int column = 0; column < n; column++) {
            rows[i][column] = cos * matrix[i][column] + sin * matrix[k][column];
            rows[k][column] = cos * matrix[k][column] - sin * matrix[i][column];
        }
        for (double[] row : rows) {
            double along = row[i];
            double down = row[k];
            row[i] = cos * along + sin * down;
            row[k] = cos * down - sin * along;
        }
        return rows;
    }
}
