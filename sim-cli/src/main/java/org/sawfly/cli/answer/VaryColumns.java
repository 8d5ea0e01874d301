package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/**
 * The columns of a sweep behind the launch height: sink and balance, or, where the glider is free to roll, where the launch
 * goes sideways.
 */
final class VaryColumns {
    private final List<Column> columns = new ArrayList<>();

    private record Column(List<String> heading, Quantity<Result> quantity, boolean sided) {
        String text(double value) {
            return sided
                    ? FlySideways.letter(quantity, value).replace(" left", " L").replace(" right", " R")
                    : Numbers.fixed(value, quantity.decimals());
        }
    }

    /** The columns for a varied quantity of flights with some freedoms. */
    VaryColumns(VariedAxis axis, Axes freedoms) {
        if (freedoms == Axes.ALL) {
            sided(ResultQuantities.ROLLED, "rolls", "deg");
            sided(ResultQuantities.SLANT, "climb", "leans");
            sided(ResultQuantities.DRIFT, "top", "m");
        } else {
            plain(ResultQuantities.MIN_SINK, "least", "sink");
            if (axis.isCg()) {
                plain(ResultQuantities.STATIC_MARGIN, "margin", "%");
            } else {
                plain(ResultQuantities.CG, "CG", "mm");
            }
            plain(ResultQuantities.NOSE_LEAD, "lead", "g");
        }
        plain(ResultQuantities.LAUNCH_MARGIN, "launch", "margin", "%");
        plain(ResultQuantities.TAIL_VOLUME_V, "fin", "volume");
        plain(ResultQuantities.FIRST_SWING, "first", "swing");
    }

    private void plain(Quantity<Result> quantity, String... heading) {
        columns.add(new Column(List.of(heading), quantity, false));
    }

    private void sided(Quantity<Result> quantity, String... heading) {
        columns.add(new Column(List.of(heading), quantity, true));
    }

    /** What the letters in them mean, empty where there are none. */
    String note() {
        return columns.stream().anyMatch(Column::sided)
                ? "  Seen from behind the thrower, L to the left, R to the right: roll in the first second, lean of the climb,"
                        + " place of the top."
                : "";
    }

    void addTo(Table table) {
        columns.forEach(column -> table.right(column.heading().toArray(String[]::new)));
    }

    List<String> cells(VaryRow row) {
        return columns.stream()
                .map(column -> column.text(row.value(column.quantity())))
                .toList();
    }

    List<String> cells(Result today) {
        return columns.stream()
                .map(column -> column.text(column.quantity().value(today)))
                .toList();
    }
}
