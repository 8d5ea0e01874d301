package org.sawfly.cli.chart;

/** How a line is drawn, so that no line is told from another by colour alone. */
public enum Stroke {
    SOLID(2.4f),
    DASHED(2.4f, 10, 5),
    DOTTED(2.6f, 2, 4),
    DASH_DOT(2.4f, 12, 4, 2, 4),
    THIN(1.1f),
    THIN_DASHED(1.1f, 6, 4);

    private final float width;
    private final float[] dash;

    Stroke(float width, float... dash) {
        this.width = width;
        this.dash = dash;
    }

    /** Width in points of the sheet. */
    float width() {
        return width;
    }

    /** Lengths drawn and left out in turn; empty for a full line. */
    float[] dash() {
        return dash.clone();
    }

    /** The style of the n-th of several lines of one kind. */
    public static Stroke ofLine(int index) {
        Stroke[] order = {SOLID, DASHED, DOTTED, DASH_DOT, THIN, THIN_DASHED};
        return order[index % order.length];
    }
}
