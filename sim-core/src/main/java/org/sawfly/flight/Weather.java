package org.sawfly.flight;

/**
 * The air on the field.
 *
 * @param wind speed 10 m above the ground, against the throw positive [m/s]
 * @param shearExponent exponent of the power law of wind over height [1]; 0 means the same wind at every height
 * @param temperature at the field [K]
 * @param fieldHeight of the field above the sea [m]
 */
public record Weather(double wind, double shearExponent, double temperature, double fieldHeight) {}
