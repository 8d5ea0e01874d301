package org.sawfly.flight;

/** How a flight ended: settled into the glide, or a named reason why there is no settled height. */
public enum Ended {
    SETTLED("settled into the glide"),
    GROUND("hit the ground"),
    NO_TOP("no top within 8 s"),
    INVERTED("went over on its back"),
    SWAPPED_ENDS("swapped ends: the nose swung more than 80 deg off the path"),
    STALLED("stalled for 2 s"),
    BROKE_OFF("the calculation could not be carried on");

    private final String words;

    Ended(String words) {
        this.words = words;
    }

    /** The reason in a pilot's words. */
    public String words() {
        return words;
    }
}
