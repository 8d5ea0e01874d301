package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.sawfly.flight.Ended;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Vary;

/**
 * A row of a sweep in numbers alone, as it stands in CSV.
 *
 * @param values of the varied quantities, in the unit of their keys
 * @param ended how the flight ended, or why there was none
 * @param flew whether it settled
 * @param numbers in the order and units of {@link ResultQuantities#ALL}, then, where ranges are drawn, of
 *     {@link LikelyCells}; NaN for none
 */
public record VaryRow(List<Double> values, String ended, boolean flew, double[] numbers) {
    /** What prints as more than nothing [m]. */
    private static final double CLEAR = 0.05;

    private static final String SETTLED = Ended.SETTLED.words();

    /** Of a row that was just worked out, with how sure its differences from today are; null for no ranges. */
    public static VaryRow of(Vary.Row row, HowSure sure) {
        List<Double> numbers = new ArrayList<>();
        Result result = row.answered().result();
        ResultQuantities.ALL.forEach(quantity -> numbers.add(result == null ? Double.NaN : quantity.value(result)));
        if (sure != null) {
            numbers.addAll(LikelyCells.of(sure, row.index() + 1));
        }
        double[] written = numbers.stream().mapToDouble(VaryRow::written).toArray();
        return new VaryRow(row.values(), row.answered().ended(), row.answered().flew(), written);
    }

    /** As a number reads that was written to a file. */
    private static double written(double value) {
        return Double.isFinite(value) ? Double.parseDouble(Numbers.machine(value)) : Double.NaN;
    }

    /** The header line of the CSV for these paths, with ranges or without. */
    public static List<String> keys(List<String> paths, boolean ranged) {
        List<String> keys = new ArrayList<>(paths);
        keys.add("ended");
        ResultQuantities.ALL.forEach(quantity -> keys.add(quantity.key()));
        if (ranged) {
            keys.addAll(LikelyCells.keys());
        }
        return keys;
    }

    /** The cells in the order of the keys. */
    public List<Object> cells() {
        List<Object> cells = new ArrayList<>(values);
        cells.add(ended);
        Arrays.stream(numbers).forEach(cells::add);
        return cells;
    }

    /**
     * A row read back from its line of CSV; null when it is none.
     *
     * @param columns how many the header has
     */
    public static VaryRow parse(String line, int varied, int columns) {
        String plain = line.strip();
        String ended = "";
        if (plain.contains("\"")) {
            int from = plain.indexOf('"');
            int to = plain.lastIndexOf('"');
            ended = plain.substring(from + 1, to).replace("\"\"", "\"");
            plain = plain.substring(0, from) + plain.substring(to + 1);
        }
        String[] cells = plain.split(",", -1);
        if (cells.length != columns) {
            return null;
        }
        try {
            List<Double> values = new ArrayList<>();
            for (int i = 0; i < varied; i++) {
                values.add(Double.valueOf(cells[i]));
            }
            String how = ended.isEmpty() ? cells[varied] : ended;
            double[] numbers = new double[columns - varied - 1];
            for (int i = 0; i < numbers.length; i++) {
                String cell = cells[varied + 1 + i];
                numbers[i] = cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
            }
            return new VaryRow(values, how, how.equals(SETTLED), numbers);
        } catch (NumberFormatException e) {
            return null;
        }
    }

    /** A number in its unit, not rounded. */
    double value(Quantity<Result> quantity) {
        return numbers[index(quantity)];
    }

    /** A number as printed. */
    String text(Quantity<Result> quantity) {
        return Numbers.fixed(value(quantity), quantity.decimals());
    }

    /** Whether ranges were drawn. */
    boolean ranged() {
        return numbers.length > ResultQuantities.ALL.size();
    }

    /** Where a number's difference from today lies 9 times in 10, in its unit. */
    Band likely(Quantity<Result> quantity) {
        int at = ResultQuantities.ALL.size() + LikelyCells.lowOf(quantity);
        return new Band(numbers[at], numbers[at + 1]);
    }

    /** Whether the launch is clearly higher than today: a range that ends nearer to today than is printed is not clear. */
    boolean clearlyHigher() {
        return likely(ResultQuantities.APEX_HEIGHT).low() >= CLEAR;
    }

    /** Whether it is clearly lower. */
    boolean clearlyLower() {
        return likely(ResultQuantities.APEX_HEIGHT).high() <= -CLEAR;
    }

    private static int index(Quantity<Result> quantity) {
        for (int i = 0; i < ResultQuantities.ALL.size(); i++) {
            if (ResultQuantities.ALL.get(i).key().equals(quantity.key())) {
                return i;
            }
        }
        throw new IllegalArgumentException(quantity.key());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VaryRow row
                && values.equals(row.values)
                && ended.equals(row.ended)
                && Arrays.equals(numbers, row.numbers);
    }

    @Override
    public int hashCode() {
        return values.hashCode() + Arrays.hashCode(numbers);
    }
}
