package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.TubeSection;

class ClosedFormsTest {
    /** Tsai and Hahn, Introduction to Composite Materials, 1980: T300/5208, 181, 10.3, 7.17 GPa, 0.28. */
    private static final WallMaterial T300_5208 = new WallMaterial(181e9, 10.3e9, 7.17e9, 0.28);

    /** Beam theory, recomputed independently. */
    @Test
    void sections_of_tubes() {
        TubeSection twelve = new TubeSection(0.012, 0.011);
        assertThat(twelve.secondMoment()).isCloseTo(299.188e-12, within(5e-16));
        assertThat(twelve.modulus()).isCloseTo(49.865e-9, within(5e-13));
        assertThat(new TubeSection(0.010, 0.008).secondMoment()).isCloseTo(289.812e-12, within(5e-16));
        assertThat(TubeSection.ofWall(0.012, 0.0005)).isEqualTo(twelve);
    }

    /** Cantilever of 0.7 m, E 120 GPa, 5 N at its tip; beam theory, recomputed independently. */
    @Test
    void a_cantilever_of_that_tube() {
        TubeSection section = new TubeSection(0.012, 0.011);
        double length = 0.7;
        double mass = 0.02;
        double specificModulus = 120e9 * section.secondMoment() * 8 * length / (mass * 0.012 * 0.012);
        BoomTube tube = BoomTube.of(
                new Boom(mass, 0, -length, 0, 0.012, 0.012, new BoomStiffness.OfMaterial(specificModulus), Map.of()));
        assertThat(5 * tube.deflectionOfForce(0, -length, -length)).isCloseTo(15.92275e-3, within(5e-9));
        assertThat(5 * tube.slopeOfForce(0, -length, -length)).isCloseTo(0.034120, within(5e-7));
        assertThat(section.bendingStress(5 * length)).isCloseTo(70.190e6, within(500.0));
    }

    @Test
    void shear_lies_between_a_rod_and_a_thin_wall() {
        // Closed forms: 4/3 V/A for a rod, 2 V/A for a thin wall
        TubeSection rod = new TubeSection(0.01, 0);
        assertThat(rod.shearStress(7) * rod.area() / 7).isCloseTo(4.0 / 3, within(1e-12));
        TubeSection thin = new TubeSection(0.01, 0.009999);
        assertThat(thin.shearStress(7) * thin.area() / 7).isCloseTo(2, within(1e-6));
        assertThat(new TubeSection(0.012, 0.011).shearStress(-7)).isNegative();
    }

    @Test
    void a_hole_in_a_sheet_of_one_fibre_direction() {
        assertThat(HoleFactor.of(T300_5208)).isCloseTo(6.750, within(5e-4));
    }

    /** Kirsch 1898: 3 whatever the material. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.5})
    void a_hole_in_a_sheet_alike_in_all_directions(double poisson) {
        assertThat(HoleFactor.of(WallMaterial.isotropic(70e9, poisson))).isCloseTo(3, within(1e-12));
    }

    /** Brazier 1927, from memory, recomputed: E 70 GPa, r 5 mm, t 0.5 mm, nu 0.3. */
    @Test
    void a_thin_wall_gives_in() {
        WallMaterial metal = WallMaterial.isotropic(70e9, 0.3);
        assertThat(WallBuckling.moment(0.005, 0.0005, metal)).isCloseTo(90.561, within(5e-4));
        assertThat(WallBuckling.moment(new TubeSection(0.0105, 0.0095), metal)).isCloseTo(90.561, within(5e-4));
    }

    /** The greatest moment found by going along the curve of moment over curvature that the energy gives. */
    @ParameterizedTest
    @CsvSource({"181e9, 10.3e9, 7.17e9, 0.28", "70e9, 70e9, 26.9e9, 0.3", "100e9, 8e9, 4e9, 0.3"})
    void the_greatest_moment_of_the_energy(double along, double around, double shear, double poisson) {
        WallMaterial wall = new WallMaterial(along, around, shear, poisson);
        double r = 0.006;
        double t = 0.0003;
        double stiffness = along * Math.PI * r * r * r * t;
        double flattening = around * t * t / (r * r * r * r * (1 - poisson * poisson * around / along) * along);
        double greatest = 0;
        for (double curvature = 0; curvature < 10; curvature += 1e-4) {
            double oval = curvature * curvature / flattening;
            greatest = Math.max(greatest, curvature * stiffness * (1 - 1.5 * oval));
        }
        assertThat(WallBuckling.moment(r, t, wall)).isCloseTo(greatest, withinPercentage(1e-4));
    }

    @Test
    void soft_directions_make_the_wall_weak() {
        double isotropic = WallBuckling.moment(0.006, 0.0003, WallMaterial.isotropic(181e9, 0.28));
        double orthotropic = WallBuckling.moment(0.006, 0.0003, T300_5208);
        assertThat(orthotropic).isLessThan(0.3 * isotropic);
    }

    @Test
    void nonsense_is_refused() {
        assertThatThrownBy(() -> new TubeSection(0.01, 0.01)).hasMessageContaining("above its inner one");
        assertThatThrownBy(() -> new TubeSection(Double.NaN, 0)).hasMessageContaining("outer diameter");
        assertThatThrownBy(() -> new WallMaterial(1e9, 1e9, 0, 0.3)).hasMessageContaining("shear");
        assertThatThrownBy(() -> WallMaterial.isotropic(1e9, 1)).hasMessageContaining("contraction");
    }
}
