package org.sawfly.flight;

/** What the launch preset of a changed version is counted from; every difference depends on it. */
public enum PresetRule {
    /** From the new cruise position of the elevator of the same version. */
    FROM_NEW_CRUISE,
    /** The same position of the surface as today. */
    SAME_SURFACE_POSITION,
    /** The elevator preset that gives each version its greatest settled height. */
    BEST_FOR_EACH
}
