package org.sawfly.motion;

import org.sawfly.air.Atmosphere;
import org.sawfly.air.Standard;
import org.sawfly.air.Wind;

/**
 * The air over a flying field: atmosphere, wind and standard gravity.
 *
 * @param atmosphere over heights above the sea
 * @param wind over heights above the ground
 * @param blowsTowards direction the wind goes to, clockwise from north [rad]
 * @param fieldHeight of the ground above the sea [m]
 */
public record FieldAir(Atmosphere atmosphere, Wind wind, double blowsTowards, double fieldHeight)
        implements Surroundings {
    /** A flight that has left the numbers is stopped by its integrator, not by the atmosphere's bounds. */
    private static final double REACH = 1000;

    @Override
    public void at(double height, AirSample sample) {
        double bounded = height >= -REACH ? Math.min(height, REACH) : -REACH;
        double aboveSea = bounded + fieldHeight;
        sample.density = atmosphere.density(aboveSea);
        sample.kinematicViscosity = atmosphere.kinematicViscosity(aboveSea);
        sample.gravity = Standard.GRAVITY;
        if (wind.speed() == 0) {
            sample.windNorth = 0;
            sample.windEast = 0;
            sample.windNorthPerHeight = 0;
            sample.windEastPerHeight = 0;
        } else {
            double north = Math.cos(blowsTowards);
            double east = Math.sin(blowsTowards);
            double speed = wind.at(bounded);
            double gradient = wind.gradient(bounded);
            sample.windNorth = speed * north;
            sample.windEast = speed * east;
            sample.windNorthPerHeight = gradient * north;
            sample.windEastPerHeight = gradient * east;
        }
    }

    /** Density at the field over that of the standard at sea level: what apparent mass is scaled with [1]. */
    public double apparentDensity() {
        return atmosphere.density(fieldHeight) / Standard.DENSITY;
    }
}
