package org.sawfly.study;

import org.sawfly.aero.BenchErrors;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Planform;

/** One way of not building squarely, and where a ruler finds it. */
public enum BenchError {
    /** The tailplane set nose up: over its root chord. */
    TAILPLANE_INCIDENCE("tailplane incidence, nose up"),
    /** The tailplane tilted, right side down: at its tip. */
    TAILPLANE_TILT("tailplane tilt, right side down"),
    /** The tailplane skewed, nose right: at its tip, along the boom. */
    TAILPLANE_SKEW("tailplane skew, nose right"),
    /** The fin leaning, top to the right: at its top. */
    FIN_TILT("fin tilt, top to the right"),
    /** The fin not along the boom, nose right: over its root chord. */
    FIN_SKEW("fin skew, nose right"),
    /** The right half of the wing with more incidence than the left: over the root chord. */
    WING_TWIST("wing twist, right half nose up against the left"),
    /** The boom not square to the wing, its end to the left: at its end. */
    BOOM_SKEW("boom skew, end to the left");

    private final String words;

    BenchError(String words) {
        this.words = words;
    }

    /** As a builder says it, with the direction that counts as positive. */
    public String words() {
        return words;
    }

    /** Where the ruler is laid. */
    public String ruler() {
        return switch (this) {
            case TAILPLANE_INCIDENCE, FIN_SKEW, WING_TWIST -> "over the root chord";
            case TAILPLANE_TILT -> "at its tip";
            case TAILPLANE_SKEW -> "at its tip, along the boom";
            case FIN_TILT -> "at its top";
            case BOOM_SKEW -> "at its end";
        };
    }

    /** This error alone, by an angle [rad]. */
    public BenchErrors of(double angle) {
        return switch (this) {
            case TAILPLANE_INCIDENCE -> new BenchErrors(angle, 0, 0, 0, 0, 0, 0);
            case TAILPLANE_TILT -> new BenchErrors(0, angle, 0, 0, 0, 0, 0);
            case TAILPLANE_SKEW -> new BenchErrors(0, 0, angle, 0, 0, 0, 0);
            case FIN_TILT -> new BenchErrors(0, 0, 0, angle, 0, 0, 0);
            case FIN_SKEW -> new BenchErrors(0, 0, 0, 0, angle, 0, 0);
            case WING_TWIST -> new BenchErrors(0, 0, 0, 0, 0, angle, 0);
            case BOOM_SKEW -> new BenchErrors(0, 0, 0, 0, 0, 0, angle);
        };
    }

    /** Length over which the angle shows, so that {@code length x angle} is what the ruler reads [m]. */
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
        };
    }
}
