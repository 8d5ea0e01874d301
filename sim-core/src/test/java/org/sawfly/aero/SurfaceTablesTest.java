package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.air.Atmosphere;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Plover;
import org.sawfly.section.Section;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

class SurfaceTablesTest {
    private static Glider glider;
    private static SurfaceTables wing;
    private static SurfaceTables tailplane;
    private static SurfaceTables fin;

    @BeforeAll
    static void build() {
        Section root = SectionTable.of(new StallingSection(-0.036), SectionGrid.usual(true));
        Section tip = SectionTable.of(new StallingSection(-0.033), SectionGrid.usual(true));
        Section tail = SectionTable.of(new StallingSection(0), SectionGrid.usual(true));
        glider = Plover.glider(root, tip, tail);
        tailplane = SurfaceTables.of(glider.tailplane());
        fin = SurfaceTables.of(glider.fin());
        wing = SurfaceTables.of(glider.wing()).withWake(tailplane, fin);
    }

    @Test
    void signs() {
        double[] out = new double[SurfaceTables.CHANNELS];
        wing.at(0.05, 0, 100, 0, out);
        assertThat(wing.normal().z()).isNegative();
        assertThat(wing.normal().y())
                .as("the right half's normal leans inwards")
                .isNegative();
        assertThat(out[SurfaceTables.NORMAL]).isPositive();
        assertThat(out[SurfaceTables.FORWARD]).as("lift leans forward").isPositive();
        assertThat(out[SurfaceTables.MOMENT]).as("cambered").isNegative();
        assertThat(out[SurfaceTables.FRICTION]).isPositive();
        assertThat(out[SurfaceTables.DOWNWASH]).isPositive();
        double lift = out[SurfaceTables.NORMAL];
        wing.at(0.05, 0, 100, 0.1, out);
        assertThat(out[SurfaceTables.NORMAL]).as("camber down lifts").isGreaterThan(lift);
        fin.at(0.1, 0, 100, 0, out);
        assertThat(fin.normal().y()).isEqualTo(1);
        assertThat(out[SurfaceTables.NORMAL]).isPositive();
        fin.at(0, 0, 100, 0.1, out);
        assertThat(out[SurfaceTables.NORMAL])
                .as("rudder to the left pushes right")
                .isPositive();
    }

    /** Between the knots the tables give what the strips give. */
    @ParameterizedTest
    @CsvSource({"3.4, 7, 3", "-4.6, 15, -5", "6.5, 35, 0", "1.5, 5.5, 6"})
    void tablesFollowTheStrips(double degrees, double speed, double flapDegrees) {
        double angle = Math.toRadians(degrees);
        double flap = Math.toRadians(flapDegrees);
        Strips strips = Strips.cosine(SurfaceOutlines.of(glider.wing()), 40);
        double[] shares = Arrays.copyOfRange(strips.shares(0.02, 0.72), 20, 40);
        double[] chords = Arrays.copyOfRange(strips.chords, 20, 40);
        double[] toTip = new double[20];
        for (int i = 0; i < 20; i++) {
            toTip[i] = strips.places[20 + i] / 0.75;
        }
        double viscosity = Atmosphere.STANDARD.kinematicViscosity(0);
        SpanSections sections =
                new SpanSections(glider.wing().root(), glider.wing().tip(), toTip, shares, chords, viscosity);
        LoneSurface lone = new LoneSurface(strips, sections.slopes(10), VortexSystem.Setting.PRODUCTION);
        LoneSurface.Flow flow = lone.flow();
        flow.solve(angle, sections.polars(speed, flap));
        double[] out = new double[SurfaceTables.CHANNELS];
        wing.at(angle, 0, speed * speed, flap, out);
        assertThat(out[SurfaceTables.NORMAL]).isCloseTo(flow.normalForce, within(0.003));
        assertThat(out[SurfaceTables.FORWARD]).isCloseTo(flow.forwardForce, within(0.0005));
        assertThat(out[SurfaceTables.MOMENT]).isCloseTo(flow.moment, within(0.001));
        assertThat(out[SurfaceTables.FRICTION]).isCloseTo(flow.friction, Percentage.withPercentage(1));
    }

    /** A turned surface is the surface in turned flow, seen from axes that did not turn. */
    @Test
    void incidenceTurnsTheSurface() {
        double[] turned = new double[SurfaceTables.CHANNELS];
        double[] plain = new double[SurfaceTables.CHANNELS];
        double turn = 0.04;
        tailplane.at(0.02, turn, 100, 0, turned);
        tailplane.at(0.06, 0, 100, 0, plain);
        double along = turned[SurfaceTables.NORMAL] * Math.sin(0.02) - turned[SurfaceTables.FORWARD] * Math.cos(0.02);
        double before = plain[SurfaceTables.NORMAL] * Math.sin(0.06) - plain[SurfaceTables.FORWARD] * Math.cos(0.06);
        assertThat(along).as("induced drag").isPositive().isCloseTo(before, within(1e-12));
        assertThat(turned[SurfaceTables.FRICTION]).isEqualTo(plain[SurfaceTables.FRICTION]);
    }

    /** At rest, in reverse and along the span nothing is undefined. */
    @ParameterizedTest
    @CsvSource({"0, 0", "3.1416, 0", "-3.15, 900", "1.5708, 1e-12", "40, 1e6"})
    void finiteEverywhere(double angle, double speedSquare) {
        double[] out = new double[SurfaceTables.CHANNELS];
        wing.at(angle, 0.1, speedSquare, 1, out);
        for (double value : out) {
            assertThat(value).isFinite();
        }
    }

    /** Opposite angles lift less: between the elliptic wing's 0.73 at aspect ratio 10 and what dihedral and taper take. */
    @Test
    void oddRatioIsThatOfAWingOfThisAspectRatio() {
        assertThat(wing.oddRatio()).isBetween(0.6, 0.75);
    }

    /**
     * The middle of the wake turns to the right above and to the left below when the right half lifts and the left one
     * presses down. With both lifting, air above the wake flows inwards, below outwards; sideslip from the right takes the
     * wake to the left, so that the fin is on its right side.
     */
    @Test
    void sidewashSigns() {
        SurfaceTables high = wing.withWake(tailplane, fin(-0.2));
        SurfaceTables low = wing.withWake(tailplane, fin(0.2));
        assertThat(high.oddSidewash()).isPositive();
        assertThat(low.oddSidewash()).isNegative();
        double[] above = new double[SurfaceTables.CHANNELS];
        double[] below = new double[SurfaceTables.CHANNELS];
        high.at(0.06, 0, 100, 0, above);
        low.at(0.06, 0, 100, 0, below);
        assertThat(above[SurfaceTables.SIDEWASH]).isNegative();
        assertThat(below[SurfaceTables.SIDEWASH]).isPositive();
    }

    /** Downwash at the tailplane: no more than the flat elliptic wake's on its axis at this distance, and most of it. */
    @Test
    void downwashSlopeIsNearThatOfAnEllipticWake() {
        double[] low = new double[SurfaceTables.CHANNELS];
        double[] high = new double[SurfaceTables.CHANNELS];
        wing.at(0, 0, 100, 0, low);
        wing.at(0.1, 0, 100, 0, high);
        double aspect = 1.5 * 1.5 / wing.area();
        double far = 2 * (high[SurfaceTables.NORMAL] - low[SurfaceTables.NORMAL]) / (Math.PI * aspect);
        double share = (high[SurfaceTables.DOWNWASH] - low[SurfaceTables.DOWNWASH]) / far;
        assertThat(share).isBetween(0.8, 1.18);
    }

    /** Polars of two tables are the tables, mixed. */
    @Test
    void polarsAreTheSectionsThemselves() {
        Section root = glider.wing().root();
        Section tip = glider.wing().tip();
        double[] one = {0.3};
        double[] chord = {0.15};
        StripPolars polars = new SpanSections(root, tip, one, new double[] {0.5}, chord, 1.5e-5).polars(8, 0.1);
        double[] found = new double[3];
        double[] first = new double[3];
        double[] second = new double[3];
        for (double alpha = -4; alpha < 4; alpha += 0.037) {
            polars.at(0, alpha, found);
            root.at(alpha, 8e4, 0.05, first);
            tip.at(alpha, 8e4, 0.05, second);
            for (int c = 0; c < 3; c++) {
                assertThat(found[c]).isCloseTo(0.7 * first[c] + 0.3 * second[c], within(1e-12));
            }
        }
    }

    private static SurfaceTables fin(double z) {
        Fin f = glider.fin();
        return SurfaceTables.of(new Fin(f.mass(), f.above(), f.below(), f.x(), z, f.section(), f.rudderChord()));
    }
}
