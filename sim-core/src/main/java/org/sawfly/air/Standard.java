package org.sawfly.air;

/**
 * The constants that were agreed on, in this one place. Source: ISO 2533:1975, Standard Atmosphere, section 2; Sutherland's
 * two constants from the US Standard Atmosphere 1976, equation 51.
 */
public final class Standard {
    /** Acceleration of gravity [m/s2]. */
    public static final double GRAVITY = 9.80665;
    /** Temperature at sea level [K]. */
    public static final double TEMPERATURE = 288.15;
    /** Pressure at sea level [Pa]. */
    public static final double PRESSURE = 101325;
    /** Density at sea level [kg/m3]. */
    public static final double DENSITY = 1.225;
    /** Gas constant of air [J/(kg K)]. */
    public static final double GAS_CONSTANT = 287.05287;
    /** Fall of temperature with geopotential height, below 11 km [K/m]. */
    public static final double LAPSE_RATE = 0.0065;
    /** Radius of the Earth that turns geometric into geopotential height [m]. */
    public static final double EARTH_RADIUS = 6356766;
    /** Sutherland's factor [kg/(m s K^0.5)]. */
    public static final double SUTHERLAND_FACTOR = 1.458e-6;
    /** Sutherland's temperature [K]. */
    public static final double SUTHERLAND_TEMPERATURE = 110.4;

    private Standard() {}
}
