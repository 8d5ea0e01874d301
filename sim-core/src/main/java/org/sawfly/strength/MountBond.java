package org.sawfly.strength;

/**
 * A tail's joint with the boom as a flat patch of glue.
 *
 * <p>A force across shears it evenly; a moment about the axis through the patch shears it as a rigid plate on an even bed
 * does: {@code tau = M c/J}, {@code J = l w (l^2 + w^2)/12}, c from the middle to the corner. A pull and a roll peel it:
 * {@code F/(l w) + 6 M/(l w^2)} (Shigley, Mechanical Engineering Design, 3rd ed. 1977, chapter on bonded and welded joints,
 * eccentric shear; from memory).
 *
 * @param length along the boom [m]
 * @param width across [m]
 * @param shear strength, as a mean over the patch [Pa]
 * @param peel strength when pulled off, likewise [Pa]
 */
record MountBond(double length, double width, double shear, double peel) {
    /** Mean shear a hand-made joint with epoxy bears [Pa], half of what data sheets state; common practice, no source. */
    static final double GLUE_SHEAR = 10e6;
    /** The same when pulled off [Pa]; common practice, no source. */
    static final double GLUE_PEEL = 3e6;

    MountBond {
        if (!(length > 0 && width > 0 && shear > 0 && peel > 0)) {
            throw new IllegalArgumentException("a joint needs length, width and strength above 0, got " + length
                    + " m, " + width + " m, " + shear + " Pa, " + peel + " Pa");
        }
    }

    /** Of glue of which nothing is known. */
    static MountBond glued(double length, double width) {
        return new MountBond(length, width, GLUE_SHEAR, GLUE_PEEL);
    }

    /**
     * Greatest shear [Pa].
     *
     * @param force in the plane of the patch [N]
     * @param moment about the axis through it [N m]
     */
    double shearStress(double force, double moment) {
        double corner = 0.5 * Math.hypot(length, width);
        double polar = length * width * (length * length + width * width) / 12;
        return Math.abs(force) / (length * width) + Math.abs(moment) * corner / polar;
    }

    /**
     * Greatest pull [Pa].
     *
     * @param force away from the boom, 0 if it presses [N]
     * @param roll moment about the boom [N m]
     */
    double peelStress(double force, double roll) {
        return Math.max(0, force) / (length * width) + 6 * Math.abs(roll) / (length * width * width);
    }
}
