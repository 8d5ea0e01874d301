package org.sawfly.glider;

import java.util.OptionalDouble;
import org.sawfly.math.Vec3;

/**
 * The glider ready to fly, on the scale and on the balance: what its parts do not explain is resolved once.
 *
 * <p>Where the nose lead is known, the difference in mass and moment becomes the correction. Where it is not, the balance
 * gives it: with all else of mass m0 balancing at x0 and a whole of mass m at x, {@code lead = m (x - x0)/(x_lead - x0)};
 * the mass that is then still missing is spread as all else is, that is, it balances at x0.
 *
 * @param mass of the whole, if weighed [kg]
 * @param cgX CG of the whole in build axes, forward positive, if balanced [m]
 */
public record Closing(OptionalDouble mass, OptionalDouble cgX) {
    /** The most nose lead that is taken for possible [kg]; common practice, no source. */
    public static final double MOST_LEAD = 0.040;

    public Closing {
        mass.ifPresent(m -> Check.positive(m, "the mass ready to fly [kg]"));
        cgX.ifPresent(x -> Check.finite(x, "the CG [m]"));
    }

    /** The parts with a correction that makes them agree; whatever correction they had is replaced. */
    public Glider withKnownLead(Glider parts) {
        MassProperties sum = MassProperties.of(parts.withCorrection(Correction.NONE));
        double added = mass.orElse(sum.mass()) - sum.mass();
        double x = cgX.orElse(sum.cg().x());
        double total = sum.mass() + added;
        Vec3 moment = new Vec3(
                total * x - sum.mass() * sum.cg().x(),
                added * sum.cg().y(),
                added * sum.cg().z());
        return parts.withCorrection(new Correction(added, moment));
    }

    /** The parts with as much nose lead, at its place, as makes them agree; its mass so far does not count. */
    public Glider withAssumedLead(Glider parts) {
        Glider bare = parts.withNoseLead(0).withCorrection(Correction.NONE);
        MassProperties rest = MassProperties.of(bare);
        double leadX = parts.noseLead().place().x();
        if (mass.isEmpty() && cgX.isEmpty()) {
            return parts.withCorrection(Correction.NONE);
        }
        if (cgX.isEmpty()) {
            return bare.withNoseLead(checked(mass.getAsDouble() - rest.mass()));
        }
        double x = cgX.getAsDouble();
        if (leadX <= Math.max(x, rest.cg().x())) {
            throw new DesignException("the nose lead lies " + Words.place(leadX) + " and the CG " + Words.place(x)
                    + ": lead must lie ahead of the CG");
        }
        if (mass.isEmpty()) {
            return bare.withNoseLead(checked(rest.mass() * (x - rest.cg().x()) / (leadX - x)));
        }
        double lead = checked(
                mass.getAsDouble() * (x - rest.cg().x()) / (leadX - rest.cg().x()));
        double added = mass.getAsDouble() - lead - rest.mass();
        return bare.withNoseLead(lead)
                .withCorrection(new Correction(added, rest.cg().times(added)));
    }

    private double checked(double lead) {
        if (!(lead >= 0 && lead <= MOST_LEAD)) {
            throw new DesignException(disagreement() + ": "
                    + (lead < 0
                            ? Words.mass(-lead) + " of nose lead would have to be taken out of a nose without any"
                            : Words.mass(lead) + " of nose lead would be needed, at most " + Words.mass(MOST_LEAD)
                                    + " is taken for possible")
                    + ". Maybe one of the two was measured without the battery, or from another edge.");
        }
        return lead;
    }

    private String disagreement() {
        if (mass.isPresent() && cgX.isPresent()) {
            return "a mass of " + Words.mass(mass.getAsDouble()) + " and a CG " + Words.place(cgX.getAsDouble())
                    + " disagree with the parts";
        }
        return mass.isPresent()
                ? "a mass of " + Words.mass(mass.getAsDouble()) + " disagrees with the parts"
                : "a CG " + Words.place(cgX.getAsDouble()) + " disagrees with the parts";
    }
}
