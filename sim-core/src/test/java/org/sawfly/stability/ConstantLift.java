package org.sawfly.stability;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;

/**
 * Lift {@code k V^2} across the path whatever the angle of attack, no drag, and a stiff, well damped moment that turns the
 * nose into the wind: the limit of a point mass with a constant lift coefficient.
 *
 * @param lift k [N s2/m2]
 */
record ConstantLift(double lift) implements AeroModel {
    private static final double STIFFNESS = 0.02;
    private static final double BRAKE = 0.002;
    private static final double SETTLING = 50;

    @Override
    public AeroEvaluator evaluator() {
        return new AeroEvaluator() {
            @Override
            public void evaluate(Motion m, Loads loads) {
                double speed = Math.sqrt(m.u * m.u + m.v * m.v + m.w * m.w);
                loads.fx = lift * speed * m.w;
                loads.fy = -0.1 * speed * m.v;
                loads.fz = -lift * speed * m.u;
                loads.mx = -BRAKE * speed * m.p;
                loads.my = -speed * (STIFFNESS * m.w + BRAKE * m.q);
                loads.mz = speed * (STIFFNESS * m.v - BRAKE * m.r);
                loads.downwashLagRate = -SETTLING * m.downwashLag;
            }

            @Override
            public double settledDownwash(Motion m) {
                return 0;
            }
        };
    }

    @Override
    public Reference reference() {
        return new Reference(0.2, 1.5, 0.14, 0, -0.07);
    }

    @Override
    public double[][] apparentMass() {
        return new double[6][6];
    }
}
