package org.sawfly.flight;

/**
 * Launch preset: deflections held from release on, measured at the root trailing edge, counted from the cruise position.
 *
 * @param elevatorUp [m]
 * @param camberUp reflex [m]
 * @param rudderLeft [m]
 * @param aileronRight right flaperon up, left down [m]
 * @param hold time from release [s]
 */
public record Preset(double elevatorUp, double camberUp, double rudderLeft, double aileronRight, double hold) {
    /** Without aileron. */
    public Preset(double elevatorUp, double camberUp, double rudderLeft, double hold) {
        this(elevatorUp, camberUp, rudderLeft, 0, hold);
    }
}
