package org.sawfly.flight;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.DragFactors;
import org.sawfly.aero.ModelChoice;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.CgSetting;
import org.sawfly.glider.FinScale;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.MassProperties;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Trim;
import org.sawfly.stability.Derivatives;
import org.sawfly.stability.NeutralPoint;

/** The demo glider with a shorter boom and other fins, in the fast model and by strips: 54 flights without roll as a freedom. */
final class ModelPairs {
    static final double[] CUTS = {0, 0.04, 0.08};
    static final double[] FINS = {0.75, 1, 1.25};
    static final double[] SPEEDS = {27, 33, 40};
    static final double[] RATES = {12, 20};

    private static final Corrections RIGID = new Corrections(DragFactors.NONE, 1, 1, 1, 1e6, 1, 0);

    private ModelPairs() {}

    /**
     * One flight in both models.
     *
     * @param cut off the boom [m]
     * @param fin its area over today's [1]
     * @param speed over the ground [m/s]
     * @param rate yaw rate at release [rad/s]
     * @param fast outcome
     * @param strips outcome
     */
    record Pair(double cut, double fin, double speed, double rate, Outcome fast, Outcome strips) {
        /** Top of the fast model less that of the strips [m]. */
        double topError() {
            return fast.top().height() - strips.top().height();
        }

        /** First swing of the fast model less that of the strips [deg]. */
        double swingError() {
            return Math.toDegrees(fast.swing().first() - strips.swing().first());
        }

        /** Whether strips find a swing up to which the fast model is for use. */
        boolean within() {
            return !strips.swing().beyondFastModel();
        }

        @Override
        public String toString() {
            return String.format("cut %.0f mm, fin %.2f, %.0f m/s, %.0f rad/s", 1000 * cut, fin, speed, rate);
        }
    }

    static Glider changed(double cut, double finFactor) {
        Glider glider = cut == 0 ? Demo.GLIDER : BoomCut.atRearEnd(cut, 0).apply(Demo.GLIDER);
        Glider tailed = finFactor == 1 ? glider : new FinScale(finFactor).apply(glider);
        double cg = MassProperties.of(Demo.GLIDER).cg().x();
        return new CgSetting(cg, List.of(CgSetting.Means.BATTERY, CgSetting.Means.NOSE_LEAD)).apply(tailed);
    }

    /** All of one glider. */
    static List<Pair> flown(double cut, double fin) {
        Craft[] crafts = new Craft[2];
        for (ModelChoice choice : ModelChoice.values()) {
            crafts[choice.ordinal()] = Craft.of(
                    changed(cut, fin), Corrections.NONE, Demo.MODELS, choice, Demo.SETTINGS, Demo.CALM.ground());
        }
        List<Pair> pairs = new ArrayList<>();
        for (double speed : SPEEDS) {
            for (double rate : RATES) {
                pairs.add(new Pair(cut, fin, speed, rate, fly(crafts[0], speed, rate), fly(crafts[1], speed, rate)));
            }
        }
        return pairs;
    }

    private static Outcome fly(Craft craft, double speed, double rate) {
        return Flight.fly(Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), speed, rate, Axes.PITCH_YAW));
    }

    /** Neutral points of both with the boom rigid, behind the wing's root leading edge [m]. */
    static double[] neutralPoints(Glider glider) {
        double[] points = new double[2];
        for (ModelChoice choice : ModelChoice.values()) {
            points[choice.ordinal()] = NeutralPoint.of(
                    rigid(glider, choice), Demo.CALM.ground(), 0, NeutralPoint.USUAL_LIFT, NeutralPoint.USUAL_SPEED);
        }
        return points;
    }

    /** Derivatives of both around a glide at 10 m/s with the boom rigid. */
    static Derivatives[] derivatives(Glider glider) {
        AirSample air = Craft.sample(Demo.CALM.ground());
        double mass = MassProperties.of(glider).mass();
        Derivatives[] d = new Derivatives[2];
        for (ModelChoice choice : ModelChoice.values()) {
            AeroModel model = rigid(glider, choice);
            d[choice.ordinal()] = Derivatives.around(model, air, new Trim(model, mass, air).atSpeed(0, 10));
        }
        return d;
    }

    private static AeroModel rigid(Glider glider, ModelChoice choice) {
        return choice.of(glider, MassProperties.of(glider), RIGID, Demo.MODELS);
    }
}
