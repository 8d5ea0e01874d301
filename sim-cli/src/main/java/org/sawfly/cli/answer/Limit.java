package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.StopWhen;

/**
 * Where a quantity gives out along a sweep.
 *
 * @param name short, for a mark on a chart: "fin"
 * @param words what happens there: "the fin falls below the usual range"
 * @param quantity that gives out
 * @param bound in its unit
 * @param below whether it gives out below the bound, else above
 */
record Limit(String name, String words, Quantity<Result> quantity, double bound, boolean below) {
    /** How much of the range beyond its end is looked at. */
    private static final double BEYOND = 0.5;

    /**
     * A place where a limit is passed.
     *
     * @param limit that is passed
     * @param x where, in the unit of the varied quantity
     * @param upwards whether it gives out above x, else below
     * @param beyond whether it lies outside the range and is only drawn out from its end
     */
    record Passed(Limit limit, double x, boolean upwards, boolean beyond) {}

    /** What a study asks for, and what always matters. */
    static List<Limit> of(StopWhen stop) {
        List<Limit> limits = new ArrayList<>();
        if (!Double.isNaN(stop.marginBelow())) {
            double percent = Unit.PERCENT.fromSi(stop.marginBelow());
            String words = "the margin falls below " + Numbers.shortest(percent, 2) + " %";
            limits.add(new Limit("margin", words, ResultQuantities.STATIC_MARGIN, percent, true));
        }
        if (!Double.isNaN(stop.tailVolumeHBelow())) {
            String words = "the tail volume falls below " + Numbers.shortest(stop.tailVolumeHBelow(), 4);
            limits.add(new Limit("tailplane", words, ResultQuantities.TAIL_VOLUME_H, stop.tailVolumeHBelow(), true));
        }
        if (!Double.isNaN(stop.tailVolumeVBelow())) {
            String words = "the fin's volume falls below " + Numbers.shortest(stop.tailVolumeVBelow(), 4);
            limits.add(new Limit("fin", words, ResultQuantities.TAIL_VOLUME_V, stop.tailVolumeVBelow(), true));
        }
        if (!Double.isNaN(stop.firstSwingAbove())) {
            double degrees = Unit.DEGREE.fromSi(stop.firstSwingAbove());
            String words = "the first swing passes " + Numbers.shortest(degrees, 1) + " deg";
            limits.add(new Limit("swing", words, ResultQuantities.FIRST_SWING, degrees, false));
        }
        limits.add(new Limit(
                "no launch margin",
                "the boom's bending has eaten the margin at launch speed",
                ResultQuantities.LAUNCH_MARGIN,
                0,
                true));
        return limits;
    }

    /** The lower end of what such gliders have; no reason to stop, but to know of. */
    static Limit usualTailplane() {
        return new Limit(
                "tailplane below usual",
                "the tailplane falls below the usual range",
                ResultQuantities.TAIL_VOLUME_H,
                Usual.TAIL_VOLUME_H.low(),
                true);
    }

    /** The same for the fin. */
    static Limit usualFin() {
        return new Limit(
                "fin below usual",
                "the fin falls below the usual range",
                ResultQuantities.TAIL_VOLUME_V,
                Usual.TAIL_VOLUME_V.low(),
                true);
    }

    /** Whether it has given out in a row. */
    boolean isPassed(VaryRow row) {
        double value = row.value(quantity);
        return below ? value < bound : value > bound;
    }

    /** Where it is passed along rows in the order of one varied quantity. */
    List<Passed> along(List<VaryRow> rows) {
        List<Passed> passed = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            VaryRow left = rows.get(i - 1);
            VaryRow right = rows.get(i);
            if (isPassed(left) != isPassed(right) && known(left) && known(right)) {
                passed.add(new Passed(this, crossing(left, right), isPassed(right), false));
            }
        }
        if (passed.isEmpty() && rows.size() > 1 && !isPassed(rows.get(rows.size() - 1))) {
            VaryRow last = rows.get(rows.size() - 1);
            VaryRow before = rows.get(rows.size() - 2);
            double x = crossing(before, last);
            double from = last.values().get(0);
            double range = from - rows.get(0).values().get(0);
            if (x > from && x <= from + BEYOND * range) {
                passed.add(new Passed(this, x, true, true));
            }
        }
        return passed;
    }

    private boolean known(VaryRow row) {
        return !Double.isNaN(row.value(quantity));
    }

    private double crossing(VaryRow left, VaryRow right) {
        double a = left.value(quantity) - bound;
        double b = right.value(quantity) - bound;
        double from = left.values().get(0);
        return from + (right.values().get(0) - from) * a / (a - b);
    }
}
