package org.sawfly.flight;

import java.util.function.ToDoubleFunction;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.math.Vec3;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Controls;
import org.sawfly.motion.FieldAir;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.Step;
import org.sawfly.motion.StepWatcher;

/**
 * What loads the rear of the glider in one launch, from the same motion and the same air as the flight itself.
 *
 * <p>In the steady spin all of the glider turns about the thrower: its CG is accelerated by {@code W^2 R} towards him and by
 * {@code W' R} along the path, held up against gravity. The moment the hand opens the same motion goes on, but the air's
 * forces alone accelerate the glider.
 */
public final class LaunchLoads {
    private LaunchLoads() {}

    /** In the last, steady part of the spin. */
    public static RearLoads inSpin(FlightPlan plan) {
        ReleaseSolver solver = new ReleaseSolver(
                plan.craft(), plan.launch(), plan.launch().weather().ground());
        return solver.rearInSpin(release(solver, plan));
    }

    /** Just after the hand has opened on the full spin: free, and still turning as fast. */
    public static RearLoads letGo(FlightPlan plan) {
        Weather weather = plan.launch().weather();
        ReleaseSolver solver = new ReleaseSolver(plan.craft(), plan.launch(), weather.ground());
        Release release = release(solver, plan);
        Release turning =
                new Release(release.speed(), release.spin().rate(), release.alpha(), release.beta(), release.spin());
        double[] state = new double[StateLayout.SIZE];
        double wind = weather.windAt(plan.launch().releaseHeight());
        ReleaseState.write(plan.launch(), turning, wind, servos(plan), state);
        Craft craft = plan.craft();
        FieldAir field = weather.field();
        RigidBody body = new RigidBody(
                craft.mass().mass(),
                craft.mass().inertia(),
                craft.model(),
                field.apparentDensity(),
                Axes.ALL,
                field,
                new Held());
        state[StateLayout.DOWNWASH_LAG] = body.settledDownwash(0, state);
        return at(body, 0, state);
    }

    /**
     * The moment of the flight at which something is greatest; that of release if it breaks off at once.
     *
     * @param measure what is to be greatest
     */
    public static RearLoads greatest(FlightPlan plan, ToDoubleFunction<RearLoads> measure) {
        Greatest greatest = new Greatest(measure);
        Flight.fly(plan, greatest);
        return greatest.loads == null ? letGo(plan) : greatest.loads;
    }

    /** Rudder held by the preset, trailing edge left positive [rad]. */
    public static double presetRudder(FlightPlan plan) {
        return Pilot.presetRudder(plan.craft(), plan.launch());
    }

    private static Release release(ReleaseSolver solver, FlightPlan plan) {
        double wind = plan.launch().weather().windAt(plan.launch().releaseHeight());
        double airspeed =
                ReleaseState.airspeed(plan.releaseSpeed(), plan.launch().releaseClimb(), wind);
        double[] servos = servos(plan);
        return solver.solve(plan.releaseSpeed(), airspeed, plan.yawRate(), servos[0], servos[1], servos[3], true);
    }

    private static double[] servos(FlightPlan plan) {
        return new double[] {
            plan.presetElevator(),
            Pilot.presetCamber(plan.craft(), plan.launch()),
            0,
            Pilot.presetRudder(plan.craft(), plan.launch())
        };
    }

    private static RearLoads at(RigidBody body, double t, double[] state) {
        double[] rates = new double[StateLayout.SIZE];
        double[] force = new double[3];
        body.derivatives(t, state, rates);
        body.specificForce(t, state, rates, force);
        Loads loads = body.loadsAt(t, state);
        Motion motion = body.motionAt(t, state);
        return of(
                new Vec3(force[0], force[1], force[2]),
                motion,
                new Vec3(rates[StateLayout.P], rates[StateLayout.Q], rates[StateLayout.R]),
                loads);
    }

    static RearLoads of(Vec3 specificForce, Motion motion, Vec3 turning, Loads loads) {
        return new RearLoads(
                specificForce,
                new Vec3(motion.p, motion.q, motion.r),
                turning,
                loads.tailplaneForce,
                loads.tailplaneMoment,
                loads.finForce,
                loads.finMoment);
    }

    /** Servos stay where they stand. */
    private static final class Held implements Controls {
        @Override
        public void command(double t, double[] state, Motion motion, double[] commands) {
            System.arraycopy(state, StateLayout.ELEVATOR, commands, 0, StateLayout.SERVOS);
        }

        @Override
        public double rollRate(double t, double[] state) {
            return state[StateLayout.P];
        }
    }

    /** Looks for the moment in every step, as finely as the flight's own extremes are. */
    static final class Greatest implements StepWatcher {
        private static final int PIECES = 4;

        private final ToDoubleFunction<RearLoads> measure;
        private final double[] state = new double[StateLayout.SIZE];
        private RigidBody body;
        private double value = Double.NEGATIVE_INFINITY;
        private RearLoads loads;

        Greatest(ToDoubleFunction<RearLoads> measure) {
            this.measure = measure;
        }

        void begin(RigidBody flown) {
            body = flown;
        }

        @Override
        public void watch(Step step) {
            for (int i = 0; i <= PIECES; i++) {
                double t = i == PIECES ? step.end() : step.start() + (step.end() - step.start()) * i / PIECES;
                step.at(t, state);
                RearLoads now = at(body, t, state);
                double size = measure.applyAsDouble(now);
                if (size > value) {
                    value = size;
                    loads = now;
                }
            }
        }
    }
}
