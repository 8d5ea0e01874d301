package org.sawfly.section;

/**
 * What a builder knows of a section.
 *
 * @param thickness largest thickness over the chord [1]
 * @param camber largest height of the mean line over the chord [1], not negative
 * @param camberPlace place of the largest camber over the chord, from the leading edge [1]
 * @param flapChord chord of flap, flaperon, elevator or rudder over the chord [1]; 0 means none, 1 all-moving
 */
public record SectionShape(double thickness, double camber, double camberPlace, double flapChord) {
    /** Place of the largest camber where none is given [1]; common practice, no source. */
    public static final double USUAL_CAMBER_PLACE = 0.42;

    public SectionShape {
        positive("thickness", thickness);
        positive("camberPlace", camberPlace);
        if (!(camber >= 0 && camber < 1 && thickness < 1 && camberPlace < 1)) {
            throw new IllegalArgumentException(
                    "thickness, camber and camberPlace must be below 1 and camber not below 0," + " got " + thickness
                            + ", " + camber + ", " + camberPlace);
        }
        if (!(flapChord >= 0 && flapChord <= 1)) {
            throw new IllegalArgumentException("flapChord must lie between 0 and 1, got " + flapChord);
        }
    }

    /** A shape with its largest camber at the usual place. */
    public static SectionShape of(double thickness, double camber, double flapChord) {
        return new SectionShape(thickness, camber, USUAL_CAMBER_PLACE, flapChord);
    }

    private static void positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be positive and finite, got " + value);
        }
    }
}
