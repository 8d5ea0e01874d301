package org.sawfly.aero;

import org.sawfly.glider.Boom;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Pod;
import org.sawfly.math.Vec3;

/**
 * Drag of pod, boom and peg, and the pod's turning moment in potential flow.
 *
 * <p>Pod and boom are pieces, each with its own velocity. Across: a cylinder, {@code -(rho/2) Cdc l V_c (d_y v, d_z w)},
 * {@code V_c^2 = v^2 + w^2}, Cdc 1.1 on the boom (circular, below the critical Reynolds number; Hoerner, Fluid-Dynamic
 * Drag, 1965, chapter III) and 0.8 on the rounded pod (common practice, no source). Along: turbulent skin friction
 * {@code -(rho/2) C_f A_wet |u| u}, {@code C_f = 0.074 Re^(-1/5)} on the length from nose to boom end (Prandtl; Schlichting,
 * Boundary-Layer Theory), on the pod with Hoerner's form factor {@code 1 + 1.5 (d/l)^1.5 + 7 (d/l)^3} (chapter VI).
 *
 * <p>Pod: Munk's moment {@code rho Vol (k2 - k1) u (w, -v)} about (y, z), with Lamb's coefficients of the prolate spheroid
 * (Munk, The Aerodynamic Forces on Airship Hulls, NACA TR 184, 1924): nose up when the wind comes from below.
 *
 * <p>Peg: a drag area of {@value #PEG_AREA} m2 at the tip (assumed).
 */
final class Bodies {
    static final double PEG_AREA = 1.3e-4;
    private static final double CROSS_BOOM = 1.1;
    private static final double CROSS_POD = 0.8;
    private static final int POD_PIECES = 4;
    private static final int BOOM_PIECES = 5;
    /** Place of the pod's widest section over its length, from the nose; common practice, no source. */
    private static final double WIDEST = 0.4;
    /** Keeps the power of a speed defined at rest [m/s]. */
    private static final double SLOWEST = 1e-3;

    private static final int BODIES = Loss.BODIES.ordinal();
    private static final int EXCHANGE = Loss.EXCHANGE.ordinal();

    private final int count = POD_PIECES + BOOM_PIECES;
    private final double[] x = new double[count];
    private final double[] z = new double[count];
    /** Cdc l d, d the height seen from the side and the width seen from below [m2]. */
    private final double[] sideArea = new double[count];

    private final double[] belowArea = new double[count];
    /** Wetted area with form factor [m2]. */
    private final double[] wetted = new double[count];

    private final double length;
    private final double factor;
    private final double munkVolume;
    private final double podX;
    private final double podZ;
    private final Vec3 peg;

    /**
     * Pieces of a glider.
     *
     * @param cg build axes [m]
     * @param factor on all drag here [1]
     */
    Bodies(Glider glider, Vec3 cg, double factor) {
        Pod pod = glider.pod();
        Boom boom = glider.boom();
        this.factor = factor;
        this.length = pod.noseX() - boom.endX();
        double podLength = pod.noseX() - boom.frontX();
        double mean = Math.sqrt(pod.width() * pod.height());
        double slenderness = mean / podLength;
        double form = 1 + 1.5 * Math.pow(slenderness, 1.5) + 7 * slenderness * slenderness * slenderness;
        for (int i = 0; i < POD_PIECES; i++) {
            double s = (i + 0.5) / POD_PIECES;
            double width = podWidth(s, pod.width(), boom.frontDiameter());
            double height = podWidth(s, pod.height(), boom.frontDiameter());
            piece(i, pod.noseX() - s * podLength - cg.x(), pod.z() - cg.z(), podLength / POD_PIECES, width, height);
            scale(i, CROSS_POD, form);
        }
        double boomLength = boom.frontX() - boom.endX();
        for (int i = 0; i < BOOM_PIECES; i++) {
            double s = (i + 0.5) / BOOM_PIECES;
            double d = boom.frontDiameter() + s * (boom.endDiameter() - boom.frontDiameter());
            double place = boom.frontX() - s * boomLength - cg.x();
            piece(POD_PIECES + i, place, boom.z() - cg.z(), boomLength / BOOM_PIECES, d, d);
            scale(POD_PIECES + i, CROSS_BOOM, 1);
        }
        double volume = Math.PI / 6 * pod.width() * pod.height() * podLength;
        this.munkVolume = volume * munkFactor(podLength / mean);
        this.podX = 0.5 * (pod.noseX() + boom.frontX()) - cg.x();
        this.podZ = pod.z() - cg.z();
        Surface wing = SurfaceOutlines.of(glider.wing());
        Surface.Rib tip = wing.at(wing.to());
        int side = glider.wing().peg().pegSide();
        this.peg = new Vec3(
                        tip.leadingEdge().x() - 0.5 * tip.chord(),
                        side * tip.leadingEdge().y(),
                        tip.leadingEdge().z())
                .minus(cg);
    }

    private void piece(int i, double placeX, double placeZ, double pieceLength, double width, double height) {
        x[i] = placeX;
        z[i] = placeZ;
        sideArea[i] = pieceLength * height;
        belowArea[i] = pieceLength * width;
        wetted[i] = pieceLength * 0.5 * Math.PI * (width + height);
    }

    private void scale(int i, double cross, double form) {
        sideArea[i] *= cross * factor;
        belowArea[i] *= cross * factor;
        wetted[i] *= form * factor;
    }

    /** Width at a fraction of the pod's length from the nose: half an ellipse to the widest section, then to the boom. */
    private static double podWidth(double s, double widest, double end) {
        if (s < WIDEST) {
            double t = 1 - s / WIDEST;
            return widest * Math.sqrt(1 - t * t);
        }
        double t = (s - WIDEST) / (1 - WIDEST);
        return widest + (end - widest) * t * t * (3 - 2 * t);
    }

    /**
     * Difference k2 - k1 of Lamb's inertia coefficients, across less along, of a prolate spheroid [1].
     *
     * @param fineness length over diameter, above 1
     */
    static double munkFactor(double fineness) {
        if (!(fineness > 1)) {
            return 0;
        }
        double e2 = 1 - 1 / (fineness * fineness);
        double e = Math.sqrt(e2);
        double log = Math.log((1 + e) / (1 - e));
        double along = 2 * (1 - e2) / (e2 * e) * (0.5 * log - e);
        double across = 1 / e2 - (1 - e2) / (2 * e2 * e) * log;
        return across / (2 - across) - along / (2 - along);
    }

    /** Drag area along the boom at a speed, peg included [m2]; a measure to look at. */
    double dragArea(double speed, double kinematicViscosity) {
        double sum = PEG_AREA * factor;
        double skin = skin(speed, kinematicViscosity);
        for (int i = 0; i < count; i++) {
            sum += skin * wetted[i];
        }
        return sum;
    }

    /** 2 (k2 - k1) volume of the pod: the slope of its nose-up moment over dynamic pressure [m3/rad]. */
    double munkMoment() {
        return 2 * munkVolume;
    }

    private double skin(double speed, double kinematicViscosity) {
        return 0.074 * Math.pow(kinematicViscosity / (length * Math.max(speed, SLOWEST)), 0.2);
    }

    /** Adds force, moment about the CG and power. */
    void addTo(Motion m, Loads loads) {
        double half = 0.5 * m.density;
        double skin = half * skin(Math.sqrt(m.u * m.u + m.v * m.v + m.w * m.w), m.kinematicViscosity);
        double power = 0;
        double sumX = 0;
        double sumY = 0;
        double sumZ = 0;
        double roll = 0;
        double pitch = 0;
        double yaw = 0;
        for (int i = 0; i < count; i++) {
            double u = m.u + m.q * z[i];
            double v = m.v + m.r * x[i] - m.p * z[i];
            double w = m.w - m.q * x[i];
            double cross = half * Math.sqrt(v * v + w * w);
            double fx = skin * wetted[i] * Math.abs(u) * u;
            double fy = cross * sideArea[i] * v;
            double fz = cross * belowArea[i] * w;
            sumX -= fx;
            sumY -= fy;
            sumZ -= fz;
            roll += z[i] * fy;
            pitch += x[i] * fz - z[i] * fx;
            yaw -= x[i] * fy;
            power += fx * u + fy * v + fz * w;
        }
        loads.fx += sumX;
        loads.fy += sumY;
        loads.fz += sumZ;
        loads.mx += roll;
        loads.my += pitch;
        loads.mz += yaw;
        double u = m.u + m.q * peg.z() - m.r * peg.y();
        double v = m.v + m.r * peg.x() - m.p * peg.z();
        double w = m.w + m.p * peg.y() - m.q * peg.x();
        double k = -half * PEG_AREA * factor * Math.sqrt(u * u + v * v + w * w);
        loads.fx += k * u;
        loads.fy += k * v;
        loads.fz += k * w;
        loads.mx += k * (peg.y() * w - peg.z() * v);
        loads.my += k * (peg.z() * u - peg.x() * w);
        loads.mz += k * (peg.x() * v - peg.y() * u);
        loads.power[BODIES] += power - k * (u * u + v * v + w * w);
        munk(m, loads);
    }

    private void munk(Motion m, Loads loads) {
        double u = m.u + m.q * podZ;
        double v = m.v + m.r * podX - m.p * podZ;
        double w = m.w - m.q * podX;
        double my = m.density * munkVolume * u * w;
        double mz = -m.density * munkVolume * u * v;
        loads.my += my;
        loads.mz += mz;
        loads.power[EXCHANGE] -= my * m.q + mz * m.r;
    }
}
