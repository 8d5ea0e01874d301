package org.sawfly.section;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Levenberg-Marquardt with differences for derivatives, and residuals r softened to {@code sqrt(2 (sqrt(1 + r^2) - 1))} so
 * that single bad points pull little.
 */
final class LeastSquares {
    interface Residuals {
        void of(double[] parameters, double[] out);
    }

    private LeastSquares() {}

    static double[] fit(Residuals residuals, int count, double[] start) {
        int n = start.length;
        double[] p = start.clone();
        double[] r = new double[count];
        double[] shifted = new double[count];
        double cost = soft(residuals, p, r);
        double damping = 1e-2;
        for (int round = 0; round < 200 && damping < 1e8; round++) {
            DMatrixRMaj jacobian = new DMatrixRMaj(count, n);
            for (int k = 0; k < n; k++) {
                double step = 1e-5 * Math.max(0.1, Math.abs(p[k]));
                double[] q = p.clone();
                q[k] += step;
                soft(residuals, q, shifted);
                for (int i = 0; i < count; i++) {
                    jacobian.set(i, k, (shifted[i] - r[i]) / step);
                }
            }
            DMatrixRMaj normal = new DMatrixRMaj(n, n);
            DMatrixRMaj gradient = new DMatrixRMaj(n, 1);
            CommonOps_DDRM.multTransA(jacobian, jacobian, normal);
            CommonOps_DDRM.multTransA(jacobian, new DMatrixRMaj(count, 1, true, r), gradient);
            boolean better = false;
            double gain = 0;
            while (!better && damping < 1e8) {
                DMatrixRMaj damped = normal.copy();
                DMatrixRMaj step = new DMatrixRMaj(n, 1);
                for (int k = 0; k < n; k++) {
                    damped.set(k, k, normal.get(k, k) * (1 + damping) + 1e-9);
                }
                CommonOps_DDRM.solve(damped, gradient, step);
                double[] q = p.clone();
                for (int k = 0; k < n; k++) {
                    q[k] -= step.get(k);
                }
                double next = soft(residuals, q, shifted);
                better = next < cost;
                if (better) {
                    gain = (cost - next) / cost;
                    p = q;
                    cost = next;
                    System.arraycopy(shifted, 0, r, 0, count);
                    damping = Math.max(damping / 5, 1e-9);
                } else {
                    damping *= 4;
                }
            }
            if (gain < 1e-9) {
                break;
            }
        }
        return p;
    }

    private static double soft(Residuals residuals, double[] p, double[] out) {
        residuals.of(p, out);
        double sum = 0;
        for (int i = 0; i < out.length; i++) {
            double r = out[i];
            double c = 2 * (Math.sqrt(1 + r * r) - 1);
            out[i] = Math.copySign(Math.sqrt(c), r);
            sum += c;
        }
        return sum;
    }
}
