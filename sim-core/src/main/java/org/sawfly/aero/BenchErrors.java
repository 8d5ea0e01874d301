package org.sawfly.aero;

import org.sawfly.math.Vec3;

/**
 * What was not built squarely, as small angles; none by default. The masses stay where they are: a CG off its place is a
 * part off its place.
 *
 * <p>In the fast model a tilted tail keeps its coefficients and leans its lift, a skewed fin and a twisted wing meet
 * the air at another angle, a skewed boom carries its tails beside the plane of symmetry, and a skewed tailplane
 * does nothing: its lift is that of one point and does not lean (what is left is second order, skew times sweep times lift).
 *
 * @param tailplaneIncidence nose up positive [rad]
 * @param tailplaneTilt right side down positive [rad]
 * @param tailplaneSkew nose right positive [rad]
 * @param finTilt top to the right positive [rad]
 * @param finSkew nose right positive [rad]
 * @param wingTwist right half with more incidence than the left positive, the difference [rad]
 * @param boomSkew boom out of line with the wing, pointing right at its front and left at its end positive [rad]
 */
public record BenchErrors(
        double tailplaneIncidence,
        double tailplaneTilt,
        double tailplaneSkew,
        double finTilt,
        double finSkew,
        double wingTwist,
        double boomSkew) {
    /** Built squarely. */
    public static final BenchErrors NONE = new BenchErrors(0, 0, 0, 0, 0, 0, 0);

    /** Both together. */
    public BenchErrors plus(BenchErrors o) {
        return new BenchErrors(
                tailplaneIncidence + o.tailplaneIncidence,
                tailplaneTilt + o.tailplaneTilt,
                tailplaneSkew + o.tailplaneSkew,
                finTilt + o.finTilt,
                finSkew + o.finSkew,
                wingTwist + o.wingTwist,
                boomSkew + o.boomSkew);
    }

    /** A direction turned about x, right side down positive. */
    static Vec3 rolled(Vec3 direction, double angle) {
        if (angle == 0) {
            return direction;
        }
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Vec3(direction.x(), c * direction.y() - s * direction.z(), s * direction.y() + c * direction.z());
    }

    /** A place on the boom when that is skewed about where it leaves the pod, build axes [m]. */
    Vec3 onBoom(Vec3 place, double frontX) {
        return new Vec3(place.x(), place.y() + (place.x() - frontX) * Math.sin(boomSkew), place.z());
    }

    /** The mirror image: what leans and turns the other way. */
    public BenchErrors mirrored() {
        return new BenchErrors(
                tailplaneIncidence, -tailplaneTilt, -tailplaneSkew, -finTilt, -finSkew, -wingTwist, -boomSkew);
    }
}
