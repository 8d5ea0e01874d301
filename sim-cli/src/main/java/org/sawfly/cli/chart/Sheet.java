package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;

/** Where everything of a figure lies on its sheet. */
final class Sheet {
    static final double EDGE = 28;
    static final double TITLE_SIZE = 21;
    static final double TEXT_SIZE = 14;
    static final double TICK_SIZE = 13;
    static final double SMALL_SIZE = 10;
    static final double LABEL_WIDTH = 170;
    static final double LABEL_GAP = 30;

    private static final double LEFT = 70;
    private static final double HEAD = 28;
    /** Widest a panel that is to scale may be when others stand beside it. */
    private static final double WIDEST = 560;

    private static final double BESIDE = 16;
    private static final double BETWEEN = 12;
    private static final double TICKS = 22;
    private static final double AXIS_TITLE = 22;
    private static final double RULER = 34;
    private static final double FOOT_LINE = SMALL_SIZE * 1.25;

    private final Figure figure;
    private final List<String> title;
    private final List<String> caption;
    private final List<String> foot;
    private final List<Scale> scales = new ArrayList<>();

    Sheet(Figure figure) {
        this.figure = figure;
        double width = Figure.WIDTH - 2 * EDGE;
        title = Letters.wrap(figure.title(), TITLE_SIZE * Letters.BOLD, width);
        caption = Letters.wrap(figure.caption(), TEXT_SIZE, width);
        foot = Letters.wrap(figure.foot(), SMALL_SIZE, width);
        double top = captionLine(caption.size()) - TEXT_SIZE + BETWEEN / 2;
        double right = LABEL_GAP / 2 + EDGE;
        double shares = 0;
        double fixed = 0;
        for (int i = 0; i < figure.panels().size(); i++) {
            Panel panel = figure.panels().get(i);
            right = Math.max(right, EDGE + labelWidth(panel));
            shares += panel.share();
            fixed += above(panel) + below(i);
        }
        double whole = footLine(-1) - top;
        double left = LEFT;
        int first = 0;
        if (figure.panels().size() > 1 && figure.panels().get(0).equalScale()) {
            Panel tall = figure.panels().get(0);
            Box box = toScale(tall, top + above(tall), whole - above(tall) - below(0));
            scales.add(new Scale(tall.x(), tall.y(), box));
            left = box.right() + LEFT + BESIDE;
            shares -= tall.share();
            fixed -= above(tall) + below(0);
            first = 1;
        }
        double points = (whole - fixed) / shares;
        for (int i = first; i < figure.panels().size(); i++) {
            Panel panel = figure.panels().get(i);
            top += above(panel);
            Box box = new Box(left, top, Figure.WIDTH - left - right, points * panel.share());
            scales.add(new Scale(panel.x(), panel.y(), box));
            top = box.bottom() + below(i);
        }
    }

    /** As high as there is room for, and no wider than its part of the sheet. */
    private static Box toScale(Panel panel, double top, double height) {
        double up = panel.y().high() - panel.y().low();
        double along = panel.x().high() - panel.x().low();
        double perUnit = Math.min(height / up, WIDEST / along);
        return new Box(LEFT, top, perUnit * along, perUnit * up);
    }

    List<String> title() {
        return title;
    }

    List<String> caption() {
        return caption;
    }

    List<String> foot() {
        return foot;
    }

    double footLine(int line) {
        return Figure.HEIGHT - SMALL_SIZE - FOOT_LINE * (foot.size() - 1 - line);
    }

    Scale scale(int panel) {
        return scales.get(panel);
    }

    static double titleLine(int line) {
        return EDGE + TITLE_SIZE * (0.7 + 1.25 * line);
    }

    double captionLine(int line) {
        return titleLine(title.size() - 1) + TEXT_SIZE * (1.7 + 1.35 * line);
    }

    /** Where the title of a panel begins. */
    static double titleLeft(Scale scale) {
        return scale.box().left() - LEFT + EDGE;
    }

    /** Whether the numbers of the horizontal axis stand under a panel: the next one has others, or there is none. */
    boolean numbersUnder(int panel) {
        return panel == figure.panels().size() - 1
                || !figure.panels()
                        .get(panel)
                        .x()
                        .equals(figure.panels().get(panel + 1).x());
    }

    /** Lines the words above upright marks take. */
    static boolean hasUprightLabels(Panel panel) {
        return panel.marks().stream()
                .anyMatch(m ->
                        m instanceof Mark.Upright upright && !upright.label().isEmpty());
    }

    private static double above(Panel panel) {
        return HEAD + (hasUprightLabels(panel) ? TEXT_SIZE * 1.3 : 0);
    }

    private double below(int index) {
        if (!numbersUnder(index)) {
            return BETWEEN;
        }
        boolean ruler = figure.panels().get(index).x().ruler() != null;
        return TICKS + AXIS_TITLE + (ruler ? RULER : 0) + BETWEEN / 2;
    }

    private static double labelWidth(Panel panel) {
        double widest = 0;
        for (Series series : panel.series()) {
            if (series instanceof Series.Line line && !line.label().isEmpty()) {
                for (String text : Letters.wrap(line.label(), TEXT_SIZE, LABEL_WIDTH)) {
                    widest = Math.max(widest, LABEL_GAP + Letters.width(text, TEXT_SIZE));
                }
            }
        }
        return widest;
    }
}
