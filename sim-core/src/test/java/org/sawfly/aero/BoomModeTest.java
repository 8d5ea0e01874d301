package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

class BoomModeTest {
    private static final Glider GLIDER = Plover.glider(table(-0.036), table(-0.036), table(0));
    private static final AeroModel MODEL =
            StripModel.of(GLIDER, MassProperties.of(GLIDER), Corrections.NONE, new Models());
    private static final double SIDE = 2 * Math.PI * BoomSwing.inFlight(GLIDER, BoomSwing.Plane.SIDE);
    private static final double UP = 2 * Math.PI * BoomSwing.inFlight(GLIDER, BoomSwing.Plane.VERTICAL);

    private static SectionTable table(double zeroLift) {
        return SectionTable.of(new StallingSection(zeroLift), SectionGrid.usual(true));
    }

    private static Loads loads(Motion m) {
        Loads loads = new Loads();
        MODEL.evaluator().evaluate(m, loads);
        return loads;
    }

    /** Turning, sideslipping, under the loads of a release. */
    private static Motion release() {
        Motion m = AeroModelContract.calm();
        m.u = 30;
        m.v = -3;
        m.w = 0.8;
        m.q = 1;
        m.r = -10;
        m.elevator = -0.05;
        return m;
    }

    @Test
    void in_a_void_it_swings_at_its_frequency_and_is_hardly_damped() {
        Motion m = AeroModelContract.calm();
        m.density = 1e-9;
        m.gx = 0;
        m.gy = 0;
        m.gz = 0;
        m.boomSwings = true;
        m.boomRight = 0.01;
        m.boomUp = -0.02;
        Loads loads = loads(m);
        assertThat(loads.boomRightAcceleration).isCloseTo(-SIDE * SIDE * 0.01, withinPercentage(1e-3));
        assertThat(loads.boomUpAcceleration).isCloseTo(UP * UP * 0.02, withinPercentage(1e-3));
        m.boomRight = 0;
        m.boomUp = 0;
        m.boomRightRate = 2;
        m.boomUpRate = 3;
        loads = loads(m);
        // 2 % of critical damping
        assertThat(loads.boomRightAcceleration).isCloseTo(-0.04 * SIDE * 2, withinPercentage(1e-3));
        assertThat(loads.boomUpAcceleration).isCloseTo(-0.04 * UP * 3, withinPercentage(1e-3));
    }

    @Test
    void it_rests_where_the_boom_that_follows_at_once_is() {
        Motion m = release();
        Loads atOnce = loads(m);
        assertThat(Math.abs(atOnce.boomRight)).isGreaterThan(Math.toRadians(0.3));
        m.boomSwings = true;
        m.boomUp = atOnce.boomUp;
        m.boomRight = atOnce.boomRight;
        Loads swinging = loads(m);
        assertThat(swinging.boomRightAcceleration / (SIDE * SIDE)).isCloseTo(0, within(Math.toRadians(0.01)));
        assertThat(swinging.boomUpAcceleration / (UP * UP)).isCloseTo(0, within(Math.toRadians(0.01)));
        assertThat(swinging.fy).isCloseTo(atOnce.fy, within(1e-3 * Math.abs(atOnce.fy)));
        assertThat(swinging.mz).isCloseTo(atOnce.mz, within(1e-3 * Math.abs(atOnce.mz)));
    }

    /** A tail that moves to its right meets air from the right: the fin is pushed left, the swing slowed. */
    @Test
    void the_air_on_the_tails_damps_it() {
        Motion m = release();
        m.v = 0;
        m.r = 0;
        m.boomSwings = true;
        double still = loads(m).boomRightAcceleration;
        double up = loads(m).boomUpAcceleration;
        m.boomRightRate = 1;
        m.boomUpRate = 1;
        double damping = still - loads(m).boomRightAcceleration;
        assertThat(damping).as("more than the tube's own").isGreaterThan(3 * 0.04 * SIDE);
        assertThat(up - loads(m).boomUpAcceleration).isGreaterThan(0.04 * UP);
        // fin force per sideways speed rho V S a/2, bending theta_F, the tail's way: of the same size
        BoomFlex flex = BoomFlex.at(GLIDER, GLIDER.fin().x() - GLIDER.fin().quarterPointBack(), 1);
        double slope = 0.5 * m.density * m.u * GLIDER.fin().area() * 3;
        assertThat(damping - 0.04 * SIDE)
                .isBetween(
                        0.3 * SIDE * SIDE * flex.force() * slope * flex.travel(),
                        SIDE * SIDE * flex.force() * slope * flex.travel());
    }

    @Test
    void what_it_takes_from_the_tails_is_in_the_books() {
        Motion m = release();
        m.boomSwings = true;
        m.boomRight = 0.02;
        m.boomRightRate = 4;
        m.boomUpRate = -4;
        Loads loads = loads(m);
        double power = 0;
        for (double part : loads.power) {
            power += part;
        }
        double spent = -(loads.fx * m.u + loads.fy * m.v + loads.fz * m.w)
                - (loads.mx * m.p + loads.my * m.q + loads.mz * m.r);
        assertThat(power).isCloseTo(spent, withinPercentage(1e-9));
    }

    @Test
    void a_uniform_tubes_end_moves_two_thirds_of_its_length_a_slope() {
        BoomFlex flex = BoomFlex.at(GLIDER, GLIDER.boom().endX(), 1);
        // tapered to the rear: softer there, so less than the 2 L/3 of a uniform one under a force at its end
        assertThat(flex.travel())
                .isBetween(0.5 * GLIDER.boom().length(), 0.667 * GLIDER.boom().length());
    }

    @Test
    void a_boom_as_stiff_as_no_boom_follows_at_once() {
        Corrections stiff = new Corrections(DragFactors.NONE, 1, 1, 1, 1e6, 1, 0);
        AeroModel model = StripModel.of(GLIDER, MassProperties.of(GLIDER), stiff, new Models());
        assertThat(model.boomFrequency(BoomSwing.Plane.SIDE)).isInfinite();
        assertThat(MODEL.boomFrequency(BoomSwing.Plane.SIDE)).isCloseTo(SIDE / (2 * Math.PI), withinPercentage(1e-9));
    }
}
