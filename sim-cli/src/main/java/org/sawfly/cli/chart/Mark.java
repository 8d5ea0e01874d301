package org.sawfly.cli.chart;

/** Something pointed out in a panel, in the units of its axes. */
public sealed interface Mark {
    /**
     * A vertical dashed line with its words above the panel.
     *
     * @param x place
     * @param label words; empty for none
     */
    record Upright(double x, String label) implements Mark {}

    /**
     * A hatched region; infinite edges end at the axes.
     *
     * @param left left edge
     * @param right right edge
     * @param low lower edge
     * @param high upper edge
     * @param label words in it
     */
    record Hatched(double left, double right, double low, double high, String label) implements Mark {
        /** Above a value, over the whole width. */
        public static Hatched above(double limit, String label) {
            return new Hatched(
                    Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, limit, Double.POSITIVE_INFINITY, label);
        }

        /** Below a value, over the whole width. */
        public static Hatched below(double limit, String label) {
            return new Hatched(
                    Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, limit, label);
        }

        /** Between two places, over the whole height. */
        public static Hatched between(double left, double right, String label) {
            return new Hatched(left, right, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, label);
        }
    }

    /**
     * A dot with words beside it.
     *
     * @param x place along the horizontal axis
     * @param y place along the vertical axis
     * @param label words
     * @param hue colour of the dot
     */
    record Flag(double x, double y, String label, Hue hue) implements Mark {}

    /**
     * A bar along the foot of the panel with words in it: what holds from here to there.
     *
     * @param from left end
     * @param to right end
     * @param label words
     * @param stroke style of the bar's line
     * @param hue colour
     */
    record Span(double from, double to, String label, Stroke stroke, Hue hue) implements Mark {}
}
