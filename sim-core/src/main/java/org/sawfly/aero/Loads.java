package org.sawfly.aero;

/** What the air does: force and moment about the CG in body axes, and where the power goes. Mutable, reused. */
public final class Loads {
    /** Force, body axes [N]. */
    public double fx, fy, fz;
    /** Moment about the CG, body axes: roll right, nose up, nose right positive [N m]. */
    public double mx, my, mz;
    /** Rate of the lagged downwash velocity [m/s2]. */
    public double downwashLagRate;
    /** Power taken out of the motion, by {@link Loss#ordinal()}; their sum is -(F.v + M.omega), v through the air [W]. */
    public final double[] power = new double[Loss.COUNT];
    /** Largest angle of attack magnitude at the fin [rad] and at the wing halves [rad]; for the log. */
    public double finAngle, wingAngle;
    /** Air force on the tailplane along z, down positive [N], and its moment about y at its quarter point [N m]. */
    public double tailplaneForce, tailplaneMoment;
    /** Air force on the fin along y, right positive [N], and its moment about z at its quarter point [N m]. */
    public double finForce, finMoment;
    /** Bending of the boom at the tailplane (up positive) and at the fin (right positive): slope [rad]. */
    public double boomUp, boomRight;

    /** Second derivatives of these slopes where the boom swings, else none [rad/s2]. */
    public double boomUpAcceleration, boomRightAcceleration;

    /** No force, moment and power yet. */
    void clear() {
        fx = 0;
        fy = 0;
        fz = 0;
        mx = 0;
        my = 0;
        mz = 0;
        boomUpAcceleration = 0;
        boomRightAcceleration = 0;
        for (int i = 0; i < power.length; i++) {
            power[i] = 0;
        }
    }
}
