package org.sawfly.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.glider.FinScale;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.TailplaneScale;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Trim;

class DerivativesTest {
    private static final Derivatives PLOVER =
            Derivatives.around(PloverGlide.MODEL, PloverGlide.sample(), PloverGlide.GLIDE);

    @Test
    void signsAreThoseOfASteadyGlider() {
        Derivatives.Pitch pitch = PLOVER.pitch();
        assertThat(pitch.liftByAngle()).isBetween(4.5, 6.5);
        assertThat(pitch.momentByAngle()).isNegative();
        assertThat(pitch.momentByRate()).isNegative();
        assertThat(pitch.momentByAngleRate()).isNegative();
        assertThat(pitch.liftByElevator()).isPositive();
        assertThat(pitch.momentByElevator()).isNegative();
        assertThat(PLOVER.sideslip().force()).isNegative();
        assertThat(PLOVER.sideslip().roll()).isNegative();
        assertThat(PLOVER.sideslip().yaw()).isPositive();
        assertThat(PLOVER.rollRate().roll()).isNegative();
        assertThat(PLOVER.rollRate().yaw()).isNegative();
        assertThat(PLOVER.yawRate().yaw()).isNegative();
        assertThat(PLOVER.yawRate().roll()).isPositive();
        assertThat(PLOVER.aileron().roll()).isPositive();
        assertThat(PLOVER.rudder().yaw()).isNegative();
        assertThat(PLOVER.rudder().force()).isPositive();
    }

    /** Closed forms of the tail alone: a yawing moment of the fin is its side force times its arm. */
    @Test
    void tailsActAtTheirArms() {
        TailVolumes volumes = TailVolumes.of(PloverGlide.GLIDER, PloverGlide.MODEL.reference());
        double span = PloverGlide.MODEL.reference().span();
        double chord = PloverGlide.MODEL.reference().meanChord();
        assertThat(PLOVER.rudder().yaw() / PLOVER.rudder().force())
                .isCloseTo(-volumes.verticalArm() / span, within(0.03));
        assertThat(PLOVER.pitch().momentByElevator() / PLOVER.pitch().liftByElevator())
                .isCloseTo(-volumes.horizontalArm() / chord, within(0.15));
    }

    @Test
    void largerTailsBrakeMore() {
        Derivatives tail = of(new TailplaneScale(1.2).apply(PloverGlide.GLIDER));
        assertThat(tail.pitch().momentByRate()).isLessThan(1.1 * PLOVER.pitch().momentByRate());
        Derivatives fin = of(new FinScale(1.2).apply(PloverGlide.GLIDER));
        assertThat(fin.yawRate().yaw()).isLessThan(1.1 * PLOVER.yawRate().yaw());
        assertThat(fin.sideslip().yaw()).isGreaterThan(1.1 * PLOVER.sideslip().yaw());
    }

    /** On a rigid boom the margin over a small angle is the ratio of the derivatives of moment and normal force. */
    @Test
    void marginIsTheRatioOfMomentToNormalForce() {
        Corrections rigid = new Corrections(Corrections.NONE.drag(), 1, 1, 1, 1e6, 1, 0);
        TailVolumeModel model = TailVolumeModel.of(PloverGlide.GLIDER, PloverGlide.MASS, rigid, PloverGlide.MODELS);
        Glide glide = new Trim(model, PloverGlide.MASS.mass(), PloverGlide.sample()).atLift(0, 0.6);
        Derivatives.Pitch d =
                Derivatives.around(model, PloverGlide.sample(), glide).pitch();
        double normal = (d.liftByAngle() + glide.dragCoefficient()) * Math.cos(glide.alpha())
                + (d.dragByAngle() - glide.liftCoefficient()) * Math.sin(glide.alpha());
        double neutral = NeutralPoint.over(0.002, model, PloverGlide.AIR, 0, 0.6, glide.speed());
        double margin =
                (neutral + PloverGlide.MASS.cg().x()) / model.reference().meanChord();
        assertThat(-d.momentByAngle() / normal).isCloseTo(margin, within(1e-4));
    }

    private static Derivatives of(Glider glider) {
        TailVolumeModel model =
                TailVolumeModel.of(glider, MassProperties.of(glider), Corrections.NONE, PloverGlide.MODELS);
        return Derivatives.around(model, PloverGlide.sample(), PloverGlide.GLIDE);
    }
}
