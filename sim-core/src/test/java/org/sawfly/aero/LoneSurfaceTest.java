package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sawfly.aero.CoefficientGrid.INDUCED;
import static org.sawfly.aero.CoefficientGrid.LIFT;
import static org.sawfly.aero.CoefficientGrid.MOMENT;
import static org.sawfly.aero.CoefficientGrid.PROFILE;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.aero.Surface.Rib;
import org.sawfly.math.Vec3;

class LoneSurfaceTest {
    private static final double NU = 1.46e-5;

    private static LoneSurface lone(Surface surface, int strips, double zeroLift) {
        Strips cut = Strips.cosine(surface, strips);
        StallingSection section = new StallingSection(zeroLift);
        StripTable table = zeroLift == 0 ? StripTable.symmetric(section) : StripTable.of(section);
        StripGroup.Part part = StripGroup.Part.of(cut, section, table, 0.3);
        return new LoneSurface(cut, new StripGroup(List.of(part), 0));
    }

    private static double[] solved(LoneSurface lone, double angle, double flap) {
        double[] out = new double[CoefficientGrid.CHANNELS];
        lone.flow().solve(angle, 10, flap, NU, out, 0);
        return out;
    }

    /** Rectangular flat wings as lifting surfaces in one row, see LiftingSurfaceTest; induced drag CL^2/(pi AR), a little more. */
    @ParameterizedTest
    @CsvSource({"2, 2.4256", "4, 3.5691", "6, 4.1812"})
    void attached_lift_is_that_of_the_lifting_surface(double aspect, double slope) {
        double alpha = 0.03;
        double[] c = solved(lone(Outlines.rectangular(aspect), 40, 0), alpha, 0);
        assertThat(c[LIFT]).isCloseTo(slope * alpha, Percentage.withPercentage(0.5));
        assertThat(c[INDUCED] * Math.PI * aspect / (c[LIFT] * c[LIFT])).isBetween(0.98, 1.06);
        assertThat(c[PROFILE]).isPositive();
    }

    @Test
    void a_cambered_wing_lifts_at_no_angle_and_noses_down_and_so_does_its_flap() {
        LoneSurface wing = lone(Outlines.tapered(9, .4, 0.05, 0.1), 40, -0.03);
        double[] plain = solved(wing, 0, 0);
        assertThat(plain[LIFT]).isPositive();
        assertThat(plain[MOMENT]).isNegative();
        double[] flapped = solved(wing, 0, 0.1);
        assertThat(flapped[LIFT]).isGreaterThan(plain[LIFT]);
        assertThat(flapped[MOMENT]).isLessThan(plain[MOMENT]);
    }

    /**
     * A slender elliptic wing against opposite angles, lifting line: equal on each half, from the exact Cl_beta and CL_alpha at
     * aspect ratio 10 (lifting surfaces give a little less of both); growing outwards, (AR + 2)/(AR + 4) (Glauert 1926: the first
     * and the second load).
     */
    @Test
    void opposite_angles_on_an_elliptic_wing() {
        LoneSurface wing = lone(Outlines.elliptic(10), 80, 0);
        assertThat(wing.strips.surface.areaRadius()).isCloseTo(0.5, within(1e-4));
        double lifting = 0.952381 * 4 / (2 * Math.PI * 10 / 12);
        assertThat(wing.oddRatio()).isBetween(0.92 * lifting, 1.0 * lifting);
        assertThat(wing.turningRatio()).isBetween(0.92 * 12 / 14, 1.0 * 12 / 14);
        assertThat(lone(Outlines.elliptic(40), 80, 0).turningRatio())
                .isCloseTo(42.0 / 44, Percentage.withPercentage(1));
    }

    /** A symmetric section has no preferred side. */
    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.15, 0.3, 0.8, 1.5, 2.4, 3.1})
    void upside_down_is_the_mirror_image(double alpha) {
        LoneSurface wing = lone(Outlines.tapered(8, .5, 0, 0), 40, 0);
        double[] up = solved(wing, alpha, 0.05);
        double[] down = solved(wing, -alpha, -0.05);
        assertThat(up[LIFT]).isCloseTo(-down[LIFT], within(1e-9));
        assertThat(up[INDUCED]).isCloseTo(down[INDUCED], within(1e-9));
        assertThat(up[PROFILE]).isPositive().isCloseTo(down[PROFILE], within(1e-9));
        assertThat(up[MOMENT]).isCloseTo(-down[MOMENT], within(1e-9));
    }

    /** A fin whose ribs run downwards is pushed to the right by air from the left. */
    @Test
    void a_fin_pushes_to_the_right() {
        Surface fin = Surface.single(
                List.of(new Rib(new Vec3(-0.7, 0, -0.1), 0.05, 0), new Rib(new Vec3(-0.7, 0, 0.1), 0.05, 0)));
        LoneSurface lone = lone(fin, 12, 0);
        assertThat(lone.normal).isEqualTo(new Vec3(0, 1, 0));
        double[] c = solved(lone, 0.1, 0);
        assertThat(c[LIFT]).isPositive();
        assertThat(c[INDUCED]).isPositive();
        assertThat(c[MOMENT]).isCloseTo(0, within(0.01));
    }

    /** All round in tenths of a degree there is no jump. */
    @Test
    void smooth_through_stall() {
        LoneSurface wing = lone(Outlines.tapered(9, .4, 0.05, 0.1), 40, -0.03);
        double before = Double.NaN;
        for (int i = -1800; i <= 1800; i++) {
            double lift = solved(wing, Math.toRadians(i * 0.1), 0)[LIFT];
            if (i > -1800) {
                assertThat(Math.abs(lift - before)).as("%d tenths", i).isLessThan(0.03);
            }
            before = lift;
        }
    }

    /** The circulations are those of the lift: twice their sum over the half's span is CL S/2. */
    @Test
    void circulations_carry_the_lift() {
        LoneSurface wing = lone(Outlines.tapered(9, .4, 0, 0), 40, -0.03);
        double[] out = new double[CoefficientGrid.CHANNELS];
        LoneSurface.Flow flow = wing.flow();
        flow.solve(0.05, 8, 0, NU, out, 0);
        double[] gamma = new double[wing.count];
        flow.circulations(8, gamma, 0);
        double sum = 0;
        for (int i = 0; i < wing.count; i++) {
            sum += 2 * gamma[i] * wing.strips.widths[wing.first + i];
        }
        assertThat(sum).isCloseTo(out[LIFT] * 0.5 * wing.strips.surface.area(), Percentage.withPercentage(0.2));
    }
}
