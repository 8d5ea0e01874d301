package org.sawfly.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.sawfly.air.Air;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.Glider;
import org.sawfly.motion.Axes;
import org.sawfly.motion.NoTrimException;
import org.sawfly.quantity.Unit;

/** Flies one glider as it would be with an error of building, each time with the same throw. For any thread. */
public final class Squareness {
    private static final double[] DEGREES = {0.5, 1, 2, 4};
    private static final double[] MILLIMETRES = {1, 2, 4, 8};
    private static final int REFINED = 2;

    private final Workbench bench;
    private final Scenario scenario;
    private final Result result;
    private final Built square;

    /** A glider as it was built. */
    record Built(double height, double sink, double elevatorDown, double swing) {
        static final Built NONE = new Built(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /**
     * Of an answered scenario.
     *
     * @param result the answer of the scenario as it is
     */
    public Squareness(Workbench bench, Scenario scenario, Result result) {
        this.bench = bench;
        this.scenario = scenario;
        this.result = result;
        this.square = built(BenchError.FIN_SKEW, 0);
    }

    /** Least sink without any error [m/s]. */
    public double sink() {
        return square.sink();
    }

    /**
     * What an error of a size costs.
     *
     * @param amount [rad], for a balance [m], above 0
     */
    public Tolerance of(BenchError error, double amount) {
        return Tolerance.of(error, amount, square, built(error, amount), built(error, -amount));
    }

    /**
     * All errors that the model sees, what matters first.
     *
     * @param height the cost looked for [m]
     * @param sinkShare the cost looked for as a part of the least sink [1]
     * @param threads that work
     */
    public List<Sensitivity> all(double height, double sinkShare, int threads) {
        ExecutorService workers = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "bench error");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<Sensitivity>> work = new ArrayList<>();
            for (BenchError error : BenchError.values()) {
                if (error.seen() || result.plan().axes() == Axes.ALL) {
                    work.add(workers.submit(() -> sensitivity(error, height, sinkShare)));
                }
            }
            List<Sensitivity> all = new ArrayList<>();
            for (Future<Sensitivity> one : work) {
                all.add(one.get());
            }
            all.sort(Comparator.comparingDouble(Sensitivity::heightReading));
            return Collections.unmodifiableList(all);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException known ? known : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } finally {
            workers.shutdownNow();
        }
    }

    private Sensitivity sensitivity(BenchError error, double height, double sinkShare) {
        double length = error.length(glider());
        Tolerance perMillimetre = of(error, Unit.MILLIMETRE.toSi(1) / length);
        Unit unit = error.isAngle() ? Unit.DEGREE : Unit.MILLIMETRE;
        List<Tolerance> tried = new ArrayList<>();
        for (double size : error.isAngle() ? DEGREES : MILLIMETRES) {
            tried.add(of(error, unit.toSi(size)));
        }
        Tolerance perDegree = error.isAngle() ? tried.get(1) : null;
        double costsHeight = size(error, tried, one -> -one.height(), height);
        double costsSink = size(error, tried, Tolerance::sink, sinkShare * square.sink());
        return new Sensitivity(error, length, perMillimetre, perDegree, costsHeight, costsSink);
    }

    private interface Cost {
        double of(Tolerance tried);
    }

    /** The size that has a cost, by a power law between two sizes, twice refined; infinite when none tried has it. */
    private double size(BenchError error, List<Tolerance> tried, Cost cost, double wanted) {
        Tolerance below = null;
        Tolerance above = null;
        for (Tolerance one : tried) {
            if (!(cost.of(one) < wanted)) {
                above = one;
                break;
            }
            below = one;
        }
        if (above == null) {
            return Double.POSITIVE_INFINITY;
        }
        for (int pass = 0; pass < REFINED && !Double.isNaN(cost.of(above)); pass++) {
            double between = between(below, above, cost, wanted);
            Tolerance one = of(error, between);
            if (cost.of(one) < wanted) {
                below = one;
            } else {
                above = one;
            }
        }
        return Double.isNaN(cost.of(above)) ? above.amount() : between(below, above, cost, wanted);
    }

    /** Straight from no error, else by a power law; half way where the cost below is none. */
    private static double between(Tolerance below, Tolerance above, Cost cost, double wanted) {
        double high = cost.of(above);
        if (below == null) {
            return above.amount() * wanted / high;
        }
        double low = cost.of(below);
        if (low <= 0) {
            return below.amount() + (above.amount() - below.amount()) * (wanted - low) / (high - low);
        }
        double power = Math.log(wanted / low) / Math.log(high / low);
        return below.amount() * Math.pow(above.amount() / below.amount(), power);
    }

    private Glider glider() {
        return result.plan().craft().glider();
    }

    private Built built(BenchError error, double amount) {
        FlightPlan plan = result.plan();
        Air air = plan.launch().weather().ground();
        try {
            Craft craft = Craft.of(
                    error.on(glider(), amount),
                    scenario.corrections()
                            .withBench(scenario.corrections().bench().plus(error.of(amount))),
                    bench.models(),
                    scenario.flying().model(),
                    scenario.settings(),
                    air);
            Outcome outcome = Flight.fly(new FlightPlan(
                    craft,
                    plan.launch(),
                    plan.releaseSpeed(),
                    plan.yawRate(),
                    Workbench.presetFrom(craft, craft, plan.launch()),
                    plan.axes(),
                    plan.steering(),
                    plan.integrator()));
            return new Built(
                    outcome.settled().height(),
                    GlidePolar.of(craft, scenario.settings(), air).leastSink().sink(),
                    Deflections.deflection(
                            craft.cruise().elevator(), craft.deflections().elevatorChord()),
                    outcome.swing().first());
        } catch (NoTrimException e) {
            return Built.NONE;
        }
    }
}
