package org.sawfly.motion;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.math.Newton;
import org.sawfly.math.Roots;

/**
 * Finds steady glides: the angle of attack, elevator and path angle (and speed, where the lift coefficient is given) at
 * which X, Z and the pitching moment vanish, gravity included.
 *
 * <pre>
 *   X - m g sin(theta) = 0,   Z + m g cos(theta) = 0,   M = 0,   theta = alpha + path angle
 * </pre>
 *
 * <p>Newton's method from a fixed guess, to rounding: the answer is as smooth in its inputs as the model. Where it fails or
 * leaves the attached flow, the angle of attack is scanned from below for the place where the lift is right with the moment
 * balanced, and Newton starts there. For one thread; may be asked many times.
 */
public final class Trim {
    /** Travel of the elevator either way, 25 degrees: common practice, no source [rad]. */
    public static final double ELEVATOR_TRAVEL = 25.0 / 360.0 * 2 * Math.PI;

    private static final int ALPHA = 0, ELEVATOR = 1, PATH = 2, SPEED = 3;
    private static final double[] FIRST_GUESS = {0.03, 0, -0.06};
    private static final double[] LARGEST_MOVE = {0.08, 0.2, 0.15, 0.3};
    private static final double DIFFERENCE = 1e-6;
    /** Step of the angle of attack over which lift must grow [rad]. */
    private static final double LIFT_STEP = 1e-3;

    private static final double CONVERGED = 1e-12;
    private static final double GOOD_ENOUGH = 1e-9;
    private static final double LOWEST_ALPHA = -0.25, HIGHEST_ALPHA = 0.35, SCAN_STEP = 0.0125;

    private final AeroModel model;
    private final double mass;
    private final AirSample air;
    private final AeroEvaluator evaluator;
    private final Motion motion = new Motion();
    private final Loads loads = new Loads();
    private final Newton beside = new Newton(3, this::residual, CONVERGED, GOOD_ENOUGH);
    private double camber;
    private double liftWanted;

    /**
     * Made for a glider in an air.
     *
     * @param model what the air does
     * @param mass [kg]
     * @param air density, viscosity and gravity; its wind does not matter. Not to be changed meanwhile
     */
    public Trim(AeroModel model, double mass, AirSample air) {
        this.model = model;
        this.mass = mass;
        this.air = air;
        this.evaluator = model.evaluator();
    }

    /**
     * The glide at a speed.
     *
     * @param camberAngle trailing edge down positive [rad]
     * @param speed through the air [m/s]
     * @throws NoTrimException when there is none
     */
    public Glide atSpeed(double camberAngle, double speed) {
        if (!(speed > 0) || speed > 1000) {
            throw new IllegalArgumentException("a glide needs a speed above 0 m/s, not " + speed);
        }
        return solve(camberAngle, Double.NaN, speed, 3, tenths(speed) + " m/s");
    }

    /**
     * The glide at a lift coefficient.
     *
     * @param camberAngle trailing edge down positive [rad]
     * @param liftCoefficient of the reference area [1]
     * @throws NoTrimException when there is none
     */
    public Glide atLift(double camberAngle, double liftCoefficient) {
        if (!(liftCoefficient > 0) || liftCoefficient > 10) {
            throw new IllegalArgumentException("a glide needs a lift coefficient above 0, not " + liftCoefficient);
        }
        double speed = Math.sqrt(2 * weight() / (air.density * model.reference().area() * liftCoefficient));
        return solve(camberAngle, liftCoefficient, speed, 4, "about " + tenths(speed) + " m/s");
    }

    /**
     * The glide at a speed, sought from another one nearby and nowhere else.
     *
     * @param near a glide at about this speed and camber
     * @return null when that does not lead to one
     */
    public Glide near(double camberAngle, double speed, Glide near) {
        ask(camberAngle, Double.NaN);
        double[] x = {near.alpha(), near.elevator(), near.pathAngle(), speed};
        if (!beside.again(x, differences(speed), largestMoves(speed))
                || !(x[ALPHA] > LOWEST_ALPHA && x[ALPHA] < HIGHEST_ALPHA)
                || Math.abs(x[ELEVATOR]) > ELEVATOR_TRAVEL) {
            return null;
        }
        double alpha = x[ALPHA];
        x[ALPHA] = alpha + LIFT_STEP;
        evaluate(x);
        double above = lift(x[ALPHA]);
        x[ALPHA] = alpha;
        Glide glide = glide(x);
        return above > lift(alpha) ? glide : null;
    }

    private static double tenths(double speed) {
        return Math.rint(10 * speed) / 10;
    }

    private double weight() {
        return mass * air.gravity;
    }

    private Glide solve(double camberAngle, double lift, double speed, int unknowns, String asked) {
        ask(camberAngle, lift);
        double[] guess = {FIRST_GUESS[ALPHA], FIRST_GUESS[ELEVATOR], FIRST_GUESS[PATH], speed};
        if (!newton(guess, unknowns) || !attached(guess)) {
            guess = scan(speed, asked);
            if (!newton(guess, unknowns)) {
                throw new NoTrimException(NoTrimException.Reason.NOT_CONVERGED, asked);
            }
            if (!attached(guess)) {
                throw new NoTrimException(NoTrimException.Reason.NOT_ENOUGH_LIFT, asked);
            }
        }
        if (Math.abs(guess[ELEVATOR]) > ELEVATOR_TRAVEL) {
            throw new NoTrimException(NoTrimException.Reason.NOT_ENOUGH_ELEVATOR, asked);
        }
        return glide(guess);
    }

    private void ask(double camberAngle, double lift) {
        camber = camberAngle;
        liftWanted = lift;
    }

    private Glide glide(double[] guess) {
        evaluate(guess);
        double pressureArea = pressureArea(guess[SPEED]);
        return new Glide(
                guess[SPEED],
                guess[ALPHA],
                guess[ELEVATOR],
                camber,
                guess[PATH],
                lift(guess[ALPHA]) / pressureArea,
                drag(guess[ALPHA]) / pressureArea,
                motion.downwashLag);
    }

    private double pressureArea(double speed) {
        return 0.5 * air.density * speed * speed * model.reference().area();
    }

    private double lift(double alpha) {
        return loads.fx * Math.sin(alpha) - loads.fz * Math.cos(alpha);
    }

    private double drag(double alpha) {
        return -loads.fx * Math.cos(alpha) - loads.fz * Math.sin(alpha);
    }

    private void evaluate(double[] x) {
        double theta = x[ALPHA] + x[PATH];
        motion.u = x[SPEED] * Math.cos(x[ALPHA]);
        motion.w = x[SPEED] * Math.sin(x[ALPHA]);
        motion.density = air.density;
        motion.kinematicViscosity = air.kinematicViscosity;
        motion.gx = -air.gravity * Math.sin(theta);
        motion.gz = air.gravity * Math.cos(theta);
        motion.elevator = x[ELEVATOR];
        motion.camber = camber;
        motion.downwashLag = 0;
        motion.downwashLag = evaluator.settledDownwash(motion);
        evaluator.evaluate(motion, loads);
    }

    private void residual(double[] x, double[] out) {
        evaluate(x);
        double weight = weight();
        out[0] = (loads.fx + mass * motion.gx) / weight;
        out[1] = (loads.fz + mass * motion.gz) / weight;
        out[2] = loads.my / (weight * model.reference().meanChord());
        if (out.length > 3) {
            out[3] = lift(x[ALPHA]) / pressureArea(x[SPEED]) - liftWanted;
        }
    }

    /** Newton's method; true when settled. */
    private boolean newton(double[] x, int unknowns) {
        return new Newton(unknowns, this::residual, CONVERGED, GOOD_ENOUGH)
                .solve(x, differences(x[SPEED]), largestMoves(x[SPEED]));
    }

    private static double[] differences(double speed) {
        return new double[] {DIFFERENCE, DIFFERENCE, DIFFERENCE, DIFFERENCE * speed};
    }

    private static double[] largestMoves(double speed) {
        double[] largest = LARGEST_MOVE.clone();
        largest[SPEED] *= speed;
        return largest;
    }

    /** True where more angle of attack gives more lift and the flow is not the one behind stall. */
    private boolean attached(double[] x) {
        if (!(x[ALPHA] > LOWEST_ALPHA && x[ALPHA] < HIGHEST_ALPHA)) {
            return false;
        }
        double held = x[ALPHA];
        double h = LIFT_STEP;
        x[ALPHA] = held - h;
        evaluate(x);
        double below = lift(x[ALPHA]);
        x[ALPHA] = held + h;
        evaluate(x);
        double above = lift(x[ALPHA]);
        x[ALPHA] = held;
        return above > below;
    }

    /** The lowest angle of attack at which the lift is right with the moment balanced, as a start for Newton. */
    private double[] scan(double speed, String asked) {
        double[] x = {LOWEST_ALPHA, 0, FIRST_GUESS[PATH], speed};
        double before = Double.NaN;
        boolean balancedOnce = false;
        boolean carriedUnbalanced = false;
        int steps = (int) Math.round((HIGHEST_ALPHA - LOWEST_ALPHA) / SCAN_STEP);
        for (int i = 0; i <= steps; i++) {
            x[ALPHA] = LOWEST_ALPHA + i * SCAN_STEP;
            boolean balanced = balance(x);
            evaluate(x);
            double surplus = surplus(x);
            if (balanced && before < 0 && surplus >= 0) {
                x[ALPHA] -= SCAN_STEP * surplus / (surplus - before);
                balance(x);
                evaluate(x);
                if (Double.isNaN(liftWanted) && drag(x[ALPHA]) > weight()) {
                    throw new NoTrimException(NoTrimException.Reason.TOO_FAST, asked);
                }
                x[PATH] = -Math.atan2(drag(x[ALPHA]), lift(x[ALPHA]));
                return x;
            }
            carriedUnbalanced |= !balanced && surplus >= 0;
            balancedOnce |= balanced;
            before = balanced ? surplus : Double.NaN;
        }
        boolean elevator = !balancedOnce || carriedUnbalanced;
        throw new NoTrimException(
                elevator ? NoTrimException.Reason.NOT_ENOUGH_ELEVATOR : NoTrimException.Reason.NOT_ENOUGH_LIFT, asked);
    }

    /** Lift over what is wanted: the lift coefficient asked for, or what carries the weight together with the drag. */
    private double surplus(double[] x) {
        if (!Double.isNaN(liftWanted)) {
            return lift(x[ALPHA]) / pressureArea(x[SPEED]) - liftWanted;
        }
        double drag = drag(x[ALPHA]);
        return lift(x[ALPHA]) - Math.sqrt(Math.max(0, weight() * weight() - drag * drag));
    }

    /** Sets the elevator so that the moment vanishes; false, with the better end of its travel, when it cannot. */
    private boolean balance(double[] x) {
        double up = moment(x, -ELEVATOR_TRAVEL);
        double down = moment(x, ELEVATOR_TRAVEL);
        if (up > 0 == down > 0) {
            x[ELEVATOR] = Math.abs(up) < Math.abs(down) ? -ELEVATOR_TRAVEL : ELEVATOR_TRAVEL;
            return false;
        }
        x[ELEVATOR] = Roots.between(elevator -> moment(x, elevator), -ELEVATOR_TRAVEL, up, ELEVATOR_TRAVEL, down, 1e-6);
        return true;
    }

    private double moment(double[] x, double elevator) {
        x[ELEVATOR] = elevator;
        evaluate(x);
        return loads.my;
    }
}
