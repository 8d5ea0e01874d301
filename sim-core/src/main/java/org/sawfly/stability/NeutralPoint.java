package org.sawfly.stability;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.air.Air;
import org.sawfly.air.Standard;
import org.sawfly.math.Newton;
import org.sawfly.math.Roots;

/**
 * Neutral point of the flown model by differencing: {@code x_np = x_cg - (dM/dalpha)/(dN/dalpha)} with N the normal force of
 * the body axes (upward) and M about the CG (nose up), elevator fixed where it balances the moment, downwash settled
 * (Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, section 2.3). It depends on lift coefficient and speed, so both are
 * named. The slopes are taken over one degree either side, as a gust or a hand on the stick tries it: within half a degree
 * a tail at low Reynolds number may have a dead zone, in which a glider only wanders.
 */
public final class NeutralPoint {
    /** The usual lift coefficient [1]. */
    public static final double USUAL_LIFT = 0.3;
    /** The usual speed [m/s]. */
    public static final double USUAL_SPEED = 10;

    /** Half the width over which the slopes are taken, one degree [rad]. */
    private static final double STEP = 0.01745;

    private static final double ALPHA_LOW = -0.12;
    private static final double ALPHA_HIGH = 0.2;
    private static final double ELEVATOR_REACH = 0.5;

    private static final double[] FIRST_GUESS = {0.02, 0};
    private static final double[] DIFFERENCES = {1e-6, 1e-6};
    private static final double[] LARGEST_MOVES = {0.08, 0.2};
    private static final double CONVERGED = 1e-12, GOOD_ENOUGH = 1e-10;

    private final AeroEvaluator evaluator;
    private final AeroModel model;
    private final Motion motion = new Motion();
    private final Loads loads = new Loads();
    private final double speed;

    private NeutralPoint(AeroModel model, Air air, double speed, double camber) {
        this.model = model;
        this.evaluator = model.evaluator();
        this.speed = speed;
        motion.density = air.density();
        motion.kinematicViscosity = air.kinematicViscosity();
        motion.gz = Standard.GRAVITY;
        motion.camber = camber;
    }

    /**
     * The neutral point behind the root leading edge [m].
     *
     * @param model its boom bends unless it was made rigid
     * @param air around it
     * @param camber trailing edge down positive [rad]
     * @param lift lift coefficient at which [1]
     * @param speed at which [m/s]
     */
    public static double of(AeroModel model, Air air, double camber, double lift, double speed) {
        return over(STEP, model, air, camber, lift, speed);
    }

    /** The same from slopes taken over another angle either side [rad]. */
    static double over(double step, AeroModel model, Air air, double camber, double lift, double speed) {
        NeutralPoint search = new NeutralPoint(model, air, speed, camber);
        return search.at(search.balanced(lift), step);
    }

    /** Angle of attack at a lift coefficient with the moment balanced, the elevator set; as near as the elevator gets. */
    private double balanced(double lift) {
        double pressureArea =
                0.5 * motion.density * speed * speed * model.reference().area();
        double wanted = lift * pressureArea;
        double[] x = FIRST_GUESS.clone();
        Newton newton = new Newton(
                2,
                (at, miss) -> {
                    miss[1] = momentAt(at[0], at[1])
                            / (pressureArea * model.reference().meanChord());
                    miss[0] = liftAt(at[0]) / pressureArea - lift;
                },
                CONVERGED,
                GOOD_ENOUGH);
        if (newton.solve(x, DIFFERENCES, LARGEST_MOVES)
                && x[0] > ALPHA_LOW
                && x[0] < ALPHA_HIGH
                && Math.abs(x[1]) <= ELEVATOR_REACH) {
            momentAt(x[0], x[1]);
            return x[0];
        }
        return Roots.between(
                alpha -> {
                    balanceMoment(alpha);
                    return liftAt(alpha) - wanted;
                },
                ALPHA_LOW,
                ALPHA_HIGH,
                1e-11);
    }

    private double liftAt(double alpha) {
        return loads.fx * Math.sin(alpha) - loads.fz * Math.cos(alpha);
    }

    /** Sets the elevator at which the moment vanishes; the nearer limit where it cannot. */
    private void balanceMoment(double alpha) {
        double up = momentAt(alpha, -ELEVATOR_REACH);
        double down = momentAt(alpha, ELEVATOR_REACH);
        if (up * down > 0) {
            momentAt(alpha, Math.abs(up) < Math.abs(down) ? -ELEVATOR_REACH : ELEVATOR_REACH);
            return;
        }
        double elevator = Roots.between(e -> momentAt(alpha, e), -ELEVATOR_REACH, ELEVATOR_REACH, 1e-11);
        momentAt(alpha, elevator);
    }

    private double momentAt(double alpha, double elevator) {
        motion.elevator = elevator;
        evaluate(alpha);
        return loads.my;
    }

    private void evaluate(double alpha) {
        motion.u = speed * Math.cos(alpha);
        motion.w = speed * Math.sin(alpha);
        motion.downwashLag = evaluator.settledDownwash(motion);
        evaluator.evaluate(motion, loads);
    }

    private double at(double alpha, double step) {
        evaluate(alpha + step);
        double moment = loads.my;
        double normal = -loads.fz;
        evaluate(alpha - step);
        double aft = -(moment - loads.my) / (normal + loads.fz);
        return -model.reference().cgX() + aft;
    }
}
