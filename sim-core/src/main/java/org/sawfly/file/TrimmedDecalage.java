package org.sawfly.file;

import org.sawfly.aero.Corrections;
import org.sawfly.aero.Models;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.air.Atmosphere;
import org.sawfly.air.Standard;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Tailplane;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Trim;

/**
 * The decalage with which a glider cruises with its elevator level, at its CG: what a builder sets before all else and
 * so the best guess where it was not measured. The cruise is taken at the lift of the best glide, where a builder looks whether
 * the elevator is in line. Found by the secant rule on the elevator that trims it.
 */
final class TrimmedDecalage implements GliderReader.CruiseDecalage {
    /** Lift coefficient near the best glide of such gliders in the cruise setting [1]; common practice, no source. */
    private static final double CRUISE_LIFT = 0.5;

    private static final double FIRST = 0.02;
    private static final double STEP = 0.005;
    private static final double CLOSE = 1e-6;
    private static final double MOST = 0.14;
    private static final int STEPS = 12;

    private final Models models = new Models();

    @Override
    public double of(Glider glider, Corrections corrections, double camberDown) {
        double before = FIRST;
        double elevatorBefore = elevator(glider, before, corrections, camberDown);
        double now = FIRST + STEP;
        for (int i = 0; i < STEPS; i++) {
            double elevator = elevator(glider, now, corrections, camberDown);
            if (Math.abs(elevator) < CLOSE || elevator == elevatorBefore) {
                return now;
            }
            double next = now - elevator * (now - before) / (elevator - elevatorBefore);
            before = now;
            elevatorBefore = elevator;
            now = Math.max(-MOST, Math.min(MOST, next));
        }
        return now;
    }

    /** Elevator that trims the cruise with a decalage [rad]. */
    private double elevator(Glider glider, double decalage, Corrections corrections, double camberDown) {
        Tailplane t = glider.tailplane();
        Glider turned = glider.withTails(
                new Tailplane(t.mass(), t.planform(), t.x(), t.z(), decalage, t.section(), t.elevatorChord()),
                glider.fin());
        MassProperties mass = MassProperties.of(turned);
        TailVolumeModel model = TailVolumeModel.of(turned, mass, corrections, models);
        double chord = turned.wing().flaperon().chordFraction()
                * turned.wing().planform().stations().get(0).chord();
        return new Trim(model, mass.mass(), air())
                .atLift(Math.asin(camberDown / chord), CRUISE_LIFT)
                .elevator();
    }

    private static AirSample air() {
        AirSample air = new AirSample();
        air.density = Standard.DENSITY;
        air.kinematicViscosity = Atmosphere.STANDARD.at(0).kinematicViscosity();
        air.gravity = Standard.GRAVITY;
        return air;
    }
}
