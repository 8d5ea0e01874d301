package org.sawfly.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.sawfly.aero.Loads;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Outcome;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.FixedStep;
import org.sawfly.motion.StateLayout;

/** The demo glider's flight and what it is made of, with the fast model. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class FlightBench {
    private static final int MOST_EVALUATIONS = 20_000;

    private final FlightPlan plan = Demo.plan();
    private final FlightPlan inPitch = Demo.with(plan, Axes.PITCH, Adaptive::usual);
    private final FlightPlan fixed =
            Demo.with(plan, Axes.PITCH_YAW, () -> new FixedStep(FixedStep.USUAL_STEP, MOST_EVALUATIONS));
    private final Demo.Recorder flown = Demo.recorded();
    private final double[] rates = new double[StateLayout.SIZE];
    private int next;

    /** Air forces: motion through the air and loads of a state on the way. */
    @Benchmark
    @Says("air forces of one state")
    public Loads airForces() {
        next = next + 1 < flown.states.size() ? next + 1 : 0;
        return flown.body.loadsAt(flown.times.get(next), flown.states.get(next));
    }

    /** Air forces, pilot and equations of motion of a state on the way. */
    @Benchmark
    @Says("right-hand side of one state: air forces, pilot, equations of motion")
    public double[] rightHandSide() {
        next = next + 1 < flown.states.size() ? next + 1 : 0;
        flown.body.derivatives(flown.times.get(next), flown.states.get(next), rates);
        return rates;
    }

    /** Release to settled height, pitch and yaw, adaptive, watchers on, no log; model built before. */
    @Benchmark
    @Says("flight of 8 s, pitch and yaw, adaptive; extremes watched, no log; model built")
    public Outcome flight() {
        return Flight.fly(plan);
    }

    /** The same in pitch alone. */
    @Benchmark
    @Says("the same in pitch alone")
    public Outcome flightInPitch() {
        return Flight.fly(inPitch);
    }

    /** The same by Runge and Kutta at a fixed step. */
    @Benchmark
    @Says("the same flight, pitch and yaw, at the fixed step of 10 ms")
    public Outcome flightAtFixedStep() {
        return Flight.fly(fixed);
    }

    /** The same with its log. */
    @Benchmark
    @Says("the same flight, adaptive, with its log")
    public Outcome flightWithLog() {
        return Flight.fly(plan, new FlightLog());
    }
}
