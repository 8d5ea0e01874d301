package org.sawfly.strength;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.air.Air;
import org.sawfly.flight.Craft;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.LaunchLoads;
import org.sawfly.flight.RearLoads;
import org.sawfly.glider.Glider;
import org.sawfly.motion.Glide;
import org.sawfly.motion.Trim;

/**
 * Hinge moments of both tails in one steady motion.
 *
 * @param speed [m/s]
 * @param elevator moment, trailing edge down positive [N m]
 * @param rudder moment, trailing edge left positive [N m]
 * @param elevatorDeflection trailing edge down positive [rad]
 */
public record ControlLoads(double speed, double elevator, double rudder, double elevatorDeflection) {
    /** As the hand opens, the preset held and the glider still turning as fast as in the spin. */
    public static ControlLoads atRelease(FlightPlan plan) {
        Air air = plan.launch().weather().ground();
        RearLoads rear = LaunchLoads.letGo(plan);
        double rudder = LaunchLoads.presetRudder(plan);
        return of(
                plan.craft().glider(),
                air,
                plan.releaseSpeed(),
                plan.presetElevator(),
                rudder,
                rear.tailplaneForce(),
                rear.finForce());
    }

    /** In a steady straight glide in the cruise setting at a speed [m/s]. */
    public static ControlLoads gliding(Craft craft, Air air, double speed) {
        Glide glide =
                new Trim(craft.model(), craft.mass().mass(), Craft.sample(air)).atSpeed(craft.cruiseCamber(), speed);
        Motion motion = new Motion();
        glide.fill(Craft.sample(air), motion);
        Loads loads = new Loads();
        AeroEvaluator evaluator = craft.model().evaluator();
        evaluator.evaluate(motion, loads);
        return of(craft.glider(), air, speed, glide.elevator(), 0, loads.tailplaneForce, loads.finForce);
    }

    private static ControlLoads of(
            Glider glider,
            Air air,
            double speed,
            double elevator,
            double rudder,
            double tailplaneDown,
            double finRight) {
        double pressure = 0.5 * air.density() * speed * speed;
        HingeMoment up = HingeMoment.ofElevator(glider);
        HingeMoment side = HingeMoment.ofRudder(glider);
        double reynolds = speed / air.kinematicViscosity();
        return new ControlLoads(
                speed,
                up.at(pressure, coefficient(-tailplaneDown, pressure * up.area()), elevator, reynolds * up.chord()),
                side.at(pressure, coefficient(finRight, pressure * side.area()), rudder, reynolds * side.chord()),
                elevator);
    }

    private static double coefficient(double force, double scale) {
        return scale == 0 ? 0 : force / scale;
    }
}
