package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;

class BoomTubeTest {
    private static final double LENGTH = 0.7;

    /** A tube of 12 mm outside and 11 mm inside of E 120 GPa. */
    private final BoomTube even = evenTube(120e9 * Math.PI / 64 * (Math.pow(0.012, 4) - Math.pow(0.011, 4)), 0.02);

    @Test
    void a_cantilever_bends_as_the_closed_form_says() {
        // Source: beam theory, recomputed: 5 N at 0.7 m moves 15.92275 mm, slope 0.034120
        assertThat(5 * even.deflectionOfForce(0, -LENGTH, -LENGTH)).isCloseTo(0.01592275, within(5e-9));
        assertThat(5 * even.slopeOfForce(0, -LENGTH, -LENGTH)).isCloseTo(0.034120, within(5e-7));
    }

    @Test
    void behind_the_force_the_boom_is_straight() {
        double slope = even.slopeOfForce(0, -0.4, -0.4);
        assertThat(even.slopeOfForce(0, -0.4, -0.6)).isEqualTo(slope);
        assertThat(even.deflectionOfForce(0, -0.4, -0.6))
                .isCloseTo(even.deflectionOfForce(0, -0.4, -0.4) + 0.2 * slope, within(1e-15));
    }

    @Test
    void force_and_deflection_can_change_places() {
        // Source: Maxwell's reciprocal theorem, Timoshenko, Strength of Materials, part I, 1955
        BoomTube plover = BoomTube.of(Plover.glider().boom());
        assertThat(plover.deflectionOfForce(-0.168, -0.5, -0.7))
                .isCloseTo(plover.deflectionOfForce(-0.168, -0.7, -0.5), withinPercentage(1e-4));
    }

    @Test
    void own_mass_bends_an_even_tube_like_a_third_of_it_at_the_end() {
        // Closed form of the uniform tube: L^2/(2 EI) mu L/3
        double ei = even.stiffness(-0.3);
        assertThat(even.slopeOfOwnMass(0, -LENGTH))
                .isCloseTo(LENGTH * LENGTH / (2 * ei) * 0.02 / 3, withinPercentage(1e-9));
        assertThat(even.slopeOfMoment(0, -LENGTH, -LENGTH)).isCloseTo(LENGTH / ei, withinPercentage(1e-9));
    }

    @Test
    void own_mass_of_a_tapered_tube_bends_as_its_slices_do() {
        BoomTube plover = BoomTube.of(Plover.glider().boom());
        double sum = 0;
        int slices = 2000;
        for (int i = 0; i < slices; i++) {
            double x = -0.118 - 0.672 * (i + 0.5) / slices;
            sum += plover.massPerLength(x) * 0.672 / slices * plover.slopeOfForce(-0.118, x, x);
        }
        assertThat(plover.slopeOfOwnMass(-0.118, -0.790)).isCloseTo(sum, withinPercentage(0.01));
    }

    @Test
    void a_bend_test_is_met() {
        Boom boom = Plover.glider().boom();
        BoomTube tube = BoomTube.of(boom);
        double force = 0.5 * 9.80665;
        assertThat(force * tube.deflectionOfForce(-0.168, -0.663, -0.663)).isCloseTo(0.0057, within(1e-12));
        // Common practice, no source: 30 to 70 MN m/kg, 8 to 60 N m2 over a boom
        assertThat(tube.specificModulus()).isBetween(30e6, 80e6);
        assertThat(tube.stiffness(boom.frontX()) / tube.stiffness(boom.endX())).isCloseTo(8, withinPercentage(1e-9));
    }

    @Test
    void mass_taper_and_balance_point_follow_the_diameter() {
        MassProperties whole = BoomTube.of(Plover.glider().boom()).whole();
        assertThat(whole.mass()).isCloseTo(0.0148, within(1e-15));
        // Trapezium 17 to 8.5 over 672 mm: (17 + 2 x 8.5)/(3 x 25.5) of the length
        assertThat(whole.cg().x()).isCloseTo(-0.118 - 0.672 * 34 / 76.5, within(1e-15));
        MassProperties front = BoomTube.of(Plover.glider().boom()).piece(-0.118, -0.4);
        MassProperties rear = BoomTube.of(Plover.glider().boom()).piece(-0.4, -0.790);
        assertThat(front.mass() + rear.mass()).isCloseTo(0.0148, within(1e-15));
    }

    @Test
    void an_even_tube_has_the_inertia_of_a_thin_ring_drawn_out() {
        double r = 0.006;
        double m = 0.02;
        assertThat(even.whole().inertia().ixx()).isCloseTo(m * r * r, within(1e-15));
        assertThat(even.whole().inertia().iyy()).isCloseTo(m * (LENGTH * LENGTH / 12 + r * r / 2), within(1e-15));
    }

    @Test
    void a_weight_hung_behind_the_end_is_refused() {
        Boom boom = new Boom(
                0.0148, -0.1, -0.7, 0, 0.017, 0.0085, new BoomStiffness.OfBendTest(-0.1, -0.75, 5, 0.01), Map.of());
        assertThatThrownBy(() -> BoomTube.of(boom)).hasMessageContaining("behind its end");
    }

    private static BoomTube evenTube(double ei, double mass) {
        double specificModulus = ei * 8 * LENGTH / (mass * 0.012 * 0.012);
        return BoomTube.of(
                new Boom(mass, 0, -LENGTH, 0, 0.012, 0.012, new BoomStiffness.OfMaterial(specificModulus), Map.of()));
    }
}
