package org.sawfly.glider;

import org.sawfly.math.Inertia;
import org.sawfly.math.Quadrature;
import org.sawfly.math.Vec3;

/**
 * Shapes of parts: mass, centre of gravity and inertia about it, in build axes.
 *
 * <p>A surface has its mass spread along the span by chord^2, as an outline of one thickness ratio filled evenly has.
 * Along the chord such a filled section balances at 0.420 of the chord, with a mean square of 0.0552 chord^2 about that
 * point and of 0.0575 thickness^2 across; these are the moments of the thickness form of the NACA four-digit sections
 * (Abbott and von Doenhoff, Theory of Wing Sections, 1959, equation 6.2).
 */
final class Shapes {
    /** Where a section balances, as a part of its chord behind its leading edge [1]. */
    static final double BALANCE = 0.420;

    /** Mean square of a section's mass along the chord about the balance point, over chord^2 [1]. */
    static final double ALONG_CHORD = 0.0552;

    /** Mean square of a section's mass across the chord, over thickness^2 [1]. */
    static final double ACROSS = 0.0575;

    /** Thickness taken for the inertia, over the chord; common practice 5 to 7 %, no source. It is worth 1e-6 kg m2. */
    static final double THICKNESS = 0.06;

    private Shapes() {}

    /** A point of mass [kg] at a place [m]. */
    static MassProperties point(double mass, Vec3 place) {
        return new MassProperties(mass, place, Inertia.ZERO);
    }

    /** A thin rod along x with its middle at a place [m]. */
    static MassProperties rod(double mass, Vec3 middle, double length) {
        double across = mass * length * length / 12;
        return new MassProperties(mass, middle, new Inertia(0, across, across, 0, 0, 0));
    }

    /**
     * The pod: a slender shell of even skin on an ellipsoid from the nose to the boom, balancing where it was measured. The
     * skin's mass along the axis goes with the radius, sqrt(1 - s^2); hence the mean squares a^2/4 along the axis and 3/8
     * of the half width^2 and half height^2 across.
     *
     * @param rearX where the boom begins [m]
     */
    static MassProperties pod(Pod pod, double rearX) {
        double halfLength = 0.5 * Math.abs(pod.noseX() - rearX);
        double along = 0.25 * halfLength * halfLength;
        double wide = 0.375 * 0.25 * pod.width() * pod.width();
        double high = 0.375 * 0.25 * pod.height() * pod.height();
        double m = pod.mass();
        return new MassProperties(
                m,
                new Vec3(pod.cgX(), 0, pod.z()),
                new Inertia(m * (wide + high), m * (along + high), m * (along + wide), 0, 0, 0));
    }

    /** Both halves of the wing, each tilted up by the dihedral. */
    static MassProperties wing(Wing wing) {
        double c = Math.cos(wing.dihedral());
        double s = Math.sin(wing.dihedral());
        MassSum sum = new MassSum();
        surface(sum, wing.planform(), Vec3.ZERO, new Vec3(0, c, -s), new Vec3(0, -c, -s));
        return sum.scaledTo(wing.mass());
    }

    /** Both halves of the tailplane, flat. */
    static MassProperties tailplane(Tailplane tail) {
        Vec3 root = new Vec3(tail.x(), 0, tail.z());
        MassSum sum = new MassSum();
        surface(sum, tail.planform(), root, new Vec3(0, 1, 0), new Vec3(0, -1, 0));
        return sum.scaledTo(tail.mass());
    }

    /** The fin above and below the boom. */
    static MassProperties fin(Fin fin) {
        Vec3 root = new Vec3(fin.x(), 0, fin.z());
        MassSum sum = new MassSum();
        surface(sum, fin.above(), root, new Vec3(0, 0, -1));
        surface(sum, fin.below(), root, new Vec3(0, 0, 1));
        return sum.scaledTo(fin.mass());
    }

    /** Halves from their common root along the unit vectors outward, side by side so that they mirror exactly. */
    private static void surface(MassSum sum, Planform planform, Vec3 root, Vec3... outward) {
        Vec3 chordwise = new Vec3(1, 0, 0);
        for (int i = 1; i < planform.stations().size(); i++) {
            double from = planform.stations().get(i - 1).out();
            double to = planform.stations().get(i).out();
            for (int k = 0; k < Quadrature.POINTS; k++) {
                double y = Quadrature.point(k, from, to);
                double c = planform.chordAt(y);
                double dm = c * c * Quadrature.weight(k, from, to);
                Vec3 onRoot = root.minus(chordwise.times(planform.backAt(y) + BALANCE * c));
                for (Vec3 out : outward) {
                    sum.add(dm, onRoot.plus(out.times(y)));
                    sum.spread(dm, chordwise.times(c * Math.sqrt(ALONG_CHORD)));
                    sum.spread(dm, chordwise.cross(out).times(c * THICKNESS * Math.sqrt(ACROSS)));
                }
            }
        }
    }
}
