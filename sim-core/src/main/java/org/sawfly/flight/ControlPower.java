package org.sawfly.flight;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.air.Air;
import org.sawfly.motion.Glide;

/**
 * Moments of the controls per deflection over the dynamic pressure, by differences around a glide; never quite nothing.
 *
 * @param elevator S c |Cm_delta| [m3/rad]
 * @param aileron S b |Cl_delta| [m3/rad]
 * @param rudder S b |Cn_delta| [m3/rad]
 */
public record ControlPower(double elevator, double aileron, double rudder) {
    private static final double STEP = 0.01;
    private static final double LEAST = 1e-6;

    /** Around a glide in an air. */
    static ControlPower at(AeroModel model, Glide glide, Air air) {
        AeroEvaluator evaluator = model.evaluator();
        Motion motion = new Motion();
        glide.fill(Craft.sample(air), motion);
        Loads loads = new Loads();
        double perPressure = 1 / (2 * STEP * 0.5 * air.density() * glide.speed() * glide.speed());
        motion.elevator = glide.elevator() + STEP;
        evaluator.evaluate(motion, loads);
        double pitch = loads.my;
        motion.elevator = glide.elevator() - STEP;
        evaluator.evaluate(motion, loads);
        pitch = loads.my - pitch;
        motion.elevator = glide.elevator();
        motion.aileron = STEP;
        evaluator.evaluate(motion, loads);
        double roll = loads.mx;
        motion.aileron = -STEP;
        evaluator.evaluate(motion, loads);
        roll -= loads.mx;
        motion.aileron = 0;
        motion.rudder = -STEP;
        evaluator.evaluate(motion, loads);
        double yaw = loads.mz;
        motion.rudder = STEP;
        evaluator.evaluate(motion, loads);
        yaw -= loads.mz;
        return new ControlPower(
                Math.max(LEAST, pitch * perPressure),
                Math.max(LEAST, roll * perPressure),
                Math.max(LEAST, yaw * perPressure));
    }
}
