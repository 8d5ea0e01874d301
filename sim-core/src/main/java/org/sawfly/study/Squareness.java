package org.sawfly.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.sawfly.aero.Corrections;
import org.sawfly.air.Air;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightLog;
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
        List<BenchError> errors = Stream.of(BenchError.values())
                .filter(error -> error.seen() || result.plan().axes() == Axes.ALL)
                .toList();
        List<Sensitivity> all = new ArrayList<>();
        InOrder.run(
                0, errors.size(), threads, i -> sensitivity(errors.get(i), height, sinkShare), all::add, () -> false);
        all.sort(Comparator.comparingDouble(Sensitivity::heightReading));
        return Collections.unmodifiableList(all);
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

    Glider glider() {
        return result.plan().craft().glider();
    }

    /**
     * The flight with an error of building.
     *
     * @param amount [rad], for a balance [m], either way
     * @param log writes the flight down
     * @throws NoTrimException if it cannot be trimmed
     */
    Outcome flown(BenchError error, double amount, FlightLog log) {
        return Flight.fly(plan(craft(error, amount)), log);
    }

    private Craft craft(BenchError error, double amount) {
        Corrections square = scenario.corrections();
        return bench.craft(
                error.on(glider(), amount),
                scenario,
                square.withBench(square.bench().plus(error.of(amount))));
    }

    private FlightPlan plan(Craft craft) {
        FlightPlan plan = result.plan();
        return plan.withCraft(craft, Workbench.presetFrom(craft, craft, plan.launch()));
    }

    private Air air() {
        return result.plan().launch().weather().ground();
    }

    private Built built(BenchError error, double amount) {
        try {
            Craft craft = craft(error, amount);
            Outcome outcome = Flight.fly(plan(craft));
            return new Built(
                    outcome.settled().height(),
                    GlidePolar.of(craft, scenario.settings(), air()).leastSink().sink(),
                    Deflections.deflection(
                            craft.cruise().elevator(), craft.deflections().elevatorChord()),
                    outcome.swing().first());
        } catch (NoTrimException e) {
            return Built.NONE;
        }
    }
}
