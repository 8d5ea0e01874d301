package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.flight.Scenario;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.StopWhen;

/** What varying one or two quantities shows: the table, where something gives out, and how far to go. */
public final class VaryAnswer {
    private static final String TODAY = "<- today";
    private static final int MOST_LINES = 14;
    private static final int MOST_REASONS = 3;
    private static final double NOUGHT_POINT_ONE = 0.05;

    /** Stands beside a row with little margin or without a launch. */
    private static final String DOUBTED = "! ";

    private final Answer answer = new Answer("vary");
    private final Asked asked;
    private final VaryRows rows;
    private final Result today;
    private final HowSure sure;

    /**
     * What was asked.
     *
     * @param title in one line
     * @param axes one or two
     * @param stopWhen where something gives out
     * @param scenario of today, for the rules
     */
    public record Asked(String title, List<VariedAxis> axes, StopWhen stopWhen, Scenario scenario) {}

    private VaryAnswer(Asked asked, VaryRows rows, Result today, HowSure sure) {
        this.asked = asked;
        this.rows = rows;
        this.today = today;
        this.sure = sure;
    }

    /**
     * The whole answer.
     *
     * @param sure how sure the differences of the rows from today are, when all rows are kept; null for no ranges
     */
    public static Answer of(Asked asked, VaryRows rows, Result today, HowSure sure) {
        VaryAnswer made = new VaryAnswer(asked, rows, today, sure);
        made.write();
        return made.answer;
    }

    private void write() {
        inputs();
        answer.sayFlush(asked.title());
        answer.say(ChangeWords.keeps(asked.scenario().rebalance()) + " "
                + ChangeWords.rules(asked.scenario()) + "; "
                + today.plan().launch().name() + " throws.");
        answer.gap();
        answer.results().section("today").putAll(ResultQuantities.ALL, today);
        Rows table = new Rows(
                VaryRow.keys(asked.axes().stream().map(VariedAxis::path).toList(), sure != null));
        rows.rows().forEach(row -> table.add(row.cells()));
        answer.rows(table);
        if (sure != null) {
            sure.put(answer.results());
        }
        if (rows.rows().stream().anyMatch(row -> FarSwing.of(row, today))) {
            FarSwing.say(answer);
        }
        if (asked.axes().size() == 1) {
            one();
        } else {
            new VaryGrid(answer, asked, rows, today).write();
        }
        for (VariedAxis axis : asked.axes()) {
            Cautions.of(List.of(new org.sawfly.study.Setting(axis.path(), ""))).forEach(answer::caution);
        }
        boolean marked = asked.axes().size() == 1 && rows.rows().stream().anyMatch(Cautions::littleMargin);
        if (marked && !Cautions.littleMargin(today)) {
            answer.caution(Cautions.LITTLE_MARGIN_IN_ROWS);
        }
        Cautions.of(today).forEach(answer::caution);
    }

    private void inputs() {
        Fields inputs = answer.inputs();
        inputs.put("glider", today.plan().craft().glider().name());
        inputs.put("launch", today.plan().launch().name());
        inputs.put("preset_rule", ChangeWords.rules(asked.scenario()));
        for (VariedAxis axis : asked.axes()) {
            Fields one = inputs.item("vary");
            one.put("path", axis.path());
            one.put("understood", axis.understood());
            one.put("today", axis.today(), 0);
        }
        inputs.put("rows", rows.seen());
        answer.results().put("rows_kept_one_in", rows.every());
        answer.results().put("rows_flown", rows.flown());
    }

    private void one() {
        VariedAxis axis = asked.axes().get(0);
        VaryColumns columns = new VaryColumns(axis, today.plan().axes());
        answer.table(table(axis, columns));
        if (!columns.note().isEmpty()) {
            answer.say(columns.note());
        }
        if (sure != null) {
            howSure(axis);
        }
        answer.gap();
        lead(axis);
        List<Limit.Passed> passed = limits(axis);
        notFlown(axis);
        answer.figure(VaryPicture.of(asked, rows, today, passed));
        new VaryVerdict(answer, axis, rows, today).write(passed);
    }

    /** Why rows have no launch to show, for each stretch of the range with the same reason. */
    private void notFlown(VariedAxis axis) {
        List<VaryRow> all = rows.rows();
        int said = 0;
        for (int i = 0; i < all.size() && said < MOST_REASONS; i++) {
            if (all.get(i).flew()) {
                continue;
            }
            int from = i;
            String why = all.get(i).ended();
            while (i + 1 < all.size()
                    && !all.get(i + 1).flew()
                    && all.get(i + 1).ended().equals(why)) {
                i++;
            }
            String first = axis.textWithUnit(all.get(from).values().get(0));
            String last = axis.textWithUnit(all.get(i).values().get(0));
            String where = from == i ? "At " + first : "From " + first + " to " + last;
            say(where + ": " + why + ".");
            said++;
        }
    }

    private Table table(VariedAxis axis, VaryColumns columns) {
        Table table = new Table(2, 2).right(axis.heading());
        table.right("launch", "height");
        table.left(sure == null ? new String[] {"against", "today"} : new String[] {"against", "today,", "9 in 10"});
        columns.addTo(table);
        table.left("");
        List<VaryRow> shown = shown(axis);
        boolean among = shown.stream().anyMatch(row -> axis.isToday(row.values().get(0)));
        double before = 0;
        boolean written = among;
        for (VaryRow row : shown) {
            double x = row.values().get(0);
            if (!written && x > axis.today()) {
                table.row(todayCells(axis, columns));
                written = true;
            }
            List<String> cells = new ArrayList<>();
            cells.add(axis.text(x));
            cells.add(row.text(ResultQuantities.APEX_HEIGHT));
            Difference difference = difference(ResultQuantities.APEX_HEIGHT, row);
            Fields told = answer.results().item("shown");
            told.put(axis.path(), x, 0);
            told.put("apex_height_change_m", difference.amount(), difference.decimals());
            boolean again = difference.amount() * before > 0;
            if (sure == null) {
                cells.add(axis.isToday(x) ? "" : against(difference, again));
            } else {
                told.band("apex_height_change_m", row.likely(ResultQuantities.APEX_HEIGHT), 1);
                cells.add(axis.isToday(x) ? TODAY : likely(row));
            }
            before = axis.isToday(x) ? 0 : difference.amount();
            cells.addAll(columns.cells(row));
            boolean doubted = !row.flew() || Cautions.littleMargin(row);
            told.put("marked", doubted);
            cells.add((doubted ? DOUBTED : "") + (axis.isToday(x) && sure == null ? TODAY : ""));
            table.row(cells);
        }
        if (!written && Double.isFinite(axis.today())) {
            table.row(todayCells(axis, columns));
        }
        return table;
    }

    /** Today's line where no row has today's value. */
    private List<String> todayCells(VariedAxis axis, VaryColumns columns) {
        List<String> cells = new ArrayList<>();
        cells.add(Numbers.shortest(axis.today(), 1));
        cells.add(ResultQuantities.APEX_HEIGHT.text(today));
        cells.add(sure == null ? "" : TODAY);
        cells.addAll(columns.cells(today));
        cells.add((Cautions.littleMargin(today) ? DOUBTED : "") + (sure == null ? TODAY : ""));
        return cells;
    }

    /** A range: with its word where it lies clearly on one side. */
    private static String likely(VaryRow row) {
        Quantity<Result> height = ResultQuantities.APEX_HEIGHT;
        Band likely = row.likely(height);
        if (Double.isNaN(likely.low())) {
            return Numbers.NONE;
        }
        boolean lower = row.clearlyLower();
        if (!lower && !row.clearlyHigher()) {
            String low = Numbers.fixed(likely.low(), height.decimals());
            String high = Numbers.fixed(likely.high(), height.decimals());
            return low.equals(high) ? Difference.SAME : low + " to " + high;
        }
        String sizes = Numbers.range(lower ? likely.negated() : likely, height.decimals());
        return sizes + (lower ? " lower" : " higher");
    }

    /** What the column of ranges means, and why the widest of them is as wide. */
    private void howSure(VariedAxis axis) {
        List<VaryRow> all = rows.rows();
        int widest = 0;
        for (int i = 0; i < all.size(); i++) {
            widest = width(all.get(i)) > width(all.get(widest)) ? i : widest;
        }
        Fields fields = answer.results().section("widest_range");
        fields.put(axis.path(), all.get(widest).values().get(0), 0);
        sure.putReasons(widest + 1, fields);
        String why = sure.reasons(widest + 1);
        answer.say("  Against today: m of launch, 9 times in 10; clear where it says lower or higher."
                + (why.isEmpty() ? "" : " Why so wide: " + why + ".")
                + sure.seen());
    }

    private static double width(VaryRow row) {
        Band likely = row.likely(ResultQuantities.APEX_HEIGHT);
        return likely.high() - likely.low();
    }

    /** The difference in words; the number alone where the row above goes the same way. */
    private static String against(Difference difference, boolean again) {
        return again
                ? Numbers.fixed(Math.abs(difference.amount()), difference.decimals())
                : difference.wordsWithoutUnit(Direction.HEIGHT);
    }

    private Difference difference(Quantity<Result> quantity, VaryRow row) {
        return new Difference(quantity.value(today), row.value(quantity), quantity.unit(), quantity.decimals());
    }

    /** At most so many rows, evenly, the ends and today's among them. */
    private List<VaryRow> shown(VariedAxis axis) {
        List<VaryRow> all = rows.rows();
        int every = (all.size() + MOST_LINES - 1) / MOST_LINES;
        if (every > 1) {
            answer.results().put("table_shows_one_in", (long) every * rows.every());
        }
        List<VaryRow> shown = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            boolean wanted = i % every == 0
                    || i == all.size() - 1
                    || axis.isToday(all.get(i).values().get(0));
            if (wanted) {
                shown.add(all.get(i));
            }
        }
        return shown;
    }

    /** Up to where a new joint weighs what the cut saves. */
    private void lead(VariedAxis axis) {
        if (!axis.isCut()) {
            return;
        }
        double before = ResultQuantities.NOSE_LEAD.shown(today);
        double upTo = Double.NaN;
        for (VaryRow row : rows.rows()) {
            double lead = Numbers.rounded(row.value(ResultQuantities.NOSE_LEAD), 1);
            double x = row.values().get(0);
            if (x > 0 && !(lead >= before)) {
                break;
            }
            upTo = x > 0 ? x : upTo;
        }
        boolean moved = rows.rows().stream()
                .anyMatch(row -> Math.abs(row.value(ResultQuantities.NOSE_LEAD) - before) > NOUGHT_POINT_ONE);
        if (moved && upTo > 0) {
            answer.results().put("no_lead_out_up_to_mm", upTo, 0);
            answer.say("  Up to " + axis.textWithUnit(upTo)
                    + " no lead comes out: the new joint weighs what the cut saves.");
        }
    }

    private List<Limit.Passed> limits(VariedAxis axis) {
        List<Limit.Passed> all = new ArrayList<>();
        double first = rows.rows().get(0).values().get(0);
        double last = rows.rows().get(rows.rows().size() - 1).values().get(0);
        boolean inside = rows.rows().stream().anyMatch(row -> !row.flew());
        List<Limit> usual = List.of(Limit.usualTailplane(), Limit.usualFin());
        boolean unusual = usual.stream().anyMatch(limit -> rows.rows().stream().anyMatch(limit::isPassed));
        for (Limit limit : Limit.of(asked.stopWhen())) {
            boolean everywhere = rows.rows().stream().allMatch(limit::isPassed);
            if (everywhere) {
                inside = true;
                say("Everywhere in this range " + limit.words() + ".");
            }
            for (Limit.Passed passed : limit.along(rows.rows())) {
                all.add(passed);
                inside |= !passed.beyond();
                say(axis, passed);
            }
        }
        if (!inside && !unusual) {
            String where = rows.rows().size() == 1 ? "at " : "from " + axis.text(first) + " to ";
            say("Nothing gives out " + where + axis.textWithUnit(last) + ".");
        }
        for (Limit limit : usual) {
            if (rows.rows().stream().allMatch(limit::isPassed)) {
                say("Everywhere in this range " + limit.words().replace("falls", "is") + ".");
            }
            for (Limit.Passed passed : limit.along(rows.rows())) {
                all.add(passed);
                say(axis, passed);
            }
        }
        return all;
    }

    private void say(VariedAxis axis, Limit.Passed passed) {
        Fields item = answer.results().item("gives_out");
        item.put("words", passed.limit().words());
        item.put("at", passed.x(), 0);
        item.put("outside_the_range", passed.beyond());
        String place = axis.rounded(passed.x());
        String from = passed.beyond()
                ? "Further on, at about " + place + ", "
                : (passed.upwards() ? "From " : "Below ") + place + (passed.upwards() ? " on " : " ");
        say(from + passed.limit().words() + ".");
    }

    private void say(String sentence) {
        answer.say("  " + sentence);
    }
}
