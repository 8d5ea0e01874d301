package org.sawfly.flight;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.ModelChoice;
import org.sawfly.bench.Says;
import org.sawfly.glider.Hand;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.FieldAir;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;

/**
 * The demo glider with strips in the whole motion, thrown at 33 m/s, turning 8 rad/s; its model built before. One flight is
 * from release to the settled height with the watchers of every flight. The other two integrate the first three seconds of
 * the same equations at the usual tolerances, without events and watchers, with the program's own loop and with that of
 * Hipparchus; {@link #main} gives their ratio.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 8, time = 1)
public class StripFlightBench {
    private static final double END = 3;
    private static final double SMALLEST_STEP = 1e-9;
    private static final double LARGEST_STEP = 0.25;
    private static final int ROUNDS = 200;

    private final Craft craft =
            Craft.of(Demo.GLIDER, Corrections.NONE, Demo.MODELS, ModelChoice.STRIP, Demo.SETTINGS, Demo.CALM.ground());
    private final FlightPlan plan = Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), 33, 8, Axes.ALL);
    private int evaluations;

    /** Release to settled height. */
    @Benchmark
    @Says("flight of 8 s with strips, all axes; extremes watched, no log; model built")
    public Outcome flight() {
        return Flight.fly(plan);
    }

    /** Three seconds with the program's own loop. */
    @Benchmark
    @Says("three seconds of it, the program's own loop")
    public double[] ownLoop() {
        double[] state = new double[StateLayout.SIZE];
        RigidBody body = released(state);
        Adaptive adaptive = Adaptive.usual();
        adaptive.run(body, 0, state, END, List.of(), List.of());
        evaluations = adaptive.evaluations();
        return state;
    }

    /** The same three seconds with the loop of Hipparchus. */
    @Benchmark
    @Says("the same three seconds, the loop of Hipparchus")
    public double[] hipparchusLoop() {
        double[] state = new double[StateLayout.SIZE];
        RigidBody body = released(state);
        DormandPrince54Integrator theirs = new DormandPrince54Integrator(
                SMALLEST_STEP, LARGEST_STEP, StateLayout.absoluteTolerance(), tolerances());
        OrdinaryDifferentialEquation equations = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return StateLayout.SIZE;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] rates = new double[StateLayout.SIZE];
                body.derivatives(t, y, rates);
                return rates;
            }
        };
        double[] end = theirs.integrate(equations, new ODEState(0, state), END).getPrimaryState();
        evaluations = theirs.getEvaluations();
        return end;
    }

    private static double[] tolerances() {
        double[] relative = new double[StateLayout.SIZE];
        Arrays.fill(relative, Adaptive.USUAL_TOLERANCE);
        return relative;
    }

    private RigidBody released(double[] state) {
        Launch launch = plan.launch();
        FieldAir field = launch.weather().field();
        Pilot pilot = new Pilot(craft, launch, plan.presetElevator(), plan.axes(), plan.steering());
        double[] servos = {
            plan.presetElevator(),
            Pilot.presetCamber(craft, launch),
            Pilot.presetAileron(craft, launch),
            Pilot.presetRudder(craft, launch)
        };
        double speed = plan.releaseSpeed();
        Release release = new ReleaseSolver(craft, launch, launch.weather().ground())
                .solve(speed, speed, plan.yawRate(), servos[0], servos[1], servos[3], true);
        ReleaseState.write(launch, release, 0, servos, state);
        RigidBody body = new RigidBody(
                craft.mass().mass(),
                craft.mass().inertia(),
                craft.model(),
                field.apparentDensity(),
                plan.axes(),
                field,
                pilot);
        body.settle(0, state);
        state[StateLayout.DOWNWASH_LAG] = body.settledDownwash(0, state);
        return body;
    }

    /** Both loops and whole flights by turns; prints the time of this thread on a core, evaluations and the ratio. */
    public static void main(String[] args) {
        StripFlightBench bench = new StripFlightBench();
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double[] spent = new double[3];
        int[] asked = new int[2];
        double apart = 0;
        for (int round = -ROUNDS / 2; round < ROUNDS; round++) {
            double[][] ends = new double[2][];
            for (int which = 0; which < 3; which++) {
                long from = clock.getCurrentThreadCpuTime();
                switch (which) {
                    case 0 -> ends[0] = bench.ownLoop();
                    case 1 -> ends[1] = bench.hipparchusLoop();
                    default -> bench.flight();
                }
                spent[which] += round < 0 ? 0 : 1e-6 * (clock.getCurrentThreadCpuTime() - from) / ROUNDS;
                if (which < 2) {
                    asked[which] = bench.evaluations;
                }
            }
            apart = Math.abs(ends[0][StateLayout.DOWN] - ends[1][StateLayout.DOWN]);
        }
        System.out.printf(
                Locale.ROOT,
                "own loop %.2f ms, %d evaluations; Hipparchus %.2f ms, %d evaluations; ratio %.2f; heights %.1e m apart%n",
                spent[0],
                asked[0],
                spent[1],
                asked[1],
                spent[1] / spent[0],
                apart);
        System.out.printf(Locale.ROOT, "a flight %.1f ms: %.0f a second and core%n", spent[2], 1000 / spent[2]);
    }
}
