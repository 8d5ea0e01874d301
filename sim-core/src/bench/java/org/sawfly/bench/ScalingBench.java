package org.sawfly.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.sawfly.file.StudyFile;
import org.sawfly.study.Axis;
import org.sawfly.study.Vary;
import org.sawfly.study.Workbench;

/** A whole study, on one and on two threads. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 2)
public class ScalingBench {
    private static final int ROWS = 10_000;
    private static final double LONGEST_CUT = 80;

    /** Threads that work out rows. */
    @Param({"1", "2"})
    public int threads;

    private final Workbench bench = new Workbench();
    private final StudyFile study = Demo.study();

    /** 10 000 rows in order. */
    @Benchmark
    @Says("study of 10 000 rows")
    public double study() {
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            cuts.add(LONGEST_CUT * i / ROWS);
        }
        Vary vary = new Vary(bench, study.scenarios(), List.of(new Axis("boom.cut_mm", cuts)));
        double[] sum = new double[1];
        vary.run(
                threads,
                0,
                row -> sum[0] += row.answered().result().outcome().top().height(),
                () -> false);
        return sum[0];
    }
}
