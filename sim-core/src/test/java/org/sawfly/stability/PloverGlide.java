package org.sawfly.stability;

import org.sawfly.aero.Corrections;
import org.sawfly.aero.Models;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.air.Air;
import org.sawfly.air.Atmosphere;
import org.sawfly.air.Standard;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Linear;
import org.sawfly.motion.Trim;

/** The demo glider in its trimmed glide, made once for the tests. */
final class PloverGlide {
    static final Glider GLIDER = Plover.glider();
    static final MassProperties MASS = MassProperties.of(GLIDER);
    static final Models MODELS = new Models();
    static final TailVolumeModel MODEL = TailVolumeModel.of(GLIDER, MASS, Corrections.NONE, MODELS);
    static final Air AIR = Atmosphere.STANDARD.at(0);
    static final Glide GLIDE = new Trim(MODEL, MASS.mass(), sample()).atLift(0, 0.6);

    private PloverGlide() {}

    static AirSample sample() {
        AirSample sample = new AirSample();
        sample.density = AIR.density();
        sample.kinematicViscosity = AIR.kinematicViscosity();
        sample.gravity = Standard.GRAVITY;
        return sample;
    }

    static Linear linear() {
        return Linear.around(MASS.mass(), MASS.inertia(), MODEL, 1, sample(), GLIDE);
    }
}
