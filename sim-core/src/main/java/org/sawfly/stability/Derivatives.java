package org.sawfly.stability;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Glide;

/**
 * Stability derivatives of the flown model, by central differences around a trimmed glide. None of them enters a flight;
 * they are there to be looked at and compared.
 *
 * <p>Axes along the glide: x on the path, z down across it, moments about the CG; coefficients on wing area, mean chord
 * (pitch) or span (roll, yaw); angles and deflections in radians; rates as {@code q c/2V}, {@code p b/2V}, {@code r b/2V}
 * (Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, section 4.9 and chapter 5). The boom bends as it does at this speed.
 * Differences by angle of attack let the downwash settle; by rates it is held, what its lag does is {@code
 * momentByAngleRate}.
 *
 * @param pitch in the plane of symmetry
 * @param sideslip by sideslip, positive in wind from the right
 * @param rollRate by p b/2V, right wing going down
 * @param yawRate by r b/2V, nose going right
 * @param aileron right trailing edge up
 * @param rudder trailing edge left
 */
public record Derivatives(Pitch pitch, Side sideslip, Side rollRate, Side yawRate, Side aileron, Side rudder) {
    private static final double ANGLE = 0.002;
    private static final double RATE = 0.002;
    private static final double LAG = 0.01;

    /**
     * In the plane of symmetry, all [1/rad] or per {@code c/2V}.
     *
     * @param liftByAngle CL_alpha
     * @param dragByAngle CD_alpha
     * @param momentByAngle Cm_alpha
     * @param liftByRate CL_q
     * @param momentByRate Cm_q
     * @param momentByAngleRate Cm_alphadot, from the lag of the downwash
     * @param liftByElevator CL_delta
     * @param momentByElevator Cm_delta
     * @param momentBySpeed V dCm/dV: what the bending boom and the Reynolds number do
     */
    public record Pitch(
            double liftByAngle,
            double dragByAngle,
            double momentByAngle,
            double liftByRate,
            double momentByRate,
            double momentByAngleRate,
            double liftByElevator,
            double momentByElevator,
            double momentBySpeed) {}

    /**
     * What one cause does sideways.
     *
     * @param force CY, to the right
     * @param roll Cl, right wing down
     * @param yaw Cn, nose right
     */
    public record Side(double force, double roll, double yaw) {}

    /** Around a glide in the air in which it was trimmed. */
    public static Derivatives around(AeroModel model, AirSample air, Glide glide) {
        return new Around(model, air, glide).derivatives();
    }

    /** Coefficients: drag, side force, lift, roll, pitch, yaw. */
    private record Coefficients(double drag, double side, double lift, double roll, double pitch, double yaw) {
        Coefficients slope(Coefficients below, double by) {
            return new Coefficients(
                    (drag - below.drag) / by,
                    (side - below.side) / by,
                    (lift - below.lift) / by,
                    (roll - below.roll) / by,
                    (pitch - below.pitch) / by,
                    (yaw - below.yaw) / by);
        }

        Side sideways() {
            return new Side(side, roll, yaw);
        }
    }

    /** Changes the motion of the glide. */
    @FunctionalInterface
    private interface Change {
        void by(Motion motion, double amount);
    }

    /** One glide, moved a little this way and that. */
    private static final class Around {
        private final AeroEvaluator evaluator;
        private final Reference reference;
        private final AirSample air;
        private final Glide glide;
        private final Motion motion = new Motion();
        private final Loads loads = new Loads();
        private final double cos;
        private final double sin;

        Around(AeroModel model, AirSample air, Glide glide) {
            this.evaluator = model.evaluator();
            this.reference = model.reference();
            this.air = air;
            this.glide = glide;
            this.cos = Math.cos(glide.alpha());
            this.sin = Math.sin(glide.alpha());
        }

        Derivatives derivatives() {
            double speed = glide.speed();
            double pitchRate = 2 * speed / reference.meanChord();
            double sideRate = 2 * speed / reference.span();
            Coefficients angle = slope((m, by) -> velocity(m, speed, by, 0, true), ANGLE);
            Coefficients rate = slope((m, by) -> m.q = by * pitchRate, RATE);
            Coefficients elevator = slope((m, by) -> m.elevator += by, ANGLE);
            Coefficients faster = slope((m, by) -> velocity(m, speed * (1 + by), 0, 0, true), ANGLE);
            Pitch pitch = new Pitch(
                    angle.lift,
                    angle.drag,
                    angle.pitch,
                    rate.lift,
                    rate.pitch,
                    momentByAngleRate(),
                    elevator.lift,
                    elevator.pitch,
                    faster.pitch);
            return new Derivatives(
                    pitch,
                    slope((m, by) -> velocity(m, speed, 0, by, false), ANGLE).sideways(),
                    slope((m, by) -> turn(m, by * sideRate, 0), RATE).sideways(),
                    slope((m, by) -> turn(m, 0, by * sideRate), RATE).sideways(),
                    slope((m, by) -> m.aileron = by, ANGLE).sideways(),
                    slope((m, by) -> m.rudder = by, ANGLE).sideways());
        }

        /** Moment by alphadot c/2V: lagging by T, the downwash is short of what it would be settled by T d(lag)/dt. */
        private double momentByAngleRate() {
            double byLag = slope((m, by) -> m.downwashLag += by, LAG).pitch;
            double lagByAngle = (settled(ANGLE) - settled(-ANGLE)) / (2 * ANGLE);
            double rateByLag = (lagRate(LAG) - lagRate(-LAG)) / (2 * LAG);
            return byLag * lagByAngle / rateByLag * 2 * glide.speed() / reference.meanChord();
        }

        private double settled(double by) {
            glide.fill(air, motion);
            velocity(motion, glide.speed(), by, 0, true);
            return motion.downwashLag;
        }

        private double lagRate(double by) {
            glide.fill(air, motion);
            motion.downwashLag += by;
            evaluator.evaluate(motion, loads);
            return loads.downwashLagRate;
        }

        private void velocity(Motion m, double speed, double alpha, double beta, boolean settle) {
            double angle = glide.alpha() + alpha;
            m.u = speed * Math.cos(beta) * Math.cos(angle);
            m.v = speed * Math.sin(beta);
            m.w = speed * Math.cos(beta) * Math.sin(angle);
            if (settle) {
                m.downwashLag = evaluator.settledDownwash(m);
            }
        }

        /** Turning about the path and across it. */
        private void turn(Motion m, double roll, double yaw) {
            m.p = roll * cos - yaw * sin;
            m.r = roll * sin + yaw * cos;
        }

        private Coefficients slope(Change change, double by) {
            return at(change, by).slope(at(change, -by), 2 * by);
        }

        private Coefficients at(Change change, double by) {
            glide.fill(air, motion);
            change.by(motion, by);
            evaluator.evaluate(motion, loads);
            double squared = motion.u * motion.u + motion.v * motion.v + motion.w * motion.w;
            double alpha = Math.atan2(motion.w, motion.u);
            double pressureArea = 0.5 * motion.density * squared * reference.area();
            double chord = pressureArea * reference.meanChord();
            double span = pressureArea * reference.span();
            return new Coefficients(
                    -(loads.fx * Math.cos(alpha) + loads.fz * Math.sin(alpha)) / pressureArea,
                    loads.fy / pressureArea,
                    (loads.fx * Math.sin(alpha) - loads.fz * Math.cos(alpha)) / pressureArea,
                    (loads.mx * cos + loads.mz * sin) / span,
                    loads.my / chord,
                    (loads.mz * cos - loads.mx * sin) / span);
        }
    }
}
