package org.sawfly.motion;

import java.util.List;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Loss;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.math.Vec3;

/**
 * A glider of five plates, each with a normal force that stalls and a drag, at its own local velocity: symmetric, stable,
 * smooth, every force exact in its power. Carries a full apparent mass and a lagged downwash.
 */
final class PlateGlider implements AeroModel {
    private static final double STALL = 0.3;
    private static final double LAG_LENGTH = 0.6;
    private static final double DOWNWASH = 0.3;

    private final List<Plate> plates;

    private enum Control {
        LEFT_FLAP,
        RIGHT_FLAP,
        ELEVATOR,
        RUDDER
    }

    private record Plate(Vec3 place, Vec3 normal, double area, double slope, Loss profile, Control control) {}

    /** With the wing's lift this far ahead of the CG [m]. */
    PlateGlider(double wingAhead) {
        Vec3 right = new Vec3(0, -0.12, 1).unit();
        Vec3 left = new Vec3(0, 0.12, 1).unit();
        plates = List.of(
                new Plate(new Vec3(wingAhead, 0.35, -0.03), right, 0.105, 5.2, Loss.WING_PROFILE, Control.RIGHT_FLAP),
                new Plate(new Vec3(wingAhead, -0.35, -0.03), left, 0.105, 5.2, Loss.WING_PROFILE, Control.LEFT_FLAP),
                new Plate(new Vec3(-0.62, 0, 0), new Vec3(0, 0, 1), 0.025, 4, Loss.TAILPLANE_PROFILE, Control.ELEVATOR),
                new Plate(new Vec3(-0.68, 0, -0.03), new Vec3(0, 1, 0), 0.018, 3, Loss.FIN_PROFILE, Control.RUDDER));
    }

    @Override
    public AeroEvaluator evaluator() {
        return new Evaluator();
    }

    private final class Evaluator implements AeroEvaluator {
        @Override
        public void evaluate(Motion m, Loads loads) {
            double fx = 0;
            double fy = 0;
            double fz = 0;
            double mx = 0;
            double my = 0;
            double mz = 0;
            java.util.Arrays.fill(loads.power, 0);
            for (int i = 0; i < plates.size(); i++) {
                Plate plate = plates.get(i);
                double x = plate.place().x();
                double y = plate.place().y();
                double z = plate.place().z();
                double u = m.u + m.q * z - m.r * y;
                double v = m.v + m.r * x - m.p * z;
                double w = m.w + m.p * y - m.q * x;
                double speed = Math.sqrt(u * u + v * v + w * w);
                if (speed < 1e-9) {
                    continue;
                }
                Vec3 n = plate.normal();
                double inflow = u * n.x() + v * n.y() + w * n.z();
                double angle = inflow / speed;
                switch (plate.control()) {
                    case LEFT_FLAP -> angle += 0.5 * (m.camber + m.aileron);
                    case RIGHT_FLAP -> angle += 0.5 * (m.camber - m.aileron);
                    case ELEVATOR -> angle += 0.7 * m.elevator - 0.06 - m.downwashLag / speed;
                    case RUDDER -> angle -= 0.7 * m.rudder;
                }
                double half = 0.5 * m.density * plate.area() * speed;
                double stalled = angle * Math.exp(-angle * angle / (STALL * STALL));
                double normal = -half * speed * plate.slope() * stalled;
                double drag = half * 0.02;
                double px = normal * n.x() - drag * u;
                double py = normal * n.y() - drag * v;
                double pz = normal * n.z() - drag * w;
                loads.power[Loss.LIFT.ordinal()] -= normal * inflow;
                loads.power[plate.profile().ordinal()] += drag * speed * speed;
                fx += px;
                fy += py;
                fz += pz;
                mx += y * pz - z * py;
                my += z * px - x * pz;
                mz += x * py - y * px;
            }
            loads.fx = fx;
            loads.fy = fy;
            loads.fz = fz;
            loads.mx = mx;
            loads.my = my;
            loads.mz = mz;
            double airspeed = Math.sqrt(m.u * m.u + m.v * m.v + m.w * m.w);
            loads.downwashLagRate = (settledDownwash(m) - m.downwashLag) * Math.max(airspeed, 2) / LAG_LENGTH;
        }

        @Override
        public double settledDownwash(Motion m) {
            return DOWNWASH * m.w;
        }
    }

    @Override
    public Reference reference() {
        return new Reference(0.21, 1.4, 0.155, 0.07, 0);
    }

    /** From strips of carried air at the plates, hence symmetric and positive. */
    @Override
    public double[][] apparentMass() {
        double[][] matrix = new double[6][6];
        for (Plate plate : plates) {
            Vec3 arm = plate.place().plus(new Vec3(-0.03, 0, 0)).cross(plate.normal());
            double[] row = {
                plate.normal().x(), plate.normal().y(), plate.normal().z(), arm.x(), arm.y(), arm.z()
            };
            for (int i = 0; i < 6; i++) {
                for (int k = 0; k < 6; k++) {
                    matrix[i][k] += 0.12 * plate.area() * row[i] * row[k];
                }
            }
        }
        return matrix;
    }
}
