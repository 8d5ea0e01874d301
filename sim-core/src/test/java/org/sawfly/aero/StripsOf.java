package org.sawfly.aero;

import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;

/** Strip models with any number of strips, for tests elsewhere. */
public final class StripsOf {
    private StripsOf() {}

    public static AeroModel model(
            Glider glider, Corrections corrections, Models models, int wing, int tailplane, int fin) {
        return StripModel.of(
                glider, MassProperties.of(glider), corrections, models, new StripCounts(wing, tailplane, fin));
    }
}
