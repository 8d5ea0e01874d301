package org.sawfly.motion;

import org.sawfly.aero.Motion;

/**
 * A steady, straight, wings-level glide in still air, balanced in all forces and moments of the plane of symmetry.
 *
 * @param speed through the air [m/s]
 * @param alpha angle of attack of the body axes [rad]
 * @param elevator trailing edge down positive [rad]
 * @param camber trailing edge down positive [rad]
 * @param pathAngle above the horizon; negative in a glide [rad]
 * @param liftCoefficient across the path, of the reference area [1]
 * @param dragCoefficient along the path, of the reference area [1]
 * @param downwashLag state of the lagged downwash, settled [m/s]
 */
public record Glide(
        double speed,
        double alpha,
        double elevator,
        double camber,
        double pathAngle,
        double liftCoefficient,
        double dragCoefficient,
        double downwashLag) {
    /** Rate of sinking, down positive [m/s]. */
    public double sink() {
        return -speed * Math.sin(pathAngle);
    }

    /** Way forward per height lost [1]. */
    public double ratio() {
        return liftCoefficient / dragCoefficient;
    }

    /** Elevation of the nose (x axis) above the horizon [rad]. */
    public double noseElevation() {
        return alpha + pathAngle;
    }

    /** Writes this glide's motion in an air. */
    public void fill(AirSample air, Motion motion) {
        motion.u = speed * Math.cos(alpha);
        motion.v = 0;
        motion.w = speed * Math.sin(alpha);
        motion.p = 0;
        motion.q = 0;
        motion.r = 0;
        motion.density = air.density;
        motion.kinematicViscosity = air.kinematicViscosity;
        motion.gx = -air.gravity * Math.sin(noseElevation());
        motion.gy = 0;
        motion.gz = air.gravity * Math.cos(noseElevation());
        motion.elevator = elevator;
        motion.camber = camber;
        motion.aileron = 0;
        motion.rudder = 0;
        motion.downwashLag = downwashLag;
    }
}
