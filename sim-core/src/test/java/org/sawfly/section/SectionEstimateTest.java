package org.sawfly.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectionEstimateTest {
    private static final double DEG = Math.PI / 180;
    private static final double[] RE = {1e4, 2e4, 4e4, 6e4, 1e5, 2e5, 5e5, 1e6};
    private static final SectionEstimate WING = new SectionEstimate(SectionShape.of(0.062, 0.019, 0.32));
    private static final SectionEstimate TAIL = new SectionEstimate(SectionShape.of(0.06, 0, 0.4));

    private static double[] at(Section section, double alphaDeg, double reynolds, double flapDeg) {
        double[] out = new double[3];
        section.at(alphaDeg * DEG, reynolds, flapDeg * DEG, out);
        return out;
    }

    @Test
    void signs() {
        assertThat(at(WING, 5, 1e5, 0)[0]).isGreaterThan(at(WING, 3, 1e5, 0)[0]);
        assertThat(at(WING, 0, 1e5, 0)[0]).isPositive();
        assertThat(at(WING, 0, 1e5, 0)[2]).isNegative();
        assertThat(at(WING, 2, 1e5, 5)[0]).isGreaterThan(at(WING, 2, 1e5, 0)[0] + 0.1);
        assertThat(at(WING, 2, 1e5, 5)[2]).isLessThan(at(WING, 2, 1e5, 0)[2] - 0.03);
        assertThat(at(WING, 2, 1e5, -5)[0]).isLessThan(at(WING, 2, 1e5, 0)[0] - 0.1);
    }

    @Test
    void aSymmetricSectionMirrors() {
        for (double alpha = -179; alpha < 180; alpha += 3.7) {
            double[] one = at(TAIL, alpha, 5e4, 12);
            double[] two = at(TAIL, -alpha, 5e4, -12);
            assertThat(two[0]).isCloseTo(-one[0], within(1e-12));
            assertThat(two[1]).isCloseTo(one[1], within(1e-12));
            assertThat(two[2]).isCloseTo(-one[2], within(1e-12));
        }
    }

    @Test
    void anAllMovingSurfaceTurnsAsAWhole() {
        SectionEstimate moving = new SectionEstimate(SectionShape.of(0.06, 0, 1));
        SectionEstimate fixed = new SectionEstimate(SectionShape.of(0.06, 0, 0));
        assertThat(at(moving, 3, 5e4, 4)).containsExactly(at(fixed, 7, 5e4, 0), within(1e-12));
    }

    /**
     * AG455ct-02r at Re 60 157, University of Illinois low-speed airfoil tests, run bm05458; not in the fit. Thickness 6.5 % and
     * camber 2 % from memory, not verified. Drag at equal lift; the measurement itself is known to a quarter at this Re.
     */
    @ParameterizedTest
    @CsvSource({"0.301, 0.0158", "0.390, 0.0162", "0.652, 0.0188", "0.721, 0.0218", "0.807, 0.0275"})
    void aThinnerSectionThanAnyOfTheFit(double lift, double drag) {
        SectionEstimate thin = new SectionEstimate(SectionShape.of(0.065, 0.020, 0));
        double alpha = -2;
        while (at(thin, alpha, 60157, 0)[0] < lift) {
            alpha += 0.01;
            assertThat(alpha).isLessThan(12);
        }
        assertThat(at(thin, alpha, 60157, 0)[1]).isCloseTo(drag, within(0.25 * drag));
    }

    /** NACA 0009 at Re 59 700 (Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989): about .05 a degree within 1 degree. */
    @Test
    void aSymmetricSectionHasADeadZoneAtLowReynoldsNumbers() {
        SectionEstimate section = new SectionEstimate(SectionShape.of(0.09, 0, 0));
        assertThat(at(section, 1.09, 6e4, 0)[0]).isCloseTo(0.057, within(0.02));
        assertThat(at(section, 3.15, 6e4, 0)[0]).isCloseTo(0.354, within(0.06));
        assertThat(at(section, 1, 3e5, 0)[0]).isGreaterThan(0.085);
    }

    /**
     * Eppler 387, McGhee, Walker and Millard, NASA TM-4062 (1988), 5 degrees, read second-hand: Re 100 000 cl .873 cd .0237
     * cm -.0889; 300 000 .901 .0114 -.0799. Tolerances: cl .1 for the 0.5 degrees and the shape, cd 25 and 20 %, cm .02.
     */
    @Test
    void isPlausibleAgainstAnIndependentTunnel() {
        SectionEstimate section = new SectionEstimate(SectionShape.of(0.0907, 0.038, 0));
        double[] slow = at(section, 5, 1e5, 0);
        double[] fast = at(section, 5, 3e5, 0);
        assertThat(slow[0]).isCloseTo(0.873, within(0.1));
        assertThat(fast[0]).isCloseTo(0.901, within(0.1));
        assertThat(slow[1]).isCloseTo(0.0237, within(0.25 * 0.0237));
        assertThat(fast[1]).isCloseTo(0.0114, within(0.20 * 0.0114));
        assertThat(slow[2]).isCloseTo(-0.0889, within(0.02));
        assertThat(fast[2]).isCloseTo(-0.0799, within(0.02));
    }

    /** A flap's gain at 60 000 and 100 000 against 300 000, measured on one section: .73 and .9. */
    @Test
    void flapsLoseEffectAtLowReynoldsNumbers() {
        double full = at(WING, 3, 3e5, 4)[0] - at(WING, 3, 3e5, -4)[0];
        assertThat((at(WING, 3, 6e4, 4)[0] - at(WING, 3, 6e4, -4)[0]) / full).isCloseTo(0.73, within(0.05));
        assertThat((at(WING, 3, 1e5, 4)[0] - at(WING, 3, 1e5, -4)[0]) / full).isCloseTo(0.9, within(0.05));
    }

    @Test
    void isAPlateFarFromTheStall() {
        double[] out = at(WING, 90, 1e5, 0);
        assertThat(out[0]).isCloseTo(0, within(0.01));
        assertThat(out[1]).isCloseTo(2.0, within(0.05));
        assertThat(out[2]).isCloseTo(-0.5, within(0.01));
        assertThat(at(WING, 45, 1e5, 0)[0]).isCloseTo(1.0, within(0.02));
    }

    @Test
    void aDelayedStallHoldsOnLonger() {
        SectionEstimate delayed = new SectionEstimate(TAIL.shape(), 5 * DEG);
        assertThat(at(delayed, 14, 5e4, 0)[0]).isGreaterThan(at(TAIL, 14, 5e4, 0)[0] + 0.1);
        assertThat(at(delayed, 2, 5e4, 0)[0]).isCloseTo(at(TAIL, 2, 5e4, 0)[0], within(0.03));
    }

    /** What holds of any section, seen or not: thickness 3 to 14 %, camber 0 to 6 %, flap 20 degrees either way. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.05, 0.07, 0.10, 0.14})
    void sectionsNobodyMeasuredAreInOrder(double thickness) {
        double[] cambers = {0, 0.01, 0.02, 0.04, 0.06};
        double[] greatest = new double[RE.length];
        for (double camber : cambers) {
            SectionEstimate section = new SectionEstimate(SectionShape.of(thickness, camber, 0.3));
            double leastDrag = Double.POSITIVE_INFINITY;
            double bestRatio = 0;
            for (int i = 0; i < RE.length; i++) {
                double drag = Double.POSITIVE_INFINITY;
                double ratio = 0;
                double lift = 0;
                double before = -9;
                for (double alpha = -4; alpha <= 12; alpha += 0.2) {
                    double[] out = at(section, alpha, RE[i], 0);
                    drag = Math.min(drag, out[1]);
                    ratio = Math.max(ratio, out[0] / out[1]);
                    lift = Math.max(lift, out[0]);
                    assertThat(alpha > 6 || out[0] > before - 1e-3)
                            .as("lift grows with the angle at %s deg, camber %s, Re %s", alpha, camber, RE[i])
                            .isTrue();
                    before = out[0];
                }
                assertThat(drag).as("drag falls with Re").isPositive().isLessThan(leastDrag);
                assertThat(ratio).as("L/D grows with Re").isGreaterThan(bestRatio);
                assertThat(lift).as("largest lift grows with camber").isGreaterThan(greatest[i]);
                leastDrag = drag;
                bestRatio = ratio;
                greatest[i] = lift;
                double[] none = at(section, 2, RE[i], 0);
                for (double flap = 4; flap <= 20; flap += 4) {
                    double[] down = at(section, 2, RE[i], flap);
                    double[] up = at(section, 2, RE[i], -flap);
                    assertThat(down[0]).isGreaterThan(none[0]);
                    assertThat(down[2]).isLessThan(none[2]);
                    assertThat(up[0]).isLessThan(none[0]);
                    assertThat(up[2]).isGreaterThan(none[2]);
                }
            }
            assertThat(at(section, 2, 3e5, 0)[2])
                    .as("camber noses down")
                    .isLessThanOrEqualTo(camber == 0 ? 0.02 : -0.5 * camber);
        }
    }

    @Test
    void isSmoothEverywhereAndFiniteForAnyInput() {
        for (double re : new double[] {0, 1, 1e4, 3e4, 6e4, 2e5, 1e6, 1e8}) {
            for (double flap : new double[] {-60, -20, -5, 0, 5, 20, 60}) {
                assertThat(largestChangeOfSlope(re, flap))
                        .as("Re %s, flap %s", re, flap)
                        .isLessThan(0.6);
            }
        }
    }

    /** Over the whole circle in steps of 0.1 degrees [1/rad]; infinite where a value is none or a drag not positive. */
    private static double largestChangeOfSlope(double re, double flap) {
        Section wing = WING.prepared(re, flap * DEG);
        double[] before = at(wing, -181, re, flap);
        double[] slope = null;
        double largest = 0;
        for (double alpha = -180.9; alpha < 181; alpha += 0.1) {
            double[] now = at(wing, alpha, re, flap);
            double[] next = new double[3];
            for (int c = 0; c < 3; c++) {
                next[c] = (now[c] - before[c]) / (0.1 * DEG);
                double change = slope == null ? 0 : Math.abs(next[c] - slope[c]);
                largest = Double.isFinite(now[c]) && now[1] > 0 ? Math.max(largest, change) : Double.POSITIVE_INFINITY;
            }
            slope = next;
            before = now;
        }
        return largest;
    }

    @Test
    void theTableReproducesTheEstimate() {
        SectionTable table = WING.table();
        double worst = 0;
        double worstDrag = 0;
        for (double re = 1.2e4; re < 9e5; re *= 1.37) {
            for (double flap = -22; flap <= 22; flap += 4.3) {
                Section wing = WING.prepared(re, flap * DEG);
                for (double alpha = -170; alpha < 170; alpha += 0.73) {
                    double[] a = at(wing, alpha, re, flap);
                    double[] b = at(table, alpha, re, flap);
                    worst = Math.max(worst, Math.abs(a[0] - b[0]));
                    worstDrag = Math.max(worstDrag, Math.abs(a[1] - b[1]));
                }
            }
        }
        assertThat(worst).isLessThan(0.01);
        assertThat(worstDrag).isLessThan(0.01);
    }
}
