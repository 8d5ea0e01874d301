package org.sawfly.study;

import org.sawfly.aero.BenchErrors;
import org.sawfly.glider.Correction;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Planform;
import org.sawfly.math.Vec3;

/** One way of not building squarely, or of not balancing, and where a ruler finds it. */
public enum BenchError {
    /** The tailplane set nose up: over its root chord. */
    TAILPLANE_INCIDENCE("tailplane incidence, nose up", "over the root chord"),
    /** The tailplane tilted, right side down: at its tip. */
    TAILPLANE_TILT("tailplane tilt, right side down", "at its tip"),
    /** The tailplane skewed, nose right: at its tip, along the boom. */
    TAILPLANE_SKEW("tailplane skew, nose right", "at its tip, along the boom"),
    /** The fin leaning, top to the right: at its top. */
    FIN_TILT("fin tilt, top to the right", "at its top"),
    /** The fin not along the boom, nose right: over its root chord. */
    FIN_SKEW("fin skew, nose right", "over the root chord"),
    /** The right half of the wing with more incidence than the left: over the root chord. */
    WING_TWIST("wing twist, right half nose up", "over the root chord"),
    /** The boom not square to the wing, its end to the left: at its end. */
    BOOM_SKEW("boom skew, end to the left", "at its end"),
    /** The CG further back than wanted. */
    CG_BACK("CG, further back", "on the balance"),
    /** The CG beside the middle. */
    CG_RIGHT("CG, to the right", "on the balance");

    private final String words;
    private final String ruler;

    BenchError(String words, String ruler) {
        this.words = words;
        this.ruler = ruler;
    }

    /** As a builder says it, with the direction that counts as positive. */
    public String words() {
        return words;
    }

    /** Where the ruler is laid. */
    public String ruler() {
        return ruler;
    }

    /** Whether it is an angle; a length else. */
    public boolean isAngle() {
        return this != CG_BACK && this != CG_RIGHT;
    }

    /** Whether it shows without rolling freely. */
    public boolean seen() {
        return this != TAILPLANE_SKEW && this != CG_RIGHT;
    }

    /** This error alone, by an angle [rad]; none for a balance. */
    public BenchErrors of(double angle) {
        return switch (this) {
            case TAILPLANE_INCIDENCE -> new BenchErrors(angle, 0, 0, 0, 0, 0, 0);
            case TAILPLANE_TILT -> new BenchErrors(0, angle, 0, 0, 0, 0, 0);
            case TAILPLANE_SKEW -> new BenchErrors(0, 0, angle, 0, 0, 0, 0);
            case FIN_TILT -> new BenchErrors(0, 0, 0, angle, 0, 0, 0);
            case FIN_SKEW -> new BenchErrors(0, 0, 0, 0, angle, 0, 0);
            case WING_TWIST -> new BenchErrors(0, 0, 0, 0, 0, angle, 0);
            case BOOM_SKEW -> new BenchErrors(0, 0, 0, 0, 0, 0, angle);
            case CG_BACK, CG_RIGHT -> BenchErrors.NONE;
        };
    }

    /** The glider with its balance off by a length [m]; as it is for an angle. */
    public Glider on(Glider glider, double length) {
        if (isAngle() || length == 0) {
            return glider;
        }
        double moment = MassProperties.of(glider).mass() * length;
        Correction old = glider.correction();
        Vec3 more = this == CG_BACK ? new Vec3(-moment, 0, 0) : new Vec3(0, moment, 0);
        return glider.withCorrection(new Correction(old.mass(), old.moment().plus(more), old.inertia()));
    }

    /** Length over which the angle shows, so that {@code length x angle} is what the ruler reads [m]; 1 for a balance. */
    public double length(Glider glider) {
        Planform tailplane = glider.tailplane().planform();
        return switch (this) {
            case TAILPLANE_INCIDENCE -> tailplane.chordAt(0);
            case TAILPLANE_TILT, TAILPLANE_SKEW -> tailplane.span();
            case FIN_TILT -> glider.fin().above().span();
            case FIN_SKEW ->
                Math.max(glider.fin().above().chordAt(0), glider.fin().below().chordAt(0));
            case WING_TWIST -> glider.wing().planform().chordAt(0);
            case BOOM_SKEW -> glider.boom().length();
            case CG_BACK, CG_RIGHT -> 1;
        };
    }
}
