package org.sawfly.cli.chart;

/** Data drawn in a panel, in the units of its axes. NaN breaks a line. */
public sealed interface Series {
    /**
     * A line, labelled where it ends.
     *
     * @param x places along the horizontal axis
     * @param y places along the vertical axis
     * @param hue colour
     * @param stroke style
     * @param label words; empty for none
     */
    record Line(double[] x, double[] y, Hue hue, Stroke stroke, String label) implements Series {
        /** Checks that there are as many of each. */
        public Line {
            sameLength(x, y);
            x = x.clone();
            y = y.clone();
        }

        @Override
        public double[] x() {
            return x.clone();
        }

        @Override
        public double[] y() {
            return y.clone();
        }
    }

    /**
     * A filled band between two lines, behind everything.
     *
     * @param x places along the horizontal axis
     * @param low lower edge
     * @param high upper edge
     * @param hue colour
     * @param label words inside the band, at its left end; empty for none
     */
    record Ribbon(double[] x, double[] low, double[] high, Hue hue, String label) implements Series {
        /** Checks that there are as many of each. */
        public Ribbon {
            sameLength(x, low);
            sameLength(x, high);
            x = x.clone();
            low = low.clone();
            high = high.clone();
        }

        @Override
        public double[] x() {
            return x.clone();
        }

        @Override
        public double[] low() {
            return low.clone();
        }

        @Override
        public double[] high() {
            return high.clone();
        }
    }

    private static void sameLength(double[] one, double[] other) {
        if (one.length != other.length || one.length == 0) {
            throw new IllegalArgumentException(one.length + " places and " + other.length + " values");
        }
    }
}
