package org.sawfly.flight;

import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.ModelChoice;
import org.sawfly.aero.Models;
import org.sawfly.aero.Reference;
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
 * @param power what the controls do at the trimmed glide
 */
public record Craft(
        Glider glider,
        MassProperties mass,
        AeroModel model,
        Deflections deflections,
        Glide cruise,
        double cruiseCamber,
        ControlPower power) {
    /** Lift coefficient of the trimmed glide [1]; about the best glide of these models (common practice, no source). */
    public static final double CRUISE_LIFT = 0.6;

    /** Makes a glider ready with the fast model. */
    public static Craft of(Glider glider, Corrections corrections, Models models, GlideSettings settings, Air air) {
        return of(glider, corrections, models, ModelChoice.TAIL_VOLUME, settings, air);
    }

    /**
     * Makes a glider ready.
     *
     * @param choice which model of the air forces is flown
     * @throws org.sawfly.motion.NoTrimException if it cannot be trimmed in the cruise setting
     */
    public static Craft of(
            Glider glider,
            Corrections corrections,
            Models models,
            ModelChoice choice,
            GlideSettings settings,
            Air air) {
        MassProperties mass = withYawInertia(MassProperties.of(glider), corrections.yawInertia());
        AeroModel model = choice.of(glider, mass, corrections, models);
        Deflections deflections = Deflections.of(glider);
        double camber = Deflections.angle(settings.cruiseCamber(), deflections.flaperonChord());
        Glide cruise = new Trim(model, mass.mass(), sample(air)).atLift(camber, CRUISE_LIFT);
        return new Craft(glider, mass, model, deflections, cruise, camber, ControlPower.at(model, cruise, air));
    }

    private static MassProperties withYawInertia(MassProperties mass, double factor) {
        Inertia i = mass.inertia();
        return new MassProperties(
                mass.mass(), mass.cg(), new Inertia(i.ixx(), i.iyy(), i.izz() * factor, i.ixy(), i.ixz(), i.iyz()));
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
