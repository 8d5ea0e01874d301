package org.sawfly.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.motion.Glide;
import org.sawfly.section.Section;
import org.sawfly.section.SectionEstimate;
import org.sawfly.section.SectionShape;

class TailBuildUpTest {
    /** Anderson, Introduction to Flight, chapter 7, wind-tunnel model (from memory, recomputed); 0.5 %. */
    @Test
    void wingBodyAndTailOfTheTextbook() {
        double slope = Math.toDegrees(0.09);
        TailBuildUp model = new TailBuildUp(0.25, 0.593, 0.1 / 0.09, 0.35, 1, 1, 0, 0);
        assertThat(model.neutralPoint() - 0.25).isCloseTo(0.428, withinPercentage(0.5));
        double cg = 0.25 + 0.02;
        assertThat(model.momentSlope(cg, slope) * Math.toRadians(1)).isCloseTo(-0.0367, withinPercentage(0.5));
        assertThat(model.neutralPoint() - cg).isCloseTo(0.408, withinPercentage(0.5));
    }

    /**
     * The sum of closed terms against the differenced neutral point, 1.5 mm. The tails get a cambered section: thin symmetric
     * ones have a flat spot around zero lift, which the sum does not know.
     */
    @Test
    void sumAgreesWithTheDifferencedNeutralPoint() {
        Section wing = new SectionEstimate(SectionShape.of(0.062, 0.019, 0.32)).table();
        Section tail = new SectionEstimate(SectionShape.of(0.062, 0.019, 0.40)).table();
        Glider glider = Plover.glider(wing, wing, tail);
        Corrections rigid = new Corrections(Corrections.NONE.drag(), 1, 1, 1, 1e6, 1, 0);
        TailVolumeModel model = TailVolumeModel.of(glider, MassProperties.of(glider), rigid, PloverGlide.MODELS);
        for (double speed : new double[] {15, 33}) {
            Glide motion = new Glide(speed, Math.toRadians(1.75), 0, 0, 0, 0.3, 0, 0);
            TailBuildUp sum = TailBuildUp.of(glider, model, motion, PloverGlide.AIR.density());
            double place = -model.reference().meanChordX()
                    + sum.neutralPoint() * model.reference().meanChord();
            assertThat(place).isCloseTo(NeutralPoint.of(model, PloverGlide.AIR, 0, 0.3, speed), within(0.0015));
            assertThat(sum.boomEffect()).isCloseTo(1, within(1e-4));
            assertThat(sum.wingHeight()).isPositive();
            assertThat(sum.pod()).isPositive();
        }
    }

    /** A rule of thumb is no truth: half to one and a half times as much would still be plausible. */
    @Test
    void downwashIsPlausible() {
        var reference = PloverGlide.MODEL.reference();
        double aspect = reference.span() * reference.span() / reference.area();
        double arm = TailVolumes.of(PloverGlide.GLIDER, reference).horizontalArm();
        double thumb = TailBuildUp.datcomDownwashSlope(aspect, 0.5, arm, 0.002, reference.span());
        assertThat(PloverGlide.MODEL.downwashSlope(10)).isBetween(0.5 * thumb, 1.5 * thumb);
    }
}
