package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.sawfly.math.Quadrature;
import org.sawfly.math.Vec3;
import org.sawfly.section.Section;

class ShapesTest {
    private static final Section NONE = (alpha, reynolds, flap, out) -> {};

    @Test
    void a_filled_section_balances_and_spreads_as_the_thickness_form_says() {
        // Source: Abbott and von Doenhoff, Theory of Wing Sections, 1959, equation 6.2; x = t^2 removes the root
        DoubleUnaryOperator thickness = t -> 10
                * (0.2969 * t
                        - 0.1260 * t * t
                        - 0.3516 * Math.pow(t, 4)
                        + 0.2843 * Math.pow(t, 6)
                        - 0.1015 * Math.pow(t, 8));
        double area = Quadrature.integral(t -> 2 * t * thickness.applyAsDouble(t), 0, 1, 200);
        double balance = Quadrature.integral(t -> 2 * t * t * t * thickness.applyAsDouble(t), 0, 1, 200) / area;
        double square = Quadrature.integral(t -> 2 * Math.pow(t, 5) * thickness.applyAsDouble(t), 0, 1, 200) / area;
        double across =
                Quadrature.integral(t -> 2 * t * Math.pow(thickness.applyAsDouble(t), 3) / 12, 0, 1, 200) / area;
        assertThat(Shapes.BALANCE).isCloseTo(balance, within(5e-4));
        assertThat(Shapes.ALONG_CHORD).isCloseTo(square - balance * balance, within(1e-4));
        assertThat(Shapes.ACROSS).isCloseTo(across, within(1e-4));
    }

    @Test
    void a_flat_rectangular_wing_is_a_plate() {
        double m = 0.1;
        MassProperties wing = Shapes.wing(wing(m, 0));
        double b = 1.2;
        double c = 0.1;
        double across = Shapes.ACROSS * Shapes.THICKNESS * Shapes.THICKNESS * c * c;
        assertThat(wing.inertia().ixx()).isCloseTo(m * (b * b / 12 + across), within(1e-15));
        assertThat(wing.inertia().iyy()).isCloseTo(m * (Shapes.ALONG_CHORD * c * c + across), within(1e-15));
        assertThat(wing.inertia().izz()).isCloseTo(m * (b * b / 12 + Shapes.ALONG_CHORD * c * c), within(1e-15));
        assertThat(wing.cg()).isEqualTo(new Vec3(wing.cg().x(), 0, 0));
        assertThat(wing.cg().x()).isCloseTo(-Shapes.BALANCE * c, within(1e-15));
    }

    @Test
    void dihedral_lifts_the_balance_point_and_trades_width_for_height() {
        double tilt = 0.1;
        MassProperties wing = Shapes.wing(wing(0.1, tilt));
        assertThat(wing.cg().z()).isCloseTo(-0.3 * Math.sin(tilt), within(1e-15));
        double widthSquare = 0.36 / 3 * Math.cos(tilt) * Math.cos(tilt);
        double heightSquare = (0.36 / 3 - 0.09) * Math.sin(tilt) * Math.sin(tilt);
        double across = Shapes.ACROSS * Shapes.THICKNESS * Shapes.THICKNESS * 0.01;
        assertThat(wing.inertia().ixx()).isCloseTo(0.1 * (widthSquare + heightSquare + across), within(1e-14));
    }

    @Test
    void the_larger_fin_part_above_raises_the_balance_point() {
        Fin fin = Plover.glider().fin();
        assertThat(Shapes.fin(fin).cg().z()).isLessThan(fin.z());
        assertThat(Shapes.fin(fin).inertia().ixz()).isNotEqualTo(0);
        assertThat(Shapes.fin(fin).inertia().ixy()).isEqualTo(0);
    }

    @Test
    void a_rod_and_a_slender_shell_have_their_closed_forms() {
        assertThat(Shapes.rod(0.3, Vec3.ZERO, 2).inertia().izz()).isCloseTo(0.1, within(1e-15));
        // int s^2 sqrt(1 - s^2) ds / int sqrt(1 - s^2) ds = 1/4 with s = sin t
        double top = Quadrature.integral(t -> Math.pow(Math.sin(t) * Math.cos(t), 2), 0, Math.PI / 2, 50);
        double bottom = Quadrature.integral(t -> Math.pow(Math.cos(t), 2), 0, Math.PI / 2, 50);
        double halfLength = 0.2;
        MassProperties pod = Shapes.pod(new Pod(0.03, 0.05, 0.25, 0, 1e-6, 1e-6), -0.15);
        assertThat(pod.inertia().iyy()).isCloseTo(0.03 * halfLength * halfLength * top / bottom, within(1e-9));
        // Round each ring the mean square of either half axis is its half; the rings shrink with sqrt(1 - s^2)
        double around = 0.5 * Quadrature.integral(t -> Math.pow(Math.cos(t), 4), 0, Math.PI / 2, 50) / bottom;
        MassProperties wide = Shapes.pod(new Pod(0.03, 0.05, 0.25, 0, 0.04, 0.06), -0.15);
        assertThat(wide.inertia().ixx()).isCloseTo(0.03 * around * (0.02 * 0.02 + 0.03 * 0.03), within(1e-15));
        assertThat(wide.inertia().iyy() - pod.inertia().iyy()).isCloseTo(0.03 * around * 0.03 * 0.03, within(1e-12));
        assertThat(wide.inertia().izz() - pod.inertia().izz()).isCloseTo(0.03 * around * 0.02 * 0.02, within(1e-12));
    }

    private static Wing wing(double mass, double dihedral) {
        Planform half = new Planform(List.of(new Station(0, 0.1, 0), new Station(0.6, 0.1, 0)));
        return new Wing(mass, half, dihedral, NONE, NONE, new Flap(0.3, 0, 0.6), Hand.RIGHT);
    }
}
