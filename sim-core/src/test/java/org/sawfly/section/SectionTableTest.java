package org.sawfly.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SectionTableTest {
    private static final double DEG = Math.PI / 180;
    private static final Section WAVES = (alpha, re, flap, out) -> {
        out[0] = Math.sin(2 * alpha) + 0.8 * flap * Math.cos(alpha);
        out[1] = 0.02 * Math.pow(re / 1e5, -0.5) + Math.pow(Math.sin(alpha), 2) + 0.1 * flap * flap;
        out[2] = -0.3 * Math.sin(alpha) - 0.5 * flap;
    };

    @Test
    void reproducesASmoothSectionOverTheWholeCircle() {
        SectionTable table = SectionTable.of(WAVES, SectionGrid.usual(true));
        Random random = new Random(3);
        double[] a = new double[3];
        double[] b = new double[3];
        for (int i = 0; i < 2000; i++) {
            double alpha = 4 * Math.PI * (random.nextDouble() - 0.5);
            double re = 2e4 * Math.exp(3.5 * random.nextDouble());
            double flap = 0.35 * (2 * random.nextDouble() - 1);
            table.at(alpha, re, flap, a);
            WAVES.at(alpha, re, flap, b);
            assertThat(a[0]).isCloseTo(b[0], within(4e-3));
            assertThat(a[1]).isCloseTo(b[1], within(4e-3));
            assertThat(a[2]).isCloseTo(b[2], within(4e-3));
        }
    }

    @Test
    void holdsTheEndsOfReynoldsNumberAndFlapWithoutAKink() {
        SectionTable table = SectionTable.of(WAVES, SectionGrid.usual(true));
        double[] inside = new double[3];
        double[] outside = new double[3];
        table.at(0.1, 1e4, 0.1, inside);
        table.at(0.1, 0, 0.1, outside);
        assertThat(outside).isEqualTo(inside);
        table.at(0.1, 1e4 * (1 + 1e-5), 0.1, outside);
        assertThat(outside[1] - inside[1]).isCloseTo(0, within(1e-10));
        table.at(0.1, 1e5, 30 * DEG, inside);
        table.at(0.1, 1e5, 1, outside);
        assertThat(outside[0]).isCloseTo(inside[0], within(1e-12));
        table.at(0.1, 1e5, 30 * DEG - 1e-6, outside);
        assertThat(outside[0] - inside[0]).isCloseTo(0, within(1e-10));
    }

    @Test
    void theSlopeIsTheDerivative() {
        SectionTable table = SectionTable.of(WAVES, SectionGrid.usual(false));
        double[] a = new double[3];
        double[] b = new double[3];
        double[] slope = new double[3];
        for (double alpha = -3.1; alpha < 3.1; alpha += 0.017) {
            table.at(alpha - 1e-6, 1e5, 0, a);
            table.at(alpha + 1e-6, 1e5, 0, b);
            table.slopes(alpha, 1e5, 0, slope);
            for (int c = 0; c < 3; c++) {
                assertThat(slope[c]).isCloseTo((b[c] - a[c]) / 2e-6, within(1e-4));
            }
        }
    }

    @Test
    void rowsInAnyOrderGiveTheTableBack() {
        SectionGrid grid = SectionGrid.usual(true);
        SectionTable table = SectionTable.of(WAVES, grid);
        List<double[]> rows = rows(grid, WAVES);
        Collections.shuffle(rows, new Random(8));
        SectionTable back = fromRows(rows);
        assertThat(back.grid().alphas()).containsExactly(grid.alphas(), within(1e-15));
        double[] a = new double[3];
        double[] b = new double[3];
        for (double alpha = -3.3; alpha < 3.3; alpha += 0.0371) {
            table.at(alpha, 7e4, 0.07, a);
            back.at(alpha, 7e4, 0.07, b);
            assertThat(a).containsExactly(b, within(1e-12));
        }
    }

    @Test
    void whatIsMissingOfTheCircleComesFromThePlate() {
        double[] alphas = new double[21];
        for (int i = 0; i < alphas.length; i++) {
            alphas[i] = (i - 8) * DEG;
        }
        SectionGrid grid = new SectionGrid(alphas, new double[] {6e4, 2e5}, new double[] {0});
        SectionTable table = fromRows(rows(grid, WAVES));
        double[] out = new double[3];
        table.at(Math.PI / 2, 1e5, 0, out);
        assertThat(out[0]).isCloseTo(0, within(0.02));
        assertThat(out[1]).isCloseTo(2.02, within(0.03));
        assertThat(out[2]).isCloseTo(-0.5, within(0.02));
        table.at(-Math.PI / 2, 1e5, 0, out);
        assertThat(out[1]).isCloseTo(2.02, within(0.03));
        assertThat(out[2]).isCloseTo(0.5, within(0.02));
        double[] next = new double[3];
        for (double alpha = -Math.PI; alpha < Math.PI; alpha += 1e-3) {
            table.slopes(alpha, 1e5, 0, out);
            table.slopes(alpha + 1e-3, 1e5, 0, next);
            assertThat(next[0]).isCloseTo(out[0], within(0.2));
        }
    }

    /** Half the circle, a few rows far round, a whole circle at one Reynolds number and a little of it at the other. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 5 10 15 20 30 45 60 90 120 150 180",
                "-5 0 5 10 12 45 90 180",
                "-180 -135 -90 -4 -2 0 2 4 6 8",
                "-180 -150 -120 -90 -60 -30 -10 0 10 30 60 90 120 150 180 / -10 -5 0 5 10",
                "-170 -20 -3 0 3 20 170",
                "0 2 4 6"
            })
    void thePlateStandsInWhereverRowsAreFarApart(String angles) {
        SectionEstimate section = new SectionEstimate(SectionShape.of(0.065, 0.02, 0));
        String[] runs = angles.split(" / ");
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            for (String angle : runs[i % runs.length].split(" ")) {
                add(rows, section, 6e4 * (1 + i), 0, Double.parseDouble(angle) * DEG);
            }
        }
        SectionTable table = fromRows(rows);
        double[] out = new double[3];
        double[] truth = new double[3];
        for (double re = 6e4; re <= 1.2e5; re += 2e4) {
            for (double alpha = -Math.PI; alpha < Math.PI; alpha += 0.5 * DEG) {
                table.at(alpha, re, 0, out);
                section.at(alpha, re, 0, truth);
                assertThat(out[1]).as("drag at %s deg", alpha / DEG).isPositive();
                boolean stalled = Math.abs(Math.sin(alpha)) > Math.sin(35 * DEG);
                assertThat(out[0]).as("lift at %s deg", alpha / DEG).isCloseTo(truth[0], within(stalled ? 0.15 : 0.5));
                assertThat(out[1]).isCloseTo(truth[1], within(stalled ? 0.2 : 0.3));
            }
        }
        assertThat(table.withoutDrag()).isEmpty();
    }

    @Test
    void runsMayHaveTheirOwnAngles() {
        List<double[]> rows = new ArrayList<>();
        for (double a = -180; a < 180; a += 5) {
            add(rows, WAVES, 1e5, 0, a * DEG);
            add(rows, WAVES, 2e5, 0, (a + 1.5) * DEG);
        }
        SectionTable table = fromRows(rows);
        double[] a = new double[3];
        double[] b = new double[3];
        table.at(0.2, 2e5, 0, a);
        WAVES.at(0.2, 2e5, 0, b);
        assertThat(a).containsExactly(b, within(5e-4));
    }

    @Test
    void aStationBetweenRootAndTipLiesBetweenThem() {
        SectionTable a = SectionTable.of(WAVES, SectionGrid.usual(true));
        SectionTable b = SectionTable.of((al, re, fl, out) -> Arrays.fill(out, 1.0), SectionGrid.usual(false));
        SectionTable mix = SectionTable.blend(a, b, 0.25);
        double[] one = new double[3];
        double[] got = new double[3];
        a.at(0.3, 9e4, 0.1, one);
        mix.at(0.3, 9e4, 0.1, got);
        for (int c = 0; c < 3; c++) {
            assertThat(got[c]).isCloseTo(0.75 * one[c] + 0.25, within(1e-12));
        }
    }

    @Test
    void saysWhatIsWrongWithRows() {
        List<double[]> rows = rows(SectionGrid.usual(false), WAVES);
        add(rows, WAVES, 2e5, 0.1, 0);
        assertThatThrownBy(() -> fromRows(rows)).hasMessageContaining("every Reynolds number needs every flap angle");
        List<double[]> twice = rows(SectionGrid.usual(false), WAVES);
        add(twice, (al, re, fl, out) -> Arrays.fill(out, 3), 2e5, 0, 0);
        assertThatThrownBy(() -> fromRows(twice)).hasMessageContaining("two different rows");
        assertThatThrownBy(() -> SectionTable.fromRows(
                        new double[0], new double[0], new double[0], new double[0], new double[0], new double[0]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SectionTable.of((al, re, fl, out) -> out[1] = Double.NaN, SectionGrid.usual(false)))
                .hasMessageContaining("finite");
    }

    private static List<double[]> rows(SectionGrid grid, Section section) {
        List<double[]> rows = new ArrayList<>();
        for (double re : grid.reynolds()) {
            for (double flap : grid.flaps()) {
                for (double alpha : grid.alphas()) {
                    add(rows, section, re, flap, alpha);
                }
            }
        }
        return rows;
    }

    private static void add(List<double[]> rows, Section section, double re, double flap, double alpha) {
        double[] out = new double[3];
        section.at(alpha, re, flap, out);
        rows.add(new double[] {re, flap, alpha, out[0], out[1], out[2]});
    }

    private static SectionTable fromRows(List<double[]> rows) {
        double[][] c = new double[6][rows.size()];
        for (int i = 0; i < rows.size(); i++) {
            for (int k = 0; k < 6; k++) {
                c[k][i] = rows.get(i)[k];
            }
        }
        return SectionTable.fromRows(c[0], c[1], c[2], c[3], c[4], c[5]);
    }
}
