package org.sawfly.aero;

import org.sawfly.aero.Surface.Rib;
import org.sawfly.air.Standard;
import org.sawfly.glider.Glider;
import org.sawfly.math.Vec3;

/**
 * Air that is carried along, as strip theory of thin sections has it: a strip of chord c and width ds accelerated along
 * its normal n at the half chord r carries {@code m = 0.95 rho (pi/4) c^2 ds} (the plate's cylinder; 0.95 for the finite
 * surface), and turned about its half chord {@code rho (pi/128) c^4 ds} about the span direction l (Munk; Katz and Plotkin,
 * Low-Speed Aerodynamics, 2nd ed. 2001, section 8.2). Together {@code sum m J J^T}, {@code J = (n, r x n)}, order x y z, roll
 * pitch yaw about the CG.
 */
public final class ApparentMass {
    private static final double FINITE_SPAN = 0.95;
    /** Nodes and weights of three-point Gauss-Legendre quadrature on -1..1: exact for chords that vary linearly. */
    private static final double[] NODES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

    private final double[][] matrix = new double[6][6];
    private final double density;
    private final Vec3 cg;

    /**
     * Nothing yet.
     *
     * @param density of the air [kg/m3]
     * @param cg build axes [m]
     */
    ApparentMass(double density, Vec3 cg) {
        this.density = density;
        this.cg = cg;
    }

    /** Of all surfaces of a glider about a CG in build axes [m], in the standard air of sea level. */
    public static ApparentMass of(Glider glider, Vec3 cg) {
        return new ApparentMass(Standard.DENSITY, cg)
                .add(SurfaceOutlines.of(glider.wing()))
                .add(SurfaceOutlines.of(glider.tailplane()))
                .add(SurfaceOutlines.of(glider.fin()));
    }

    /** Adds a surface, on a mirrored one both halves. */
    ApparentMass add(Surface surface) {
        for (int i = 1; i < surface.ribCount(); i++) {
            double a = surface.place(i - 1);
            double b = surface.place(i);
            Vec3 step = surface.at(b).leadingEdge().minus(surface.at(a).leadingEdge());
            double length = Math.hypot(step.y(), step.z());
            Vec3 along = new Vec3(0, step.y() / length, step.z() / length);
            for (int k = 0; k < NODES.length; k++) {
                Rib rib = surface.at(0.5 * (a + b) + 0.5 * (b - a) * NODES[k]);
                double width = 0.5 * (b - a) * WEIGHTS[k];
                Vec3 middle = rib.leadingEdge().plus(new Vec3(-0.5 * rib.chord(), 0, 0));
                addStrip(middle, along, rib.chord(), width);
                if (surface.isMirrored()) {
                    Vec3 image = new Vec3(middle.x(), -middle.y(), middle.z());
                    addStrip(image, new Vec3(0, along.y(), -along.z()), rib.chord(), width);
                }
            }
        }
        return this;
    }

    private void addStrip(Vec3 middle, Vec3 along, double chord, double width) {
        Vec3 normal = new Vec3(0, -along.z(), along.y());
        Vec3 turn = middle.minus(cg).cross(normal);
        double mass = FINITE_SPAN * density * Math.PI / 4 * chord * chord * width;
        double turning = density * Math.PI / 128 * chord * chord * chord * chord * width;
        double[] j = {normal.x(), normal.y(), normal.z(), turn.x(), turn.y(), turn.z()};
        double[] l = {0, 0, 0, along.x(), along.y(), along.z()};
        for (int row = 0; row < 6; row++) {
            for (int column = 0; column < 6; column++) {
                matrix[row][column] += mass * j[row] * j[column] + turning * l[row] * l[column];
            }
        }
    }

    /** A copy of the matrix, 6 by 6, symmetric [kg, kg m, kg m2]. */
    public double[][] matrix() {
        double[][] copy = new double[6][];
        for (int i = 0; i < 6; i++) {
            copy[i] = matrix[i].clone();
        }
        return copy;
    }
}
