package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;

/** Errors on the bench as bars: the smaller the error that costs launch height, the further up it stands. */
public final class ToleranceFigure {
    private static final double THICK = 0.32;
    private static final double NO_TICKS = 1000;

    private ToleranceFigure() {}

    /** One error and its size [mm]; infinite when none costs so much. */
    public record Bar(String name, double size) {}

    /**
     * Makes the figure.
     *
     * @param title the answer in words
     * @param foot glider, date, settings
     * @param size the quantity that gives the title of the axis and the decimals
     * @param bars the one that matters first at the top
     */
    public static Figure of(String title, String foot, Quantity<?> size, List<Bar> bars) {
        double most = 1;
        for (Bar bar : bars) {
            most = Double.isFinite(bar.size()) ? Math.max(most, bar.size()) : most;
        }
        List<Series> series = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            double row = bars.size() - i;
            boolean finite = Double.isFinite(bar.size());
            double end = finite ? bar.size() : most;
            double[] ends = {0, end};
            double[] low = {row - THICK, row - THICK};
            double[] high = {row + THICK, row + THICK};
            if (finite) {
                series.add(new Series.Ribbon(ends, low, high, Hue.HEIGHT, ""));
                series.add(new Series.Line(
                        new double[] {0, end, end, 0},
                        new double[] {low[0], low[0], high[0], high[0]},
                        Hue.HEIGHT,
                        Stroke.THIN,
                        ""));
            }
            String words = finite
                    ? bar.name() + ": " + Numbers.fixed(bar.size(), size.decimals()) + " mm"
                    : bar.name() + ": no error looked at costs so much";
            marks.add(new Mark.Flag(0, row - THICK / 2, words, Hue.INK));
        }
        Axis x = Axis.around("mm over the part's own length that cost 0.5 m of launch", 1, 0, most);
        Axis y = Axis.fixed("what matters first is on top", 0.3, bars.size() + 0.7)
                .every(NO_TICKS);
        return new Figure(title, "", foot, List.of(new Panel(x, y, series, marks, 1)));
    }
}
