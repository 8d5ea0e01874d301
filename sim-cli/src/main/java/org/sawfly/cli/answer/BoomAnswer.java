package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.strength.BoomLoad;
import org.sawfly.strength.BoomStrength;
import org.sawfly.strength.LoadCase;
import org.sawfly.strength.Reserve;
import org.sawfly.strength.TailEffectiveness;
import org.sawfly.study.BoomLook;
import org.sawfly.study.BoomQuantities;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.SoftBoom;

/** How stiff the boom is, what a launch asks of it, what it bears and where it would go first. */
public final class BoomAnswer {
    /** Less than this is called a weak spot [1]; common practice, no source. */
    public static final double WEAK = 1.5;

    /** The text shows speeds this far apart [m/s]. */
    private static final double SHOWN_STEP = 10;

    private final Answer answer = new Answer("boom");
    private final Case asked;
    private final Looked looked;
    private final BoomLook boom;

    /**
     * What is looked at.
     *
     * @param boom of the glider as asked
     * @param today the boom before any change; null when nothing is changed
     * @param limit where and when it goes
     * @param soft what its bending costs
     * @param tails at some speeds, the slowest first
     * @param tailsToday the same before any change; empty when nothing is changed
     */
    public record Looked(
            BoomLook boom,
            BoomLook today,
            BoomStrength.Limit limit,
            SoftBoom soft,
            List<TailEffectiveness> tails,
            List<TailEffectiveness> tailsToday) {}

    private BoomAnswer(Case asked, Looked looked) {
        this.asked = asked;
        this.looked = looked;
        this.boom = looked.boom();
    }

    /** The whole answer. */
    public static Answer of(Case asked, Looked looked) {
        BoomAnswer made = new BoomAnswer(asked, looked);
        asked.inputs(made.answer.inputs());
        made.bench();
        made.tails();
        made.cases();
        made.reserves();
        made.end();
        return made.answer;
    }

    private void bench() {
        Fields results = answer.results();
        results.putAll(ResultQuantities.ALL, asked.result());
        results.putAll(BoomQuantities.OF_BOOM, boom);
        answer.sayFlush(asked.title() + ": the boom; "
                + asked.scenario().launch().name() + " throws, "
                + results.put(OutcomeQuantities.RELEASE_SPEED, asked.result().outcome()) + " m/s");
        String from = boom.tested() ? "as your bend test showed" : "from its material and size";
        answer.say("Stiffness " + from + ": " + BoomQuantities.FRONT_STIFFNESS.text(boom) + " N m2 at the pod, "
                + BoomQuantities.END_STIFFNESS.text(boom) + " at the end. Held " + BoomQuantities.HELD.text(boom)
                + " mm behind the leading edge, hung " + BoomQuantities.HUNG.text(boom)
                + " mm behind it: 200 g should move"
                + " it " + BoomQuantities.MOVES_LIGHT.text(boom) + " mm, 500 g "
                + BoomQuantities.MOVES_HEAVY.text(boom) + " mm, up and sideways alike; 500 g on a 100 mm arm twists it "
                + BoomQuantities.TWISTS.text(boom) + " deg.");
        answer.say("It swings " + BoomQuantities.SWING_HELD_SIDE.text(boom)
                + " times a second held on the bench; in flight "
                + BoomQuantities.SWING_FLYING_SIDE.text(boom) + " sideways, "
                + BoomQuantities.SWING_FLYING_VERTICAL.text(boom) + " up and down.");
    }

    private void tails() {
        Table table = new Table(2, 2).left("left of the tails, %");
        for (TailEffectiveness one : looked.tails()) {
            answer.results().item("tails").putAll(BoomQuantities.OF_TAILS, one);
        }
        shown().forEach(one -> table.right(BoomQuantities.AT_SPEED.text(one)));
        table.left("m/s");
        looked.tailsToday().forEach(one -> answer.results().item("tails_today").putAll(BoomQuantities.OF_TAILS, one));
        row(table, "tailplane, what trim shows", BoomQuantities.TAILPLANE_HELD);
        row(table, "tailplane in a pull-up", BoomQuantities.TAILPLANE_FREE);
        row(table, "fin, held", BoomQuantities.FIN_HELD);
        row(table, "fin in flight", BoomQuantities.FIN_FREE);
        answer.table(table);
    }

    private List<TailEffectiveness> shown() {
        return looked.tails().stream()
                .filter(one -> one.speed() > 0 && one.speed() % SHOWN_STEP == 0)
                .toList();
    }

    private void row(Table table, String words, Quantity<TailEffectiveness> quantity) {
        List<String> cells = new ArrayList<>(List.of(words));
        shown().forEach(one -> cells.add(quantity.text(one)));
        table.row(cells);
    }

    private void cases() {
        double x = boom.glider().boom().frontX();
        Table table = new Table(2, 2)
                .left("bending where it leaves the pod, N m")
                .right("sideways")
                .left("")
                .right("upright")
                .left("");
        for (Map.Entry<LoadCase, BoomLoad> one : boom.strength().cases().at(x).entrySet()) {
            Fields fields = answer.results().item("load_cases");
            fields.put("case", one.getKey().words());
            boolean right = asked.hand().equals("right");
            double outward = right ? one.getValue().right() : -one.getValue().right();
            fields.put("outward_Nm", outward, 1);
            fields.put("upward_Nm", one.getValue().up(), 1);
            table.row(
                    one.getKey().words(),
                    size(outward),
                    way(outward, "outward", "inward"),
                    size(one.getValue().up()),
                    way(one.getValue().up(), "up", "down"));
        }
        answer.table(table);
    }

    private static String size(double moment) {
        return Numbers.fixed(Math.abs(moment), 1);
    }

    private static String way(double moment, String positive, String negative) {
        return Numbers.rounded(moment, 1) == 0 ? "" : moment > 0 ? positive : negative;
    }

    private void reserves() {
        Table table = new Table(2, 2)
                .left("bears the throw, times")
                .right("at mm")
                .right("times")
                .left("worst");
        Reserve weakest = boom.strength().weakest();
        boolean named = boom.strength().named().contains(weakest);
        if (!named) {
            row(table, weakest);
        }
        boom.strength().named().forEach(spot -> row(table, spot));
        answer.table(table);
        Fields results = answer.results();
        Rows rows = new Rows(List.of("spot", "behind_mm", "mode", "worst_case", "bears_times"));
        for (Reserve spot : boom.strength().all()) {
            rows.add(List.of(
                    spot.name(),
                    BoomQuantities.PLACE.value(spot),
                    spot.mode().words(),
                    spot.worst().words(),
                    BoomQuantities.RESERVE.value(spot)));
        }
        answer.rows(rows);
        results.put("strengths", boom.strength().source());
        answer.say("Estimates. Strengths of the wall " + boom.strength().source() + ".");
    }

    private void row(Table table, Reserve spot) {
        Fields fields = answer.results().item("spots");
        String name = fields.put("spot", spot.name().isEmpty() ? spot.mode().words() : spot.name());
        String place = fields.put(BoomQuantities.PLACE, spot);
        fields.put("mode", spot.mode().words());
        String times = fields.put(BoomQuantities.RESERVE, spot);
        table.row(
                name,
                place,
                spot.factor() < WEAK ? times + " !" : times + "  ",
                fields.put("worst_case", spot.worst().words()));
    }

    private static String name(Reserve spot) {
        return spot.name().isEmpty()
                ? spot.mode().words()
                : spot.name() + ": " + spot.mode().words();
    }

    private void end() {
        Fields results = answer.results();
        double cost = BoomQuantities.BENDING_COSTS.shown(looked.soft());
        results.put(BoomQuantities.BENDING_COSTS, looked.soft());
        String back = results.put(BoomQuantities.GIVEN_BACK, looked.soft());
        String size = Numbers.fixed(Math.abs(cost), BoomQuantities.BENDING_COSTS.decimals());
        answer.say("Against a boom that does not bend the launch is "
                + (Double.isNaN(cost)
                        ? "not known"
                        : cost == 0 ? "the same" : size + " m " + (cost > 0 ? "lower" : "higher"))
                + "; the best elevator preset would give " + back + " m more than yours.");
        if (looked.today() != null) {
            today();
        }
        Cautions.of(asked.changes()).forEach(answer::caution);
        if (!boom.glider().boom().holes().isEmpty()) {
            answer.caution(Cautions.DRILL);
        }
        verdict();
        answer.figure(BoomPicture.of(asked, looked));
    }

    private void today() {
        Fields fields = answer.results().section("today").putAll(BoomQuantities.OF_BOOM, looked.today());
        Reserve weakest = looked.today().strength().weakest();
        answer.say("Before this change: 500 g moved it " + BoomQuantities.MOVES_HEAVY.text(looked.today())
                + " mm, it bore "
                + BoomQuantities.RESERVE.text(weakest) + " times the throw, weakest at "
                + fields.section("weakest").put(BoomQuantities.PLACE, weakest) + " mm ("
                + fields.section("weakest").put("mode", name(weakest)) + ").");
    }

    private void verdict() {
        Reserve weakest = boom.strength().weakest();
        Fields fields = answer.results().section("weakest");
        String where = fields.put(BoomQuantities.PLACE, weakest) + " mm";
        String times = fields.put(BoomQuantities.RESERVE, weakest);
        fields.put("spot", name(weakest));
        fields.put("worst_case", weakest.worst().words());
        Fields goes = answer.results().section("gives_way");
        String speed = goes.put(BoomQuantities.GIVES_WAY, looked.limit());
        String there = goes.put(BoomQuantities.PLACE, looked.limit().first()) + " mm ("
                + goes.put("spot", name(looked.limit().first())) + ")";
        if (weakest.factor() < WEAK) {
            answer.verdict("Weak spot: by this estimate the boom bears only " + times + " times the load at " + where
                    + " (" + name(weakest) + "). Do not throw it hard. Mend it or replace it.");
        } else {
            answer.verdict("By this estimate it bears this throw " + times + " times, least at " + where + " "
                    + weakest.worst().words() + ".");
        }
        answer.verdict(
                Double.isInfinite(looked.limit().speed())
                        ? "No hand throws it so hard that it goes."
                        : "Thrown harder it would go at " + speed + " m/s, first at " + there + ".");
    }
}
