package org.sawfly.flight;

/**
 * Launch preset: deflections held from release on, measured at the root trailing edge, counted from the cruise position.
 *
 * @param elevatorUp [m]
 * @param camberUp reflex [m]
 * @param rudderLeft [m]
 * @param hold time from release [s]
 */
public record Preset(double elevatorUp, double camberUp, double rudderLeft, double hold) {}
