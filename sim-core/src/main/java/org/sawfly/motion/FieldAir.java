package org.sawfly.motion;

import org.sawfly.air.Atmosphere;
import org.sawfly.air.Standard;
import org.sawfly.air.Wind;

/** The air over a flying field: atmosphere, wind and standard gravity. */
public final class FieldAir implements Surroundings {
    /** A flight that has left the numbers is stopped by its integrator, not by the atmosphere's bounds. */
    private static final double REACH = 1000;

    private final Atmosphere atmosphere;
    private final Wind wind;
    private final double fieldHeight;
    private final double north;
    private final double east;

    /**
     * Made for a field.
     *
     * @param atmosphere over heights above the sea
     * @param wind over heights above the ground
     * @param blowsTowards direction the wind goes to, clockwise from north [rad]
     * @param fieldHeight of the ground above the sea [m]
     */
    public FieldAir(Atmosphere atmosphere, Wind wind, double blowsTowards, double fieldHeight) {
        this.atmosphere = atmosphere;
        this.wind = wind;
        this.fieldHeight = fieldHeight;
        this.north = Math.cos(blowsTowards);
        this.east = Math.sin(blowsTowards);
    }

    @Override
    public void at(double height, AirSample sample) {
        double bounded = height >= -REACH ? Math.min(height, REACH) : -REACH;
        double aboveSea = bounded + fieldHeight;
        double density = atmosphere.density(aboveSea);
        sample.density = density;
        sample.kinematicViscosity = atmosphere.dynamicViscosity(aboveSea) / density;
        sample.gravity = Standard.GRAVITY;
        double speed = wind.at(bounded);
        double gradient = speed == 0 ? 0 : wind.gradient(bounded);
        sample.windNorth = speed * north;
        sample.windEast = speed * east;
        sample.windNorthPerHeight = gradient * north;
        sample.windEastPerHeight = gradient * east;
    }

    /** Density at the field over that of the standard at sea level: what apparent mass is scaled with [1]. */
    public double apparentDensity() {
        return atmosphere.density(fieldHeight) / Standard.DENSITY;
    }
}
