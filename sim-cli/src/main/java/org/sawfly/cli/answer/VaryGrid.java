package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** Two varied quantities: launch heights in a grid, where something has given out marked. */
final class VaryGrid {
    private static final int MOST_COLUMNS = 8;
    private static final int MOST_LINES = 15;
    private static final String GAVE_OUT = "*";

    private final Answer answer;
    private final VaryAnswer.Asked asked;
    private final VariedAxis down;
    private final VariedAxis across;
    private final VaryRows rows;
    private final Result today;
    private final List<Limit> limits;

    VaryGrid(Answer answer, VaryAnswer.Asked asked, VaryRows rows, Result today) {
        this.answer = answer;
        this.asked = asked;
        this.down = asked.axes().get(0);
        this.across = asked.axes().get(1);
        this.rows = rows;
        this.today = today;
        this.limits = Limit.of(asked.stopWhen());
    }

    void write() {
        List<Double> columns = some(across.values(), MOST_COLUMNS);
        List<Double> lines = some(down.values(), MOST_LINES);
        answer.say("  Launch height, m; " + down.name() + " down, " + across.name() + " across");
        Table table = new Table(2, 2).right(down.heading());
        for (double column : columns) {
            table.right(across.text(column));
            table.left("");
        }
        List<String> gaveOut = new ArrayList<>();
        VaryRow best = null;
        for (double line : lines) {
            List<String> cells = new ArrayList<>(List.of(down.text(line)));
            for (double column : columns) {
                VaryRow row = find(line, column);
                cells.add(row == null ? "" : row.text(ResultQuantities.APEX_HEIGHT));
                boolean good = row != null && row.flew() && note(row, gaveOut);
                cells.add(good ? "" : GAVE_OUT);
                boolean higher = good
                        && (best == null
                                || row.value(ResultQuantities.APEX_HEIGHT) > best.value(ResultQuantities.APEX_HEIGHT));
                best = higher ? row : best;
            }
            table.row(cells);
        }
        answer.table(table);
        answer.gap();
        answer.say("  Today: " + ResultQuantities.APEX_HEIGHT.text(today) + " m at " + value(down, down.today()) + ", "
                + value(across, across.today()) + ".");
        if (!gaveOut.isEmpty()) {
            answer.say("  " + GAVE_OUT + " given out: " + String.join("; ", gaveOut) + ".");
        }
        answer.figure(VaryPicture.of(asked, rows, today, List.of()));
        verdict(best);
    }

    private void verdict(VaryRow best) {
        if (best == null) {
            answer.verdict("Nothing in this grid is without a limit passed: keep what you have.");
            return;
        }
        Difference height = new Difference(
                ResultQuantities.APEX_HEIGHT.value(today),
                best.value(ResultQuantities.APEX_HEIGHT),
                Unit.METRE,
                ResultQuantities.APEX_HEIGHT.decimals());
        answer.results().section("best").put("against_today_m", height.amount(), 1);
        String where = value(down, best.values().get(0)) + ", "
                + value(across, best.values().get(1));
        String gain = height.same()
                ? "as high as today"
                : height.words(Direction.HEIGHT) + " than today"
                        + (Math.abs(height.amount()) < Seeing.HEIGHT_M ? ", too little to see" : "");
        answer.verdict("Highest where nothing gives out: " + where + ", " + gain + ".");
    }

    /** Notes which limits a row passes; true when it passes none. */
    private boolean note(VaryRow row, List<String> gaveOut) {
        boolean good = true;
        for (Limit limit : limits) {
            if (limit.isPassed(row)) {
                good = false;
                if (!gaveOut.contains(limit.words())) {
                    gaveOut.add(limit.words());
                }
            }
        }
        return good;
    }

    private static String value(VariedAxis axis, double value) {
        return axis.name() + " " + axis.textWithUnit(value);
    }

    private VaryRow find(double line, double column) {
        for (VaryRow row : rows.rows()) {
            if (row.values().get(0) == line && row.values().get(1) == column) {
                return row;
            }
        }
        return null;
    }

    private static List<Double> some(List<Double> all, int most) {
        int every = (all.size() + most - 1) / most;
        List<Double> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i += every) {
            some.add(all.get(i));
        }
        return some;
    }
}
