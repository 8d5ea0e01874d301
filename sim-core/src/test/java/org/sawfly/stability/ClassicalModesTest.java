package org.sawfly.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.sawfly.air.Standard;
import org.sawfly.math.Inertia;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Linear;

class ClassicalModesTest {
    /** The design's aim: the refined formula within 5 % of the eigenvalue on the demo glider, Lanchester far from it. */
    @Test
    void refinedPhugoidFollowsTheDemoGlider() {
        Linear linear = PloverGlide.linear();
        Mode swing = Modes.of(linear).speedAndHeight();
        ClassicalModes classical = ClassicalModes.of(linear, PloverGlide.GLIDE, Standard.GRAVITY);
        assertThat(classical.speedAndHeight()).isCloseTo(swing.frequency(), withinPercentage(5));
        assertThat(classical.stiffPeriod()).isLessThan(0.7 * 2 * Math.PI / swing.frequency());
    }

    @Test
    void shortFormulasFollowTheFastModes() {
        Linear linear = PloverGlide.linear();
        Modes modes = Modes.of(linear);
        ClassicalModes classical = ClassicalModes.of(linear, PloverGlide.GLIDE, Standard.GRAVITY);
        assertThat(classical.rollGrowth()).isCloseTo(modes.roll().growth(), withinPercentage(25));
        assertThat(classical.noseLeftRight()).isCloseTo(modes.noseLeftRight().frequency(), withinPercentage(25));
        assertThat(classical.circleGrowth()).isCloseTo(modes.circle().growth(), within(0.02));
    }

    /** The published aeroplane's eigenvalues against its own short formulas. */
    @Test
    void shortFormulasFollowThePublishedAeroplane() {
        double[][] five = new double[5][5];
        for (int i = 0; i < 4; i++) {
            System.arraycopy(Navion.longitudinal()[i], 0, five[i], 0, 4);
        }
        five[4][4] = -1;
        Linear linear = new Linear(five, Navion.lateral());
        Glide level = new Glide(176, 0, 0, 0, 0, 0.41, 0.05, 0);
        ClassicalModes classical = ClassicalModes.of(linear, level, 32.2);
        Modes modes = Modes.of(linear);
        assertThat(classical.speedAndHeight()).isCloseTo(modes.speedAndHeight().frequency(), withinPercentage(5));
        assertThat(classical.noseUpDown()).isCloseTo(modes.noseUpDown().frequency(), withinPercentage(2));
        assertThat(classical.circleGrowth()).isCloseTo(modes.circle().growth(), withinPercentage(10));
        assertThat(classical.rollGrowth()).isCloseTo(modes.roll().growth(), withinPercentage(2));
    }

    /** Period pi sqrt(2) V/g and damping ratio 1/(sqrt(2) L/D) of a glider with a stiff margin (Lanchester, 1908). */
    @Test
    void degenerateGliderSwingsAsLanchesterSays() {
        double speed = 10;
        double mass = 0.25;
        ConstantLift model = new ConstantLift(mass * Standard.GRAVITY / (speed * speed));
        AirSample air = PloverGlide.sample();
        Glide level = new Glide(speed, 0, 0, 0, 0, 0.6, 0, 0);
        Linear linear = Linear.around(mass, new Inertia(1e-4, 1e-4, 1e-4, 0, 0, 0), model, 1, air, level);
        Mode swing = Modes.of(linear).speedAndHeight();
        assertThat(swing.period()).isCloseTo(4.5305, withinPercentage(1));
        assertThat(Math.abs(swing.damping())).isLessThan(0.01);
        assertThat(ClassicalModes.of(linear, level, Standard.GRAVITY).stiffPeriod())
                .isCloseTo(4.5305, withinPercentage(0.01));
    }
}
