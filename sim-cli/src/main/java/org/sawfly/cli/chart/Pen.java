package org.sawfly.cli.chart;

/** Draws on a sheet in points, x to the right, y down, from the upper left corner. */
interface Pen {
    /** Where the given point of a text lies. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * How a text is written.
     *
     * @param size height of the letters [points]
     * @param bold whether it is bold
     * @param hue colour
     * @param anchor what lies at the given point
     * @param rim whether the letters have a white rim, to be read over lines
     */
    record Script(double size, boolean bold, Hue hue, Anchor anchor, boolean rim) {
        Script at(Anchor other) {
            return new Script(size, bold, hue, other, rim);
        }
    }

    /** A line through points. */
    void path(double[] x, double[] y, Hue hue, float width, float[] dash);

    /** A filled shape. */
    void fill(double[] x, double[] y, Hue hue, double opacity);

    /** A filled disc. */
    void dot(double x, double y, double radius, Hue hue);

    /** A line of text on its base line. */
    void text(double x, double y, String text, Script script);

    /** Draws only inside a box from now on; null ends that. */
    void clip(Box box);

    /** A straight line. */
    default void line(double x0, double y0, double x1, double y1, Hue hue, float width, float... dash) {
        path(new double[] {x0, x1}, new double[] {y0, y1}, hue, width, dash);
    }
}
