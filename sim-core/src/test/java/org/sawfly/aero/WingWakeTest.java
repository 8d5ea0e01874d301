package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Plover;

class WingWakeTest {
    private static final Models MODELS = new Models();
    private static final Glider GLIDER = Plover.glider();
    private static final WingWake WAKE = MODELS.wing(GLIDER.wing()).wake();

    private static double[] atFin(double z, double sine) {
        Fin f = GLIDER.fin();
        Fin moved = new Fin(f.mass(), f.above(), f.below(), f.x(), z, f.section(), f.rudderChord());
        LoneSurface alone = MODELS.fin(moved).alone();
        double[] out = new double[WingWake.LOADS];
        WAKE.byDrift(Strips.cosine(SurfaceOutlines.of(moved), alone.strips.count), alone)
                .at(sine, out);
        return out;
    }

    private static double[] atTailplane(double sine) {
        double[] out = new double[WingWake.LOADS];
        MODELS.wash(GLIDER).tailplane().at(sine, out);
        return out;
    }

    /**
     * The middle of the wake turns to the right above and to the left below when the right half lifts and the left one
     * presses down. With both lifting, air above the wake flows inwards, below outwards; sideslip from the right takes the
     * wake to the left, so that the fin is on its right side.
     */
    @Test
    void signs_of_the_sidewash() {
        for (int load : new int[] {WingWake.SIDE, WingWake.TURNING}) {
            assertThat(atFin(-0.2, 0)[load]).isPositive();
            assertThat(atFin(0.2, 0)[load]).isNegative();
        }
        assertThat(atFin(-0.2, 0)[WingWake.EVEN]).isZero();
        assertThat(atFin(-0.2, 0.1)[WingWake.EVEN]).isNegative();
        assertThat(atFin(0.2, 0.1)[WingWake.EVEN]).isPositive();
    }

    /** In wind from the right the wake of the right half is what passes the tailplane: lift of that half alone is downwash. */
    @Test
    void a_wake_that_drifts_leaves_the_tailplane_behind_the_windward_half() {
        for (int load : new int[] {WingWake.SIDE, WingWake.TURNING}) {
            assertThat(atTailplane(0)[load]).isZero();
            assertThat(atTailplane(0.4)[load]).isPositive().isCloseTo(-atTailplane(-0.4)[load], within(1e-12));
        }
        assertThat(atTailplane(0.4)[WingWake.EVEN]).isCloseTo(atTailplane(-0.4)[WingWake.EVEN], within(1e-12));
        assertThat(atTailplane(0.6)[WingWake.EVEN]).isPositive().isLessThan(atTailplane(0)[WingWake.EVEN]);
        assertThat(atTailplane(0.9)[WingWake.EVEN]).as("upwash beside the wake").isNegative();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 1, 3, -3})
    void across_the_wake_nothing_is_left(double sine) {
        assertThat(atTailplane(sine)).containsOnly(0);
        assertThat(atFin(0, sine)).containsOnly(0);
    }

    /** Downwash at the tailplane: near that of a flat elliptic wake on its axis, 2 CL/(pi AR). */
    @Test
    void downwash_is_near_that_of_an_elliptic_wake() {
        Surface wing = SurfaceOutlines.of(GLIDER.wing());
        double aspect = wing.span() * wing.span() / wing.area();
        assertThat(atTailplane(0)[WingWake.EVEN] * Math.PI * aspect / 2).isBetween(0.8, 1.2);
    }

    /** The downwash that tables give is that of the strips of the strip model, where camber and stall change the load's spread. */
    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 2, 5, 7})
    void settled_downwash_is_that_of_the_strips(double degrees) {
        Motion m = AeroModelContract.calm();
        m.u = 12 * Math.cos(Math.toRadians(degrees));
        m.w = 12 * Math.sin(Math.toRadians(degrees));
        m.camber = Math.toRadians(3);
        double[] downwash = new double[2];
        var mass = org.sawfly.glider.MassProperties.of(GLIDER);
        for (ModelChoice choice : ModelChoice.values()) {
            downwash[choice.ordinal()] = choice.of(GLIDER, mass, Corrections.NONE, MODELS)
                    .evaluator()
                    .settledDownwash(m);
        }
        // Means over the tailplane by area and by what counts for its force
        assertThat(downwash[0]).isCloseTo(downwash[1], within(0.015));
        assertThat(downwash[0]).isCloseTo(downwash[1], Percentage.withPercentage(5));
    }
}
