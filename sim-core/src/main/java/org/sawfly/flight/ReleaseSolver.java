package org.sawfly.flight;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.air.Air;
import org.sawfly.air.Standard;
import org.sawfly.glider.Fin;
import org.sawfly.math.Roots;
import org.sawfly.math.Vec3;

/**
 * The attitude in which the glider leaves the hand, from the balance of moments about the peg in the last, steady part of
 * the spin.
 *
 * <p>Derivation, for a right-hander (seen from above he turns counter-clockwise, outward is to the right of the path). The
 * hand, at radius R_h, holds the peg at the left tip; the CG lies d from the peg, on a line that trails the radius by the
 * angle lambda'. In the frame of the glider the moments about the peg, nose outward positive, are the air's
 * N = N_cg + D y_p - Y x_a (drag D, outward side force Y at the CG, which is x_a aft and y_p inboard of the peg; the boom
 * bent as the spin bends it), the centrifugal one -m R_h d W^2 sin(lambda'), and that of the growing spin,
 * (Izz + m d^2 + m R_h d cos lambda') W'. So
 *
 * <pre>
 * sin lambda' = [N + (Izz + m d^2 + m R_h d cos lambda') W'] / (m R_h d W^2)
 * lambda = lambda' - atan(x_a / y_p)        the nose's angle to the tangent at the hand
 * mu = atan(d sin lambda' / (R_h + d cos lambda'))   what of it is the CG's own place on the circle
 * beta0 = -(lambda - mu)                    right-hander; a left-hander mirrors it
 * W' / W^2 = 1 / (4 pi n)                   n turns of wind-up from rest at a steady angular acceleration
 * </pre>
 *
 * The peg carries m W^2 R + Y inwards and m W' R + D forwards.
 */
final class ReleaseSolver {
    /** Turns of wind-up; common practice, no source. */
    private static final double TURNS = 1.5;
    /** W'/W^2 of a spin from rest to W in that many turns. */
    private static final double SPIN_UP = 1 / (4 * Math.PI * TURNS);
    /**
     * Passes over the bending: of a trial, which starts where the trial before ended; of the spin that the trials have found;
     * and of one without trials.
     */
    private static final int TRIAL_PASSES = 2, FOUND_PASSES = 6, COLD_PASSES = 20;

    private final Craft craft;
    private final Launch launch;
    private final Air air;
    private final AeroEvaluator evaluator;
    private final Motion motion = new Motion();
    private final Loads loads = new Loads();
    private final SpinGeometry geometry;
    private final double hand;
    private double bentUp;
    private double bentRight;

    ReleaseSolver(Craft craft, Launch launch, Air air) {
        this.craft = craft;
        this.launch = launch;
        this.air = air;
        this.evaluator = craft.model().evaluator();
        this.geometry = SpinGeometry.of(craft);
        this.hand = -launch.thrower().hand().yawSign();
    }

    /** Radius of the CG from the axis of the spin, the glider in line with the arm [m]. */
    double radius() {
        return launch.thrower().reach() + geometry.pegToCg();
    }

    /**
     * The release.
     *
     * @param speed over the ground [m/s]
     * @param airspeed through the air [m/s]
     * @param yawRate left, magnitude [rad/s]
     * @param elevator where it is held [rad]
     * @param camber where it is held [rad]
     * @param rudder where it is held [rad]
     * @param yawing false for flights in a vertical plane: no yaw rate, no sideslip
     */
    Release solve(
            double speed,
            double airspeed,
            double yawRate,
            double elevator,
            double camber,
            double rudder,
            boolean yawing) {
        setAir(elevator, camber, rudder);
        double rate = Math.max(0, speed - launch.thrower().runUp()) / radius();
        double alphaStraight = alphaForWeight(airspeed, 0);
        if (!yawing) {
            return new Release(speed, 0, alphaStraight, 0, spinAt(rate, speed, alphaStraight, Double.NaN));
        }
        double trail = rate < 1e-6 ? Double.NaN : trail(rate, speed, alphaStraight);
        Spin spin = spinAt(rate, speed, alphaStraight, trail);
        double beta = -hand * (spin.noseOutward() + launch.doubts().noseOut());
        motion.p = 0;
        motion.q = 0;
        motion.r = 0;
        double alpha = alphaForWeight(airspeed, beta);
        return new Release(speed, yawRate, alpha, beta, spin);
    }

    /** Slope to which the spin of the release solved last has bent the boom at the tailplane, up positive [rad]. */
    double bentUp() {
        return bentUp;
    }

    /** The same at the fin, to the right positive [rad]. */
    double bentRight() {
        return bentRight;
    }

    private void setAir(double elevator, double camber, double rudder) {
        motion.density = air.density();
        motion.kinematicViscosity = air.kinematicViscosity();
        motion.gx = 0;
        motion.gy = 0;
        motion.gz = Standard.GRAVITY;
        motion.elevator = elevator;
        motion.camber = camber;
        motion.rudder = rudder;
        motion.aileron = 0;
    }

    private void setVelocity(double speed, double alpha, double beta) {
        motion.u = speed * Math.cos(alpha) * Math.cos(beta);
        motion.v = speed * Math.sin(beta);
        motion.w = speed * Math.sin(alpha) * Math.cos(beta);
    }

    /** Angle of attack at which the lift across the path carries the weight; the nearest the wing can do below stall. */
    private double alphaForWeight(double speed, double beta) {
        double weight = craft.mass().mass() * Standard.GRAVITY * Math.cos(launch.releaseClimb());
        double low = -0.15;
        double high = 0.14;
        double most = liftAt(speed, high, beta) - weight;
        if (most < 0) {
            return high;
        }
        double least = liftAt(speed, low, beta) - weight;
        if (least > 0) {
            return low;
        }
        return Roots.between(a -> liftAt(speed, a, beta) - weight, low, least, high, most, 1e-12);
    }

    private double liftAt(double speed, double alpha, double beta) {
        setVelocity(speed, alpha, beta);
        motion.downwashLag = evaluator.settledDownwash(motion);
        evaluator.evaluate(motion, loads);
        return loads.fx * Math.sin(alpha) - loads.fz * Math.cos(alpha);
    }

    /** The angle lambda' at which the moments about the peg balance; NaN where none does [rad]. */
    private double trail(double rate, double speed, double alpha) {
        double limit = 0.7;
        double least = imbalance(-limit, rate, speed, alpha);
        double most = imbalance(limit, rate, speed, alpha);
        if (least * most > 0) {
            return Double.NaN;
        }
        return Roots.between(t -> imbalance(t, rate, speed, alpha), -limit, least, limit, most, 1e-12);
    }

    /** The angle lambda - mu of the nose outward of the path at the CG [rad]. */
    private double outwardOf(double trail) {
        double d = geometry.pegToCg();
        double reach = launch.thrower().reach();
        double lambda = trail - Math.atan2(geometry.aft(), geometry.inboard());
        double mu = Math.atan2(d * Math.sin(trail), reach + d * Math.cos(trail));
        return lambda - mu;
    }

    private double imbalance(double trail, double rate, double speed, double alpha) {
        spinLoads(rate, speed, alpha, outwardOf(trail), TRIAL_PASSES);
        double m = craft.mass().mass();
        double d = geometry.pegToCg();
        double reach = launch.thrower().reach();
        double drag = dragAlongPath(alpha);
        double outwardForce = hand * loads.fy;
        double moment = hand * loads.mz + drag * geometry.inboard() - geometry.aft() * outwardForce;
        double izz = craft.mass().inertia().izz();
        double growing = (izz + m * d * d + m * reach * d * Math.cos(trail)) * SPIN_UP * rate * rate;
        return moment + growing - m * reach * d * rate * rate * Math.sin(trail);
    }

    private double dragAlongPath(double alpha) {
        return -(loads.fx * Math.cos(alpha) + loads.fz * Math.sin(alpha));
    }

    /** Leaves the air forces in the spin, the boom bent as the hand's pull and the air bend it, and tells what loads the rear. */
    private RearLoads spinLoads(double rate, double speed, double alpha, double outward, int passes) {
        double beta = -hand * outward;
        setVelocity(speed, alpha, beta);
        double r = -hand * rate;
        motion.p = -r * Math.sin(alpha);
        motion.q = 0;
        motion.r = r * Math.cos(alpha);
        motion.downwashLag = evaluator.settledDownwash(motion);
        return held(rate, alpha, beta, passes);
    }

    /** The spin at a trailing angle; NaN for the nose on the path. */
    private Spin spinAt(double rate, double speed, double alpha, double trail) {
        double outward = Double.isNaN(trail) ? 0 : outwardOf(trail);
        int passes = Double.isNaN(trail) ? COLD_PASSES : FOUND_PASSES;
        RearLoads rear = spinLoads(rate, speed, alpha, outward, passes);
        double m = craft.mass().mass();
        double radius = radius();
        double radial = m * rate * rate * radius + hand * loads.fy;
        double along = m * SPIN_UP * rate * rate * radius + dragAlongPath(alpha);
        bentUp = loads.boomUp;
        bentRight = loads.boomRight;
        return new Spin(
                rate,
                radius,
                rate * rate * radius / Standard.GRAVITY,
                radial,
                along,
                Double.isNaN(trail) ? 0 : trail,
                outward,
                Math.abs(loads.finAngle),
                hand * rear.finForce());
    }

    /** What loads the rear of the glider in the spin of a release solved before. */
    RearLoads rearInSpin(Release release) {
        Spin spin = release.spin();
        double alpha = alphaForWeight(release.speed(), 0);
        return spinLoads(spin.rate(), release.speed(), alpha, spin.noseOutward(), COLD_PASSES);
    }

    /**
     * Finds the air forces with the boom bent as the spin bends it. The model is told how the hand's pull changes the
     * acceleration at the fin, until the fin's own force, which answers to the bending, agrees. Each pass leaves a twentieth
     * of what is missing on the demo glider, half of it on a boom seven times as soft. Begins with the forces found last.
     */
    private RearLoads held(double rate, double alpha, double beta, int passes) {
        Vec3 axis = new Vec3(-Math.sin(alpha), 0, Math.cos(alpha)).times(-hand);
        Vec3 path = new Vec3(Math.cos(alpha) * Math.cos(beta), Math.sin(beta), Math.sin(alpha) * Math.cos(beta));
        double square = rate * rate;
        double gain = SPIN_UP * square;
        Vec3 force = axis.cross(path)
                .times(square * radius())
                .plus(path.times(gain * radius()))
                .minus(new Vec3(motion.gx, motion.gy, motion.gz));
        Vec3 turning = axis.times(gain);
        Fin fin = craft.glider().fin();
        Vec3 place = new Vec3(fin.x() - fin.quarterPointBack(), 0, fin.z())
                .minus(craft.mass().cg());
        double felt = LaunchLoads.of(force, motion, turning, loads)
                .specificForceAt(place)
                .y();
        for (int pass = 0; pass < passes; pass++) {
            motion.heldY = felt - unheldAcceleration(place.x());
            evaluator.evaluate(motion, loads);
        }
        motion.heldY = 0;
        return LaunchLoads.of(force, motion, turning, loads);
    }

    /** Specific force along y at a place x behind the CG (negative) that the air alone would bring about. */
    private double unheldAcceleration(double x) {
        double[][] carried = craft.model().apparentMass();
        double air = motion.density / Standard.DENSITY;
        double side = air * carried[1][1];
        double atCg = (loads.fy + side * (motion.r * motion.u - motion.p * motion.w - motion.gy))
                / (craft.mass().mass() + side);
        return atCg + loads.mz / (craft.mass().inertia().izz() + air * carried[5][5]) * x;
    }
}
