package org.sawfly.aero;

/**
 * What an aerodynamic model is asked for: motion through the air and deflections. Mutable, one a flight, reused.
 * Body axes at the CG: x forward, y right, z down; angles and rates right-handed.
 */
public final class Motion {
    /** Velocity of the CG through the air, body axes [m/s]. */
    public double u, v, w;
    /** Turning rates, body axes [rad/s]. */
    public double p, q, r;
    /** Density [kg/m3]. */
    public double density;
    /** Kinematic viscosity [m2/s]. */
    public double kinematicViscosity;
    /** Acceleration of gravity in body axes [m/s2]; for the boom's bending under its own and the tail's inertia. */
    public double gx, gy, gz;
    /**
     * What a hand that holds the glider adds to the acceleration at the fin along y [m/s2]; none in flight. For the boom's
     * bending alone: the loads are the air's.
     */
    public double heldY;
    /** Elevator, trailing edge down positive [rad]. */
    public double elevator;
    /** Camber: both flaperons, trailing edge down positive [rad]. */
    public double camber;
    /** Aileron: right flaperon trailing edge up, left down, positive: rolls right [rad]. */
    public double aileron;
    /** Rudder, trailing edge left positive: turns nose left [rad]. */
    public double rudder;
    /**
     * Whether the boom swings: then the four numbers below say how it is bent and the loads say how that goes on, where a model
     * knows; else the boom follows its load at once and they mean nothing.
     */
    public boolean boomSwings;
    /** Slope of the boom at the tailplane, up positive [rad], and its rate [rad/s]. */
    public double boomUp, boomUpRate;
    /** The same at the fin, to the right positive [rad], and its rate [rad/s]. */
    public double boomRight, boomRightRate;
    /** State of the lagged downwash at the tailplane, velocity, down positive [m/s]. */
    public double downwashLag;
}
