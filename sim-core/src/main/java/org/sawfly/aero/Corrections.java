package org.sawfly.aero;

/**
 * Doubts about the model as factors and offsets, neutral by default. Uncertainty draws, calibration and users set them.
 *
 * @param drag factor on the section drag of all surfaces [1]
 * @param bodyDrag factor on the drag of pod, boom and peg [1]
 * @param tailSlope factor on the normal force of tailplane and fin [1]
 * @param finBeyondStall factor on the fin's normal force beyond stall [1]
 * @param downwash factor on the downwash [1]
 * @param boomStiffness factor on the boom's EI [1]
 * @param yawInertia factor on Izz [1]
 * @param neutralPointBack shift of the neutral point, backwards positive [m]
 */
public record Corrections(
        double drag,
        double bodyDrag,
        double tailSlope,
        double finBeyondStall,
        double downwash,
        double boomStiffness,
        double yawInertia,
        double neutralPointBack) {
    /** No correction. */
    public static final Corrections NONE = new Corrections(1, 1, 1, 1, 1, 1, 1, 0);
}
