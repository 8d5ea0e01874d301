package org.sawfly.glider;

import org.sawfly.math.Vec3;

/**
 * Anything else that has mass: battery, servos, receiver, glue, strings, ballast.
 *
 * @param mass [kg]
 * @param place in build axes [m]
 * @param mount what carries it: what is on the boom's end moves with it
 * @param slideForward how far it can be moved forward [m]
 * @param slideBack how far it can be moved back [m]
 */
public record Part(double mass, Vec3 place, Mount mount, double slideForward, double slideBack) {
    public Part {
        Check.notNegative(mass, "the mass of a part [kg]");
        Check.finite(place.x(), "the place of a part [m]");
        Check.finite(place.y(), "the place of a part to the right [m]");
        Check.finite(place.z(), "the height of a part [m]");
        Check.notNegative(slideForward, "how far a part slides forward [m]");
        Check.notNegative(slideBack, "how far a part slides back [m]");
    }

    /** A part that stays where it is. */
    public static Part fixed(double mass, Vec3 place) {
        return new Part(mass, place, Mount.FIXED, 0, 0);
    }

    /** The same part with another mass [kg]. */
    public Part withMass(double newMass) {
        return new Part(newMass, place, mount, slideForward, slideBack);
    }

    /** Length of a part that runs along the boom up to its end [m]: twice from its middle to the end. */
    double lengthAlong(Boom boom) {
        return Math.max(0, 2 * (place.x() - boom.endX()));
    }

    /** The same part further forward [m]; its room to slide is not used up. */
    Part forward(double shift) {
        return new Part(mass, place.plus(new Vec3(shift, 0, 0)), mount, slideForward, slideBack);
    }

    /** The same part slid forward [m] within its room, which is used up by as much. */
    Part slid(double shift) {
        return new Part(
                mass,
                place.plus(new Vec3(shift, 0, 0)),
                mount,
                Math.max(0, slideForward - shift),
                Math.max(0, slideBack + shift));
    }

    /** What a part is fastened to. */
    public enum Mount {
        /** Stays where it is whatever happens to the boom: in the pod or in the wing. */
        FIXED,
        /** Sits at the rear end of the boom and goes where that goes. */
        BOOM_END,
        /** Goes where the tailplane goes. */
        TAILPLANE,
        /** Strings, rods, wires: runs along the boom up to its end, its place is the middle; shortened with the boom. */
        ALONG_BOOM
    }
}
