package org.sawfly.aero;

/**
 * Doubts about the model as factors and offsets, neutral by default. Uncertainty draws, calibration and users set them.
 *
 * @param drag factors on drag by where it comes from [1]
 * @param tailSlope factor on the normal force of tailplane and fin [1]
 * @param finBeyondStall factor on the fin's normal force beyond stall [1]
 * @param downwash factor on the downwash [1]
 * @param boomStiffness factor on the boom's EI [1]
 * @param yawInertia factor on Izz [1]
 * @param neutralPointBack shift of the neutral point, backwards positive [m]
 * @param bench what was not built squarely
 */
public record Corrections(
        DragFactors drag,
        double tailSlope,
        double finBeyondStall,
        double downwash,
        double boomStiffness,
        double yawInertia,
        double neutralPointBack,
        BenchErrors bench) {
    /** Of a glider built squarely. */
    public Corrections(
            DragFactors drag,
            double tailSlope,
            double finBeyondStall,
            double downwash,
            double boomStiffness,
            double yawInertia,
            double neutralPointBack) {
        this(drag, tailSlope, finBeyondStall, downwash, boomStiffness, yawInertia, neutralPointBack, BenchErrors.NONE);
    }

    /** No correction. */
    public static final Corrections NONE = new Corrections(DragFactors.NONE, 1, 1, 1, 1, 1, 0);

    /** The same with other factors on drag. */
    public Corrections withDrag(DragFactors factors) {
        return new Corrections(
                factors, tailSlope, finBeyondStall, downwash, boomStiffness, yawInertia, neutralPointBack, bench);
    }

    /** The same with another factor on the normal force of the tails [1]. */
    public Corrections withTailSlope(double factor) {
        return new Corrections(
                drag, factor, finBeyondStall, downwash, boomStiffness, yawInertia, neutralPointBack, bench);
    }

    /** The same with a boom of another stiffness [1]. */
    public Corrections withBoomStiffness(double factor) {
        return new Corrections(drag, tailSlope, finBeyondStall, downwash, factor, yawInertia, neutralPointBack, bench);
    }

    /** The same of a glider that was not built squarely. */
    public Corrections withBench(BenchErrors errors) {
        return new Corrections(
                drag, tailSlope, finBeyondStall, downwash, boomStiffness, yawInertia, neutralPointBack, errors);
    }
}
