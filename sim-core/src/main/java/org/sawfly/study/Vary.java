package org.sawfly.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Varies one or two quantities over their values, every combination a row. Rows are worked out in chunks on several
 * threads and handed over in order of their index, so the outcome is the same for any number of threads and the memory
 * needed does not grow with the rows.
 */
public final class Vary {
    /** More rows are refused. */
    public static final int MOST_ROWS = 2_000_000;

    private final Workbench bench;
    private final Scenarios scenarios;
    private final List<Axis> axes;

    /**
     * One row.
     *
     * @param index from 0; the last axis runs fastest
     * @param values of the axes, in their units
     * @param answered
     */
    public record Row(int index, List<Double> values, Answered answered) {}

    /**
     * A study to be run.
     *
     * @param bench what the rows share
     * @param scenarios makes the scenario of a row
     * @param axes one or more
     * @throws IllegalArgumentException for more than {@link #MOST_ROWS} rows
     */
    public Vary(Workbench bench, Scenarios scenarios, List<Axis> axes) {
        this.bench = bench;
        this.scenarios = scenarios;
        this.axes = List.copyOf(axes);
        if (count(axes) > MOST_ROWS) {
            throw new IllegalArgumentException(
                    count(axes) + " rows are more than " + MOST_ROWS + ": take larger steps or a shorter range");
        }
    }

    /** How many rows some axes have. */
    public static long count(List<Axis> axes) {
        long rows = 1;
        for (Axis axis : axes) {
            rows *= axis.values().size();
        }
        return rows;
    }

    /** How many rows there are. */
    public int rows() {
        return (int) count(axes);
    }

    /**
     * Runs it.
     *
     * @param threads how many
     * @param from index of the first row wanted; 0 for all
     * @param sink gets every row, in order, on the calling thread
     * @param stop asked between rows; true ends the run after a whole row
     */
    public void run(int threads, int from, Consumer<Row> sink, BooleanSupplier stop) {
        InOrder.run(from, rows(), threads, this::row, sink, stop);
    }

    private Row row(int index) {
        Answered answered = Answered.of(bench, scenarios, settings(index));
        if (answered.result() != null) {
            answered.result().polar().bestGlide(); // sought here, on the row's own thread
        }
        return new Row(index, values(index), answered);
    }

    /** What is set in a row. */
    public List<Setting> settings(int index) {
        List<Double> values = values(index);
        List<Setting> settings = new ArrayList<>();
        for (int a = 0; a < axes.size(); a++) {
            settings.add(Setting.of(axes.get(a).path(), values.get(a)));
        }
        return settings;
    }

    /** The values of a row, in the units of the axes. */
    public List<Double> values(int index) {
        List<Double> values = new ArrayList<>();
        int left = index;
        for (int a = axes.size() - 1; a >= 0; a--) {
            Axis axis = axes.get(a);
            values.add(0, axis.values().get(left % axis.values().size()));
            left /= axis.values().size();
        }
        return List.copyOf(values);
    }

    /** The varied paths. */
    public List<String> paths() {
        return axes.stream().map(Axis::path).toList();
    }
}
