package org.sawfly.bench;

import java.util.List;
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
import org.sawfly.aero.Models;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Craft;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.Glide;
import org.sawfly.stability.Margins;
import org.sawfly.study.Result;
import org.sawfly.study.Setting;
import org.sawfly.study.Workbench;

/** What a row of a study is made of; the boom is cut by another tenth of a millimetre each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class StudyBench {
    private static final double LAUNCH_SPEED = 33;

    private final ScenarioFile scenarios = Demo.study().scenarios();
    private final Workbench bench = new Workbench();
    private final Models models = new Models();
    private final Scenario demo = Demo.scenario();
    private final Craft craft = model();
    private int row;

    private Scenario next() {
        row = row < 800 ? row + 1 : 0;
        return scenarios.with(List.of(Setting.of("boom.cut_mm", 0.1 * row)));
    }

    private Craft of(Models known) {
        return Craft.of(
                demo.glider(),
                demo.corrections(),
                known,
                demo.settings(),
                demo.launch().weather().ground());
    }

    /** A setting laid over the files and all read again. */
    @Benchmark
    @Says("scenario of a row: files read again with a setting")
    public Scenario scenario() {
        return next();
    }

    /** Weighed, modelled, trimmed; tables of all surfaces known. */
    @Benchmark
    @Says("glider made ready, tables of its surfaces built before")
    public Craft model() {
        return of(models);
    }

    /** The same with all tables built. */
    @Benchmark
    @Says("glider made ready, tables built with it (on two threads)")
    public Craft modelFromNothing() {
        return of(new Models());
    }

    /** Margins of a glider. */
    @Benchmark
    @Says("margins: three neutral points")
    public Margins margins() {
        return Margins.of(
                demo.glider(),
                demo.corrections(),
                models,
                demo.launch().weather().ground(),
                LAUNCH_SPEED);
    }

    /** Least sink and best glide of three settings. */
    @Benchmark
    @Says("least sink and best glide of three settings")
    public Glide glide() {
        return GlidePolar.of(craft, demo.settings(), demo.launch().weather().ground())
                .bestGlide();
    }

    /** Read, rebalanced, made ready, flown, margins, glide. */
    @Benchmark
    @Says("row of a study: read, rebalanced to the margin, made ready, flown, margins, glide")
    public Result row() {
        Result result = bench.answer(next());
        result.polar().bestGlide();
        return result;
    }
}
