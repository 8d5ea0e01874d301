package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** What decides a sweep of one quantity, said last. */
final class VaryVerdict {
    /** Heights within so much are flat [m]: what a log shows of launch heights on one evening. */
    private static final double FLAT = Seeing.HEIGHT_M;

    private final Answer answer;
    private final VariedAxis axis;
    private final List<VaryRow> flown;
    /** Rows with margin left at launch speed: what a step does is told of them. */
    private final List<VaryRow> sound;

    private final Result today;

    VaryVerdict(Answer answer, VariedAxis axis, VaryRows rows, Result today) {
        this.answer = answer;
        this.axis = axis;
        this.flown = rows.rows().stream().filter(VaryRow::flew).toList();
        this.today = today;
        List<VaryRow> withMargin = flown.stream()
                .filter(row -> row.value(ResultQuantities.LAUNCH_MARGIN) > 0)
                .toList();
        this.sound = axis.isCg() && withMargin.size() > 1 ? withMargin : flown;
    }

    void write(List<Limit.Passed> passed) {
        if (flown.isEmpty()) {
            answer.verdict("No launch in this range settles into a glide: there is nothing to choose from.");
            return;
        }
        if (Cautions.littleMargin(today)) {
            answer.verdict("Today already there is little or no margin at launch speed: put the CG forward first.");
        }
        if (flown.size() == 1) {
            one(flown.get(0));
        } else {
            heights();
            clear();
        }
        stops(passed);
    }

    /** A single row beside today. */
    private void one(VaryRow row) {
        Quantity<Result> height = ResultQuantities.APEX_HEIGHT;
        Difference change = new Difference(height.value(today), row.value(height), height.unit(), height.decimals());
        String at = "At " + axis.textWithUnit(row.values().get(0)) + " the launch is ";
        answer.results().put("height_change_m", change.amount(), height.decimals());
        boolean open = row.ranged() && !row.clearlyHigher() && !row.clearlyLower();
        answer.verdict(
                axis.isToday(row.values().get(0))
                        ? "That is today's value: nothing is varied."
                        : open
                                ? at + "not clearly higher or lower than today."
                                : at
                                        + (change.same()
                                                ? "as high as today."
                                                : change.words(Direction.HEIGHT) + " than today."));
    }

    private void heights() {
        VaryRow lowest = flown.get(0);
        VaryRow highest = flown.get(0);
        for (VaryRow row : flown) {
            lowest = height(row) < height(lowest) ? row : lowest;
            highest = height(row) > height(highest) ? row : highest;
        }
        Difference spread = of(ResultQuantities.APEX_HEIGHT, lowest, highest);
        String amount = answer.results().put("height_spread_m", spread.amount(), 1);
        String range = axis.text(flown.get(0).values().get(0)) + " to "
                + axis.textWithUnit(flown.get(flown.size() - 1).values().get(0));
        boolean ends = highest == flown.get(0) || highest == flown.get(flown.size() - 1);
        if (spread.amount() <= FLAT) {
            answer.verdict(
                    "Flat: " + range + " all within " + amount + " m. There is no best " + what() + " in this range.");
        } else if (axis.isCg() || flown.size() < 3) {
            steps();
        } else if (ends) {
            answer.verdict("From " + range + " the launch changes by " + amount
                    + " m, little by little, the highest at "
                    + axis.textWithUnit(highest.values().get(0)) + ". " + steps(ResultQuantities.APEX_HEIGHT) + ".");
        } else {
            answer.verdict("Highest at " + axis.textWithUnit(highest.values().get(0)) + ", "
                    + Numbers.fixed(spread.amount(), 1) + " m above the lowest.");
        }
    }

    /** Which rows launch clearly higher or lower than today, where ranges are known. */
    private void clear() {
        if (!flown.get(0).ranged()) {
            return;
        }
        List<VaryRow> others =
                flown.stream().filter(row -> !axis.isToday(row.values().get(0))).toList();
        List<VaryRow> higher = others.stream().filter(VaryRow::clearlyHigher).toList();
        List<VaryRow> lower = others.stream().filter(VaryRow::clearlyLower).toList();
        if (higher.isEmpty() && lower.isEmpty()) {
            answer.verdict("Nowhere is the launch clearly higher or lower than today.");
        }
        clear(higher, others, "higher");
        clear(lower, others, "lower");
    }

    private void clear(List<VaryRow> clear, List<VaryRow> others, String word) {
        if (clear.isEmpty()) {
            return;
        }
        int from = others.indexOf(clear.get(0));
        boolean together = others.indexOf(clear.get(clear.size() - 1)) - from == clear.size() - 1;
        String first = axis.textWithUnit(clear.get(0).values().get(0));
        String last = axis.textWithUnit(clear.get(clear.size() - 1).values().get(0));
        Fields fields = answer.results();
        fields.put("rows_clearly_" + word, clear.size());
        String where = clear.size() == 1
                ? "at " + first
                : together ? "from " + first + " to " + last : "in " + clear.size() + " of the rows";
        answer.verdict("Clearly " + word + " than today " + where + ".");
    }

    private String what() {
        return axis.isCut() ? "length" : axis.isCg() ? "place" : "value";
    }

    /** What each step does, on the average of the range. */
    private void steps() {
        List<String> words = new ArrayList<>();
        words.add(step(ResultQuantities.MIN_SINK, "sink", Direction.AMOUNT, 2));
        words.add(step(ResultQuantities.APEX_HEIGHT, "launch", Direction.HEIGHT, 1));
        words.add(step(ResultQuantities.STATIC_MARGIN, "margin", Direction.AMOUNT, 1));
        String step = axis.step(stepSize());
        String where = axis.text(first().values().get(0)) + " to "
                + axis.textWithUnit(last().values().get(0));
        String part = sound.size() < flown.size()
                ? "From " + where + ", " + Character.toLowerCase(step.charAt(0)) + step.substring(1)
                : step;
        answer.verdict(part + ": " + String.join(", ", words) + ".");
    }

    private String steps(Quantity<Result> quantity) {
        return axis.step(stepSize()) + " makes " + step(quantity, "the launch", Direction.HEIGHT, 2);
    }

    private double stepSize() {
        double size = (last().values().get(0) - first().values().get(0)) / (sound.size() - 1);
        return Numbers.rounded(size, 6);
    }

    private String step(Quantity<Result> quantity, String name, Direction direction, int decimals) {
        double one = (last().value(quantity) - first().value(quantity)) / (sound.size() - 1);
        Difference difference = new Difference(0, one, quantity.unit(), decimals);
        answer.results().section("each_step").put(quantity.key(), difference.amount(), decimals);
        return name + (difference.same() ? " the same" : " " + difference.words(direction));
    }

    private void stops(List<Limit.Passed> passed) {
        Limit.Passed nearest = null;
        for (Limit.Passed one : passed) {
            boolean usual = one.limit().equals(Limit.usualFin()) || one.limit().equals(Limit.usualTailplane());
            boolean closer = nearest == null || Math.abs(one.x() - axis.today()) < Math.abs(nearest.x() - axis.today());
            if (!one.beyond() && !usual && closer) {
                nearest = one;
            }
        }
        if (nearest != null) {
            answer.verdict((nearest.upwards() ? "Beyond " : "Below ") + axis.rounded(nearest.x()) + " "
                    + nearest.limit().words() + ".");
        }
    }

    private VaryRow first() {
        return sound.get(0);
    }

    private VaryRow last() {
        return sound.get(sound.size() - 1);
    }

    private static double height(VaryRow row) {
        return Numbers.rounded(row.value(ResultQuantities.APEX_HEIGHT), 1);
    }

    private static Difference of(Quantity<Result> quantity, VaryRow before, VaryRow after) {
        return new Difference(before.value(quantity), after.value(quantity), quantity.unit(), quantity.decimals());
    }
}
