package org.sawfly.aero;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sawfly.glider.Flap;
import org.sawfly.glider.Wing;
import org.sawfly.math.DenseLu;
import org.sawfly.math.Vec3;
import org.sawfly.section.Section;
import org.sawfly.section.SectionTable;

/**
 * Strips that are solved together - the wing's, or those of both tails - with their influence on each other and their
 * sections. With {@code D = diag(2/(a0 c))} and W of {@link VortexSystem} in its production setting, attached flow is
 * {@code Gamma = M b}, {@code M = (D - W)^-1}; M and W_d lie by columns. Build axes, without a CG. Immutable.
 */
final class StripGroup {
    final int count;
    final double[] x;
    final double[] y;
    final double[] z;
    final double[] normalY;
    final double[] normalZ;
    final double[] chords;
    final double[] widths;
    final double[] twists;
    /** Share of the strip's flap, 0..1; 0 where the whole strip turns. */
    final double[] flapShares;
    /** Whether the flap is the whole strip: 1 or 0. */
    final double[] flapTurns;
    /** 2/(a0 c) [1/m]. */
    final double[] sectionShares;
    /** Lift slope of the section [1/rad]. */
    final double[] slopes;

    final StripTable[] tables;
    /** M, element (i, j) at {@code j * count + i}. */
    final double[] attached;
    /** W_d, likewise. */
    final double[] turning;

    /**
     * One surface of a group.
     *
     * @param strips where
     * @param tables of its sections, strip by strip
     * @param slopes of its sections, strip by strip [1/rad]
     * @param flapShares strip by strip
     * @param allMoving whether the flap is the whole surface
     */
    record Part(Strips strips, StripTable[] tables, double[] slopes, double[] flapShares, boolean allMoving) {
        /** A wing: sections of root and tip mixed in proportion to the distance from the root. */
        static Part of(Strips strips, Wing wing) {
            int n = strips.count;
            SectionTable root = StripTable.table(wing.root());
            SectionTable tip = wing.tip().equals(wing.root()) ? root : StripTable.table(wing.tip());
            double[] toTip = new double[n];
            double[] right = new double[n - n / 2];
            for (int i = 0; i < n; i++) {
                toTip[i] = Math.abs(strips.places[i]) / strips.surface.to();
                right[Math.max(0, i - n / 2)] = toTip[i];
            }
            StripTable[] half = StripTable.between(root, tip, right);
            StripTable[] tables = new StripTable[n];
            for (int i = 0; i < n; i++) {
                tables[i] = half[i < n / 2 ? n / 2 - 1 - i : i - n / 2];
            }
            return of(strips, root, tip, toTip, tables, wing.flaperon());
        }

        /** A tail: one section all along, its flap from end to end. */
        static Part of(Strips strips, Section section, StripTable table, double flapChord) {
            StripTable[] tables = new StripTable[strips.count];
            Arrays.fill(tables, table);
            Flap flap = new Flap(flapChord, 0, strips.surface.to());
            return of(strips, section, section, new double[strips.count], tables, flap);
        }

        private static Part of(
                Strips strips, Section root, Section tip, double[] toTip, StripTable[] tables, Flap flap) {
            boolean allMoving = flap.chordFraction() >= 1;
            double[] shares = allMoving ? new double[strips.count] : strips.shares(flap.from(), flap.to());
            double[] slopes = new SpanSections(root, tip, toTip, shares, strips.chords, StripModel.STANDARD_VISCOSITY)
                    .slopes(SurfaceKnots.SLOPE_SPEED);
            return new Part(strips, tables, slopes, shares, allMoving);
        }
    }

    /**
     * Builds the matrices.
     *
     * @param core of legs passing another surface of the group [m]
     */
    StripGroup(List<Part> parts, double core) {
        int n = 0;
        for (Part part : parts) {
            n += part.strips.count;
        }
        this.count = n;
        this.x = new double[n];
        this.y = new double[n];
        this.z = new double[n];
        this.normalY = new double[n];
        this.normalZ = new double[n];
        this.chords = new double[n];
        this.widths = new double[n];
        this.twists = new double[n];
        this.flapShares = new double[n];
        this.flapTurns = new double[n];
        this.sectionShares = new double[n];
        this.slopes = new double[n];
        this.tables = new StripTable[n];
        int at = 0;
        for (Part part : parts) {
            Strips s = part.strips;
            for (int i = 0; i < s.count; i++, at++) {
                x[at] = s.quarters[i].x();
                y[at] = s.quarters[i].y();
                z[at] = s.quarters[i].z();
                normalY[at] = s.normals[i].y();
                normalZ[at] = s.normals[i].z();
                chords[at] = s.chords[i];
                widths[at] = s.widths[i];
                twists[at] = s.twists[i];
                flapShares[at] = part.flapShares[i];
                flapTurns[at] = part.allMoving ? 1 : 0;
                slopes[at] = part.slopes[i];
                tables[at] = part.tables[i];
                sectionShares[at] = 2 / (slopes[at] * chords[at]);
            }
        }
        List<Strips> strips = new ArrayList<>();
        for (Part part : parts) {
            strips.add(part.strips);
        }
        VortexSystem system = new VortexSystem(VortexSystem.Setting.PRODUCTION, core, slopes, strips);
        this.attached = new double[n * n];
        this.turning = new double[n * n];
        fill(system);
    }

    /**
     * The same strips with their places and normals moved a little, their influence on each other left as it is.
     *
     * @param from first strip that is moved
     * @param to strip after the last
     * @param pivotZ height of the axis along x about which they lean, build axes [m]
     * @param tilt right side down, or top to the right, positive [rad]
     * @param frontX where a skewed boom is held, build axes [m]
     * @param bench whose boom's skew is taken
     */
    StripGroup leaning(int from, int to, double pivotZ, double tilt, double frontX, BenchErrors bench) {
        StripGroup moved = new StripGroup(this, 0, attached, turning);
        for (int i = from; i < to; i++) {
            Vec3 arm = BenchErrors.rolled(new Vec3(x[i], y[i], z[i] - pivotZ), tilt);
            Vec3 place = bench.onBoom(new Vec3(arm.x(), arm.y(), arm.z() + pivotZ), frontX);
            Vec3 normal = BenchErrors.rolled(new Vec3(0, normalY[i], normalZ[i]), tilt);
            moved.y[i] = place.y();
            moved.z[i] = place.z();
            moved.normalY[i] = normal.y();
            moved.normalZ[i] = normal.z();
        }
        return moved;
    }

    /**
     * The right half of a surface that is its own mirror image, in flow that is so too: what the left half induces is added to
     * what its image does.
     */
    StripGroup folded() {
        int from = count / 2;
        return new StripGroup(this, from, folded(attached, from), folded(turning, from));
    }

    private double[] folded(double[] columns, int from) {
        int n = count - from;
        double[] half = new double[n * n];
        for (int j = 0; j < n; j++) {
            int right = (from + j) * count + from;
            int left = (from - 1 - j) * count + from;
            for (int i = 0; i < n; i++) {
                half[j * n + i] = columns[right + i] + columns[left + i];
            }
        }
        return half;
    }

    /** Strips of another group, from one on; with what they do to each other. */
    private StripGroup(StripGroup whole, int from, double[] attached, double[] turning) {
        this.count = whole.count - from;
        this.x = Arrays.copyOfRange(whole.x, from, whole.count);
        this.y = Arrays.copyOfRange(whole.y, from, whole.count);
        this.z = Arrays.copyOfRange(whole.z, from, whole.count);
        this.normalY = Arrays.copyOfRange(whole.normalY, from, whole.count);
        this.normalZ = Arrays.copyOfRange(whole.normalZ, from, whole.count);
        this.chords = Arrays.copyOfRange(whole.chords, from, whole.count);
        this.widths = Arrays.copyOfRange(whole.widths, from, whole.count);
        this.twists = Arrays.copyOfRange(whole.twists, from, whole.count);
        this.flapShares = Arrays.copyOfRange(whole.flapShares, from, whole.count);
        this.flapTurns = Arrays.copyOfRange(whole.flapTurns, from, whole.count);
        this.sectionShares = Arrays.copyOfRange(whole.sectionShares, from, whole.count);
        this.slopes = Arrays.copyOfRange(whole.slopes, from, whole.count);
        this.tables = Arrays.copyOfRange(whole.tables, from, whole.count);
        this.attached = attached;
        this.turning = turning;
    }

    private void fill(VortexSystem system) {
        int n = count;
        double[] k = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] = (i == j ? sectionShares[i] : 0) - system.w(i, j);
                turning[j * n + i] = system.wd(i, j);
            }
        }
        double[] rows = new DenseLu(k, n).inverse();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                attached[j * n + i] = rows[i * n + j];
            }
        }
    }

    /**
     * Attached slope of the force along the normals of some strips when they all turn, summed {@code 2 M ds} over them [m2/rad]:
     * S a of the surface.
     */
    double forceSlope(int from, int to) {
        double sum = 0;
        for (int j = from; j < to; j++) {
            for (int i = from; i < to; i++) {
                sum += 2 * widths[i] * attached[j * count + i];
            }
        }
        return sum;
    }

    /** product = A vector, A by columns, {@code rows} long. */
    static void multiply(double[] columns, double[] vector, int rows, double[] product) {
        int n = vector.length;
        for (int i = 0; i < rows; i++) {
            product[i] = 0;
        }
        int j = 0;
        for (; j + 3 < n; j += 4) {
            double f0 = vector[j];
            double f1 = vector[j + 1];
            double f2 = vector[j + 2];
            double f3 = vector[j + 3];
            int a0 = j * rows;
            int a1 = a0 + rows;
            int a2 = a1 + rows;
            int a3 = a2 + rows;
            for (int i = 0; i < rows; i++) {
                product[i] += columns[a0 + i] * f0 + columns[a1 + i] * f1 + columns[a2 + i] * f2 + columns[a3 + i] * f3;
            }
        }
        for (; j < n; j++) {
            double f = vector[j];
            int at = j * rows;
            for (int i = 0; i < rows; i++) {
                product[i] += columns[at + i] * f;
            }
        }
    }
}
