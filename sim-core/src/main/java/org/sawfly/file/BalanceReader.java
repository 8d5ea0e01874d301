package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.OptionalDouble;
import org.sawfly.glider.Closing;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/** Reads what the scale and the balance showed of the whole glider, and closes what its parts do not explain. */
final class BalanceReader {
    private static final double LEAD_BAND = 4;
    private static final double DOUBTED = 0.03;
    private static final double REFUSED = 0.25;
    private static final double DOUBTED_PLACE = 0.003;
    private static final double REFUSED_PLACE = 0.04;
    private static final String FROM_NOSE = "cg_mm is measured from the wing's root leading edge, not from the nose";

    private final In in;
    private final double mass;
    private final double cgX;

    private BalanceReader(In in, double mass, double cgX) {
        this.in = in;
        this.mass = mass;
        this.cgX = cgX;
    }

    static BalanceReader read(In in) {
        return in.map("ready_to_fly", "as it leaves the hand: battery in, lead in", ready -> {
            double mass = ready.optional("mass_g", between(30, 3000).usually(150, 600), 231.4, "weight");
            double cg = ready.optional(
                    "cg_mm", between(1, 400).usually(40, 110), 69, "balance point behind the wing's root leading edge");
            return new BalanceReader(ready, mass, -cg);
        });
    }

    /** Weight on the scale [kg]; NaN when not given. */
    double mass() {
        return mass;
    }

    /** Balance point, forward positive [m]; NaN when not given. */
    double cgX() {
        return cgX;
    }

    /** Asks for weight and balance point where the lead must follow from them. */
    void need() {
        if (!in.has("mass_g")) {
            in.needed("mass_g", "weight as it leaves the hand", "231.4");
        }
        if (!in.has("cg_mm")) {
            in.needed("cg_mm", "balance point behind the wing's root leading edge", "69");
        }
    }

    /**
     * The glider with what its parts do not explain resolved; unchanged after a problem.
     *
     * @param light why the parts may be too light; empty when nothing looks odd
     */
    Glider close(Glider parts, boolean leadKnown, String light) {
        Closing closing = new Closing(some(mass), some(cgX));
        try {
            if (leadKnown) {
                compare(MassProperties.of(parts), light);
                return closing.withKnownLead(parts);
            }
            Glider closed = closing.withAssumedLead(parts);
            double grams = Unit.GRAM.fromSi(closed.noseLead().mass());
            in.reading()
                    .assume(new Assumed(
                            "nose_lead.mass_g",
                            grams,
                            new Band(grams - LEAD_BAND, grams + LEAD_BAND),
                            Unit.GRAM,
                            "lead that brings it into balance"));
            compareMass(MassProperties.of(closed).mass() - closed.correction().mass(), light);
            return closed;
        } catch (DesignException e) {
            in.problem("cg_mm", e.getMessage(), FROM_NOSE);
            return parts;
        }
    }

    private void compare(MassProperties parts, String light) {
        compareMass(parts.mass(), light);
        if (Double.isNaN(cgX)) {
            return;
        }
        double apart = Math.abs(cgX - parts.cg().x());
        String both = "the parts balance " + millimetres(-parts.cg().x())
                + " behind the root leading edge, measured were " + millimetres(-cgX);
        if (apart > REFUSED_PLACE) {
            in.problem("cg_mm", both, FROM_NOSE);
        } else if (apart > DOUBTED_PLACE) {
            in.doubt("cg_mm", both, "a part at the wrong place");
        }
    }

    private void compareMass(double parts, String light) {
        if (Double.isNaN(mass)) {
            return;
        }
        double share = Math.abs(mass - parts) / mass;
        String both = "the parts weigh " + grams(parts) + " together, on the scale were " + grams(mass);
        String heavy = light.isEmpty() ? "a part is missing" : light;
        String maybe = mass < parts ? "it was weighed without the battery" : heavy;
        if (share > REFUSED) {
            in.problem("mass_g", both, maybe);
        } else if (share > DOUBTED) {
            in.doubt("mass_g", both, maybe);
        }
    }

    private static OptionalDouble some(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static String grams(double mass) {
        return Numbers.shortest(Unit.GRAM.fromSi(mass), 1) + " g";
    }

    private static String millimetres(double length) {
        return Numbers.shortest(Unit.MILLIMETRE.fromSi(length), 1) + " mm";
    }
}
