package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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
import org.sawfly.motion.Glide;
import org.sawfly.motion.Trim;
import org.sawfly.stability.Derivatives;
import org.sawfly.stability.NeutralPoint;

/** The fast model against strips, on the demo glider and on changed ones, in flights without roll as a freedom. */
class TwoModelsTest {
    private static final double APEX = 0.35;
    private static final double SWING = 1;
    private static final Corrections RIGID = new Corrections(DragFactors.NONE, 1, 1, 1, 1e6, 1, 0);

    private static Glider changed(double cut, double finFactor) {
        Glider glider = cut == 0 ? Demo.GLIDER : BoomCut.atRearEnd(cut, 0).apply(Demo.GLIDER);
        Glider tailed = finFactor == 1 ? glider : new FinScale(finFactor).apply(glider);
        double cg = MassProperties.of(Demo.GLIDER).cg().x();
        return new CgSetting(cg, List.of(CgSetting.Means.BATTERY, CgSetting.Means.NOSE_LEAD)).apply(tailed);
    }

    private static Outcome fly(Glider glider, ModelChoice choice, double speed, double rate) {
        Craft craft = Craft.of(glider, Corrections.NONE, Demo.MODELS, choice, Demo.SETTINGS, Demo.CALM.ground());
        return Flight.fly(Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), speed, rate, Axes.PITCH_YAW));
    }

    @ParameterizedTest
    @CsvSource({"27,12", "33,12", "33,20"})
    void flights_agree_and_so_does_what_a_cut_costs(double speed, double rate) {
        double[] today = new double[2];
        double[] cut = new double[2];
        for (ModelChoice choice : ModelChoice.values()) {
            today[choice.ordinal()] =
                    fly(changed(0, 1), choice, speed, rate).top().height();
            cut[choice.ordinal()] =
                    fly(changed(0.04, 1), choice, speed, rate).top().height();
        }
        assertThat(today[0]).isCloseTo(today[1], within(APEX));
        assertThat(cut[0]).isCloseTo(cut[1], within(APEX));
        double cost = cut[1] - today[1];
        assertThat(cut[0] - today[0]).isCloseTo(cost, within(Math.max(0.1, 0.1 * Math.abs(cost))));
    }

    @ParameterizedTest
    @CsvSource({"0,1,33,12", "0.04,1,33,20", "0.08,0.75,27,12"})
    void swings_agree(double cut, double fin, double speed, double rate) {
        Glider glider = changed(cut, fin);
        double fast = fly(glider, ModelChoice.TAIL_VOLUME, speed, rate).swing().first();
        double strips = fly(glider, ModelChoice.STRIP, speed, rate).swing().first();
        assertThat(Math.toDegrees(fast)).isCloseTo(Math.toDegrees(strips), within(SWING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.04, 0.08})
    void neutral_points_agree(double cut) {
        Glider glider = changed(cut, 1);
        double[] points = new double[2];
        for (ModelChoice choice : ModelChoice.values()) {
            AeroModel model = choice.of(glider, MassProperties.of(glider), RIGID, Demo.MODELS);
            points[choice.ordinal()] =
                    NeutralPoint.of(model, Demo.CALM.ground(), 0, NeutralPoint.USUAL_LIFT, NeutralPoint.USUAL_SPEED);
        }
        assertThat(points[0]).isCloseTo(points[1], within(0.0006));
    }

    @Test
    void slopes_of_lift_side_force_and_weathercock_agree() {
        Glider glider = changed(0, 1);
        AirSample air = Craft.sample(Demo.CALM.ground());
        Derivatives[] d = new Derivatives[2];
        for (ModelChoice choice : ModelChoice.values()) {
            MassProperties mass = MassProperties.of(glider);
            AeroModel model = choice.of(glider, mass, RIGID, Demo.MODELS);
            Glide glide = new Trim(model, mass.mass(), air).atSpeed(0, 10);
            d[choice.ordinal()] = Derivatives.around(model, air, glide);
        }
        assertThat(d[0].pitch().liftByAngle()).isCloseTo(d[1].pitch().liftByAngle(), withinPercentage(5));
        assertThat(d[0].sideslip().force()).isCloseTo(d[1].sideslip().force(), withinPercentage(5));
        assertThat(d[0].sideslip().yaw()).isCloseTo(d[1].sideslip().yaw(), withinPercentage(7));
        assertThat(d[0].yawRate().yaw()).isCloseTo(d[1].yawRate().yaw(), withinPercentage(5));
    }
}
