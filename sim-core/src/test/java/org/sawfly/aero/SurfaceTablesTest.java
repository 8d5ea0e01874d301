package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Plover;
import org.sawfly.section.Section;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

class SurfaceTablesTest {
    private static final Models MODELS = new Models();
    private static final Glider GLIDER = glider();

    private static Glider glider() {
        Section root = SectionTable.of(new StallingSection(-0.036), SectionGrid.usual(true));
        Section tip = SectionTable.of(new StallingSection(-0.033), SectionGrid.usual(true));
        Section tail = SectionTable.of(new StallingSection(0), SectionGrid.usual(true));
        return Plover.glider(root, tip, tail);
    }

    /** Between the knots the tables give what the strips give. */
    @ParameterizedTest
    @CsvSource({"3.4, 7, 3", "-4.6, 15, -5", "6.5, 35, 0", "1.5, 5.5, 6"})
    void the_wing_follows_its_strips(double degrees, double speed, double flap) {
        LoneSurface lone = SurfaceTables.lone(GLIDER.wing(), MODELS.strips(GLIDER.wing(), 32));
        follows(MODELS.wing(GLIDER.wing()).grid(), lone, degrees, speed, flap);
    }

    /** Within the dead zone of a thin section, and where the flap stalls before or after the rest. */
    @ParameterizedTest
    @CsvSource({"0.3, 7, 1", "-0.7, 20, -0.5", "7.3, 35, -4", "11, 12, -8", "13, 30, 5"})
    void the_tailplane_follows_its_strips(double degrees, double speed, double flap) {
        Models.TailTables tables = MODELS.tailplane(Plover.glider().tailplane());
        follows(tables.grid(), tables.alone(), degrees, speed, flap);
    }

    private static void follows(CoefficientGrid grid, LoneSurface lone, double degrees, double speed, double flap) {
        double angle = Math.toRadians(degrees);
        double turned = Math.toRadians(flap);
        double[] strips = new double[CoefficientGrid.CHANNELS];
        double[] table = new double[CoefficientGrid.CHANNELS];
        lone.flow().solve(angle, speed, turned, StripModel.STANDARD_VISCOSITY, strips, 0);
        grid.at(angle, SurfaceKnots.speedPlace(speed * speed), turned, table);
        assertThat(table[CoefficientGrid.LIFT]).isCloseTo(strips[CoefficientGrid.LIFT], within(0.005));
        assertThat(table[CoefficientGrid.INDUCED]).isCloseTo(strips[CoefficientGrid.INDUCED], within(0.001));
        assertThat(table[CoefficientGrid.PROFILE]).isCloseTo(strips[CoefficientGrid.PROFILE], within(0.0005));
        assertThat(table[CoefficientGrid.MOMENT]).isCloseTo(strips[CoefficientGrid.MOMENT], within(0.001));
    }
}
