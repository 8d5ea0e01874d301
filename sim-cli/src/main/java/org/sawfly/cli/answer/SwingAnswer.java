package org.sawfly.cli.answer;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.sawfly.glider.Bifilar;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.SwungInertia;

/** An inertia from a swing on two strings. */
public final class SwingAnswer {
    private static final Quantity<SwungInertia> INERTIA =
            quantity("inertia_kgm2", "inertia of the glider", SwungInertia::inertia);
    private static final Quantity<SwungInertia> DOUBT = quantity("plus_minus_kgm2", "known to", SwungInertia::doubt);
    private static final Quantity<SwungInertia> SWUNG =
            quantity("swung_kgm2", "swung with the air", SwungInertia::swung);
    private static final Quantity<SwungInertia> AIR = quantity("carried_air_kgm2", "carried air", SwungInertia::air);
    private static final Quantity<SwungInertia> PARTS =
            quantity("from_parts_kgm2", "from the parts", SwungInertia::parts);

    private SwingAnswer() {}

    private static Quantity<SwungInertia> quantity(String key, String words, ToDoubleFunction<SwungInertia> getter) {
        return new Quantity<>(key, words, Unit.KILOGRAM_SQUARE_METRE, 4, getter);
    }

    /** The whole answer. */
    public static Answer of(String glider, Bifilar swing, SwungInertia found) {
        Answer answer = new Answer("swing");
        Fields inputs = answer.inputs();
        Fields results = answer.results();
        String axis = swing.axis().name().toLowerCase(Locale.ROOT);
        inputs.put("glider", glider);
        inputs.put("axis", axis);
        answer.sayFlush(glider + ", swung about its " + axis + " axis: "
                + inputs.put("mass_g", Unit.GRAM.fromSi(swing.mass()), 1) + " g on strings "
                + inputs.put("length_mm", Unit.MILLIMETRE.fromSi(swing.length()), 0) + " mm long, "
                + inputs.put("apart_mm", Unit.MILLIMETRE.fromSi(2 * swing.halfDistance()), 0) + " mm apart, "
                + inputs.put("period_s", swing.period(), 3) + " s to and fro");
        answer.say("Swung " + results.put(SWUNG, found) + " kg m2, of which the carried air is "
                + results.put(AIR, found) + ". The parts add up to " + results.put(PARTS, found) + " kg m2.");
        if (!(found.inertia() > 0)) {
            answer.verdict(
                    "The swing shows less than the air alone has: look at the time, the strings and their distance.");
            return answer;
        }
        double off = Unit.PERCENT.fromSi(found.inertia() / found.parts() - 1);
        double doubt = Unit.PERCENT.fromSi(found.doubt() / found.inertia());
        results.put("known_to_pct", doubt, 0);
        double shown = Numbers.rounded(off, 0);
        results.put("against_parts_pct", shown, 0);
        String against = shown == 0
                ? "the same as the parts"
                : Numbers.fixed(Math.abs(shown), 0) + " % " + (shown > 0 ? "more" : "less") + " than the parts";
        answer.verdict("Inertia in " + axis + " " + results.put(INERTIA, found) + " kg m2, known to "
                + results.put(DOUBT, found) + "; " + against
                + (Math.abs(off) <= doubt
                        ? ", which is within what the swing can tell."
                        : ": put the swing into the file."));
        return answer;
    }
}
