package org.sawfly.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FiguresTest {
    private static final VaryFigure.Words WORDS = new VaryFigure.Words("title", "caption", "foot", "mm off");
    private static final VaryFigure.Titles TITLES =
            new VaryFigure.Titles(DemoFigures.HEIGHT, DemoFigures.SWING, DemoFigures.MARGIN, DemoFigures.SINK, false);

    private static Figure vary(double today, VaryFigure.Row... rows) {
        return VaryFigure.of(
                WORDS,
                TITLES,
                List.of(new VaryFigure.Family("", List.of(rows))),
                new VaryFigure.Marks(today, 2, 25, 3, List.of(new Mark.Upright(50, "fin, 50 mm"))));
    }

    private static VaryFigure.Row row(double x, double height) {
        return new VaryFigure.Row(x, height, null, 15, 2.5, 0.27);
    }

    private static double[] flagged(Panel panel) {
        return panel.marks().stream()
                .filter(Mark.Flag.class::isInstance)
                .mapToDouble(mark -> ((Mark.Flag) mark).y())
                .toArray();
    }

    @Test
    void theHeightAxisIsNotZoomed() {
        Axis narrow = vary(0, row(0, 41.2), row(80, 40.9)).panels().get(0).y();
        assertThat(narrow.high() - narrow.low()).isEqualTo(8);
        Axis wide = vary(0, row(0, 41.2), row(80, 25)).panels().get(0).y();
        assertThat(wide.low()).isLessThanOrEqualTo(25);
        assertThat(wide.high()).isGreaterThanOrEqualTo(41.2);
        Axis low = vary(0, row(0, 1.2), row(80, 1)).panels().get(0).y();
        assertThat(low.low()).isZero();
    }

    @Test
    void aPathToScaleHasTheOthersBesideIt() {
        double[] line = {0, 40};
        Axis along = Axis.fixed("along, m", 0, 50);
        Axis up = Axis.fixed("height, m", 0, 45);
        Axis time = Axis.fixed("seconds", 0, 8);
        List<Series> series = List.of(new Series.Line(line, line, Hue.HEIGHT, Stroke.SOLID, ""));
        Figure figure = new Figure(
                "title",
                "caption",
                "foot",
                List.of(
                        new Panel(along, up, series, List.of(), 3, true),
                        new Panel(time, up, series, List.of(), 1),
                        new Panel(time, up, series, List.of(), 1)));
        Sheet sheet = new Sheet(figure);
        Box path = sheet.scale(0).box();
        assertThat(path.width() / 50).isCloseTo(path.height() / 45, within(1e-9));
        assertThat(path.width()).as("no part of the sheet stays empty").isGreaterThan(0.4 * Figure.WIDTH);
        for (int i = 1; i < 3; i++) {
            Box beside = sheet.scale(i).box();
            assertThat(beside.left()).isGreaterThan(path.right() + Sheet.EDGE);
            assertThat(beside.right()).isLessThan(Figure.WIDTH);
            assertThat(beside.bottom()).isLessThan(Figure.HEIGHT);
        }
        assertThat(sheet.scale(2).box().top())
                .isGreaterThan(sheet.scale(1).box().bottom());
    }

    @Test
    void todayIsReadBetweenTheRows() {
        Figure figure = vary(20, row(0, 41), row(40, 43));
        assertThat(flagged(figure.panels().get(0))).containsExactly(42);
        assertThat(figure.panels())
                .allSatisfy(panel -> assertThat(panel.marks())
                        .anyMatch(mark -> mark instanceof Mark.Upright upright && upright.x() == 20));
        assertThat(flagged(vary(99, row(0, 41), row(40, 43)).panels().get(0))).containsExactly(Double.NaN);
    }

    @Test
    void limitsAreHatched() {
        List<Panel> panels = vary(0, row(0, 41), row(40, 43)).panels();
        assertThat(panels.get(1).marks()).anyMatch(mark -> mark instanceof Mark.Hatched h && h.low() == 25);
        assertThat(panels.get(2).marks()).anyMatch(mark -> mark instanceof Mark.Hatched h && h.high() == 3);
    }

    @Test
    void linesThatLieOnEachOtherAreOne() {
        Figure figure = DemoFigures.cutAndFin();
        assertThat(figure.panels().get(1).series()).hasSize(3);
        assertThat(figure.panels().get(3).series()).hasSize(1);
    }

    @Test
    void ofManyLinesSomeAreNamed() {
        List<VaryFigure.Family> families = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            double shift = i * 0.2;
            families.add(new VaryFigure.Family("line " + i, List.of(row(0, 41 - shift), row(10, 41 - shift))));
        }
        VaryFigure.Marks marks = new VaryFigure.Marks(0, 2, 25, 3, List.of());
        List<Series> lines =
                VaryFigure.of(WORDS, TITLES, families, marks).panels().get(0).series();
        List<String> names = lines.stream()
                .filter(Series.Line.class::isInstance)
                .map(line -> ((Series.Line) line).label())
                .toList();
        assertThat(names).hasSize(30);
        assertThat(names.stream().filter(name -> !name.isEmpty()).toList())
                .hasSizeBetween(8, 12)
                .startsWith("line 0")
                .endsWith("line 29");
    }

    @Test
    void sweepsWithoutAnswersCanBePainted() {
        double none = Double.NaN;
        VaryFigure.Row nothing = new VaryFigure.Row(10, none, null, none, none, none);
        for (Figure figure :
                List.of(vary(none, nothing), vary(0, row(0, 41)), vary(0, row(0, 41), nothing), vary(10, nothing))) {
            for (Charts.Kind kind : Charts.Kind.values()) {
                assertThatCode(() -> Charts.write(figure, kind, OutputStream.nullOutputStream()))
                        .doesNotThrowAnyException();
            }
        }
    }

    @Test
    void theFirstSwingIsPastTheFlightPath() {
        double[] time = {0, 0.1, 0.2, 0.3, 0.6};
        SwingFigure.Throw one = new SwingFigure.Throw("today", time, new double[] {-9, 2, 8, 3, 40}, Stroke.SOLID);
        Figure figure = SwingFigure.of("t", "c", "f", DemoFigures.SWING, List.of(one), List.of());
        assertThat(figure.panels().get(0).marks())
                .containsExactly(new Mark.Flag(0.2, 8, "today: 8 deg left", Hue.SWING));
        SwingFigure.Throw other = new SwingFigure.Throw("today", time, new double[] {9, -2, -8, -3, 1}, Stroke.SOLID);
        Figure mirrored = SwingFigure.of("t", "c", "f", DemoFigures.SWING, List.of(other), List.of());
        assertThat(mirrored.panels().get(0).marks())
                .containsExactly(new Mark.Flag(0.2, -8, "today: 8 deg right", Hue.SWING));
    }

    @Test
    void theEnvelopeChangesWhereCurvesCross() {
        double[][] flat = {{4, 12}, {0.5, 0.5}};
        double[][] steep = {{4, 12}, {0.3, 1.1}};
        Envelope envelope = new Envelope(List.of(steep, flat), 3, 12);
        List<Envelope.Range> ranges = envelope.ranges();
        assertThat(ranges).extracting(Envelope.Range::curve).containsExactly(0, 1);
        assertThat(ranges.get(0).from()).isCloseTo(4, within(0.01));
        assertThat(ranges.get(1).from()).isCloseTo(6, within(0.01));
        assertThat(envelope.sink(3.5)).isNaN();
    }

    @Test
    void aRayTouchesAParabolaWhereItMust() {
        // sink = a + b v^2: the ray from (w, 0) touches at v = w + sqrt(w^2 + a/b)
        int n = 900;
        double[][] curve = new double[2][n];
        for (int i = 0; i < n; i++) {
            double speed = 3 + 9.0 * i / (n - 1);
            curve[0][i] = speed;
            curve[1][i] = 0.16 + 0.004 * speed * speed;
        }
        for (double wind : new double[] {0, 3}) {
            Envelope.Touch touch = new Envelope(List.<double[][]>of(curve), 3, 12).touch(wind);
            assertThat(touch.speed()).isCloseTo(wind + Math.sqrt(wind * wind + 0.16 / 0.004), within(0.02));
        }
        assertThat(new Envelope(List.<double[][]>of(curve), 3, 12).touch(20).speed())
                .isNaN();
    }
}
