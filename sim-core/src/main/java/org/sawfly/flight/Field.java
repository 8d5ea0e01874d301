package org.sawfly.flight;

import org.sawfly.air.Air;
import org.sawfly.air.Atmosphere;
import org.sawfly.air.Standard;
import org.sawfly.air.Wind;
import org.sawfly.motion.AirSample;
import org.sawfly.motion.Surroundings;

/**
 * The air over the field. The throw goes north; a wind against it blows towards south.
 *
 * <p>Density and viscosity follow the standard atmosphere, shifted in temperature to what the field has; over the height of
 * a launch they are laid out as straight lines through the values at the ground and {@value #REACH} m above it (density
 * within 2e-5 of itself between, tested).
 */
public final class Field implements Surroundings {
    /** Height over which the lines are drawn [m]. */
    static final double REACH = 100;

    private final Air ground;
    private final double densitySlope;
    private final double viscositySlope;
    private final Wind wind;

    /** The air over a field in some weather. */
    public Field(Weather weather) {
        Atmosphere atmosphere = Atmosphere.withTemperature(weather.temperature(), weather.fieldHeight());
        this.ground = atmosphere.at(weather.fieldHeight());
        Air above = atmosphere.at(weather.fieldHeight() + REACH);
        this.densitySlope = (above.density() - ground.density()) / REACH;
        this.viscositySlope = (above.kinematicViscosity() - ground.kinematicViscosity()) / REACH;
        this.wind = new Wind(weather.wind(), weather.shearExponent());
    }

    /** The air at the ground. */
    public Air ground() {
        return ground;
    }

    /** Wind against the throw [m/s] at a height above the ground [m]. */
    public double windAt(double height) {
        return wind.at(height);
    }

    @Override
    public void at(double height, AirSample sample) {
        sample.density = ground.density() + densitySlope * height;
        sample.kinematicViscosity = ground.kinematicViscosity() + viscositySlope * height;
        sample.windNorth = -wind.at(height);
        sample.windEast = 0;
        sample.windNorthPerHeight = -wind.gradient(height);
        sample.windEastPerHeight = 0;
        sample.gravity = Standard.GRAVITY;
    }
}
