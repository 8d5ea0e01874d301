package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.cli.chart.Figure;
import org.sawfly.cli.chart.Mark;
import org.sawfly.cli.chart.VaryFigure;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** The chart of a sweep. */
final class VaryPicture {
    /** Heights further apart than this [m] are not told as lying close together. */
    private static final double WIDE = 3;

    private VaryPicture() {}

    static Figure of(VaryAnswer.Asked asked, VaryRows rows, Result today, List<Limit.Passed> passed) {
        VariedAxis axis = asked.axes().get(0);
        List<Mark.Upright> uprights = new ArrayList<>();
        for (Limit.Passed one : passed) {
            uprights.add(new Mark.Upright(one.x(), one.limit().name() + ", " + axis.rounded(one.x())));
        }
        double swing = Unit.DEGREE.fromSi(asked.stopWhen().firstSwingAbove());
        VaryFigure.Marks marks = new VaryFigure.Marks(
                axis.today(), today.plan().launch().thrower().heightScatter(), swing, 0, uprights);
        String foot = today.plan().craft().glider().name() + ", thrown by "
                + today.plan().launch().name() + "; "
                + ChangeWords.keeps(asked.scenario().rebalance()) + " "
                + ChangeWords.rules(asked.scenario());
        VaryFigure.Words words = new VaryFigure.Words(title(asked, rows), caption(axis, rows), foot, axis.title());
        VaryFigure.Titles titles = new VaryFigure.Titles(
                ResultQuantities.APEX_HEIGHT,
                ResultQuantities.FIRST_SWING,
                ResultQuantities.LAUNCH_MARGIN,
                leans(today) ? ResultQuantities.SLANT : ResultQuantities.MIN_SINK,
                leans(today));
        return VaryFigure.of(words, titles, families(asked, rows, today), marks);
    }

    /** Where the height of a row lies 9 times in 10 when today's is what it is; null where no ranges were drawn. */
    private static Band likely(VaryRow row, Result today) {
        if (!row.ranged()) {
            return null;
        }
        double height = ResultQuantities.APEX_HEIGHT.value(today);
        Band change = row.likely(ResultQuantities.APEX_HEIGHT);
        return new Band(height + change.low(), height + change.high());
    }

    private static List<VaryFigure.Family> families(VaryAnswer.Asked asked, VaryRows rows, Result today) {
        Map<String, List<VaryFigure.Row>> byName = new LinkedHashMap<>();
        if (asked.axes().size() > 1) {
            // today's family comes first: it is drawn solid and carries today's numbers
            VariedAxis second = asked.axes().get(1);
            byName.put(name(second, second.today()), new ArrayList<>());
        }
        for (VaryRow row : rows.rows()) {
            String name = asked.axes().size() > 1
                    ? name(asked.axes().get(1), row.values().get(1))
                    : "";
            byName.computeIfAbsent(name, unused -> new ArrayList<>())
                    .add(new VaryFigure.Row(
                            row.values().get(0),
                            row.value(ResultQuantities.APEX_HEIGHT),
                            asked.axes().size() > 1 ? null : likely(row, today),
                            row.value(ResultQuantities.FIRST_SWING),
                            row.value(ResultQuantities.LAUNCH_MARGIN),
                            row.value(leans(today) ? ResultQuantities.SLANT : ResultQuantities.MIN_SINK)));
        }
        if (asked.axes().size() == 1 && rows.rows().get(0).ranged()) {
            putToday(asked.axes().get(0), today, byName.get(""));
        }
        List<VaryFigure.Family> families = new ArrayList<>();
        byName.forEach((name, list) -> {
            if (!list.isEmpty()) {
                families.add(new VaryFigure.Family(name, list));
            }
        });
        return families;
    }

    /** Today itself is sure: where it stands between two rows, the band narrows to its height. */
    private static void putToday(VariedAxis axis, Result today, List<VaryFigure.Row> rows) {
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i - 1).x() < axis.today() && axis.today() < rows.get(i).x()) {
                double height = ResultQuantities.APEX_HEIGHT.value(today);
                rows.add(
                        i,
                        new VaryFigure.Row(
                                axis.today(),
                                height,
                                new Band(height, height),
                                ResultQuantities.FIRST_SWING.value(today),
                                ResultQuantities.LAUNCH_MARGIN.value(today),
                                (leans(today) ? ResultQuantities.SLANT : ResultQuantities.MIN_SINK).value(today)));
                return;
            }
        }
    }

    /** Whether the glider is free to roll, so that the climb may lean. */
    private static boolean leans(Result today) {
        return today.plan().axes() == Axes.ALL;
    }

    private static String name(VariedAxis axis, double value) {
        return axis.name() + " " + axis.textWithUnit(value);
    }

    private static String title(VaryAnswer.Asked asked, VaryRows rows) {
        double low = rows.rows().stream()
                .mapToDouble(row -> row.value(ResultQuantities.APEX_HEIGHT))
                .filter(Double::isFinite)
                .min()
                .orElse(Double.NaN);
        double high = rows.rows().stream()
                .mapToDouble(row -> row.value(ResultQuantities.APEX_HEIGHT))
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
        Difference spread = new Difference(low, high, Unit.METRE, 1);
        String glider = asked.title();
        return Double.isNaN(spread.amount())
                ? glider
                : glider
                        + (spread.same()
                                ? ": no difference in height"
                                : (spread.amount() > WIDE ? ": launch heights " : ": all within ")
                                        + Numbers.fixed(spread.amount(), 1)
                                        + (spread.amount() > WIDE ? " m apart" : " m of launch height"));
    }

    private static String caption(VariedAxis axis, VaryRows rows) {
        VaryRow first = rows.rows().get(0);
        VaryRow last = rows.rows().get(rows.rows().size() - 1);
        Difference sink = new Difference(
                first.value(ResultQuantities.MIN_SINK),
                last.value(ResultQuantities.MIN_SINK),
                Unit.METRE_PER_SECOND,
                2);
        return axis.understood() + "; least sink from one end to the other: " + sink.words(Direction.AMOUNT);
    }
}
