package org.sawfly.strength;

/** In which part of a launch a load acts. Loads have signs: to the right and upwards positive. */
public enum LoadCase {
    /** The steady end of the spin: the masses pull outward, the fin's lift pulls inward. */
    SPIN("in the spin"),
    /** The same with no air on the fin, as when it is stalled or in the thrower's wake. */
    SPIN_FIN_UNLOADED("in the spin with the fin unloaded"),
    /** The hand has opened: the pull outward is gone within some milliseconds and the boom springs back. */
    RELEASE("springing back at release"),
    /** The greatest bending up or down between release and top. */
    PULL_UP("in the pull-up");

    private final String words;

    LoadCase(String words) {
        this.words = words;
    }

    /** As a builder says it. */
    public String words() {
        return words;
    }
}
