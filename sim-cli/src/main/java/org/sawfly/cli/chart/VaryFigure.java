package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/**
 * "How far?": launch height, first swing, margin and least sink, or lean of the climb, over a varied quantity, panels over one axis. The height
 * axis is never narrower than 8 m, so that 0.3 m looks like 0.3 m, and carries the thrower's own scatter as a band.
 */
public final class VaryFigure {
    private static final double HEIGHT_RANGE = 8;
    private static final double SWING_RANGE = 20;
    private static final double MARGIN_RANGE = 6;
    private static final double SINK_RANGE = 0.2;
    private static final double LEAN_RANGE = 20;
    private static final double ALIKE = 0.01;
    private static final int MOST_NAMES = 12;
    private static final int RULER_TICKS = 24;

    private VaryFigure() {}

    /**
     * One row of a sweep, in the units of the quantities; NaN for none.
     *
     * @param x the varied quantity
     * @param height launch height
     * @param likely likely range of the height against today's; null for none
     * @param swing first swing of the nose
     * @param margin margin at launch speed
     * @param last least sink, or lean of the climb to the right
     */
    public record Row(double x, double height, Band likely, double swing, double margin, double last) {}

    /**
     * The rows of one value of a second varied quantity.
     *
     * @param name words at its lines: "fin 25 % smaller"; empty when there is only one
     * @param rows in the order of the varied quantity
     */
    public record Family(String name, List<Row> rows) {}

    /**
     * The quantities behind the four panels, which give their titles.
     *
     * @param height launch height
     * @param swing first swing
     * @param margin margin at launch speed
     * @param last least sink, or lean of the climb
     * @param leans whether it is the lean
     */
    public record Titles(Quantity<?> height, Quantity<?> swing, Quantity<?> margin, Quantity<?> last, boolean leans) {}

    /**
     * What is marked.
     *
     * @param today value of the varied quantity as it is today; NaN for none
     * @param scatter standard deviation of the thrower's heights
     * @param swingLimit the swing from which on it gives out; NaN for none
     * @param marginLimit the margin below which it gives out; NaN for none
     * @param uprights further places, such as what gives out first: "fin, 97 mm"
     */
    public record Marks(
            double today, double scatter, double swingLimit, double marginLimit, List<Mark.Upright> uprights) {}

    /** The words of the sheet: title, caption, foot and the title of the horizontal axis. */
    public record Words(String title, String caption, String foot, String varied) {}

    /** Makes the figure. */
    public static Figure of(Words words, Titles titles, List<Family> families, Marks marks) {
        List<Row> rows = families.stream().flatMap(f -> f.rows().stream()).toList();
        Axis x = across(words.varied(), rows, marks);
        List<Panel> panels = new ArrayList<>();
        panels.add(height(x, titles, families, marks));
        List<Mark> swing = uprights(marks, false);
        if (!Double.isNaN(marks.swingLimit())) {
            swing.add(Mark.Hatched.above(marks.swingLimit(), "swings too far"));
        }
        swing.add(flag(titles.swing(), families, marks, Row::swing, Hue.SWING));
        Axis swingAxis = fromNought(titles.swing(), SWING_RANGE, values(rows, Row::swing));
        panels.add(panel(x, swingAxis, families, Row::swing, Hue.SWING, swing));
        List<Mark> margin = uprights(marks, false);
        if (!Double.isNaN(marks.marginLimit())) {
            margin.add(Mark.Hatched.below(marks.marginLimit(), "too little margin: it may tuck"));
        }
        margin.add(flag(titles.margin(), families, marks, Row::margin, Hue.MARGIN));
        Axis marginAxis = fromNought(titles.margin(), MARGIN_RANGE, values(rows, Row::margin));
        panels.add(panel(x, marginAxis, families, Row::margin, Hue.MARGIN, margin));
        Hue hue = titles.leans() ? Hue.ELEVATOR : Hue.SINK;
        List<Mark> last = uprights(marks, false);
        double today = at(families, marks.today(), Row::last);
        String side = !titles.leans() ? "" : today < 0 ? " left" : " right";
        String number = Numbers.fixed(
                titles.leans() ? Math.abs(today) : today, titles.last().decimals());
        last.add(new Mark.Flag(marks.today(), today, number + side, hue));
        panels.add(panel(x, lastAxis(titles, values(rows, Row::last)), families, Row::last, hue, last));
        return new Figure(words.title(), words.caption(), words.foot(), panels);
    }

    private static Axis across(String title, List<Row> rows, Marks marks) {
        Axis around = Axis.around(title, 0, values(rows, Row::x));
        double low = rows.stream().mapToDouble(Row::x).min().orElse(around.low());
        double high = rows.stream().mapToDouble(Row::x).max().orElse(around.high());
        if (!(high > low)) {
            return around;
        }
        for (Mark.Upright upright : marks.uprights()) {
            // a place just beyond the range is worth a little room, a far one is not
            if (upright.x() > high && upright.x() < high + 0.3 * (high - low)) {
                high = upright.x() + 0.03 * (high - low);
            }
        }
        return new Axis(title, low, high, Axis.niceStep(high - low, RULER_TICKS), false, "", "", null);
    }

    private static Panel height(Axis x, Titles titles, List<Family> families, Marks marks) {
        List<Row> rows = families.stream().flatMap(f -> f.rows().stream()).toList();
        List<Series> series = new ArrayList<>();
        double today = at(families, marks.today(), Row::height);
        double[] heights = values(rows, Row::height);
        if (marks.scatter() > 0 && Double.isFinite(today)) {
            double[] ends = {x.low(), x.high()};
            double low = today - marks.scatter();
            double high = today + marks.scatter();
            series.add(new Series.Ribbon(
                    ends,
                    new double[] {low, low},
                    new double[] {high, high},
                    Hue.SCATTER,
                    "grey: where two of three of your own throws end, changed or not"));
        }
        for (Family family : families) {
            if (family.rows().stream().anyMatch(row -> row.likely() != null)) {
                series.addAll(likely(family.rows()));
            }
        }
        Axis y = heightAxis(titles.height(), heights);
        List<Mark> pointed = uprights(marks, true);
        pointed.add(flag(titles.height(), families, marks, Row::height, Hue.HEIGHT));
        Panel lines = panel(x, y, families, Row::height, Hue.HEIGHT, pointed);
        series.addAll(lines.series());
        return new Panel(x, lines.y(), series, lines.marks(), 2.3);
    }

    /** Where the heights lie 9 times in 10 if today's is as said: a pale band with dashed edges that carry its words. */
    private static List<Series> likely(List<Row> rows) {
        double[] x = values(rows, Row::x);
        double[] low = values(
                rows, row -> row.likely() == null ? row.height() : row.likely().low());
        double[] high = values(
                rows, row -> row.likely() == null ? row.height() : row.likely().high());
        return List.of(
                new Series.Ribbon(x, low, high, Hue.HEIGHT, ""),
                new Series.Line(x, low, Hue.HEIGHT, Stroke.THIN_DASHED, ""),
                new Series.Line(x, high, Hue.HEIGHT, Stroke.THIN_DASHED, "dashes: 9 times in 10"));
    }

    /** 8 m around the middle; more only when the heights themselves spread further. */
    private static Axis heightAxis(Quantity<?> height, double[] heights) {
        Axis wide = Axis.around(height.title(), HEIGHT_RANGE, heights);
        double low = Arrays.stream(heights).filter(Double::isFinite).min().orElse(HEIGHT_RANGE / 2);
        double high = Arrays.stream(heights).filter(Double::isFinite).max().orElse(HEIGHT_RANGE / 2);
        if (high - low > HEIGHT_RANGE - 2) {
            return wide;
        }
        double middle = Math.max(HEIGHT_RANGE / 2, Math.rint((low + high) / 2));
        return Axis.fixed(height.title(), middle - HEIGHT_RANGE / 2, middle + HEIGHT_RANGE / 2);
    }

    private static Panel panel(
            Axis x, Axis y, List<Family> families, ToDoubleFunction<Row> value, Hue hue, List<Mark> marks) {
        List<Series> series = new ArrayList<>();
        int most = hue == Hue.HEIGHT ? MOST_NAMES : MOST_NAMES / 3;
        boolean alike = families.size() > 1 && alike(families, value, (y.high() - y.low()) * ALIKE);
        for (int i = 0; i < (alike ? 1 : families.size()); i++) {
            List<Row> rows = families.get(i).rows();
            String name = alike
                    ? "all alike"
                    : room(i, families.size(), most) ? families.get(i).name() : "";
            series.add(new Series.Line(values(rows, Row::x), values(rows, value), hue, Stroke.ofLine(i), name));
        }
        return new Panel(x, y, series, marks, 1);
    }

    /** Of many lines only so many have room for their names: the first, the last and some evenly between. */
    private static boolean room(int index, int count, int most) {
        int every = (count + most - 2) / (most - 1);
        return index == count - 1 || index % every == 0 && index + every / 2 < count - 1 || count == 1;
    }

    /** Whether the lines lie on each other, so that one of them says it all. */
    private static boolean alike(List<Family> families, ToDoubleFunction<Row> value, double within) {
        List<Row> first = families.get(0).rows();
        for (Family family : families) {
            for (int i = 0; i < family.rows().size(); i++) {
                Row row = family.rows().get(i);
                if (i >= first.size()
                        || !(Math.abs(value.applyAsDouble(row) - value.applyAsDouble(first.get(i))) < within)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The number of today at its line. */
    private static Mark flag(
            Quantity<?> quantity, List<Family> families, Marks marks, ToDoubleFunction<Row> value, Hue hue) {
        double number = at(families, marks.today(), value);
        return new Mark.Flag(marks.today(), number, Numbers.fixed(number, quantity.decimals()), hue);
    }

    private static List<Mark> uprights(Marks marks, boolean labelled) {
        Stream<Mark.Upright> today =
                Double.isNaN(marks.today()) ? Stream.of() : Stream.of(new Mark.Upright(marks.today(), "today"));
        List<Mark> all = new ArrayList<>();
        Stream.concat(today, marks.uprights().stream())
                .map(upright -> labelled ? upright : new Mark.Upright(upright.x(), ""))
                .forEach(all::add);
        return all;
    }

    private static Axis lastAxis(Titles titles, double[] values) {
        if (!titles.leans()) {
            return Axis.low(titles.last(), SINK_RANGE, values).down().words("", "sinks faster");
        }
        double[] all = Arrays.copyOf(values, values.length + 1);
        return Axis.around("lean of the climb, deg", LEAN_RANGE, all).words("left", "right");
    }

    private static Axis fromNought(Quantity<?> quantity, double leastHigh, double[] values) {
        double high = leastHigh;
        double low = 0;
        for (double value : values) {
            high = Double.isFinite(value) ? Math.max(high, value) : high;
            low = Double.isFinite(value) ? Math.min(low, value) : low;
        }
        return Axis.low(quantity, 0, low, high);
    }

    /** The value at a place of the first family, between its rows by a straight line; NaN outside them. */
    private static double at(List<Family> families, double x, ToDoubleFunction<Row> value) {
        List<Row> rows = families.get(0).rows();
        for (int i = 0; i < rows.size(); i++) {
            double right = rows.get(i).x();
            if (right == x) {
                return value.applyAsDouble(rows.get(i));
            }
            double left = i == 0 ? right : rows.get(i - 1).x();
            if ((x - left) * (x - right) < 0) {
                double share = (x - left) / (right - left);
                return (1 - share) * value.applyAsDouble(rows.get(i - 1)) + share * value.applyAsDouble(rows.get(i));
            }
        }
        return Double.NaN;
    }

    private static double[] values(List<Row> rows, ToDoubleFunction<Row> value) {
        return rows.stream().mapToDouble(value).toArray();
    }
}
