package org.sawfly.aero;

import java.util.List;
import org.sawfly.math.DenseLu;
import org.sawfly.math.Vec3;

/**
 * Horseshoe vortices on the quarter-chord lines of any surfaces, legs straight back along body x, and the matrices that
 * connect circulations with the angles the sections see. Circulation Gamma [m2/s], all induced velocities along the
 * normals n (upwash positive, so downwash is negative).
 *
 * <p>Every strip obeys {@code Gamma_i = V_i c_i cl(alpha_i + w_i/V_i)/2} with {@code w = W Gamma} (Prandtl 1918). W comes in
 * two settings:
 *
 * <ul>
 *   <li>{@link Setting#CLASSICAL}: the trailing legs alone, at the quarter chord: the lifting line of Prandtl and Glauert.
 *       Legs and, from other surfaces, bound pieces.
 *   <li>{@link Setting#PRODUCTION}: velocity of complete horseshoes, bound pieces included, at the point
 *       {@code c a0/(4 pi)} behind the quarter chord (three-quarter chord for a0 = 2 pi: Pistolesi 1937, Weissinger 1947),
 *       less what the section already contains: the bound vortex of an endless plate makes
 *       {@code -Gamma/(2 pi c a0/(4 pi)) = -2 Gamma/(a0 c)} there, so {@code W = W_point + diag(2/(a0 c))}. For a straight section
 *       slope this is flow tangency at the point; it holds for any section.
 * </ul>
 *
 * <p>W_d, the legs alone at the quarter chord (and other surfaces' bound pieces), gives the direction of lift and hence the
 * induced drag in both settings. Legs passing ANOTHER surface have a core, so that nothing depends on whether a control
 * happens to lie near one. Immutable.
 */
final class VortexSystem {
    /** How W is made. */
    enum Setting {
        /** Legs at the quarter chord. */
        CLASSICAL,
        /** Complete horseshoes behind the quarter chord, section's own part taken out. */
        PRODUCTION
    }

    /** Direction of legs that trail straight back. */
    static final Vec3 BACK = new Vec3(-1, 0, 0);

    private final int count;
    private final double[] w;
    private final double[] wd;
    private final double[] sectionShare;

    /**
     * Builds both matrices.
     *
     * @param core radius of the core of legs passing another surface [m]
     * @param slopes lift slope a0 of every strip's section, surface after surface [1/rad]
     */
    VortexSystem(Setting setting, double core, double[] slopes, List<Strips> surfaces) {
        int n = 0;
        for (Strips strips : surfaces) {
            n += strips.count;
        }
        if (slopes.length != n) {
            throw new IllegalArgumentException(n + " strips need as many section slopes, got " + slopes.length);
        }
        this.count = n;
        this.w = new double[n * n];
        this.wd = new double[n * n];
        this.sectionShare = new double[n];
        int row = 0;
        for (Strips to : surfaces) {
            for (int i = 0; i < to.count; i++, row++) {
                sectionShare[row] = 2 / (slopes[row] * to.chords[i]);
                Vec3 point = control(to, i, slopes[row]);
                int column = 0;
                for (Strips from : surfaces) {
                    double radius = from == to ? 0 : core;
                    fill(wd, row, column, from, to.quarters[i], to.normals[i], radius, from != to);
                    if (setting == Setting.PRODUCTION) {
                        fill(w, row, column, from, point, to.normals[i], radius, true);
                    }
                    column += from.count;
                }
                if (setting == Setting.PRODUCTION) {
                    w[row * n + row] += sectionShare[row];
                }
            }
        }
        if (setting == Setting.CLASSICAL) {
            System.arraycopy(wd, 0, w, 0, w.length);
        }
    }

    /** Where the angle of strip i is taken, for a section of this lift slope [1/rad]. */
    static Vec3 control(Strips strips, int i, double slope) {
        return strips.quarters[i].plus(BACK.times(strips.chords[i] * slope / (4 * Math.PI)));
    }

    private void fill(
            double[] matrix, int row, int column, Strips from, Vec3 point, Vec3 normal, double core, boolean bound) {
        double[] velocity = new double[3];
        for (int j = 0; j < from.count; j++) {
            velocity[0] = 0;
            velocity[1] = 0;
            velocity[2] = 0;
            Horseshoe.addLegs(from.edges[j], from.edges[j + 1], BACK, core, point, velocity);
            if (bound) {
                Horseshoe.addBound(from.edges[j], from.edges[j + 1], point, velocity);
            }
            matrix[row * count + column + j] =
                    velocity[0] * normal.x() + velocity[1] * normal.y() + velocity[2] * normal.z();
        }
    }

    /** Element of W: velocity along the normal of strip i, beyond the section's own, for circulation one on strip j [1/m]. */
    double w(int i, int j) {
        return w[i * count + j];
    }

    /** Element of W_d: velocity along the normal at the quarter chord of strip i that turns its lift [1/m]. */
    double wd(int i, int j) {
        return wd[i * count + j];
    }

    /**
     * Circulations in attached flow: {@code (diag(2/(a0 c)) - W) Gamma = b}, {@code b_i = V_i (alpha_i - alpha0_i)}.
     *
     * @param b velocity along n less that at zero lift [m/s]
     */
    double[] attached(double[] b) {
        double[] k = new double[count * count];
        for (int i = 0; i < k.length; i++) {
            k[i] = -w[i];
        }
        for (int i = 0; i < count; i++) {
            k[i * count + i] += sectionShare[i];
        }
        double[] gamma = new double[count];
        new DenseLu(k, count).solve(b, gamma);
        return gamma;
    }

    /** Velocity along the normals at the quarter chords that turns the lift, {@code W_d Gamma} [m/s]. */
    double[] turning(double[] gamma) {
        double[] velocity = new double[count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                velocity[i] += wd[i * count + j] * gamma[j];
            }
        }
        return velocity;
    }
}
