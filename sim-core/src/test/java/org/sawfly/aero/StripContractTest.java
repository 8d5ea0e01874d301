package org.sawfly.aero;

import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.section.Section;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

/** The strip model keeps the contract of all models. */
class StripContractTest extends AeroModelContract {
    private static final Models MODELS = new Models();
    private static final Glider GLIDER = Plover.glider(table(-0.036), table(-0.033), table(0));
    private static final AeroModel MODEL = model(Corrections.NONE);
    private static final AeroModel SYMMETRIC = model(new Corrections(new DragFactors(1, 1, 0, 1), 1, 1, 1, 1, 1, 0));

    private static Section table(double zeroLift) {
        return SectionTable.of(new StallingSection(zeroLift), SectionGrid.usual(true));
    }

    private static AeroModel model(Corrections corrections) {
        return StripModel.of(GLIDER, MassProperties.of(GLIDER), corrections, MODELS);
    }

    @Override
    AeroModel model() {
        return MODEL;
    }

    @Override
    AeroModel symmetric() {
        return SYMMETRIC;
    }
}
