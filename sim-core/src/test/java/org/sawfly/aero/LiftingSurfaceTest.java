package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.Surface.Rib;
import org.sawfly.math.Vec3;

/** The production setting against lifting-surface values; section slope 2 pi, unit speed. */
class LiftingSurfaceTest {
    private static final double A0 = 2 * Math.PI;

    /**
     * Bertin and Smith, Aerodynamics for Engineers, 3rd ed., example 7.2 (from memory, recomputed): untapered, swept 45 deg,
     * aspect ratio 5, four horseshoes of even width a half, control at three quarters of the chord.
     */
    @Test
    void sweptWingOfBertinAndSmith() {
        Surface wing = Outlines.tapered(5, 1, Math.PI / 4, 0);
        double[] edges = new double[9];
        double[] controls = new double[8];
        for (int i = 0; i <= 8; i++) {
            edges[i] = -1 + i * 0.25;
        }
        for (int i = 0; i < 8; i++) {
            controls[i] = -0.875 + i * 0.25;
        }
        Strips strips = Strips.between(wing, edges, controls);
        double[] gamma = system(List.of(strips)).attached(filled(8, 1));
        double[] expected = {.0273, .0287, .0286, .0250};
        double lift = 0;
        for (int i = 0; i < 4; i++) {
            assertThat(gamma[4 + i] / (4 * Math.PI * 2)).isCloseTo(expected[i], within(1e-4));
            assertThat(gamma[3 - i]).isCloseTo(gamma[4 + i], within(1e-12));
            lift += 2 * 2 * gamma[4 + i] * 0.25 / wing.area();
        }
        assertThat(lift).isCloseTo(3.443, Percentage.withPercentage(0.1));
    }

    /** Rectangular flat wings, one row, 1/4 - 3/4 points, 40 cosine strips: recomputed vortex lattice; 0.1 %. */
    @ParameterizedTest
    @CsvSource({"2, 2.4256", "4, 3.5691", "6, 4.1812"})
    void rectangularWingsInOneRow(double aspect, double slope) {
        Strips strips = Strips.cosine(Outlines.rectangular(aspect), 40);
        double[] gamma = system(List.of(strips)).attached(filled(40, 1));
        assertThat(lift(strips, gamma, 0) / strips.surface.area()).isCloseTo(slope, Percentage.withPercentage(0.1));
    }

    /**
     * Rectangular flat wings as lifting surfaces, converged vortex lattice (recomputed); 0.2 %. The chord is cut into rows,
     * each a surface of its own in the same system: this also checks what surfaces do to each other.
     */
    @ParameterizedTest
    @CsvSource({"2, 2.4725", "4, 3.610", "6, 4.213"})
    void rectangularWingsInRows(double aspect, double slope) {
        int rows = 5;
        double chord = 2 / aspect;
        List<Strips> surfaces = new ArrayList<>();
        for (int k = 0; k < rows; k++) {
            double front = chord * (0.25 - (double) k / rows);
            surfaces.add(Strips.cosine(
                    Surface.mirrored(List.of(
                            new Rib(new Vec3(front, 0, 0), chord / rows, 0),
                            new Rib(new Vec3(front, 1, 0), chord / rows, 0))),
                    60));
        }
        double[] gamma = system(surfaces).attached(filled(60 * rows, 1));
        double sum = 0;
        for (int k = 0; k < rows; k++) {
            sum += lift(surfaces.get(k), gamma, 60 * k);
        }
        assertThat(sum / (2 * chord)).isCloseTo(slope, Percentage.withPercentage(0.2));
    }

    /**
     * Downwash on the axis behind a flat elliptic wake over its far value 2 CL/(pi AR), at x over the half span: recomputed;
     * 0.5 %. With circulation G sqrt(1 - y^2) on a span of 2 the far value is G/2.
     */
    @ParameterizedTest
    @CsvSource({".5, 1.3388", ".75, 1.1771", "1.0, 1.1080", "1.25, 1.0723"})
    void downwashBehindAnEllipticWake(double back, double ratio) {
        Surface line =
                Surface.single(List.of(new Rib(new Vec3(0.05, -1, 0), 0.2, 0), new Rib(new Vec3(0.05, 1, 0), 0.2, 0)));
        Strips strips = Strips.cosine(line, 81); // odd: the axis lies between two legs
        double[] sum = new double[3];
        Vec3 point = new Vec3(-back, 0, 0);
        for (int i = 0; i < strips.count; i++) {
            double[] one = new double[3];
            Horseshoe.addLegs(strips.edges[i], strips.edges[i + 1], VortexSystem.BACK, 0, point, one);
            Horseshoe.addBound(strips.edges[i], strips.edges[i + 1], point, one);
            double y = strips.quarters[i].y();
            sum[2] += Math.sqrt(1 - y * y) * one[2];
        }
        assertThat(sum[2]).as("down is positive").isCloseTo(0.5 * ratio, Percentage.withPercentage(0.5));
    }

    private static VortexSystem system(List<Strips> surfaces) {
        int n = surfaces.stream().mapToInt(s -> s.count).sum();
        return new VortexSystem(VortexSystem.Setting.PRODUCTION, 0, filled(n, A0), surfaces);
    }

    private static double[] filled(int n, double value) {
        double[] values = new double[n];
        Arrays.fill(values, value);
        return values;
    }

    private static double lift(Strips strips, double[] gamma, int first) {
        double sum = 0;
        for (int i = 0; i < strips.count; i++) {
            sum += 2 * gamma[first + i] * strips.widths[i];
        }
        return sum;
    }
}
