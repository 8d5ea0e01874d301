package org.sawfly.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

class PaintersTest {
    static List<Arguments> figures() {
        return List.of(
                Arguments.of("cut", DemoFigures.cut()),
                Arguments.of("cut and fin", DemoFigures.cutAndFin()),
                Arguments.of("balance", DemoFigures.balance()),
                Arguments.of("swing", DemoFigures.swing()),
                Arguments.of("glide", DemoFigures.glide()),
                Arguments.of("flight", DemoFigures.flight()));
    }

    private static byte[] bytes(Figure figure, Charts.Kind kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Charts.write(figure, kind, out);
        return out.toByteArray();
    }

    private static String texts(byte[] svg) throws Exception {
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        NodeList nodes = document.getElementsByTagName("text");
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.append(nodes.item(i).getTextContent()).append(' ');
        }
        return all.toString();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void svgSaysEverythingInRealText(String unused, Figure figure) throws Exception {
        byte[] svg = bytes(figure, Charts.Kind.SVG);
        String texts = texts(svg);
        assertThat(texts).contains(figure.title()).contains(figure.caption()).contains(figure.foot());
        for (Panel panel : figure.panels()) {
            assertThat(texts).contains(panel.y().title()).contains(panel.x().title());
        }
        assertThat(svg.length).isLessThan(200_000);
        assertThat(bytes(figure, Charts.Kind.SVG)).as("painted again").isEqualTo(svg);
        assertThat(new String(svg, StandardCharsets.UTF_8)).isASCII().doesNotContain("NaN");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void pngShowsEveryLineInItsColour(String unused, Figure figure) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes(figure, Charts.Kind.PNG)));
        assertThat(image.getWidth()).isGreaterThan(1500);
        double pixels = (double) image.getWidth() / Figure.WIDTH;
        Sheet sheet = new Sheet(figure);
        for (int i = 0; i < figure.panels().size(); i++) {
            Scale scale = sheet.scale(i);
            for (Series series : figure.panels().get(i).series()) {
                if (series instanceof Series.Line line && line.stroke().width() > 2) {
                    assertThat(coloured(image, pixels, line, scale))
                            .as(
                                    "points of %s %s seen",
                                    figure.panels().get(i).y().title(), line.label())
                            .isGreaterThan(0.5 * drawnShare(line.stroke()));
                }
            }
        }
    }

    /** How much of a line its dashes draw. */
    private static double drawnShare(Stroke stroke) {
        double drawn = 0;
        double all = 0;
        float[] dash = stroke.dash();
        for (int i = 0; i < dash.length; i++) {
            drawn += i % 2 == 0 ? dash[i] : 0;
            all += dash[i];
        }
        return all == 0 ? 1 : drawn / all;
    }

    /** Share of the points of a line at which the picture is near its colour; dashes and crossings hide some. */
    private static double coloured(BufferedImage image, double pixels, Series.Line line, Scale scale) {
        int inside = 0;
        int seen = 0;
        for (double[][] run : Shapes.line(line, scale)) {
            double[][] dense = Shapes.dense(run);
            for (int i = 0; i < dense[0].length; i++) {
                int x = (int) Math.floor(pixels * dense[0][i]);
                int y = (int) Math.floor(pixels * dense[1][i]);
                Box box = scale.box();
                if (dense[0][i] < box.left() || dense[0][i] > box.right() - 1) {
                    continue;
                }
                if (dense[1][i] < box.top() + 1 || dense[1][i] > box.bottom() - 1) {
                    continue;
                }
                inside++;
                seen += near(image.getRGB(x, y), line.hue().rgb()) ? 1 : 0;
            }
        }
        return inside == 0 ? 1 : (double) seen / inside;
    }

    private static boolean near(int one, int other) {
        int apart = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            apart += Math.abs((one >> shift & 255) - (other >> shift & 255));
        }
        return apart < 60;
    }

    @Test
    void linesAreThinnedButKeepTheirPeaks() {
        int n = 200_000;
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = i;
            y[i] = Math.sin(i * 1e-4);
        }
        y[123_456] = 7;
        List<double[][]> runs = Runs.of(x, y);
        assertThat(runs).hasSize(1);
        assertThat(runs.get(0)[0].length).isLessThanOrEqualTo(Runs.MOST);
        assertThat(runs.get(0)[0]).isSorted().startsWith(0).endsWith(n - 1);
        assertThat(runs.get(0)[1]).contains(7);
    }

    @Test
    void noneBreaksALine() {
        double[] x = {0, 1, 2, 3, 4};
        List<double[][]> runs = Runs.of(x, new double[] {Double.NaN, 1, 2, Double.NaN, 3});
        assertThat(runs).hasSize(2);
        assertThat(runs.get(0)[0]).containsExactly(1, 2);
        assertThat(runs.get(1)[1]).containsExactly(3);
    }

    @Test
    void namesOfUsersCannotBreakThePicture() throws Exception {
        Figure tricky = new Figure(
                "<b> & \"quotes\" " + "endlesslylongname".repeat(20),
                "caf\u00e9",
                "",
                DemoFigures.cut().panels());
        assertThat(texts(bytes(tricky, Charts.Kind.SVG)))
                .contains("<b> & \"quotes\"")
                .contains("caf\u00e9");
        assertThat(bytes(tricky, Charts.Kind.PNG)).isNotEmpty();
    }

    @Test
    void wordsThatHadToGiveWayAreTiedToTheirDot() throws IOException {
        assertThat(linesWith(new Mark.Flag(5, 5, "elevator string", Hue.INK))).isZero();
        assertThat(linesWith(
                        new Mark.Flag(5, 5, "elevator string", Hue.INK),
                        new Mark.Flag(5.05, 5, "rudder string", Hue.INK),
                        new Mark.Flag(5.1, 5, "tailplane joint", Hue.INK)))
                .isPositive();
    }

    @Test
    void aDotWithoutWordsIsTiedToNothing() throws IOException {
        assertThat(linesWith(new Mark.Flag(5, 5, "elevator string", Hue.INK), new Mark.Flag(5.02, 5, "", Hue.INK)))
                .isZero();
    }

    @Test
    void wordsKeepOffTheLines() throws IOException {
        Axis axis = Axis.fixed("m", 0, 10);
        Series line = new Series.Line(
                new double[] {0, 10}, new double[] {2, 10}, Hue.HEIGHT, Stroke.SOLID, "a line of its own");
        Series leaving = new Series.Line(
                new double[] {0, 9.5, 9.8}, new double[] {9, 0.1, -3}, Hue.SINK, Stroke.SOLID, "leaves below");
        Panel panel = new Panel(axis, axis, List.of(line, leaving), List.of(new Mark.Flag(0, 2, "begins", Hue.INK)), 1);
        Figure figure = new Figure("title", "", "", List.of(panel));
        String svg = new String(bytes(figure, Charts.Kind.SVG), StandardCharsets.UTF_8);
        Scale scale = new Sheet(figure).scale(0);
        assertThat(at(svg, "y", "begins")).as("below its line").isGreaterThan(scale.down(2) + 4);
        assertThat(at(svg, "x", "leaves below"))
                .as("in the margin")
                .isGreaterThan(scale.box().right());
    }

    /** Where words stand. */
    private static double at(String svg, String axis, String words) {
        Matcher text = Pattern.compile("<text[^>]* " + axis + "=\"([0-9.]+)\"[^>]*>" + words)
                .matcher(svg);
        assertThat(text.find()).as(svg).isTrue();
        return Double.parseDouble(text.group(1));
    }

    /** How many lines more than without them a panel with these flags has. */
    private static int linesWith(Mark... flags) throws IOException {
        return lines(List.of(flags)) - lines(List.of());
    }

    private static int lines(List<Mark> flags) throws IOException {
        Axis axis = Axis.fixed("mm", 0, 10);
        Figure figure = new Figure("title", "", "", List.of(new Panel(axis, axis, List.of(), flags, 1)));
        return new String(bytes(figure, Charts.Kind.SVG), StandardCharsets.UTF_8).split("<polyline", -1).length;
    }

    @Test
    void theMachinesLanguageDoesNotMatter() throws IOException {
        byte[] before = bytes(DemoFigures.glide(), Charts.Kind.SVG);
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(bytes(DemoFigures.glide(), Charts.Kind.SVG)).isEqualTo(before);
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void theNameSaysTheKind() {
        assertThat(Charts.kindOf("a.PNG")).isEqualTo(Charts.Kind.PNG);
        assertThat(Charts.kindOf("a.b.svg")).isEqualTo(Charts.Kind.SVG);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Charts.kindOf("a.pdf"))
                .withMessageContaining(".svg");
    }
}
