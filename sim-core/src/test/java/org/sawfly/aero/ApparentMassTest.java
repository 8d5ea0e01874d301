package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.math.Vec3;

/** A rectangular plate has closed forms for every element. */
class ApparentMassTest {
    private static final double RHO = 1.2;
    private static final double CHORD = 0.2;
    private static final double HALF = 0.5;

    private static Surface plate(double dihedral) {
        double y = HALF * Math.cos(dihedral);
        double z = -HALF * Math.sin(dihedral);
        return Surface.mirrored(
                List.of(new Surface.Rib(Vec3.ZERO, CHORD, 0), new Surface.Rib(new Vec3(0, y, z), CHORD, 0)));
    }

    @Test
    void a_flat_plate_carries_the_air_of_its_cylinder() {
        double[][] a = new ApparentMass(RHO, new Vec3(-0.5 * CHORD, 0, 0))
                .add(plate(0))
                .matrix();
        double mass = 0.95 * RHO * Math.PI / 4 * CHORD * CHORD * 2 * HALF;
        assertThat(a[2][2]).isCloseTo(mass, within(1e-15));
        assertThat(a[3][3]).isCloseTo(mass * HALF * HALF / 3, within(1e-15));
        assertThat(a[4][4]).isCloseTo(RHO * Math.PI / 128 * Math.pow(CHORD, 4) * 2 * HALF, within(1e-18));
        assertThat(a[0][0]).isZero();
        assertThat(a[1][1]).isZero();
        assertThat(a[2][4]).isCloseTo(0, within(1e-15));
    }

    @Test
    void ahead_of_the_half_chord_pitch_and_heave_are_coupled() {
        double[][] a = new ApparentMass(RHO, Vec3.ZERO).add(plate(0)).matrix();
        double arm = 0.5 * CHORD;
        assertThat(a[2][4]).isCloseTo(a[2][2] * arm, within(1e-15));
        assertThat(a[4][4])
                .isCloseTo(a[2][2] * arm * arm + RHO * Math.PI / 128 * Math.pow(CHORD, 4) * 2 * HALF, within(1e-15));
    }

    @Test
    void dihedral_carries_air_sideways_and_couples_it_with_roll() {
        double dihedral = 0.1;
        double[][] flat = new ApparentMass(RHO, Vec3.ZERO).add(plate(0)).matrix();
        double[][] a = new ApparentMass(RHO, Vec3.ZERO).add(plate(dihedral)).matrix();
        double s = Math.sin(dihedral);
        assertThat(a[1][1]).isCloseTo(flat[2][2] * s * s, within(1e-15));
        assertThat(a[2][2]).isCloseTo(flat[2][2] * (1 - s * s), within(1e-15));
        assertThat(a[1][3]).isPositive();
        assertThat(a[1][2]).isCloseTo(0, within(1e-15));
    }
}
