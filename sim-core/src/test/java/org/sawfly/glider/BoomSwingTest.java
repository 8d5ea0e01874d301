package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.glider.BoomSwing.Plane;
import org.sawfly.glider.RearMasses.Mass;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quadrature;
import org.sawfly.math.Roots;
import org.sawfly.math.Vec3;

class BoomSwingTest {
    private static final double LENGTH = 0.7;
    private static final double TUBE = 0.02;
    private static final Boom EVEN = boom(0.012, 0.012, TUBE);
    private static final double EI = BoomTube.of(EVEN).stiffness(-0.3);

    private static Boom boom(double front, double end, double mass) {
        return new Boom(mass, 0, -LENGTH, 0, front, end, new BoomStiffness.OfMaterial(55e6), Map.of());
    }

    private static List<Mass> own(Boom boom) {
        BoomTube tube = BoomTube.of(boom);
        List<Mass> masses = new ArrayList<>();
        int panels = 10;
        for (int i = 0; i < panels; i++) {
            double a = -LENGTH * (i + 1) / panels;
            double b = -LENGTH * i / panels;
            for (int k = 0; k < Quadrature.POINTS; k++) {
                double x = Quadrature.point(k, a, b);
                masses.add(
                        new Mass(tube.massPerLength(x) * Quadrature.weight(k, a, b), new Vec3(x, 0, 0), Inertia.ZERO));
            }
        }
        return masses;
    }

    private static List<Mass> withTip(Boom boom, double tip) {
        List<Mass> masses = own(boom);
        masses.add(new Mass(tip, new Vec3(-LENGTH, 0, 0), Inertia.ZERO));
        return masses;
    }

    /**
     * Uniform beam held at one end, a mass on the other: {@code 1 + cos b cosh b + (M/m) b (cos b sinh b - sin b cosh b) = 0}
     * (Blevins, Formulas for Natural Frequency and Mode Shape, 1979, chapter 8; from memory, the frequencies without a mass
     * and with a heavy one recomputed).
     */
    private static double exact(double tip) {
        double b = Roots.between(
                x -> 1
                        + Math.cos(x) * Math.cosh(x)
                        + tip / TUBE * x * (Math.cos(x) * Math.sinh(x) - Math.sin(x) * Math.cosh(x)),
                0.05,
                2.2,
                1e-12);
        return b * b * Math.sqrt(EI / (TUBE * LENGTH * LENGTH * LENGTH)) / (2 * Math.PI);
    }

    /** Rayleigh with the shape under a force at the tip: {@code omega^2 = 3 EI/(L^3 (M + 33/140 m))}. */
    private static double rayleigh(double tip) {
        return Math.sqrt(3 * EI / (Math.pow(LENGTH, 3) * (tip + 33.0 / 140 * TUBE))) / (2 * Math.PI);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.002, 0.014, 0.1, 1})
    void uniform_beam_with_a_mass_at_its_end(double tip) {
        double found = BoomSwing.held(EVEN, 0, withTip(EVEN, tip), Plane.SIDE);
        assertThat(found).isCloseTo(exact(tip), withinPercentage(0.01));
        assertThat(found).as("Rayleigh is never low").isLessThan(rayleigh(tip) * (1 + 1e-4));
        assertThat(found).isCloseTo(rayleigh(tip), withinPercentage(1.6));
    }

    @Test
    void no_mass_at_the_end_gives_the_known_root() {
        // First root of cos b cosh b = -1: 1.875104 (any handbook; recomputed)
        double root = 1.875104;
        assertThat(exact(0))
                .isCloseTo(
                        root * root * Math.sqrt(EI / (TUBE * Math.pow(LENGTH, 3))) / (2 * Math.PI),
                        withinPercentage(1e-4));
    }

    /**
     * A light straight-tapered thin tube: EI = EI_0 (1 - k s)^3 under a force at its end bends by
     * {@code F int (L - s)^2/EI ds = (F/(EI_0 k^3)) [-ln(u) - 2 a (1/u - 1) + a^2/2 (1/u^2 - 1)]}, a = 1 - k L, u from a to 1,
     * by substituting u = 1 - k s. Its frequency with a heavy mass is that of a spring.
     */
    @Test
    void tapered_beam_with_a_heavy_mass_at_its_end() {
        Boom tapered = boom(0.017, 0.0085, 1e-6);
        double k = 0.5 / LENGTH;
        double a = 0.5;
        double ei = BoomTube.of(tapered).stiffness(0);
        double compliance = (-Math.log(a) - 2 * a * (1 / a - 1) + 0.5 * a * a * (1 / (a * a) - 1)) / (ei * k * k * k);
        assertThat(BoomTube.of(tapered).deflectionOfForce(0, -LENGTH, -LENGTH))
                .isCloseTo(compliance, withinPercentage(1e-7));
        // slope: int (L - s)/EI ds = (1/(EI_0 k^2)) [(1/u - 1) - a/2 (1/u^2 - 1)]
        double slope = ((1 / a - 1) - 0.5 * a * (1 / (a * a) - 1)) / (ei * k * k);
        assertThat(BoomTube.of(tapered).slopeOfForce(0, -LENGTH, -LENGTH)).isCloseTo(slope, withinPercentage(1e-7));
        assertThat(BoomSwing.held(tapered, 0, withTip(tapered, 0.1), Plane.SIDE))
                .isCloseTo(1 / (2 * Math.PI * Math.sqrt(compliance * 0.1)), withinPercentage(1e-3));
    }

    /** Free at both ends: first root of cos b cosh b = 1 is 4.730041 (any handbook; recomputed). */
    @Test
    void a_rest_of_no_mass_leaves_a_free_beam() {
        Mass nothing = new Mass(1e-12, Vec3.ZERO, new Inertia(1e-14, 1e-14, 1e-14, 0, 0, 0));
        double root = Roots.between(x -> Math.cos(x) * Math.cosh(x) - 1, 4, 5, 1e-12);
        assertThat(root).isCloseTo(4.730041, within(1e-6));
        assertThat(BoomSwing.inFlight(EVEN, own(EVEN), nothing, Plane.SIDE))
                .isCloseTo(
                        root * root * Math.sqrt(EI / (TUBE * Math.pow(LENGTH, 3))) / (2 * Math.PI),
                        withinPercentage(0.02));
    }

    @Test
    void a_very_heavy_rest_holds_it() {
        Mass heavy = new Mass(1e6, Vec3.ZERO, new Inertia(1e6, 1e6, 1e6, 0, 0, 0));
        assertThat(BoomSwing.inFlight(EVEN, withTip(EVEN, 0.01), heavy, Plane.SIDE))
                .isCloseTo(BoomSwing.held(EVEN, 0, withTip(EVEN, 0.01), Plane.SIDE), withinPercentage(1e-3));
    }

    /** A rigid body on the end with inertia about its own centre, held by a massless beam: two freedoms, by hand. */
    @Test
    void rotary_inertia_and_tails_behind_the_end_count() {
        Boom light = boom(0.012, 0.012, 1e-9);
        double ei = BoomTube.of(light).stiffness(-0.3);
        double m = 0.02;
        double j = 2e-5;
        double out = 0.03;
        Mass body = new Mass(m, new Vec3(-LENGTH - out, 0, 0), new Inertia(0, 0, j, 0, 0, 0));
        // flexibility of the end: w, slope by force and moment there; then out to the centre
        double ff = Math.pow(LENGTH, 3) / (3 * ei);
        double fm = LENGTH * LENGTH / (2 * ei);
        double mm = LENGTH / ei;
        double a = m * (ff + 2 * out * fm + out * out * mm);
        double b = j * mm;
        double c = m * j * Math.pow(fm + out * mm, 2);
        // 1/omega^2 is the larger eigenvalue of [[a, j f12], [m f12, b]]
        double largest = 0.5 * (a + b) + Math.sqrt(0.25 * (a - b) * (a - b) + c);
        assertThat(BoomSwing.held(light, 0, List.of(body), Plane.SIDE))
                .isCloseTo(1 / (2 * Math.PI * Math.sqrt(largest)), withinPercentage(1e-5));
    }

    @Test
    void plover_swings_quicker_in_flight_and_slower_when_heavier_behind() {
        double held = BoomSwing.held(Plover.glider(), Plane.SIDE);
        assertThat(BoomSwing.inFlight(Plover.glider(), Plane.SIDE)).isGreaterThan(held);
        assertThat(BoomSwing.inFlight(Plover.glider(), Plane.VERTICAL))
                .as("pod and wing weigh less against turning in pitch than in yaw")
                .isGreaterThan(BoomSwing.inFlight(Plover.glider(), Plane.SIDE));
        // Common practice, no source: 10 to 40 Hz
        assertThat(held).isBetween(10.0, 40.0);
    }
}
