package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Piece;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/**
 * Where the grams of a change went, as a sum that adds up as printed: each piece is rounded, and what rounding leaves over
 * goes to the pieces that were rounded furthest.
 */
final class Grams {
    private static final int DECIMALS = 1;
    private static final double STEP = 0.1;
    private static final String REST = "other pieces";

    /** A piece and the grams it gained, negative when lighter. */
    record Item(String name, double grams) {}

    private Grams() {}

    /**
     * The pieces that changed.
     *
     * @param today before
     * @param changed after
     * @param printedChange change of the whole mass as printed [g]; the items add up to it
     */
    private static List<Item> of(Glider today, Glider changed, double printedChange) {
        Map<String, Double> exact = new LinkedHashMap<>();
        add(exact, today, -1);
        add(exact, changed, 1);
        double rest = Unit.GRAM.fromSi(
                changed.correction().mass() - today.correction().mass());
        Map<String, Double> shown = new LinkedHashMap<>();
        for (Map.Entry<String, Double> entry : exact.entrySet()) {
            double grams = Unit.GRAM.fromSi(entry.getValue());
            if (Math.abs(grams) >= STEP / 2) {
                shown.put(entry.getKey(), grams);
            } else {
                rest += grams;
            }
        }
        if (Math.abs(rest) >= STEP / 2) {
            shown.put(REST, rest);
        }
        double lead = printed(changed) - printed(today);
        return rounded(shown, printedChange, Numbers.rounded(lead, DECIMALS));
    }

    /** The pieces that changed from one result to another. */
    static List<Item> of(Result today, Result changed) {
        double change = Difference.of(ResultQuantities.MASS, today, changed).amount();
        return of(today.plan().craft().glider(), changed.plan().craft().glider(), change);
    }

    /** What a piece gained or lost, rounded so that all of them add up [g]; the number given where it is not among them. */
    static double shown(Result today, Result changed, String piece, double exact) {
        return of(today, changed).stream()
                .filter(item -> item.name().equals(piece))
                .mapToDouble(item -> Math.abs(item.grams()))
                .findFirst()
                .orElse(exact);
    }

    private static void add(Map<String, Double> sums, Glider glider, int sign) {
        for (Piece piece : Piece.all(glider)) {
            sums.merge(piece.name(), sign * piece.properties().mass(), Double::sum);
        }
    }

    /** Lead as a table prints it [g]. */
    private static double printed(Glider glider) {
        return Numbers.rounded(Unit.GRAM.fromSi(glider.noseLead().mass()), DECIMALS);
    }

    /** The lead is what the table says beside it, the rest makes up the sum; lead alone is the whole sum. */
    private static List<Item> rounded(Map<String, Double> exact, double total, double lead) {
        Map<String, Double> others = new LinkedHashMap<>(exact);
        boolean among = others.remove(Piece.NOSE_LEAD) != null && !others.isEmpty();
        Map<String, Double> free = among ? others : exact;
        double[] shown = AddingUp.rounded(
                free.values().stream().mapToDouble(Double::doubleValue).toArray(),
                among ? total - lead : total,
                DECIMALS);
        List<Item> items = new ArrayList<>();
        int next = 0;
        for (String name : exact.keySet()) {
            items.add(new Item(name, free.containsKey(name) ? shown[next++] : lead));
        }
        return items.stream().filter(item -> item.grams() != 0).toList();
    }

    /** "boom 0.6 out, new joint 0.5 in, nose lead 0.9 out"; the numbers go into the fields. */
    static String words(List<Item> items, boolean cut, Fields fields) {
        List<String> words = new ArrayList<>();
        for (Item item : items) {
            Fields one = fields.item("grams");
            one.put("piece", item.name());
            one.put("gained_g", item.grams(), DECIMALS);
            String amount = Numbers.fixed(Math.abs(item.grams()), DECIMALS);
            words.add(name(item, cut) + " " + amount + (item.grams() < 0 ? " out" : " in"));
        }
        return words.isEmpty() ? "nothing gets lighter or heavier" : String.join(", ", words);
    }

    private static String name(Item item, boolean cut) {
        return cut && item.name().equals(Piece.BOOM) && item.grams() < 0 ? "offcut" : item.name();
    }
}
