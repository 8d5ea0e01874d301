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
import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicAxis.Ends;
import org.sawfly.math.CubicGrid3;

/**
 * One look-up in a smooth table of the size of a section table: 60 angles, 8 Reynolds numbers, 5 flap angles, three
 * channels (cl, cd, cm). The place asked for moves on each time, as it does in flight.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SmoothTableBench {
    private static final int CHANNELS = 3;

    private final double[] out = new double[CHANNELS];
    private final CubicGrid3 grid = table();
    private double place;

    /** Value of the three channels. */
    @Benchmark
    public double[] value() {
        place = place > 0.9 ? 0.1 : place + 0.001;
        grid.at(place, place, place, out);
        return out;
    }

    /** Slope of the three channels with the angle. */
    @Benchmark
    public double[] slope() {
        place = place > 0.9 ? 0.1 : place + 0.001;
        grid.slopesFirst(place, place, place, out);
        return out;
    }

    private static CubicGrid3 table() {
        CubicAxis angle = CubicAxis.uniform(Ends.FLAT, 0, 1, 60);
        CubicAxis reynolds = CubicAxis.uniform(Ends.FLAT, 0, 1, 8);
        CubicAxis flap = CubicAxis.uniform(Ends.FLAT, 0, 1, 5);
        double[] values = new double[60 * 8 * 5 * CHANNELS];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.sin(i);
        }
        return new CubicGrid3(angle, reynolds, flap, CHANNELS, values);
    }
}
