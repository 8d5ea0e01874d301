package org.sawfly.stability;

import java.util.function.ObjDoubleConsumer;
import java.util.function.ToDoubleFunction;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Glide;

/**
 * What a pilot feels of a glider: how strongly it resists being turned, and how strongly its rudders turn it. Slopes of the
 * flown moments about the CG at a glide, by central differences. Moments of damping grow with the speed and those of the
 * rudders with its square, which is divided out, so that gliders of slightly different speed compare.
 *
 * @param pitchDamping -dM/dq over the speed, positive when it damps [kg m]
 * @param yawDamping -dN/dr over the speed, positive when it damps [kg m]
 * @param elevatorPower -dM/d(elevator) over the square of the speed, trailing edge up noses up [kg/rad]
 * @param rudderPower |dN/d(rudder)| over the square of the speed [kg/rad]
 */
public record Feel(double pitchDamping, double yawDamping, double elevatorPower, double rudderPower) {
    private static final double RATE_STEP = 0.05;
    private static final double ANGLE_STEP = 0.01;

    /** Of a model at a trimmed glide in an air. */
    public static Feel of(AeroModel model, Glide glide, AirSample air) {
        Slopes slopes = new Slopes(model.evaluator(), glide, air);
        double speed = glide.speed();
        return new Feel(
                -slopes.of((m, step) -> m.q += step, RATE_STEP, loads -> loads.my) / speed,
                -slopes.of((m, step) -> m.r += step, RATE_STEP, loads -> loads.mz) / speed,
                -slopes.of((m, step) -> m.elevator += step, ANGLE_STEP, loads -> loads.my) / (speed * speed),
                Math.abs(slopes.of((m, step) -> m.rudder += step, ANGLE_STEP, loads -> loads.mz)) / (speed * speed));
    }

    private record Slopes(AeroEvaluator evaluator, Glide glide, AirSample air) {
        double of(ObjDoubleConsumer<Motion> turn, double step, ToDoubleFunction<Loads> moment) {
            return (moment(turn, step, moment) - moment(turn, -step, moment)) / (2 * step);
        }

        private double moment(ObjDoubleConsumer<Motion> turn, double step, ToDoubleFunction<Loads> moment) {
            Motion motion = new Motion();
            glide.fill(air, motion);
            turn.accept(motion, step);
            Loads loads = new Loads();
            evaluator.evaluate(motion, loads);
            return moment.applyAsDouble(loads);
        }
    }
}
