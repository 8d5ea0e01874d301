package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.EnumMap;
import java.util.Map;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Inexact;
import org.sawfly.study.Uncertain;

/** Reads how uncertain the inputs are: half widths of their ranges 9 times in 10, as usual when left out. */
final class UncertaintyReader {
    private static final String WORDS = "half widths of what the answer is uncertain by, 9 times in 10";

    /** Half widths up to so many times the usual one are accepted. */
    private static final int MOST = 3;

    private UncertaintyReader() {}

    /** Those of the model, in a glider's file. */
    static Map<Uncertain, Double> model(In in) {
        return in.map("uncertain", WORDS, u -> read(u, Uncertain.Of.MODEL));
    }

    /** Those of the throw, in a launch file. */
    static Map<Uncertain, Double> ofThrow(In in) {
        return in.map("throw_uncertain", WORDS, u -> read(u, Uncertain.Of.THROW));
    }

    private static Map<Uncertain, Double> read(In in, Uncertain.Of of) {
        Map<Uncertain, Double> halfWidths = new EnumMap<>(Uncertain.class);
        for (Uncertain one : Uncertain.values()) {
            if (one.of() == of) {
                halfWidths.put(one, size(in, one, MOST, "range of the " + one.words()));
            }
        }
        return halfWidths;
    }

    /** How far off something is, up to so many times the usual, which stands for what is left out [SI]. */
    static double size(In in, Inexact of, int most, String words) {
        Unit unit = Unit.of(of.key());
        double usual = Numbers.rounded(unit.fromSi(of.usual()), 6);
        return in.neutral(of.key(), between(0, Numbers.rounded(most * usual, 6)), usual, words);
    }
}
