package org.sawfly.glider;

import java.util.OptionalDouble;

/**
 * A larger or smaller tailplane of the same outline: chord and span with the root of the factor, mass with the factor
 * unless it is known. The quarter point of its mean chord stays, and so does the tail arm.
 *
 * @param areaFactor new area over old area [1]
 * @param mass of the new tailplane if known [kg]
 */
public record TailplaneScale(double areaFactor, OptionalDouble mass) implements DesignChange {
    public TailplaneScale {
        Check.positive(areaFactor, "the factor on the tailplane's area");
        mass.ifPresent(m -> Check.notNegative(m, "the mass of the new tailplane [kg]"));
    }

    /** With the mass going with the area. */
    public TailplaneScale(double areaFactor) {
        this(areaFactor, OptionalDouble.empty());
    }

    @Override
    public Glider apply(Glider before) {
        Tailplane old = before.tailplane();
        Planform scaled = old.planform().scaled(areaFactor);
        Tailplane tailplane = new Tailplane(
                mass.orElse(old.mass() * areaFactor),
                scaled,
                old.x() + scaled.quarterPointBack() - old.planform().quarterPointBack(),
                old.z(),
                old.decalage(),
                old.section(),
                old.elevatorChord());
        return before.withTails(tailplane, before.fin());
    }
}
