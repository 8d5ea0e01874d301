package org.sawfly.aero;

import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;

/** Which aerodynamic model is flown. */
public enum ModelChoice {
    /** Five elements: fast. */
    TAIL_VOLUME {
        @Override
        public AeroModel of(Glider glider, MassProperties mass, Corrections corrections, Models models) {
            return TailVolumeModel.of(glider, mass, corrections, models);
        }
    },
    /** Strips: slower, the reference. */
    STRIP {
        @Override
        public AeroModel of(Glider glider, MassProperties mass, Corrections corrections, Models models) {
            return StripModel.of(glider, mass, corrections, models);
        }
    };

    /** The model of a glider. */
    public abstract AeroModel of(Glider glider, MassProperties mass, Corrections corrections, Models models);
}
