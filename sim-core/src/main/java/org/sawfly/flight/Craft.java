package org.sawfly.flight;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Models;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.air.Air;
import org.sawfly.air.Standard;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.math.Inertia;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Trim;

/**
 * A glider made ready to fly: weighed, its air forces tabulated, trimmed in the cruise setting. Immutable.
 *
 * @param glider
 * @param mass with the yaw inertia corrected
 * @param model
 * @param deflections between lengths at the trailing edge and angles
 * @param cruise the trimmed glide of the cruise setting, at {@link #CRUISE_LIFT} in the air of the field
 * @param cruiseCamber camber of the cruise setting, trailing edge down positive [rad]
 * @param elevatorPower S c |Cm_delta| at the trimmed glide [m3/rad]
 */
public record Craft(
        Glider glider,
        MassProperties mass,
        AeroModel model,
        Deflections deflections,
        Glide cruise,
        double cruiseCamber,
        double elevatorPower) {
    /** Lift coefficient of the trimmed glide [1]; about the best glide of these models (common practice, no source). */
    public static final double CRUISE_LIFT = 0.6;

    /**
     * Makes a glider ready.
     *
     * @throws org.sawfly.motion.NoTrimException if it cannot be trimmed in the cruise setting
     */
    public static Craft of(Glider glider, Corrections corrections, Models models, GlideSettings settings, Air air) {
        MassProperties mass = withYawInertia(MassProperties.of(glider), corrections.yawInertia());
        AeroModel model = TailVolumeModel.of(glider, mass, corrections, models);
        Deflections deflections = Deflections.of(glider);
        double camber = Deflections.angle(settings.cruiseCamber(), deflections.flaperonChord());
        Glide cruise = new Trim(model, mass.mass(), sample(air)).atLift(camber, CRUISE_LIFT);
        return new Craft(glider, mass, model, deflections, cruise, camber, elevatorPower(model, cruise, air));
    }

    private static MassProperties withYawInertia(MassProperties mass, double factor) {
        Inertia i = mass.inertia();
        return new MassProperties(
                mass.mass(), mass.cg(), new Inertia(i.ixx(), i.iyy(), i.izz() * factor, i.ixy(), i.ixz(), i.iyz()));
    }

    private static double elevatorPower(AeroModel model, Glide glide, Air air) {
        double step = 0.01;
        AeroEvaluator evaluator = model.evaluator();
        Motion motion = new Motion();
        glide.fill(sample(air), motion);
        Loads loads = new Loads();
        motion.elevator = glide.elevator() + step;
        evaluator.evaluate(motion, loads);
        double up = loads.my;
        motion.elevator = glide.elevator() - step;
        evaluator.evaluate(motion, loads);
        double slope = (loads.my - up) / (2 * step);
        return Math.max(1e-6, slope / (0.5 * air.density() * glide.speed() * glide.speed()));
    }

    /** Still air as the equations of motion take it. */
    public static AirSample sample(Air air) {
        AirSample sample = new AirSample();
        sample.density = air.density();
        sample.kinematicViscosity = air.kinematicViscosity();
        sample.gravity = Standard.GRAVITY;
        return sample;
    }

    /** Reference lengths. */
    public Reference reference() {
        return model.reference();
    }
}
