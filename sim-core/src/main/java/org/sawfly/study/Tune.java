package org.sawfly.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import org.sawfly.flight.Scenario;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Quantity;

/**
 * Finds the settings that serve an aim best, and how far each may be off before it costs anything worth mentioning. The
 * throw stays as it was seen: a better preset makes a higher launch, not a weaker arm.
 */
public final class Tune {
    /** A limit passed by a tenth of a percent of itself costs the aim as much as counts as close. */
    private static final double LIMIT_WEIGHT = 1000;
    /** Passed by no more than this it counts as kept [1]. */
    private static final double KEPT = 1e-3;
    /** Closer to an end than this share of the range, a setting leans on it. */
    private static final double LEANS = 0.01;

    private static final int BISECTIONS = 14;

    private final Workbench bench;
    private final Scenarios scenarios;
    private final List<Setting> common;
    private final Aim aim;
    private final List<Limit> limits;
    private int flights;

    /**
     * An aim.
     *
     * @param of the number to be made as large as can be
     * @param close what of it counts as nothing, in its unit
     */
    public record Aim(Quantity<Result> of, double close) {}

    /**
     * A tuning to be run.
     *
     * @param bench what the flights share
     * @param scenarios makes the scenarios
     * @param common settings all have, such as a wind
     * @param aim what is to be large
     * @param limits what has to be kept
     */
    public Tune(Workbench bench, Scenarios scenarios, List<Setting> common, Aim aim, List<Limit> limits) {
        this.bench = bench;
        this.scenarios = scenarios;
        this.common = List.copyOf(common);
        this.aim = aim;
        this.limits = List.copyOf(limits);
    }

    /**
     * Tunes.
     *
     * @throws NoAnswerException if no setting within the ends keeps the limits
     */
    public Tuned run(List<Knob> knobs, Optimiser optimiser) {
        double[] start = knobs.stream().mapToDouble(Knob::start).toArray();
        double[] low = knobs.stream().mapToDouble(Knob::low).toArray();
        double[] high = knobs.stream().mapToDouble(Knob::high).toArray();
        Optimiser.Found found = optimiser.least(at -> cost(fly(knobs, at)), start, low, high);
        double[] best = found.at();
        Result result = fly(knobs, best);
        if (result == null || Double.isNaN(value(result)) || !keeps(result)) {
            throw new NoAnswerException("no setting within the ends keeps the limits", null);
        }
        double top = value(result);
        List<Tuned.Of> settings = new ArrayList<>();
        for (int i = 0; i < best.length; i++) {
            settings.add(range(knobs, best, i, top));
        }
        return new Tuned(settings, top, touched(result), flights);
    }

    private Tuned.Of range(List<Knob> knobs, double[] best, int i, double top) {
        Knob knob = knobs.get(i);
        DoublePredicate good = x -> {
            double[] at = best.clone();
            at[i] = x;
            Result result = fly(knobs, at);
            return result != null && value(result) >= top - aim.close() && keeps(result);
        };
        double span = LEANS * (knob.high() - knob.low());
        return new Tuned.Of(
                knob,
                new Band(edge(good, best[i], knob.low()), edge(good, best[i], knob.high())),
                best[i],
                best[i] - knob.low() < span,
                knob.high() - best[i] < span);
    }

    /** How far from a good place towards an end it stays good. */
    private static double edge(DoublePredicate good, double from, double end) {
        if (good.test(end)) {
            return end;
        }
        double inside = from;
        double outside = end;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (inside + outside);
            if (good.test(middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    private Result fly(List<Knob> knobs, double[] at) {
        List<Setting> settings = new ArrayList<>(common);
        for (int i = 0; i < at.length; i++) {
            settings.add(Setting.of(knobs.get(i).path(), at[i]));
        }
        flights++;
        Scenario scenario = scenarios.with(settings);
        try {
            return bench.answer(scenario);
        } catch (NoAnswerException e) {
            return null;
        }
    }

    private double value(Result result) {
        return result == null ? Double.NaN : aim.of().value(result);
    }

    private double cost(Result result) {
        double passed = 0;
        for (Limit limit : limits) {
            passed += result == null ? 0 : limit.passedBy(result);
        }
        return LIMIT_WEIGHT * aim.close() * passed - value(result);
    }

    private boolean keeps(Result result) {
        return limits.stream().allMatch(limit -> limit.passedBy(result) <= KEPT);
    }

    /** Limits so close that they may have decided. */
    private List<Limit> touched(Result result) {
        List<Limit> touched = new ArrayList<>();
        for (Limit limit : limits) {
            double value = limit.of().value(result);
            double toLow = share(value - limit.allowed().low(), limit.allowed().low());
            double toHigh =
                    share(limit.allowed().high() - value, limit.allowed().high());
            if (toLow < LEANS || toHigh < LEANS) {
                touched.add(limit);
            }
        }
        return touched;
    }

    /** A distance from an end as a share of it; of one unit where the end is nought. */
    private static double share(double distance, double end) {
        return distance / (end == 0 ? 1 : Math.abs(end));
    }
}
