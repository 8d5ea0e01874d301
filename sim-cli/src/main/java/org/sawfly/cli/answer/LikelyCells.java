package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.Spread;

/** The columns of CSV that say how sure a row's differences from today are: middle and both ends 9 times in 10. */
final class LikelyCells {
    private static final List<String> PARTS = List.of("median", "low", "high");

    private LikelyCells() {}

    /** "apex_height_change_median_m" and the like. */
    static List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (Quantity<Result> quantity : HowSure.TOLD) {
            String unit =
                    quantity.unit() == Unit.NUMBER ? "" : "_" + quantity.unit().suffix();
            String stem = quantity.key().substring(0, quantity.key().length() - unit.length());
            PARTS.forEach(part -> keys.add(stem + "_change_" + part + unit));
        }
        return keys;
    }

    /** Place of the lower end of a number's range among the cells; the upper one follows. */
    static int lowOf(Quantity<Result> quantity) {
        for (int i = 0; i < HowSure.TOLD.size(); i++) {
            if (HowSure.TOLD.get(i).key().equals(quantity.key())) {
                return PARTS.size() * i + 1;
            }
        }
        throw new IllegalArgumentException(quantity.key());
    }

    /** The cells of a version; today, number 0, differs by nothing. */
    static List<Double> of(HowSure sure, int version) {
        List<Double> cells = new ArrayList<>();
        for (Quantity<Result> quantity : HowSure.TOLD) {
            Spread spread = sure.difference(version, quantity);
            cells.addAll(List.of(
                    spread.median(), spread.likely().low(), spread.likely().high()));
        }
        return cells;
    }
}
