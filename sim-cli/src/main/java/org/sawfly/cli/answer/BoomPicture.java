package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.cli.chart.BoomFigure;
import org.sawfly.cli.chart.Figure;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomHole;
import org.sawfly.glider.BoomSlot;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Piece;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.strength.BoomStrength;
import org.sawfly.strength.LoadCase;
import org.sawfly.strength.Reserve;
import org.sawfly.study.BoomLook;
import org.sawfly.study.BoomQuantities;

/** The boom from wing to fin as a picture: what it looks like, what it bears where, what it leaves of the tails. */
final class BoomPicture {
    private static final int STATIONS = 120;
    private static final int EDGE = 1;

    private BoomPicture() {}

    static Figure of(Case asked, BoomAnswer.Looked looked) {
        BoomLook look = looked.boom();
        BoomStrength strength = look.strength();
        Reserve weakest = strength.weakest();
        Boom boom = look.glider().boom();
        BoomTube tube = BoomTube.of(boom);
        double[] place = new double[STATIONS + EDGE];
        double[] diameter = new double[STATIONS + EDGE];
        double[] bending = new double[STATIONS + EDGE];
        double[] bears = new double[STATIONS + EDGE];
        LoadCase worst = weakest.worst();
        for (int i = 0; i <= STATIONS; i++) {
            double x = boom.frontX() - boom.length() * i / STATIONS;
            place[i] = Unit.MILLIMETRE.fromSi(-x);
            diameter[i] = Unit.MILLIMETRE.fromSi(tube.diameter(x));
            bending[i] = strength.cases().at(worst, x).bending();
            bears[i] = strength.bears(x);
        }
        List<BoomFigure.Spot> spots = new ArrayList<>();
        boolean named = strength.named().contains(weakest);
        if (!named) {
            spots.add(spot(boom, weakest));
        }
        strength.named().forEach(reserve -> spots.add(spot(boom, reserve)));
        List<BoomFigure.Sleeve> sleeves = new ArrayList<>();
        boom.build()
                .sleeves()
                .forEach((name, sleeve) -> sleeves.add(new BoomFigure.Sleeve(
                        Unit.MILLIMETRE.fromSi(-sleeve.frontX()),
                        Unit.MILLIMETRE.fromSi(-sleeve.endX()),
                        Unit.MILLIMETRE.fromSi(-sleeve.cutX()))));
        boom.build()
                .slots()
                .forEach((name, slot) -> sleeves.add(new BoomFigure.Sleeve(
                        Unit.MILLIMETRE.fromSi(-slot.frontX()), Unit.MILLIMETRE.fromSi(-slot.endX()), Double.NaN)));
        String times = BoomQuantities.RESERVE.text(weakest);
        String title = weakest.factor() < BoomAnswer.WEAK
                ? "Weak spot: the boom bears only " + times + " times this throw"
                : "The boom bears this throw " + times + " times, by this estimate";
        String bench = "On the bench 500 g moves it " + BoomQuantities.MOVES_HEAVY.text(look) + " mm"
                + (look.tested() ? ", as you measured" : "") + ". " + reading(boom) + "Worst case: "
                + worst.words() + ". Above 100 %: in a pull-up inertia bends the boom the other way.";
        return BoomFigure.of(
                title,
                bench,
                FlyFigures.foot(asked),
                new BoomFigure.Tube(place, diameter, bending, bears, cutLine(asked, looked)),
                spots,
                sleeves,
                new BoomFigure.Tails(looked.tails(), looked.tailsToday()));
    }

    private static String reading(Boom boom) {
        return boom.stiffness() instanceof BoomStiffness.OfBendTest test
                ? "Your reading: " + Numbers.fixed(Unit.MILLIMETRE.fromSi(test.deflection()), 1) + " mm. "
                : "";
    }

    /** Where the rear end of today's boom was cut off [mm]; NaN when it was not. */
    private static double cutLine(Case asked, BoomAnswer.Looked looked) {
        boolean cut =
                asked.changes().stream().anyMatch(setting -> setting.path().equals(ChangeWords.CUT));
        return cut ? Unit.MILLIMETRE.fromSi(-looked.boom().glider().boom().endX()) : Double.NaN;
    }

    private static BoomFigure.Spot spot(Boom boom, Reserve reserve) {
        String name = reserve.name().isEmpty() ? reserve.mode().words() : reserve.name();
        return new BoomFigure.Spot(
                BoomQuantities.PLACE.value(reserve),
                name,
                BoomQuantities.RESERVE.text(reserve),
                reserve.factor() < BoomAnswer.WEAK,
                side(boom, reserve));
    }

    /** On top, at the bottom or between, as parts of the radius. */
    private static double side(Boom boom, Reserve reserve) {
        BoomHole hole = boom.holes().get(reserve.name());
        BoomSlot slot = boom.build().slots().get(reserve.name());
        BoomHole.Side side = hole != null ? hole.side() : slot != null ? slot.side() : BoomHole.Side.LEFT;
        boolean top = side == BoomHole.Side.TOP || reserve.name().startsWith(Piece.TAILPLANE);
        boolean bottom = side == BoomHole.Side.BOTTOM || reserve.name().startsWith(Piece.FIN);
        return top ? 1 : bottom ? -1 : 0;
    }
}
