package org.sawfly.flight;

/**
 * A thrower as worked out once from what was seen with one glider, and kept for every change.
 *
 * <p>Arm and glider share one energy: {@code V = u + (V_ref - u) sqrt((M + m_ref + Izz_ref/R_ref^2) / (M + m + Izz/R^2))},
 * u the run-up, M the arm-equivalent mass, R the radius of the spin at the CG.
 *
 * @param speed release speed over the ground with the glider it was seen with [m/s]
 * @param yawRate left at release, magnitude [rad/s]
 * @param massSeen m + Izz/R^2 of the glider it was seen with [kg]
 */
public record ThrowReference(double speed, double yawRate, double massSeen) {

    /** The release speed of another craft with the same throw [m/s]. */
    public double speedOf(Craft craft, Launch launch) {
        double run = Math.min(speed, launch.thrower().runUp());
        double arm = launch.thrower().armMass();
        return run + (speed - run) * Math.sqrt((arm + massSeen) / (arm + spunMass(craft, launch)));
    }

    /** m + Izz/R^2: what the arm has to bring up to speed [kg]. */
    static double spunMass(Craft craft, Launch launch) {
        double radius = launch.thrower().reach() + SpinGeometry.of(craft).pegToCg();
        return craft.mass().mass() + craft.mass().inertia().izz() / (radius * radius);
    }
}
