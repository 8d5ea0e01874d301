package org.sawfly.cli.chart;

/**
 * From the units of a panel's axes to points on the sheet.
 *
 * @param x horizontal axis
 * @param y vertical axis
 * @param box where the panel is drawn
 */
record Scale(Axis x, Axis y, Box box) {
    double across(double value) {
        return box.left() + box.width() * (value - x.low()) / (x.high() - x.low());
    }

    double down(double value) {
        double share = (value - y.low()) / (y.high() - y.low());
        return y.downward() ? box.top() + box.height() * share : box.bottom() - box.height() * share;
    }

    double[] across(double[] values) {
        double[] points = new double[values.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = across(values[i]);
        }
        return points;
    }

    double[] down(double[] values) {
        double[] points = new double[values.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = down(values[i]);
        }
        return points;
    }

    double acrossClamped(double value) {
        return across(Math.max(x.low(), Math.min(x.high(), value)));
    }

    double downClamped(double value) {
        return down(Math.max(y.low(), Math.min(y.high(), value)));
    }

    boolean holds(double atX, double atY) {
        return x.holds(atX) && y.holds(atY);
    }
}
