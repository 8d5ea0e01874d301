package org.sawfly.cli.chart;

/**
 * The colours of the house theme, each with a fixed meaning, from the palette of Okabe and Ito, "Color universal design"
 * (2008), which people with any colour vision can tell apart.
 */
public enum Hue {
    HEIGHT(0x0072B2),
    SINK(0xD55E00),
    MARGIN(0x009E73),
    SWING(0xCC79A7),
    SPEED(0xE69F00),
    ELEVATOR(0x56B4E9),
    INK(0x000000),
    QUIET(0x595959),
    GRID(0xE2E2E2),
    SCATTER(0xD9D9D9);

    private final int rgb;

    Hue(int rgb) {
        this.rgb = rgb;
    }

    /** Red, green and blue, eight bits each. */
    public int rgb() {
        return rgb;
    }
}
