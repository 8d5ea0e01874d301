package org.sawfly.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.sawfly.aero.ModelChoice;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Flying;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.Axes;
import org.sawfly.motion.NoTrimException;
import org.sawfly.quantity.Unit;

/**
 * How much one error of building sends the launch to the side, flown by strips with all freedoms of motion: the fast model
 * does not roll.
 *
 * @param error which
 * @param perMillimetre what 1 mm on the ruler does
 * @param perDegree what 1 degree does; null for a balance
 */
public record Straying(BenchError error, Astray perMillimetre, Astray perDegree) {
    /**
     * All errors, in the order in which they are named.
     *
     * @param scenario flown in any way; its throw is worked out anew with all freedoms
     * @param threads that work
     */
    public static List<Straying> all(Workbench bench, Scenario scenario, int threads) {
        Flying free = new Flying(
                Axes.ALL,
                ModelChoice.STRIP,
                scenario.flying().steering(),
                scenario.flying().push());
        Scenario flown = scenario.flown(free);
        Result result = bench.answer(flown);
        Squareness square = new Squareness(bench, flown, result);
        BenchError[] errors = BenchError.values();
        List<Straying> all = new ArrayList<>();
        InOrder.run(0, errors.length, threads, i -> of(square, errors[i]), all::add, () -> false);
        return Collections.unmodifiableList(all);
    }

    private static Straying of(Squareness square, BenchError error) {
        double length = error.length(square.glider());
        return new Straying(
                error,
                astray(square, error, Unit.MILLIMETRE.toSi(1) / length),
                error.isAngle() ? astray(square, error, Unit.DEGREE.toSi(1)) : null);
    }

    private static Astray astray(Squareness square, BenchError error, double amount) {
        return Astray.of(error, amount, seen(square, error, amount), seen(square, error, -amount));
    }

    private static Astray.Seen seen(Squareness square, BenchError error, double amount) {
        try {
            FlightLog log = new FlightLog();
            Outcome outcome = square.flown(error, amount, log);
            return Astray.Seen.of(log.rows(), outcome.top().course());
        } catch (NoTrimException e) {
            return Astray.Seen.NONE;
        }
    }
}
