package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** A comparison for machines: a row for today and one for each version. */
final class CompareRows {
    private CompareRows() {}

    static Rows of(Result today, List<Version> versions, HowSure sure) {
        List<String> keys = new ArrayList<>(List.of("glider", "ended"));
        ResultQuantities.ALL.forEach(quantity -> keys.add(quantity.key()));
        if (sure != null) {
            keys.addAll(LikelyCells.keys());
        }
        Rows rows = new Rows(keys);
        rows.add(row("today", today.outcome().ended().words(), today, sure, 0));
        for (int i = 0; i < versions.size(); i++) {
            Version version = versions.get(i);
            rows.add(row(
                    version.label(),
                    version.answered().ended(),
                    version.answered().result(),
                    sure,
                    i + 1));
        }
        return rows;
    }

    private static List<Object> row(String label, String ended, Result result, HowSure sure, int version) {
        List<Object> cells = new ArrayList<>(List.of(label, ended));
        for (Quantity<Result> quantity : ResultQuantities.ALL) {
            cells.add(result == null ? Double.NaN : quantity.value(result));
        }
        if (sure != null) {
            cells.addAll(LikelyCells.of(sure, version));
        }
        return cells;
    }
}
