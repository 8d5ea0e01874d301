package org.sawfly.cli.chart;

/**
 * A rectangle on the sheet [points].
 *
 * @param left left edge
 * @param top upper edge
 * @param width width
 * @param height height
 */
record Box(double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    boolean meets(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }
}
