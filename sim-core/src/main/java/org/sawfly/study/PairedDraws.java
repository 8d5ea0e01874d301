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

    private final List<Quantity<Result>> catalogue;
    private final int versions;
    private final Set<Uncertain> moving = EnumSet.noneOf(Uncertain.class);
    private final List<double[]> offsets = new ArrayList<>();
    private final List<double[][]> rows = new ArrayList<>();

    /** One draw: offsets, and values by version and quantity, NaN where there is no answer. */
    private record Drawn(double[] offsets, double[][] values) {}

    private PairedDraws(List<Quantity<Result>> catalogue, int versions) {
        this.catalogue = List.copyOf(catalogue);
        this.versions = versions;
    }

    /**
     * Draws.
     *
     * @param bench whose tables are used
     * @param scenarios makes the scenarios
     * @param versions settings of each version; the first one is today
     * @param catalogue numbers that are kept
     * @param draws of what is uncertain
     * @param threads how many
     * @param stop asked between draws; true ends with those that are done
     */
    public static PairedDraws run(
            Workbench bench,
            Scenarios scenarios,
            List<List<Setting>> versions,
            List<Quantity<Result>> catalogue,
            Draws draws,
            int threads,
            BooleanSupplier stop) {
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
                    for (int v = 0; v < values.length; v++) {
                        values[v] = paired.values(
                                Answered.of(own, scenarios, bases.get(v).settings(offsets)));
                    }
                    return new Drawn(offsets, values);
                },
                drawn -> {
                    paired.offsets.add(drawn.offsets);
                    paired.rows.add(drawn.values);
                },
                stop);
        return paired;
    }

    private double[] values(Answered answered) {
        double[] values = new double[catalogue.size()];
        for (int q = 0; q < values.length; q++) {
            values[q] =
                    answered.result() == null ? Double.NaN : catalogue.get(q).value(answered.result());
        }
        return values;
    }

    /** How many draws were made. */
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
