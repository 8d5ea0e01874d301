package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.aero.Surface.Rib;
import org.sawfly.aero.VortexSystem.Setting;
import org.sawfly.math.CubicAxis;
import org.sawfly.math.Vec3;
import org.sawfly.section.Section;

class LoneSurfaceTest {
    private static final double A0 = 2 * Math.PI;
    private static final double NU = 1.46e-5;

    /** Elliptic wing, straight section slope (Prandtl 1918): CL = 2 pi AR/(AR + 2) alpha, CDi = CL^2/(pi AR). */
    @Test
    void ellipticWingLiftAndInducedDrag() {
        LoneSurface wing = lone(Outlines.elliptic(8), 80, Setting.CLASSICAL);
        LoneSurface.Flow flow = wing.flow();
        double alpha = Math.toRadians(2);
        flow.solve(alpha, straight(40, -0.03));
        double lift = flow.normalForce * Math.cos(alpha) + flow.forwardForce * Math.sin(alpha);
        double drag = flow.normalForce * Math.sin(alpha) - flow.forwardForce * Math.cos(alpha);
        assertThat(lift).isCloseTo(5.026548 * alpha, Percentage.withPercentage(0.2));
        assertThat(drag).isCloseTo(lift * lift / (Math.PI * 8), Percentage.withPercentage(0.3));
        assertThat(flow.friction).isCloseTo(0.01, within(1e-4));
        assertThat(flow.moment).as("nose down from the sections").isNegative();
    }

    /** Ratio of odd to even slope on an elliptic wing, from the exact Cl_beta and CL_alpha at aspect ratio 10. */
    @Test
    void ellipticWingOddRatio() {
        LoneSurface wing = lone(Outlines.elliptic(10), 80, Setting.CLASSICAL);
        assertThat(wing.strips.surface.areaRadius()).isCloseTo(0.5, within(1e-4));
        assertThat(wing.oddRatio()).isCloseTo(0.952381 * 4 / (2 * Math.PI * 10 / 12), Percentage.withPercentage(0.2));
        assertThat(lone(Outlines.rectangular(8), 40, Setting.PRODUCTION).oddRatio())
                .isBetween(0.6, 0.85);
    }

    /** The half solved with its image is the whole solved outright. */
    @Test
    void halfAndWholeAgree() {
        Surface wing = Outlines.tapered(8, .5, 0.1, 0.12);
        LoneSurface half = lone(wing, 20, Setting.PRODUCTION);
        LoneSurface.Flow flow = half.flow();
        flow.solve(0.001, straight(10, 0));
        Strips strips = Strips.cosine(wing, 20);
        double[] slopes = new double[20];
        Arrays.fill(slopes, A0);
        double[] b = new double[20];
        for (int i = 0; i < 20; i++) {
            b[i] = 0.001;
        }
        double[] gamma = new VortexSystem(Setting.PRODUCTION, 0, slopes, List.of(strips)).attached(b);
        for (int i = 0; i < 10; i++) {
            assertThat(flow.gamma[i]).isCloseTo(gamma[10 + i], within(1e-9));
            assertThat(flow.gamma[i]).isCloseTo(gamma[9 - i], within(1e-9));
        }
    }

    /** A symmetric section has no preferred side. */
    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.15, 0.3, 0.8, 1.5, 2.4, 3.1})
    void upsideDownIsTheMirrorImage(double alpha) {
        LoneSurface wing = lone(Outlines.tapered(8, .5, 0, 0), 40, Setting.PRODUCTION);
        StripPolars polars = sampled(new StallingSection(0), wing);
        LoneSurface.Flow up = wing.flow();
        LoneSurface.Flow down = wing.flow();
        up.solve(alpha, polars);
        down.solve(-alpha, polars);
        assertThat(up.normalForce).isPositive().isCloseTo(-down.normalForce, within(1e-9));
        assertThat(up.forwardForce).isCloseTo(down.forwardForce, within(1e-9));
        assertThat(up.moment).isCloseTo(-down.moment, within(1e-9));
        assertThat(up.friction).isPositive().isCloseTo(down.friction, within(1e-9));
    }

    /** A fin whose ribs run downwards is pushed to the right by air from the left, and its moment is nose right. */
    @Test
    void finPushesToTheRight() {
        Surface fin = Surface.single(
                List.of(new Rib(new Vec3(-0.7, 0, -0.1), 0.05, 0), new Rib(new Vec3(-0.7, 0, 0.1), 0.05, 0)));
        LoneSurface lone = lone(fin, 12, Setting.PRODUCTION);
        assertThat(lone.normal).isEqualTo(new Vec3(0, 1, 0));
        LoneSurface.Flow flow = lone.flow();
        flow.solve(0.1, straight(12, 0));
        assertThat(flow.normalForce).isPositive();
        assertThat(flow.forwardForce).isPositive();
        assertThat(flow.moment).isCloseTo(0, within(1e-12));
    }

    /**
     * All round in tenths of a degree: no jumps in the forces; and where the section's slope does not fall, the passes have
     * settled.
     */
    @Test
    void settlesAndStaysSmoothThroughStall() {
        LoneSurface wing = lone(Outlines.tapered(9, .4, 0.05, 0.1), 40, Setting.PRODUCTION);
        StripPolars polars = sampled(new StallingSection(-0.03), wing);
        LoneSurface.Flow flow = wing.flow();
        double before = Double.NaN;
        for (int i = -1800; i <= 1800; i++) {
            flow.solve(Math.toRadians(i * 0.1), polars);
            if (i > -1800) {
                assertThat(Math.abs(flow.normalForce - before))
                        .as("%d tenths", i)
                        .isLessThan(0.03);
            }
            before = flow.normalForce;
            double size = Math.abs(i) * 0.1;
            boolean falling = size > 9 && size < 24 || size > 45 && size < 135; // stall; the plate past its best
            assertThat(flow.lastChange).as("%d tenths", i).isLessThan(falling ? 0.5 : 0.02);
        }
    }

    /** Far below stall the fixed passes leave nothing of the section's bends. */
    @Test
    void agreesWithTheSectionsItIsMadeOf() {
        LoneSurface wing = lone(Outlines.tapered(9, .4, 0.05, 0.1), 40, Setting.PRODUCTION);
        LoneSurface.Flow flow = wing.flow();
        flow.solve(0.1, sampled(new StallingSection(-0.03), wing));
        assertThat(flow.lastChange).isLessThan(1e-6);
    }

    private static LoneSurface lone(Surface surface, int strips, Setting setting) {
        double[] slopes = new double[surface.isMirrored() ? strips / 2 : strips];
        Arrays.fill(slopes, A0);
        return new LoneSurface(Strips.cosine(surface, strips), slopes, setting);
    }

    /** Straight from -1 to 1 rad. */
    private static StripPolars straight(int count, double moment) {
        CubicAxis axis = CubicAxis.of(CubicAxis.Ends.LINE, -1, 1);
        double[][] values = new double[count][];
        Arrays.fill(values, new double[] {-A0, 0.01, moment, A0, 0.01, moment});
        return new StripPolars(axis, values);
    }

    private static StripPolars sampled(Section section, LoneSurface surface) {
        double[] none = new double[surface.count];
        double[] chords = Arrays.copyOfRange(surface.strips.chords, surface.first, surface.strips.count);
        return new SpanSections(section, section, none, none, chords, NU).polars(10, 0);
    }
}
