package org.sawfly.aero;

import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Glider;
import org.sawfly.math.Vec3;

/**
 * Strips of one tail within their group, and the boom that carries it. Immutable.
 *
 * @param from first strip
 * @param to strip after the last
 * @param place quarter point of the mean chord, from the CG, body axes [m]
 * @param arm from the wing's to this quarter point [m]
 * @param boom how it turns and swings with the tail
 * @param forceSlope attached force along its normal over the dynamic pressure, per angle, tail factor included [m2/rad]
 * @param incidence towards its normal [rad]
 * @param beyondStall further factor on lift beyond stall [1]
 * @param stallSine sine of the angle of stall [1]
 */
record StripTail(
        int from,
        int to,
        Vec3 place,
        double arm,
        BoomMode boom,
        double forceSlope,
        double incidence,
        double beyondStall,
        double stallSine) {

    static StripTail of(
            Glider glider,
            Surface surface,
            StripGroup group,
            int from,
            int to,
            double wingX,
            Vec3 cg,
            Corrections corrections,
            double stallSine) {
        boolean fin = !surface.isMirrored();
        Vec3 place = new Vec3(surface.meanChordX() - 0.25 * surface.meanChord(), 0, surface.meanZ());
        BenchErrors bench = corrections.bench();
        double beyond = fin ? corrections.finBeyondStall() : 1;
        BoomFlex flex = BoomFlex.at(glider, place.x(), corrections.boomStiffness());
        BoomSwing.Plane plane = fin ? BoomSwing.Plane.SIDE : BoomSwing.Plane.VERTICAL;
        return new StripTail(
                from,
                to,
                place.minus(cg),
                wingX - place.x(),
                BoomMode.of(glider, plane, flex, corrections.boomStiffness()),
                corrections.tailSlope() * group.forceSlope(from, to),
                fin
                        ? bench.finSkew() + bench.boomSkew()
                        : bench.tailplaneIncidence() - glider.tailplane().decalage(),
                beyond,
                stallSine);
    }
}
