package org.sawfly.glider;

import java.util.OptionalDouble;

/**
 * A larger or smaller fin of the same outline: chord and height with the root of the factor, mass with the factor unless
 * it is known. The quarter point of its mean chord stays, and so does the tail arm.
 *
 * @param areaFactor new area over old area [1]
 * @param mass of the new fin if known [kg]
 */
public record FinScale(double areaFactor, OptionalDouble mass) implements DesignChange {
    public FinScale {
        Check.positive(areaFactor, "the factor on the fin's area");
        mass.ifPresent(m -> Check.notNegative(m, "the mass of the new fin [kg]"));
    }

    /** With the mass going with the area. */
    public FinScale(double areaFactor) {
        this(areaFactor, OptionalDouble.empty());
    }

    @Override
    public Glider apply(Glider before) {
        Fin old = before.fin();
        Planform above = old.above().scaled(areaFactor);
        Planform below = old.below().scaled(areaFactor);
        double shift = old.quarterPointBack() * (Math.sqrt(areaFactor) - 1);
        Fin fin = new Fin(
                mass.orElse(old.mass() * areaFactor),
                above,
                below,
                old.x() + shift,
                old.z(),
                old.section(),
                old.rudderChord());
        return before.withTails(before.tailplane(), fin);
    }
}
