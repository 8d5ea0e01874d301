package org.sawfly.stability;

import org.sawfly.aero.Reference;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.glider.Glider;
import org.sawfly.motion.Glide;

/**
 * The neutral point as a sum of closed terms, to be read beside the differenced one; in mean chords:
 *
 * <pre>
 *   h_n = h_wing + eta_q eta_b Vh (a_t / a) (1 - d epsilon/d alpha) + height - pod
 *   height = -(z_w / c) (dCX/dalpha) / a,   pod = 2 (k2 - k1) Vol / (S c a)
 * </pre>
 *
 * <p>eta_q is dynamic pressure at the tailplane over that of the flight (1 in the flown model: no wake of slow air reaches
 * the tail), eta_b what the bending boom leaves of the tailplane; they are two things. With a the lift slope of the whole and
 * Vh about the quarter chord of the wing the sum is exact for linear lifts (Etkin and Reid, Dynamics of Flight, 3rd ed. 1996,
 * equation 2.3,23); with the slope of wing and body and Vh about the CG it is the form of Anderson (Introduction to Flight,
 * chapter 7), which drops the tail's own lift.
 *
 * @param wing h_wing, behind the leading edge of the mean chord over the mean chord [1]
 * @param volume Vh [1]
 * @param slopeRatio a_t/a [1]
 * @param downwashSlope d epsilon/d alpha [1]
 * @param pressureRatio eta_q [1]
 * @param boomEffect eta_b [1]
 * @param wingHeight the height term [1]
 * @param pod the pod's term, forward positive [1]
 */
public record TailBuildUp(
        double wing,
        double volume,
        double slopeRatio,
        double downwashSlope,
        double pressureRatio,
        double boomEffect,
        double wingHeight,
        double pod) {
    private static final double WING_QUARTER = 0.25;

    /**
     * Of a glider around a glide.
     *
     * @param glider for its tails
     * @param model the flown model
     * @param glide for lift coefficient and speed
     * @param density [kg/m3]
     */
    public static TailBuildUp of(Glider glider, TailVolumeModel model, Glide glide, double density) {
        Reference reference = model.reference();
        double speed = glide.speed();
        double areaRatio = 2 * glider.tailplane().planform().area() / reference.area();
        double wingSlope = model.wingSlope(speed);
        double tailSlope = model.tailplaneSlope(speed);
        double downwash = model.downwashSlope(speed);
        double held = model.heldEffectiveness(speed, density);
        double slope = wingSlope + areaRatio * tailSlope * held * (1 - downwash);
        TailVolumes volumes = TailVolumes.of(glider, reference);
        double quarter = reference.meanChordX() - WING_QUARTER * reference.meanChord();
        double arm = volumes.horizontalArm() + quarter - reference.cgX();
        double forward = model.wingForwardSlope(glide.alpha(), speed, glide.camber());
        return new TailBuildUp(
                WING_QUARTER,
                areaRatio * arm / reference.meanChord(),
                tailSlope / slope,
                downwash,
                1,
                held,
                -model.wingHeight() / reference.meanChord() * forward / slope,
                model.podMoment() / (reference.area() * reference.meanChord() * slope));
    }

    /** What the tailplane moves it back by [mean chords]. */
    public double tail() {
        return pressureRatio * boomEffect * volume * slopeRatio * (1 - downwashSlope);
    }

    /** h_n, behind the leading edge of the mean chord [mean chords]. */
    public double neutralPoint() {
        return wing + tail() + wingHeight - pod;
    }

    /**
     * Slope of the pitching moment about a CG, nose up positive [1/rad].
     *
     * @param cg behind the leading edge of the mean chord [mean chords]
     * @param slope lift slope that {@code slopeRatio} refers to [1/rad]
     */
    public double momentSlope(double cg, double slope) {
        return slope * (cg - neutralPoint());
    }

    /**
     * Downwash slope by the rule of thumb of the USAF Stability and Control Datcom (1978, section 4.4.1; from memory, the page
     * not verified), a check of plausibility only: {@code 4.44 (K_A K_t K_h)^1.19}, {@code K_A = 1/A - 1/(1 + A^1.7)},
     * {@code K_t = (10 - 3 taper)/7}, {@code K_h = (1 - h/b)/(2 l/b)^(1/3)}; no sweep.
     *
     * @param aspectRatio of the wing [1]
     * @param taper tip chord over root chord [1]
     * @param arm from the wing's to the tail's quarter chord [m]
     * @param height of the tail above the wing's plane, magnitude [m]
     * @param span of the wing [m]
     */
    public static double datcomDownwashSlope(double aspectRatio, double taper, double arm, double height, double span) {
        double aspect = 1 / aspectRatio - 1 / (1 + Math.pow(aspectRatio, 1.7));
        double place = (1 - height / span) / Math.cbrt(2 * arm / span);
        return 4.44 * Math.pow(aspect * (10 - 3 * taper) / 7 * place, 1.19);
    }
}
