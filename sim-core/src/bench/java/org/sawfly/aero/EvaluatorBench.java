package org.sawfly.aero;

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
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;

/**
 * The fast model of the demo glider: one evaluation of all forces in a yawing climb, the motion moving on each time as it
 * does in flight; the model built with all its tables at hand; and the tables of the wing.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class EvaluatorBench {
    private final Models models = new Models();
    private final Glider glider = Plover.glider();
    private final MassProperties mass = MassProperties.of(glider);
    private final AeroEvaluator evaluator = model().evaluator();
    private final Motion motion = motion();
    private final Loads loads = new Loads();
    private double phase;

    private static Motion motion() {
        Motion m = new Motion();
        m.density = 1.2;
        m.kinematicViscosity = 1.5e-5;
        m.gz = 9.8;
        m.elevator = -0.02;
        m.camber = -0.03;
        m.downwashLag = 0.4;
        return m;
    }

    /** All forces, moments, powers and the bending of the boom at one motion. */
    @Benchmark
    public Loads evaluation() {
        phase = phase > 1 ? 0 : phase + 1e-4;
        motion.u = 10 + 20 * phase;
        motion.v = 5 * phase - 2;
        motion.w = 1 - phase;
        motion.r = 5 - 10 * phase;
        evaluator.evaluate(motion, loads);
        return loads;
    }

    /** The model of a glider whose tables have been made before. */
    @Benchmark
    public TailVolumeModel model() {
        return TailVolumeModel.of(glider, mass, Corrections.NONE, models);
    }

    /** The tables of the wing and its wake, from estimated sections. */
    @Benchmark
    public Object wingTables() {
        return new Models().wing(glider.wing());
    }
}
