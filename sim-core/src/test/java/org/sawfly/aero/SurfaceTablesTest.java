package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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
}
