package org.sawfly.cli.chart;

import org.sawfly.cli.chart.Pen.Anchor;
import org.sawfly.cli.chart.Pen.Script;

/** What lies under the data: titles, grid, axes with their numbers, hatched regions. */
final class Ground {
    private static final Script TICK = new Script(Sheet.TICK_SIZE, false, Hue.INK, Anchor.MIDDLE, false);
    private static final Script HEAD = new Script(Sheet.TEXT_SIZE, true, Hue.INK, Anchor.START, false);
    private static final Script QUIET = new Script(Sheet.SMALL_SIZE + 2, false, Hue.QUIET, Anchor.START, true);
    private static final double HATCH = 9;
    private static final float HAIR = 0.8f;

    private final Figure figure;
    private final Sheet sheet;
    private final Pen pen;

    Ground(Figure figure, Sheet sheet, Pen pen) {
        this.figure = figure;
        this.sheet = sheet;
        this.pen = pen;
    }

    void draw() {
        Script title = new Script(Sheet.TITLE_SIZE, true, Hue.INK, Anchor.START, false);
        for (int i = 0; i < sheet.title().size(); i++) {
            pen.text(Sheet.EDGE, Sheet.titleLine(i), sheet.title().get(i), title);
        }
        Script caption = new Script(Sheet.TEXT_SIZE, false, Hue.INK, Anchor.START, false);
        for (int i = 0; i < sheet.caption().size(); i++) {
            pen.text(Sheet.EDGE, sheet.captionLine(i), sheet.caption().get(i), caption);
        }
        Script foot = new Script(Sheet.SMALL_SIZE, false, Hue.QUIET, Anchor.START, false);
        for (int i = 0; i < sheet.foot().size(); i++) {
            pen.text(Sheet.EDGE, sheet.footLine(i), sheet.foot().get(i), foot);
        }
        for (int i = 0; i < figure.panels().size(); i++) {
            panel(figure.panels().get(i), sheet.scale(i), sheet.numbersUnder(i));
        }
    }

    private void panel(Panel panel, Scale scale, boolean numbers) {
        Box box = scale.box();
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Hatched hatched) {
                hatch(hatched, scale);
            }
        }
        double raised = Sheet.hasUprightLabels(panel) ? Sheet.TEXT_SIZE * 1.3 : 0;
        pen.text(Sheet.titleLeft(scale), box.top() - 11 - raised, panel.y().title(), HEAD);
        for (double tick : panel.y().ticks()) {
            double y = scale.down(tick);
            pen.line(box.left(), y, box.right(), y, Hue.GRID, HAIR);
            pen.text(box.left() - 9, y + Sheet.TICK_SIZE * 0.36, panel.y().label(tick), TICK.at(Anchor.END));
        }
        for (double tick : scale.x().ticks()) {
            double x = scale.across(tick);
            pen.line(x, box.top(), x, box.bottom(), Hue.GRID, HAIR);
            pen.line(x, box.bottom(), x, box.bottom() + 5, Hue.INK, HAIR);
            if (numbers) {
                pen.text(x, box.bottom() + 19, scale.x().label(tick), TICK);
            }
        }
        pen.line(box.left(), box.top(), box.left(), box.bottom(), Hue.INK, 1);
        pen.line(box.left(), box.bottom(), box.right(), box.bottom(), Hue.INK, 1);
        endWords(panel.y(), scale);
        if (numbers) {
            under(scale);
        }
    }

    private void endWords(Axis y, Scale scale) {
        double inside = scale.box().left() + 8;
        String top = y.downward() ? y.lowWords() : y.highWords();
        String bottom = y.downward() ? y.highWords() : y.lowWords();
        if (!top.isEmpty()) {
            pen.text(inside, scale.box().top() + Sheet.SMALL_SIZE + 5, top, QUIET);
        }
        if (!bottom.isEmpty()) {
            pen.text(inside, scale.box().bottom() - 7, bottom, QUIET);
        }
    }

    private void under(Scale scale) {
        Box box = scale.box();
        double y = box.bottom() + 20;
        Axis.Ruler ruler = scale.x().ruler();
        if (ruler != null) {
            double top = box.bottom() + 28;
            pen.line(box.left(), top, box.right(), top, Hue.INK, HAIR);
            long last = (long) Math.floor((scale.x().high() - scale.x().low()) * ruler.perUnit() + 1e-6);
            for (long i = 0; i <= last; i++) {
                double x = scale.across(scale.x().low() + i / ruler.perUnit());
                boolean numbered = i % ruler.every() == 0;
                pen.line(x, top, x, top + (numbered ? 8 : 4), Hue.INK, HAIR);
                if (numbered) {
                    pen.text(x, top + 19, Long.toString(i), TICK);
                }
            }
            y += 34;
            pen.text(box.right(), y + 20, ruler.words(), QUIET.at(Anchor.END));
        }
        pen.text(box.left() + box.width() / 2, y + 20, scale.x().title(), HEAD.at(Anchor.MIDDLE));
    }

    private void hatch(Mark.Hatched region, Scale scale) {
        double left = scale.acrossClamped(region.left());
        double right = scale.acrossClamped(region.right());
        double one = scale.downClamped(region.low());
        double other = scale.downClamped(region.high());
        double top = Math.min(one, other);
        double bottom = Math.max(one, other);
        if (right - left < 1 || bottom - top < 1) {
            return;
        }
        pen.fill(new double[] {left, right, right, left}, new double[] {top, top, bottom, bottom}, Hue.SCATTER, 0.35);
        // lines rising to the right, x + y = c, cut to the region
        for (double c = HATCH * Math.ceil((left + top) / HATCH); c < right + bottom; c += HATCH) {
            double x0 = Math.max(left, c - bottom);
            double x1 = Math.min(right, c - top);
            if (x1 > x0) {
                pen.line(x0, c - x0, x1, c - x1, Hue.QUIET, 0.7f);
            }
        }
        edge(region.low(), scale, left, right);
        edge(region.high(), scale, left, right);
    }

    private void edge(double value, Scale scale, double left, double right) {
        if (Double.isFinite(value) && scale.y().holds(value)) {
            pen.line(left, scale.down(value), right, scale.down(value), Hue.QUIET, 1.4f);
        }
    }
}
