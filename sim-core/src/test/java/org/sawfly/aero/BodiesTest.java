package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.glider.Plover;
import org.sawfly.math.Vec3;

class BodiesTest {
    private static final Bodies BODIES = new Bodies(Plover.glider(), new Vec3(-0.069, 0, 0), 1);

    /** Lamb's coefficients as Munk prints them, NACA TR 184 (1924), table; from memory, recomputed. */
    @ParameterizedTest
    @CsvSource({"3.99, 0.777", "6.01, 0.872", "8.01, 0.916", "9.97, 0.939"})
    void a_spheroid_has_lambs_coefficients(double fineness, double difference) {
        assertThat(Bodies.munkFactor(fineness)).isCloseTo(difference, within(0.002));
    }

    @Test
    void a_sphere_has_no_turning_moment() {
        assertThat(Bodies.munkFactor(1)).isZero();
        assertThat(Bodies.munkFactor(1.0001)).isCloseTo(0, within(1e-3));
    }

    @Test
    void the_pod_turns_away_from_straight_flow() {
        Motion m = AeroModelContract.calm();
        m.u = 10;
        m.w = 0.5;
        double turning = moments(m).my;
        m.w = -0.5;
        assertThat(turning).isGreaterThan(moments(m).my);
        m.w = 0;
        m.v = 0.1;
        Loads right = moments(m);
        m.v = -0.1;
        assertThat(right.mz).as("wind from the right").isLessThan(moments(m).mz);
    }

    @Test
    void the_peg_on_the_left_turns_the_nose_left() {
        Motion m = AeroModelContract.calm();
        m.u = 10;
        Loads loads = moments(m);
        double drag = 0.5 * m.density * 100 * Bodies.PEG_AREA;
        assertThat(loads.mz).isCloseTo(-drag * 0.745, within(0.01 * drag));
        assertThat(loads.fx).isLessThan(-drag);
    }

    @Test
    void straight_drag_is_that_of_the_drag_area() {
        Motion m = AeroModelContract.calm();
        m.u = 12;
        double area = BODIES.dragArea(12, m.kinematicViscosity);
        assertThat(moments(m).fx).isCloseTo(-0.5 * m.density * 144 * area, within(1e-12));
    }

    private static Loads moments(Motion m) {
        Loads loads = new Loads();
        BODIES.addTo(m, loads);
        return loads;
    }
}
