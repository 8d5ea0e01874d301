package org.sawfly.air;

/**
 * The standard atmosphere up to 11 km, warmer or colder by one offset at every height.
 *
 * <p>Source: ISO 2533:1975. With geopotential height {@code H = r z/(r + z)} the temperature is {@code T0 - L H} and the
 * pressure {@code p0 (T/T0)^(g/(R L))}. An offset changes the temperature and with it density and viscosity; pressure
 * stays the standard one at that height. Viscosity after Sutherland, {@code mu = b T^1.5/(T + S)}.
 *
 * @param warmer air is warmer than standard by this much, at every height [K]
 */
public record Atmosphere(double warmer) {
    /** The standard atmosphere itself. */
    public static final Atmosphere STANDARD = new Atmosphere(0);

    /** Height up to which the formulas hold, geometric [m]. */
    public static final double HIGHEST = 11000;

    private static final double LOWEST = -2000;
    private static final double EXPONENT = Standard.GRAVITY / (Standard.GAS_CONSTANT * Standard.LAPSE_RATE);

    /** Checks that the air stays above Sutherland's temperature at every height. */
    public Atmosphere {
        if (!(Math.abs(warmer) <= 100)) {
            throw new IllegalArgumentException(
                    "the air cannot be " + warmer + " K warmer than standard, at most 100 K");
        }
    }

    /**
     * The atmosphere that has a known temperature at a known height.
     *
     * @param temperature [K]
     * @param height above the sea [m]
     */
    public static Atmosphere withTemperature(double temperature, double height) {
        return new Atmosphere(temperature - STANDARD.temperature(height));
    }

    /** Geopotential height [m] of a geometric height above the sea [m]. */
    public static double geopotential(double height) {
        return Standard.EARTH_RADIUS * height / (Standard.EARTH_RADIUS + height);
    }

    /** The air at a geometric height above the sea [m]. */
    public Air at(double height) {
        double temperature = temperature(height);
        return new Air(temperature, pressure(height), density(height), viscosity(temperature));
    }

    /** Temperature [K] at a geometric height above the sea [m]. */
    public double temperature(double height) {
        return standardTemperature(height) + warmer;
    }

    /** Pressure [Pa] at a geometric height above the sea [m]. */
    public double pressure(double height) {
        return Standard.PRESSURE * Math.pow(standardTemperature(height) / Standard.TEMPERATURE, EXPONENT);
    }

    /** Density [kg/m3] at a geometric height above the sea [m]; allocates nothing. */
    public double density(double height) {
        return pressure(height) / (Standard.GAS_CONSTANT * temperature(height));
    }

    /** Kinematic viscosity [m2/s] at a geometric height above the sea [m]; allocates nothing. */
    public double kinematicViscosity(double height) {
        return viscosity(temperature(height)) / density(height);
    }

    /** Viscosity [Pa s] at a geometric height above the sea [m]; allocates nothing. */
    public double dynamicViscosity(double height) {
        return viscosity(temperature(height));
    }

    private static double standardTemperature(double height) {
        if (!(height >= LOWEST && height <= HIGHEST)) {
            throw new IllegalArgumentException(
                    "the atmosphere is known from " + LOWEST + " to " + HIGHEST + " m, not at " + height + " m");
        }
        return Standard.TEMPERATURE - Standard.LAPSE_RATE * geopotential(height);
    }

    private static double viscosity(double temperature) {
        return Standard.SUTHERLAND_FACTOR
                * temperature
                * Math.sqrt(temperature)
                / (temperature + Standard.SUTHERLAND_TEMPERATURE);
    }
}
