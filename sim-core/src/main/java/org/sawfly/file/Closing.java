package org.sawfly.file;

import org.sawfly.glider.Correction;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Part;
import org.sawfly.math.Vec3;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/**
 * Closes what the parts do not explain against the scale and the balance point. Where the nose lead was not weighed it is
 * the lead that brings the parts into balance about the weighed CG, and weight that is missing sits at the CG. Where it
 * was, missing mass and moment become the glider's correction.
 */
final class Closing {
    private static final double MOST_LEAD = 0.04;
    private static final double LEAD_BAND = 4;
    private static final double DOUBTED = 0.03;
    private static final double REFUSED = 0.25;
    private static final double DOUBTED_PLACE = 0.003;
    private static final double REFUSED_PLACE = 0.04;

    private Closing() {}

    /**
     * What weighing and balancing found once, and what a changed version keeps.
     *
     * @param lead       nose lead
     * @param correction of mass and moment
     */
    record Closure(Part lead, Correction correction) {}

    /**
     * What the glider weighs and where it balances.
     *
     * @param mass [kg], NaN when not given
     * @param cgX  forward positive [m], NaN when not given
     */
    record Weighed(double mass, double cgX) {}

    /** The closure of a glider whose lead has no mass yet when it was not given. */
    static Closure of(In in, Glider glider, Weighed weighed, PartsReader.NoseLead lead) {
        if (Double.isNaN(weighed.mass) || Double.isNaN(weighed.cgX)) {
            return new Closure(lead.part(lead.given() ? lead.mass() : 0), Correction.NONE);
        }
        return lead.given() && !Double.isNaN(lead.mass())
                ? correction(in, glider, weighed, lead.part(lead.mass()))
                : lead(in, glider, weighed, lead);
    }

    private static Closure lead(In in, Glider glider, Weighed weighed, PartsReader.NoseLead lead) {
        MassProperties parts = MassProperties.of(glider);
        double arm = lead.place().x() - weighed.cgX;
        double mass = arm <= 0 ? -1 : -parts.mass() * (parts.cg().x() - weighed.cgX) / arm;
        if (mass < 0 || mass > MOST_LEAD) {
            in.problem(
                    "cg_mm",
                    "a nose lead of " + grams(mass)
                            + " would be needed to balance the parts here (0 to 40 g is accepted);"
                            + " ready_to_fly.cg_mm (" + millimetres(-weighed.cgX) + ") and pod.nose_ahead_mm do not go"
                            + " together with the parts, most of them assumed",
                    "cg_mm is measured from the wing's root leading edge, not from the nose");
            mass = Math.max(0, Math.min(MOST_LEAD, mass));
        }
        double missing = weighed.mass - parts.mass() - mass;
        doubtMass(in, weighed.mass, parts.mass() + mass);
        double grams = Unit.GRAM.fromSi(mass);
        in.reading()
                .assume(new Assumed(
                        "nose_lead.mass_g",
                        grams,
                        new Band(Math.max(0, grams - LEAD_BAND), grams + LEAD_BAND),
                        Unit.GRAM,
                        "lead that brings it into balance"));
        return new Closure(lead.part(mass), at(missing, weighed.cgX, parts.cg().z()));
    }

    private static Closure correction(In in, Glider glider, Weighed weighed, Part lead) {
        MassProperties parts = MassProperties.of(glider.withNoseLead(lead.mass()));
        double missing = weighed.mass - parts.mass();
        double moment = weighed.mass * weighed.cgX - parts.mass() * parts.cg().x();
        doubtMass(in, weighed.mass, parts.mass());
        double apart = Math.abs(weighed.cgX - parts.cg().x());
        String both =
                "the parts balance at " + millimetres(-parts.cg().x()) + ", measured were " + millimetres(-weighed.cgX);
        if (apart > REFUSED_PLACE) {
            in.problem("cg_mm", both, "cg_mm is measured from the wing's root leading edge, not from the nose");
        } else if (apart > DOUBTED_PLACE) {
            in.doubt("cg_mm", both, "a part at the wrong place");
        }
        double z = parts.cg().z() * missing;
        return new Closure(lead, new Correction(missing, new Vec3(moment, 0, z)));
    }

    private static void doubtMass(In in, double weighed, double parts) {
        double share = Math.abs(weighed - parts) / weighed;
        String both = "the parts weigh " + grams(parts) + " together, on the scale were " + grams(weighed);
        String maybe = weighed < parts ? "it was weighed without the battery" : "a part is missing";
        if (share > REFUSED) {
            in.problem("mass_g", both, maybe);
        } else if (share > DOUBTED) {
            in.doubt("mass_g", both, maybe);
        }
    }

    private static Correction at(double mass, double x, double z) {
        return new Correction(mass, new Vec3(mass * x, 0, mass * z));
    }

    private static String grams(double mass) {
        return Numbers.shortest(Unit.GRAM.fromSi(mass), 1) + " g";
    }

    private static String millimetres(double length) {
        return Numbers.shortest(Unit.MILLIMETRE.fromSi(length), 1) + " mm";
    }
}
