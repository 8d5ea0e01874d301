package org.sawfly.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.statistics.ShareOfVariance;

/**
 * Today and its versions answered under the same draws of everything uncertain, so that what is common to both drops out of
 * their difference. Today is number 0. The same for any number of threads.
 */
public final class PairedDraws {
    /** Reasons that explain less are not named [1]. */
    private static final double LEAST_SHARE = 0.1;

    /** Fewer draws make no range. */
    private static final int LEAST_AGREEING = 20;

    /** What was seen and fits only one draw in so many does not fit the glider. */
    private static final int MOST_LEFT_OUT = 10;

    private final List<Quantity<Result>> catalogue;
    private final int versions;
    private int drawn;
    private int agreeing;
    private final Set<Uncertain> moving = EnumSet.noneOf(Uncertain.class);
    private final List<double[]> offsets = new ArrayList<>();
    private final List<double[][]> rows = new ArrayList<>();

    /**
     * One draw.
     *
     * @param values by version and quantity, NaN where there is no answer
     * @param agrees whether today's glider flies in it as it was seen to
     */
    private record Drawn(double[] offsets, double[][] values, boolean agrees) {}

    private PairedDraws(List<Quantity<Result>> catalogue, int versions) {
        this.catalogue = List.copyOf(catalogue);
        this.versions = versions;
    }

    /**
     * Draws, and leaves out what does not agree with what was seen in flight; unless next to nothing does.
     *
     * @param bench whose tables are used
     * @param scenarios makes the scenarios
     * @param versions settings of each version; the first one is today
     * @param catalogue numbers that are kept
     * @param draws of what is uncertain
     * @param seen of today's glider
     * @param threads how many
     * @param stop asked between draws; true ends with those that are done
     */
    public static PairedDraws run(
            Workbench bench,
            Scenarios scenarios,
            List<List<Setting>> versions,
            List<Quantity<Result>> catalogue,
            Draws draws,
            SeenInFlight seen,
            int threads,
            BooleanSupplier stop) {
        List<Drawn> all = new ArrayList<>();
        PairedDraws paired = new PairedDraws(catalogue, versions.size());
        List<Draws.Base> bases =
                versions.stream().map(version -> draws.base(scenarios, version)).toList();
        bases.forEach(base -> paired.moving.addAll(base.moving()));
        InOrder.run(
                0,
                draws.count(),
                threads,
                index -> {
                    double[] offsets = draws.offsets(index);
                    Workbench own = bench.apart();
                    double[][] values = new double[bases.size()][];
                    boolean agrees = true;
                    for (int v = 0; v < values.length; v++) {
                        Answered answered =
                                Answered.of(own, scenarios, bases.get(v).settings(offsets));
                        values[v] = paired.values(answered);
                        agrees &= v > 0 || !seen.anything() || answered.flew() && seen.agrees(answered.result());
                    }
                    return new Drawn(offsets, values, agrees);
                },
                all::add,
                stop);
        paired.take(all);
        return paired;
    }

    private void take(List<Drawn> all) {
        drawn = all.size();
        agreeing = (int) all.stream().filter(Drawn::agrees).count();
        for (Drawn one : all) {
            if (one.agrees || !heeded()) {
                offsets.add(one.offsets);
                rows.add(one.values);
            }
        }
    }

    /** Whether enough draws agree with what was seen in flight for the others to be left out. */
    public boolean heeded() {
        return agreeing >= Math.min(drawn, LEAST_AGREEING) && agreeing * MOST_LEFT_OUT >= drawn;
    }

    /** How many draws were made. */
    public int drawn() {
        return drawn;
    }

    /** How many of them agree with what was seen in flight. */
    public int agreeing() {
        return agreeing;
    }

    private double[] values(Answered answered) {
        double[] values = new double[catalogue.size()];
        for (int q = 0; q < values.length; q++) {
            values[q] =
                    answered.result() == null ? Double.NaN : catalogue.get(q).value(answered.result());
        }
        return values;
    }

    /** How many draws count. */
    public int count() {
        return rows.size();
    }

    /** Draws in which a number of a version has no value: no trim, no top, not settled. */
    public int missing(int version, Quantity<Result> quantity) {
        int missing = 0;
        for (double value : column(version, quantity)) {
            missing += Double.isNaN(value) ? 1 : 0;
        }
        return missing;
    }

    /** A number of a version, in its unit. */
    public Spread value(int version, Quantity<Result> quantity) {
        return Spread.of(column(version, quantity));
    }

    /** A number of a version less the same number today, draw by draw, in its unit. */
    public Spread difference(int version, Quantity<Result> quantity) {
        return Spread.of(differences(version, quantity));
    }

    /** Why a number of a version is uncertain, the greatest share first. */
    public List<Reason> reasons(int version, Quantity<Result> quantity) {
        return reasons(column(version, quantity));
    }

    /** Why a number's difference from today is uncertain, the greatest share first. */
    public List<Reason> differenceReasons(int version, Quantity<Result> quantity) {
        return reasons(differences(version, quantity));
    }

    private List<Reason> reasons(double[] outcome) {
        Map<Uncertain, double[]> inputs = new EnumMap<>(Uncertain.class);
        moving.forEach(one -> inputs.put(one, input(one)));
        List<Reason> reasons = new ArrayList<>();
        ShareOfVariance.ranked(inputs, outcome, LEAST_SHARE)
                .forEach((one, share) -> reasons.add(new Reason(one, share)));
        return reasons;
    }

    private double[] input(Uncertain of) {
        double[] input = new double[count()];
        for (int i = 0; i < input.length; i++) {
            input[i] = offsets.get(i)[of.ordinal()];
        }
        return input;
    }

    private double[] differences(int version, Quantity<Result> quantity) {
        double[] now = column(0, quantity);
        double[] then = column(version, quantity);
        for (int i = 0; i < then.length; i++) {
            then[i] -= now[i];
        }
        return then;
    }

    private double[] column(int version, Quantity<Result> quantity) {
        int q = 0;
        while (q < catalogue.size() && !catalogue.get(q).key().equals(quantity.key())) {
            q++;
        }
        if (q == catalogue.size() || version >= versions) {
            throw new IllegalArgumentException(quantity.key() + " of version " + version + " was not drawn");
        }
        double[] column = new double[count()];
        for (int i = 0; i < column.length; i++) {
            column[i] = rows.get(i)[version][q];
        }
        return column;
    }
}
