package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.quantity.Unit;
import org.sawfly.strength.TailEffectiveness;

/** "The boom from wing to fin": the boom itself with its reserves, its bending beneath, what is left of the tails. */
public final class BoomFigure {
    /** The boom is drawn so many times as thick as it is long. */
    private static final double THICKER = 3;
    /** Height of the panel over its width, about. */
    private static final double FLAT = 0.19;

    private static final double WHOLE = 100;

    private BoomFigure() {}

    /**
     * The boom along its length, from the pod to the end.
     *
     * @param place behind the leading edge [mm]
     * @param diameter [mm]
     * @param bending asked in the worst case [N m]
     * @param bears bending it bears [N m]
     * @param cut where it was cut off [mm]; NaN when it was not
     */
    public record Tube(double[] place, double[] diameter, double[] bending, double[] bears, double cut) {
        /** Takes copies. */
        public Tube {
            place = place.clone();
            diameter = diameter.clone();
            bending = bending.clone();
            bears = bears.clone();
        }

        @Override
        public double[] place() {
            return place.clone();
        }

        @Override
        public double[] diameter() {
            return diameter.clone();
        }

        @Override
        public double[] bending() {
            return bending.clone();
        }

        @Override
        public double[] bears() {
            return bears.clone();
        }
    }

    /**
     * A spot and how many times it bears what is asked.
     *
     * @param place behind the leading edge [mm]
     * @param side on top 1, at the bottom -1, beside 0
     */
    public record Spot(double place, String name, String times, boolean weak, double side) {}

    /** A sleeve or a slot over some length [mm]; where the boom is parted under it, or NaN. */
    public record Sleeve(double from, double to, double parted) {}

    /** What is left of the tails at some speeds, and what was before a change (empty for none). */
    public record Tails(List<TailEffectiveness> now, List<TailEffectiveness> before) {}

    /** Makes the figure. */
    public static Figure of(
            String title, String caption, String foot, Tube tube, List<Spot> spots, List<Sleeve> sleeves, Tails tails) {
        double[] place = tube.place();
        double front = place[0];
        double end = place[place.length - 1];
        Axis x = Axis.fixed("mm behind the wing's leading edge", front - (end - front) / 40, end + (end - front) / 20);
        return new Figure(
                title, caption, foot, List.of(drawing(x, tube, spots, sleeves), moments(x, tube), left(tails)));
    }

    private static Panel drawing(Axis x, Tube tube, List<Spot> spots, List<Sleeve> sleeves) {
        double[] place = tube.place();
        double[] high = tube.diameter();
        double[] low = new double[high.length];
        for (int i = 0; i < high.length; i++) {
            high[i] *= THICKER / 2;
            low[i] = -high[i];
        }
        double half = FLAT * (x.high() - x.low()) / 2;
        List<Series> series = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        series.add(new Series.Ribbon(place, low, high, Hue.SCATTER, ""));
        series.add(new Series.Line(place, high, Hue.INK, Stroke.SOLID, ""));
        series.add(new Series.Line(place, low, Hue.INK, Stroke.SOLID, ""));
        for (Sleeve sleeve : sleeves) {
            double[] ends = {sleeve.from(), sleeve.to()};
            double thick = high[0];
            series.add(new Series.Ribbon(
                    ends, new double[] {-thick, -thick}, new double[] {thick, thick}, Hue.ELEVATOR, ""));
            if (!Double.isNaN(sleeve.parted())) {
                marks.add(new Mark.Upright(sleeve.parted(), "sawn through"));
            }
        }
        if (!Double.isNaN(tube.cut())) {
            marks.add(new Mark.Upright(tube.cut(), "cut here"));
        }
        // words at the rim have one side to stand on and are placed first; those beside the boom have room inside it
        List<Spot> rimFirst = new ArrayList<>(spots);
        rimFirst.sort(Comparator.comparingDouble(spot -> -Math.abs(spot.side())));
        for (Spot spot : rimFirst) {
            if (spot.weak()) {
                double wide = (x.high() - x.low()) / 60;
                marks.add(new Mark.Hatched(spot.place() - wide, spot.place() + wide, -half, half, "weak spot"));
            }
            double up = spot.side() * radius(tube, spot.place());
            String words = spot.name() + ", " + spot.times() + " times";
            marks.add(new Mark.Flag(spot.place(), up, words, spot.weak() ? Hue.SINK : Hue.INK));
        }
        Axis y = Axis.fixed("the boom, three times as thick; how many times it bears what is asked", -half, half);
        return new Panel(x, y.bare(), series, marks, 1);
    }

    /** As drawn [mm]. */
    private static double radius(Tube tube, double place) {
        double[] places = tube.place();
        double[] diameters = tube.diameter();
        int i = 0;
        while (i < places.length - 1 && places[i] < place) {
            i++;
        }
        return THICKER / 2 * diameters[i];
    }

    private static Panel moments(Axis x, Tube tube) {
        double[] place = tube.place();
        double most = 0;
        for (int i = 0; i < place.length; i++) {
            most = Math.max(most, Math.max(tube.bending()[i], tube.bears()[i]));
        }
        List<Series> series = List.of(
                new Series.Line(place, tube.bears(), Hue.MARGIN, Stroke.SOLID, "the tube bears"),
                new Series.Line(place, tube.bending(), Hue.SINK, Stroke.DASHED, "asked, worst case"));
        return new Panel(x, Axis.around("bending, N m", 1, 0, most), series, List.of(), 1);
    }

    private static Panel left(Tails tails) {
        List<Series> series = new ArrayList<>();
        add(series, tails.now(), "", false);
        add(series, tails.before(), ", today", true);
        double fastest = tails.now().get(tails.now().size() - 1).speed();
        double low = WHOLE;
        double high = WHOLE;
        for (TailEffectiveness one : tails.now()) {
            low = Math.min(low, Unit.PERCENT.fromSi(Math.min(one.tailplaneHeld(), one.finHeld())));
            high = Math.max(high, Unit.PERCENT.fromSi(Math.max(one.tailplaneFree(), one.finFree())));
        }
        Axis x = Axis.fixed("airspeed, m/s", 0, fastest).every(5);
        return new Panel(x, Axis.around("left of the tails, %", 20, low, high), series, List.of(), 1.1);
    }

    private static void add(List<Series> series, List<TailEffectiveness> tails, String when, boolean thin) {
        if (tails.isEmpty()) {
            return;
        }
        line(series, tails, TailEffectiveness::tailplaneHeld, Hue.ELEVATOR, thin, "tailplane, trim" + when);
        line(series, tails, TailEffectiveness::tailplaneFree, Hue.HEIGHT, thin, "tailplane, pull-up" + when);
        line(series, tails, TailEffectiveness::finHeld, Hue.SWING, thin, "fin, held" + when);
        line(series, tails, TailEffectiveness::finFree, Hue.SPEED, thin, "fin, flying" + when);
    }

    private static void line(
            List<Series> series,
            List<TailEffectiveness> tails,
            ToDoubleFunction<TailEffectiveness> left,
            Hue hue,
            boolean thin,
            String label) {
        double[] speed = tails.stream().mapToDouble(TailEffectiveness::speed).toArray();
        double[] share = tails.stream()
                .mapToDouble(one -> Unit.PERCENT.fromSi(left.applyAsDouble(one)))
                .toArray();
        boolean free = hue == Hue.HEIGHT || hue == Hue.SPEED;
        Stroke stroke = thin ? (free ? Stroke.THIN_DASHED : Stroke.THIN) : free ? Stroke.DASHED : Stroke.SOLID;
        series.add(new Series.Line(speed, share, hue, stroke, label));
    }
}
