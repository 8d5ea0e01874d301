package org.sawfly.flight;

import org.sawfly.air.Air;
import org.sawfly.air.Atmosphere;
import org.sawfly.air.Wind;
import org.sawfly.motion.FieldAir;

/**
 * The air on the field. The throw goes north; a wind against it blows towards south.
 *
 * @param wind speed 10 m above the ground, against the throw positive [m/s]
 * @param shearExponent exponent of the power law of wind over height [1]; 0 means the same wind at every height
 * @param temperature at the field [K]
 * @param fieldHeight of the field above the sea [m]
 */
public record Weather(double wind, double shearExponent, double temperature, double fieldHeight) {
    /** The same air without wind. */
    Weather calm() {
        return new Weather(0, shearExponent, temperature, fieldHeight);
    }

    /** The air at the ground. */
    public Air ground() {
        return atmosphere().at(fieldHeight);
    }

    /** Wind against the throw [m/s] at a height above the ground [m]. */
    public double windAt(double height) {
        return law().at(height);
    }

    /** What a flight meets over this field. */
    public FieldAir field() {
        return new FieldAir(atmosphere(), law(), Math.PI, fieldHeight);
    }

    private Atmosphere atmosphere() {
        return Atmosphere.withTemperature(temperature, fieldHeight);
    }

    private Wind law() {
        return new Wind(wind, shearExponent);
    }
}
