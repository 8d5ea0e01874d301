package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.sawfly.flight.Demo;
import org.sawfly.glider.Bifilar;

class SwungInertiaTest {
    private static SwungInertia of(double mass, double apart, double length, double period) {
        Bifilar swing = new Bifilar(Bifilar.Axis.YAW, 0.2314, 0.3, 1.2, 2.57);
        return SwungInertia.of(Demo.GLIDER, swing, new SwungInertia.Doubts(mass, apart, length, period));
    }

    @Test
    void carried_air_is_taken_off() {
        SwungInertia found = of(0, 0, 0, 0);
        assertThat(found.swung())
                .isCloseTo(0.2314 * 9.80665 * 0.09 * 2.57 * 2.57 / (4 * Math.PI * Math.PI * 1.2), within(1e-12));
        assertThat(found.air()).isBetween(1e-5, 2e-3);
        assertThat(found.inertia()).isEqualTo(found.swung() - found.air());
        assertThat(found.doubt()).isCloseTo(SwungInertia.AIR_DOUBT * found.air(), within(1e-15));
    }

    /** What a changed measure does to the result, by flying it twice, is what its doubt does. */
    @Test
    void doubts_are_what_a_changed_measure_does() {
        double air = SwungInertia.AIR_DOUBT * of(0, 0, 0, 0).air();
        double h = 1e-5;
        double swung = of(0, 0, 0, 0).swung();
        double apart = new Bifilar(Bifilar.Axis.YAW, 0.2314, 0.3 + h, 1.2, 2.57).swungInertia() - swung;
        double period = new Bifilar(Bifilar.Axis.YAW, 0.2314, 0.3, 1.2, 2.57 + h).swungInertia() - swung;
        double length = swung - new Bifilar(Bifilar.Axis.YAW, 0.2314, 0.3, 1.2 + h, 2.57).swungInertia();
        assertThat(without(of(0, h, 0, 0).doubt(), air)).isCloseTo(apart, withinPercentage(0.1));
        assertThat(without(of(0, 0, h, 0).doubt(), air)).isCloseTo(length, withinPercentage(0.1));
        assertThat(without(of(0, 0, 0, h).doubt(), air)).isCloseTo(period, withinPercentage(0.1));
    }

    private static double without(double all, double air) {
        return Math.sqrt(all * all - air * air);
    }
}
