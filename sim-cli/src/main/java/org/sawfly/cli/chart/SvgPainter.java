package org.sawfly.cli.chart;

import org.sawfly.quantity.Numbers;

/** Writes a figure as SVG 1.1 with real text, small enough to be read by people and put into a page. */
final class SvgPainter implements Pen {
    private static final String FONT = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

    private static final String RIM =
            " stroke=\"#ffffff\" stroke-width=\"3\" stroke-linejoin=\"round\" paint-order=\"stroke\"";

    private final StringBuilder svg = new StringBuilder();
    private int clips;
    private boolean clipped;

    private SvgPainter() {}

    /** The whole document. */
    static String paint(Figure figure) {
        SvgPainter painter = new SvgPainter();
        painter.svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
        painter.svg.append(Figure.WIDTH + " " + Figure.HEIGHT + "\" font-family=\"" + FONT + "\">\n");
        painter.svg.append("<title>" + escaped(figure.title()) + "</title>\n");
        painter.svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        Sheet sheet = new Sheet(figure);
        new Ground(figure, sheet, painter).draw();
        for (int i = 0; i < figure.panels().size(); i++) {
            painter.series(figure.panels().get(i), sheet.scale(i));
        }
        new Overlay(figure, sheet, painter).draw();
        return painter.svg.append("</svg>\n").toString();
    }

    private void series(Panel panel, Scale scale) {
        clip(scale.box());
        for (Series series : panel.series()) {
            if (series instanceof Series.Ribbon ribbon) {
                for (double[][] shape : Shapes.ribbon(ribbon, scale)) {
                    fill(shape[0], shape[1], ribbon.hue(), Shapes.opacity(ribbon));
                }
            }
        }
        for (Series series : panel.series()) {
            if (series instanceof Series.Line line) {
                Stroke stroke = line.stroke();
                for (double[][] run : Shapes.line(line, scale)) {
                    path(run[0], run[1], line.hue(), stroke.width(), stroke.dash());
                }
            }
        }
        clip(null);
    }

    @Override
    public void path(double[] x, double[] y, Hue hue, float width, float[] dash) {
        svg.append("<polyline fill=\"none\" stroke=\"" + colour(hue) + "\" stroke-width=\"" + point(width) + "\"");
        if (dash.length > 0) {
            svg.append(" stroke-dasharray=\"");
            for (int i = 0; i < dash.length; i++) {
                svg.append(i == 0 ? "" : " ").append(point(dash[i]));
            }
            svg.append('"');
        }
        svg.append(" points=\"");
        points(x, y);
        svg.append("\"/>\n");
    }

    @Override
    public void fill(double[] x, double[] y, Hue hue, double opacity) {
        svg.append("<polygon fill=\"" + colour(hue) + "\" fill-opacity=\"" + point(opacity) + "\" points=\"");
        points(x, y);
        svg.append("\"/>\n");
    }

    @Override
    public void dot(double x, double y, double radius, Hue hue) {
        svg.append("<circle cx=\"" + point(x) + "\" cy=\"" + point(y) + "\" r=\"" + point(radius) + "\" fill=\""
                + colour(hue) + "\"/>\n");
    }

    @Override
    public void text(double x, double y, String text, Script script) {
        if (text.isEmpty()) {
            return;
        }
        String anchor =
                switch (script.anchor()) {
                    case START -> "start";
                    case MIDDLE -> "middle";
                    case END -> "end";
                };
        svg.append("<text x=\"" + point(x) + "\" y=\"" + point(y) + "\" font-size=\"" + point(script.size())
                + "\" text-anchor=\"" + anchor + "\" fill=\"" + colour(script.hue()) + "\"");
        svg.append(script.bold() ? " font-weight=\"bold\"" : "");
        svg.append(script.rim() ? RIM : "");
        svg.append('>').append(escaped(text)).append("</text>\n");
    }

    @Override
    public void clip(Box box) {
        if (clipped) {
            svg.append("</g>\n");
        }
        clipped = box != null;
        if (box != null) {
            clips++;
            svg.append("<clipPath id=\"panel" + clips + "\"><rect x=\"" + point(box.left()) + "\" y=\""
                    + point(box.top()) + "\" width=\"" + point(box.width()) + "\" height=\"" + point(box.height())
                    + "\"/></clipPath>\n<g clip-path=\"url(#panel" + clips + ")\">\n");
        }
    }

    private void points(double[] x, double[] y) {
        for (int i = 0; i < x.length; i++) {
            svg.append(i == 0 ? "" : " ").append(point(x[i])).append(',').append(point(y[i]));
        }
    }

    private static String colour(Hue hue) {
        String digits = Integer.toHexString(hue.rgb());
        return "#" + "0".repeat(6 - digits.length()) + digits;
    }

    private static String point(double value) {
        return Numbers.shortest(value, 2);
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c < ' ' ? '?' : c);
            }
        }
        return out.toString();
    }
}
