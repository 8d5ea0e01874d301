package org.sawfly.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;
import org.knowm.xchart.ChartEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.internal.chartpart.IChart;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Paints a figure as PNG. XChart draws the data of each panel and encodes the picture; the ground under the data and the
 * words over them are the same as in SVG, since XChart has neither hatching nor labels at the lines nor panels over one
 * axis.
 */
final class PngPainter implements IChart {
    private static final double PIXELS = 1.6;

    private final Figure figure;

    private PngPainter(Figure figure) {
        this.figure = figure;
    }

    /** Writes the picture. */
    static void paint(Figure figure, OutputStream out) throws IOException {
        ImageIO.setUseCache(false);
        ChartEncoder.saveChart(new PngPainter(figure), out, "png");
    }

    @Override
    public int getWidth() {
        return (int) Math.round(PIXELS * Figure.WIDTH);
    }

    @Override
    public int getHeight() {
        return (int) Math.round(PIXELS * Figure.HEIGHT);
    }

    @Override
    public String getTitle() {
        return figure.title();
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(PIXELS, PIXELS);
        Sheet sheet = new Sheet(figure);
        GraphicsPen pen = new GraphicsPen(graphics);
        new Ground(figure, sheet, pen).draw();
        for (int i = 0; i < figure.panels().size(); i++) {
            data(figure.panels().get(i), sheet.scale(i), graphics);
        }
        new Overlay(figure, sheet, pen).draw();
    }

    /**
     * XChart's plot fills the panel's box; the data come in points of the box, so that the two agree. Only a "smooth" line
     * is drawn in one go, which dashes need; it bends between its points, so they are set close.
     */
    private static void data(Panel panel, Scale scale, Graphics2D graphics) {
        Box box = scale.box();
        XYChart chart = bare(box);
        for (Series series : panel.series()) {
            if (series instanceof Series.Ribbon ribbon) {
                for (double[][] shape : Shapes.ribbon(ribbon, scale)) {
                    XYSeries area = add(chart, shape, box, XYSeriesRenderStyle.PolygonArea);
                    int opacity = (int) Math.round(255 * Shapes.opacity(ribbon));
                    area.setFillColor(new Color(ribbon.hue().rgb() | opacity << 24, true));
                    area.setLineColor(new Color(0, true));
                }
            }
        }
        for (Series series : panel.series()) {
            if (series instanceof Series.Line line) {
                for (double[][] run : Shapes.line(line, scale)) {
                    XYSeries drawn = add(chart, Shapes.dense(run), box, XYSeriesRenderStyle.Line);
                    drawn.setSmooth(true);
                    drawn.setLineColor(new Color(line.hue().rgb()));
                    drawn.setLineStyle(GraphicsPen.stroke(
                            line.stroke().width(), line.stroke().dash()));
                }
            }
        }
        if (chart.getSeriesCollection().isEmpty()) {
            return;
        }
        AffineTransform before = graphics.getTransform();
        graphics.translate(box.left(), box.top());
        graphics.clip(new Rectangle2D.Double(-1, -1, box.width() + 2, box.height() + 2));
        chart.paint(graphics, (int) Math.round(box.width()), (int) Math.round(box.height()));
        graphics.setTransform(before);
        graphics.setClip(null);
    }

    private static XYSeries add(XYChart chart, double[][] points, Box box, XYSeriesRenderStyle style) {
        double[] x = new double[points[0].length];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = points[0][i] - box.left();
            y[i] = box.bottom() - points[1][i];
        }
        XYSeries series =
                chart.addSeries("series " + chart.getSeriesCollection().size(), x, y);
        series.setXYSeriesRenderStyle(style);
        series.setMarker(SeriesMarkers.NONE);
        return series;
    }

    private static XYChart bare(Box box) {
        XYChart chart = new XYChart((int) Math.round(box.width()), (int) Math.round(box.height()));
        Color clear = new Color(0, true);
        XYStyler styler = chart.getStyler();
        styler.setChartBackgroundColor(clear);
        styler.setPlotBackgroundColor(clear);
        styler.setPlotBorderVisible(false);
        styler.setLegendVisible(false);
        styler.setChartTitleVisible(false);
        styler.setChartPadding(0);
        styler.setPlotMargin(0);
        styler.setPlotContentSize(1);
        styler.setAxisTicksVisible(false);
        styler.setAxisTitlesVisible(false);
        styler.setPlotGridLinesVisible(false);
        styler.setXAxisMin(0.0);
        styler.setXAxisMax(box.width());
        styler.setYAxisMin(0.0);
        styler.setYAxisMax(box.height());
        return chart;
    }

    /** Draws the ground and the words with the machine's own sans-serif letters. */
    private static final class GraphicsPen implements Pen {
        private static final BasicStroke RIM = new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

        private final Graphics2D graphics;

        GraphicsPen(Graphics2D graphics) {
            this.graphics = graphics;
        }

        static BasicStroke stroke(float width, float[] dash) {
            return dash.length == 0
                    ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                    : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
        }

        @Override
        public void path(double[] x, double[] y, Hue hue, float width, float[] dash) {
            graphics.setColor(new Color(hue.rgb()));
            graphics.setStroke(stroke(width, dash));
            graphics.draw(shape(x, y));
        }

        @Override
        public void fill(double[] x, double[] y, Hue hue, double opacity) {
            graphics.setColor(new Color(hue.rgb() | (int) Math.round(255 * opacity) << 24, true));
            Path2D shape = shape(x, y);
            shape.closePath();
            graphics.fill(shape);
        }

        @Override
        public void dot(double x, double y, double radius, Hue hue) {
            graphics.setColor(new Color(hue.rgb()));
            graphics.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
        }

        @Override
        public void text(double x, double y, String text, Script script) {
            if (text.isEmpty()) {
                return;
            }
            int style = script.bold() ? Font.BOLD : Font.PLAIN;
            Font font = new Font(Font.SANS_SERIF, style, 1).deriveFont((float) script.size());
            TextLayout layout = new TextLayout(text, font, graphics.getFontRenderContext());
            double share =
                    switch (script.anchor()) {
                        case START -> 0;
                        case MIDDLE -> 0.5;
                        case END -> 1;
                    };
            double left = x - share * layout.getAdvance();
            if (script.rim()) {
                graphics.setColor(Color.WHITE);
                graphics.setStroke(RIM);
                graphics.draw(layout.getOutline(AffineTransform.getTranslateInstance(left, y)));
            }
            graphics.setColor(new Color(script.hue().rgb()));
            layout.draw(graphics, (float) left, (float) y);
        }

        @Override
        public void clip(Box box) {
            graphics.setClip(
                    box == null ? null : new Rectangle2D.Double(box.left(), box.top(), box.width(), box.height()));
        }

        private static Path2D shape(double[] x, double[] y) {
            Path2D path = new Path2D.Double();
            path.moveTo(x[0], y[0]);
            for (int i = 1; i < x.length; i++) {
                path.lineTo(x[i], y[i]);
            }
            return path;
        }
    }
}
