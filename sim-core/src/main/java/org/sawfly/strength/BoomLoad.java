package org.sawfly.strength;

/**
 * What a cross-section of the boom carries.
 *
 * @param right bending moment, positive when the tail is pushed to the right [N m]
 * @param up bending moment, positive when the tail is pushed upwards [N m]
 * @param twist torque, positive when the tail is turned right side down [N m]
 * @param across force to the right [N]
 * @param lift force upwards [N]
 */
public record BoomLoad(double right, double up, double twist, double across, double lift) {
    /** Bending moment of both planes together [N m]. */
    public double bending() {
        return Math.hypot(right, up);
    }

    /** Force across of both planes together [N]. */
    public double shear() {
        return Math.hypot(across, lift);
    }

    /** This load and so many times another. */
    BoomLoad plus(double k, BoomLoad o) {
        return new BoomLoad(
                right + k * o.right, up + k * o.up, twist + k * o.twist, across + k * o.across, lift + k * o.lift);
    }
}
