package org.sawfly.glider;

import java.util.List;
import java.util.Map;

/**
 * Brings the CG to a place by what may be moved, in order: what can slide within its room, then nose lead.
 *
 * @param cgX wanted CG in build axes, forward positive [m]
 * @param with what is moved, in this order
 */
public record CgSetting(double cgX, List<Means> with) implements DesignChange {
    /** What a CG is set with. */
    public enum Means {
        /** The battery, or whatever else has room to slide. */
        BATTERY,
        /** Lead in the nose, at its place. */
        NOSE_LEAD
    }

    /** Closer than this is there [m]; far below what rounding in an answer shows. */
    private static final double THERE = 1e-9;

    public CgSetting {
        Check.finite(cgX, "the wanted CG [m]");
        with = List.copyOf(with);
    }

    @Override
    public Glider apply(Glider before) {
        Glider glider = before;
        for (Means means : with) {
            glider = switch (means) {
                case BATTERY -> slid(glider);
                case NOSE_LEAD -> leaded(glider);
            };
        }
        double missing = cgX - MassProperties.of(glider).cg().x();
        if (Math.abs(missing) > THERE) {
            throw new DesignException("the CG cannot be brought to " + Words.place(cgX) + ": it stays "
                    + Words.length(Math.abs(missing)) + " too far " + (missing > 0 ? "back" : "forward")
                    + ". Maybe allow nose lead, or give the battery more room.");
        }
        return glider;
    }

    private Glider slid(Glider before) {
        Glider glider = before;
        for (Map.Entry<String, Part> entry : before.parts().entrySet()) {
            Part part = entry.getValue();
            if (part.mass() == 0 || part.slideForward() + part.slideBack() == 0) {
                continue;
            }
            MassProperties now = MassProperties.of(glider);
            double wanted = (cgX - now.cg().x()) * now.mass() / part.mass();
            double shift = Math.max(-part.slideBack(), Math.min(part.slideForward(), wanted));
            glider = glider.withPart(entry.getKey(), part.slid(shift));
        }
        return glider;
    }

    private Glider leaded(Glider glider) {
        if (glider.noseLead().place().x() <= cgX) {
            throw new DesignException("nose lead "
                    + Words.place(glider.noseLead().place().x()) + " cannot bring the CG to " + Words.place(cgX));
        }
        double lead = Balance.of(glider).leadFor(cgX);
        if (lead < 0) {
            double lack = -lead;
            throw new DesignException("the nose lead does not suffice: " + Words.mass(lack)
                    + " more would have to come out than there is in ("
                    + Words.mass(glider.noseLead().mass()) + "). " + othersToMove(glider, lack));
        }
        return glider.withNoseLead(lead);
    }

    /** What a lack of lead can be made up by: something else in the nose moved back, by moments about the wanted CG. */
    private String othersToMove(Glider glider, double lead) {
        double moment = lead * (glider.noseLead().place().x() - cgX);
        String best = "";
        double shift = Double.POSITIVE_INFINITY;
        for (Map.Entry<String, Part> entry : glider.parts().entrySet()) {
            Part part = entry.getValue();
            double back = moment / part.mass();
            if (part.mount() == Part.Mount.FIXED && part.place().x() > 0 && back < shift) {
                best = entry.getKey();
                shift = back;
            }
        }
        return best.isEmpty()
                ? "Maybe something else in the nose can move back."
                : "Maybe " + best + " can move back by " + Words.length(shift) + ".";
    }
}
