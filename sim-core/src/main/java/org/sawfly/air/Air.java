package org.sawfly.air;

/**
 * Still air at one height.
 *
 * @param temperature [K]
 * @param pressure [Pa]
 * @param density [kg/m3]
 * @param viscosity dynamic viscosity [Pa s]
 */
public record Air(double temperature, double pressure, double density, double viscosity) {
    /** Kinematic viscosity [m2/s]. */
    public double kinematicViscosity() {
        return viscosity / density;
    }
}
