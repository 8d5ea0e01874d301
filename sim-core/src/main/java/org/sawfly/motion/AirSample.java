package org.sawfly.motion;

/** Air, wind and gravity at one place. Mutable, reused. */
public final class AirSample {
    /** Density [kg/m3]. */
    public double density;
    /** Kinematic viscosity [m2/s]. */
    public double kinematicViscosity;
    /** Velocity of the air over the ground, earth axes: blowing towards north, towards east [m/s]. */
    public double windNorth, windEast;
    /** Change of the wind with height [1/s]. */
    public double windNorthPerHeight, windEastPerHeight;
    /** Acceleration of gravity [m/s2]. */
    public double gravity;
}
