package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.sawfly.cli.chart.Pen.Anchor;
import org.sawfly.cli.chart.Pen.Script;

/** What lies over the data: marks and the words at the lines. Words give way to each other. */
final class Overlay {
    private static final Script WORDS = new Script(Sheet.TEXT_SIZE, false, Hue.INK, Anchor.START, true);
    private static final Script FLAG = new Script(Sheet.TICK_SIZE, false, Hue.INK, Anchor.START, true);
    private static final double LINE = Sheet.TEXT_SIZE * 1.2;
    private static final double SPAN_HEIGHT = 18;
    private static final double[] SHIFTS = {0, -0.4, -0.8, -1.2, 1.3, 1.7, -1.6, -2, 2.1, -2.5, 2.5, -3, 3};

    private final Figure figure;
    private final Sheet sheet;
    private final Pen pen;
    private static final double OTHER_SIDE = 0.5;
    private static final double CROSSED = 1.4;
    private static final double TAKEN = 10;
    /** A line that leaves the panel above or below so near to its right end has its words in the margin too. */
    private static final double NEAR_EDGE = 0.12;
    /** Words further from their dot than this are tied to it by a line. */
    private static final double FAR = 9;

    private Box panel;
    private final List<Box> taken = new ArrayList<>();
    private final List<double[][]> lines = new ArrayList<>();

    Overlay(Figure figure, Sheet sheet, Pen pen) {
        this.figure = figure;
        this.sheet = sheet;
        this.pen = pen;
    }

    void draw() {
        for (int i = 0; i < figure.panels().size(); i++) {
            Panel shown = figure.panels().get(i);
            Scale scale = sheet.scale(i);
            panel = scale.box();
            taken.clear();
            lines.clear();
            for (Series series : shown.series()) {
                if (series instanceof Series.Line line) {
                    Shapes.line(line, scale).forEach(run -> lines.add(Shapes.dense(run)));
                }
            }
            spans(shown, scale);
            uprights(shown, scale);
            for (Mark mark : shown.marks()) {
                if (mark instanceof Mark.Flag flag) {
                    dot(flag, scale);
                }
            }
            for (Mark mark : shown.marks()) {
                if (mark instanceof Mark.Hatched hatched) {
                    hatchWords(hatched, scale);
                }
            }
            for (Mark mark : shown.marks()) {
                if (mark instanceof Mark.Flag flag) {
                    flag(flag, scale);
                }
            }
            lineWords(shown, scale);
            ribbonWords(shown, scale);
        }
    }

    private void uprights(Panel panel, Scale scale) {
        double free = Double.NEGATIVE_INFINITY;
        List<Mark.Upright> inOrder = new ArrayList<>();
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Upright upright && scale.x().holds(upright.x())) {
                inOrder.add(upright);
            }
        }
        inOrder.sort(Comparator.comparingDouble(Mark.Upright::x));
        for (Mark.Upright upright : inOrder) {
            double x = scale.across(upright.x());
            pen.line(x, scale.box().top(), x, scale.box().bottom(), Hue.INK, 1.3f, 7, 4);
            double[] ends = {scale.box().top(), scale.box().bottom()};
            lines.add(Shapes.dense(new double[][] {{x, x}, ends}));
            double width = Letters.width(upright.label(), Sheet.TEXT_SIZE);
            double left = Math.max(scale.box().left() - 4, Math.min(x - width / 2, Figure.WIDTH - Sheet.EDGE - width));
            double start = Math.max(left, free);
            if (!upright.label().isEmpty()) {
                pen.text(start, scale.box().top() - 6, upright.label(), WORDS);
                free = start + width + 14;
            }
        }
    }

    private void spans(Panel panel, Scale scale) {
        double bottom = scale.box().bottom() - 3;
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Span span) {
                double left = scale.acrossClamped(span.from()) + 2;
                double right = scale.acrossClamped(span.to()) - 2;
                double top = bottom - SPAN_HEIGHT;
                double[] y = {top, top, bottom, bottom};
                pen.fill(new double[] {left, right, right, left}, y, span.hue(), 0.18);
                pen.line(
                        left,
                        top,
                        right,
                        top,
                        span.hue(),
                        span.stroke().width(),
                        span.stroke().dash());
                taken.add(new Box(left, top - 2, right - left, SPAN_HEIGHT + 4));
                if (Letters.width(span.label(), Sheet.TICK_SIZE) > right - left) {
                    put(left, top - 7, span.label(), FLAG);
                } else {
                    pen.text((left + right) / 2, bottom - 4, span.label(), FLAG.at(Anchor.MIDDLE));
                }
            }
        }
    }

    private void hatchWords(Mark.Hatched region, Scale scale) {
        double one = scale.downClamped(region.low());
        double other = scale.downClamped(region.high());
        double left = scale.acrossClamped(region.left());
        double right = scale.acrossClamped(region.right());
        double top = Math.min(one, other);
        double bottom = Math.max(one, other);
        if (right - left < 1 || bottom - top < 1 || region.label().isEmpty()) {
            return;
        }
        double width = Letters.width(region.label(), Sheet.TICK_SIZE);
        boolean whole = bottom - top > scale.box().height() * 0.9;
        double y = whole ? top + LINE : (top + bottom) / 2 + Sheet.TICK_SIZE * 0.36;
        double[] tries = {right - width - 10, right - width * 1.4, (left + right - width) / 2, left + 70, left + 6};
        double x = left;
        for (int i = tries.length - 1; i >= 0; i--) {
            Box box = new Box(tries[i], y - Sheet.TICK_SIZE, width, Sheet.TICK_SIZE * 1.2);
            x = tries[i] >= left && taken.stream().noneMatch(box::meets) && !crossed(box) ? tries[i] : x;
        }
        put(x, y, region.label(), FLAG);
    }

    private void flag(Mark.Flag flag, Scale scale) {
        if (flag.label().isEmpty() || !scale.holds(flag.x(), flag.y())) {
            return;
        }
        double x = scale.across(flag.x());
        double left = x - 7 - Letters.width(flag.label(), FLAG.size());
        double y = scale.down(flag.y());
        Box words = put(new double[] {x + 7, left}, y - 6, flag.label(), FLAG, box -> tangled(tie(x, y, box)));
        double[][] tie = tie(x, y, words);
        if (tie.length > 0) {
            pen.line(tie[0][0], tie[1][0], tie[0][1], tie[1][1], Hue.QUIET, 1);
        }
    }

    /** The line from a dot to its words, across and down; empty where they stand together. */
    private static double[][] tie(double x, double y, Box words) {
        double nearX = Math.max(words.left(), Math.min(x, words.right()));
        double nearY = Math.max(words.top(), Math.min(y, words.bottom()));
        boolean far = Math.hypot(nearX - x, nearY - y) > FAR;
        return far ? new double[][] {{x, nearX}, {y, nearY}} : new double[0][];
    }

    /** Whether a tie runs through other words or dots. */
    private boolean tangled(double[][] tie) {
        if (tie.length == 0) {
            return false;
        }
        double[][] dense = Shapes.dense(tie);
        for (int i = 1; i < dense[0].length; i++) {
            double x = dense[0][i];
            double y = dense[1][i];
            boolean own = Math.hypot(x - tie[0][0], y - tie[1][0]) < FAR;
            if (!own && taken.stream().anyMatch(box -> box.meets(new Box(x, y, 1, 1)))) {
                return true;
            }
        }
        return false;
    }

    private void dot(Mark.Flag flag, Scale scale) {
        if (scale.holds(flag.x(), flag.y())) {
            double x = scale.across(flag.x());
            double y = scale.down(flag.y());
            pen.dot(x, y, 3.4, flag.hue());
            taken.add(new Box(x - 4, y - 4, 8, 8));
        }
    }

    /** Words of the lines: in the right margin for those that reach it, else beside their last point. */
    private void lineWords(Panel panel, Scale scale) {
        List<End> margin = new ArrayList<>();
        for (Series series : panel.series()) {
            if (series instanceof Series.Line line && !line.label().isEmpty()) {
                End end = End.of(line, scale);
                double near =
                        end != null && end.leaves ? NEAR_EDGE * scale.box().width() : 3;
                if (end != null && end.x > scale.box().right() - near) {
                    margin.add(end);
                } else if (end != null && end.leaves) {
                    double width = Letters.width(line.label(), Sheet.TEXT_SIZE);
                    put(end.x - width - 2 * LINE, end.y, line.label(), WORDS);
                } else if (end != null) {
                    put(end.x + 6, end.y + Sheet.TICK_SIZE * 0.36, line.label(), WORDS);
                }
            }
        }
        margin.sort(Comparator.comparingDouble(e -> e.y));
        double[] tops = spread(margin, scale.box());
        for (int i = 0; i < margin.size(); i++) {
            marginWords(margin.get(i), tops[i], scale.box().right());
        }
    }

    private void marginWords(End end, double top, double edge) {
        double middle = top + end.height() / 2;
        Series.Line line = end.line;
        double from = (end.leaves ? end.x : edge) + 3;
        double to = edge + Sheet.LABEL_GAP - 5;
        pen.line(from, end.y, to, middle, line.hue(), Math.min(line.stroke().width(), 1.6f));
        double y = top + Sheet.TEXT_SIZE * 0.92;
        for (String text : end.words) {
            pen.text(edge + Sheet.LABEL_GAP, y, text, WORDS);
            y += LINE;
        }
    }

    /** Upper edges of labels that want to stand at the ends of their lines, pushed apart and kept on the sheet. */
    private static double[] spread(List<End> ends, Box box) {
        double[] tops = new double[ends.size()];
        double free = box.top() - LINE;
        for (int i = 0; i < tops.length; i++) {
            tops[i] = Math.max(free, ends.get(i).y - ends.get(i).height() / 2);
            free = tops[i] + ends.get(i).height() + 2;
        }
        double limit = box.bottom() + LINE / 2;
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], limit - ends.get(i).height());
            limit = tops[i] - 2;
        }
        return tops;
    }

    private void ribbonWords(Panel panel, Scale scale) {
        for (Series series : panel.series()) {
            if (series instanceof Series.Ribbon ribbon && !ribbon.label().isEmpty()) {
                double edge = scale.downClamped(Math.max(ribbon.high()[0], ribbon.low()[0]));
                Script quiet = new Script(Sheet.TICK_SIZE, false, Hue.QUIET, Anchor.START, true);
                put(scale.box().left() + 10, edge + LINE, ribbon.label(), quiet);
            }
        }
    }

    /** Writes words near a point, best where neither other words nor lines are and not far away. */
    private void put(double x, double y, String text, Script script) {
        put(new double[] {x}, y, text, script, box -> false);
    }

    /**
     * As {@link #put(double, double, String, Script)}, with several left edges to choose from, the first the best; no better than a
     * crossed one is a place that is spoilt otherwise.
     */
    private Box put(double[] lefts, double y, String text, Script script, Predicate<Box> spoilt) {
        double width = Letters.width(text, script.size());
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int side = 0; side < lefts.length; side++) {
            for (double shift : SHIFTS) {
                Box box = new Box(lefts[side], y - script.size() + shift * LINE, width, script.size() * 1.2);
                boolean inside = box.top() > panel.top() - 4
                        && box.bottom() < panel.bottom() + 4
                        && box.left() >= panel.left() - 1;
                double cost = Math.abs(shift) + side * OTHER_SIDE + (crossed(box) || spoilt.test(box) ? CROSSED : 0);
                cost += inside && taken.stream().noneMatch(box::meets) ? 0 : TAKEN;
                best = cost < least ? box : best;
                least = Math.min(cost, least);
            }
        }
        taken.add(best);
        pen.text(best.left(), best.top() + script.size(), text, script);
        return best;
    }

    private boolean crossed(Box box) {
        for (double[][] line : lines) {
            for (int i = 0; i < line[0].length; i++) {
                double x = line[0][i];
                double y = line[1][i];
                if (x > box.left() - 2 && x < box.right() + 2 && y > box.top() - 1 && y < box.bottom() + 1) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Where a line ends on the sheet, and its words.
     *
     * @param leaves whether it goes on above or below the panel
     */
    private record End(Series.Line line, double x, double y, boolean leaves, List<String> words) {
        static End of(Series.Line line, Scale scale) {
            double[] x = line.x();
            double[] y = line.y();
            List<String> words = Letters.wrap(line.label(), Sheet.TEXT_SIZE, Sheet.LABEL_WIDTH);
            for (int i = x.length - 1; i >= 0; i--) {
                if (Double.isFinite(x[i]) && Double.isFinite(y[i]) && scale.holds(x[i], y[i])) {
                    boolean further = i < x.length - 1 && Double.isFinite(y[i + 1]);
                    double edge = scale.x().high();
                    if (further && x[i + 1] > edge) {
                        double share = (edge - x[i]) / (x[i + 1] - x[i]);
                        double there = scale.downClamped(y[i] + share * (y[i + 1] - y[i]));
                        return new End(line, scale.across(edge), there, false, words);
                    }
                    return new End(line, scale.across(x[i]), scale.down(y[i]), further, words);
                }
            }
            return null;
        }

        double height() {
            return words.size() * LINE;
        }
    }
}
