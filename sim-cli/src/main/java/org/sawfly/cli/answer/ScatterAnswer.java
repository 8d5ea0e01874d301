package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sawfly.cli.chart.Figure;
import org.sawfly.cli.chart.ScatterFigure;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Scattered;
import org.sawfly.study.Throws;
import org.sawfly.study.statistics.Sample;
import org.sawfly.study.statistics.ThrowsNeeded;

/** How much throws differ, today's and a version's, and how many would show the difference. */
public final class ScatterAnswer {
    private static final String TODAY = "today";
    private static final double LOW = 0.05;

    /** Gains one may hope for [m]. */
    private static final double[] HOPED_FOR = {0.3, 0.5, 1, 2};

    private final Answer answer = new Answer("scatter");
    private final Asked asked;
    private final Throws now;
    private final Throws then;
    private final String label;

    /**
     * What was asked.
     *
     * @param today the glider as it is
     * @param version the changed one, or today again
     * @param seed of the throws
     * @param speedGiven whether the scatter of the speed was given, and does not follow from that of the heights
     */
    public record Asked(Case today, Case version, long seed, boolean speedGiven) {}

    private ScatterAnswer(Asked asked, Throws now, Throws then) {
        this.asked = asked;
        this.now = now;
        this.then = then;
        this.label = then == null ? "" : ChangeWords.label(asked.version().changes());
    }

    /**
     * The whole answer.
     *
     * @param now today's throws
     * @param then the version's, off by the same; null for none
     */
    public static Answer of(Asked asked, Throws now, Throws then) {
        ScatterAnswer made = new ScatterAnswer(asked, now, then);
        made.write();
        return made.answer;
    }

    private void write() {
        asked.version().inputs(answer.inputs());
        answer.inputs().put("throws", now.count());
        answer.inputs().put("seed", asked.seed());
        String name = asked.today().scenario().glider().name();
        String thrower = asked.today().scenario().launch().name();
        answer.sayFlush(
                then == null
                        ? name + ": " + now.count() + " throws by " + thrower
                        : name + ": " + now.count() + " throws by " + thrower + " today, and as many with "
                                + ChangeWords.of(asked.version().changes()));
        answer.gap();
        answer.table(table());
        sources();
        if (then == null) {
            hopes();
        } else {
            next();
        }
        String warning = Cautions.lastWords(asked.version().result());
        if (!warning.isEmpty()) {
            answer.verdict(warning);
        }
        Cautions.of(asked.version().changes()).forEach(answer::caution);
        Cautions.of(asked.version().result()).forEach(answer::caution);
        answer.caution(Cautions.THROW);
        answer.rows(rows());
        answer.figure(figure());
    }

    private Table table() {
        Table table = new Table(2, 2).left("").right(TODAY);
        if (then != null) {
            table.right(label);
        }
        table.left("");
        row(table, "average launch height", "average_height_m", Sample::mean);
        row(table, "scatter, standard deviation", "height_scatter_m", Sample::deviation);
        List<String> ranges = new ArrayList<>(List.of("9 times in 10"));
        for (Throws one : both()) {
            Band likely = new Band(one.sample().quantile(LOW), one.sample().quantile(1 - LOW));
            ranges.add(fields(one).band(ResultQuantities.APEX_HEIGHT, likely));
        }
        ranges.add(Unit.METRE.words());
        table.row(ranges);
        List<String> cells = new ArrayList<>(List.of("without a top"));
        for (Throws one : both()) {
            cells.add(fields(one)
                    .put("throws_without_top", one.count() - one.sample().size()));
        }
        cells.add("throws");
        table.row(cells);
        return table;
    }

    private interface Measure {
        double of(Sample sample);
    }

    private void row(Table table, String words, String key, Measure measure) {
        List<String> cells = new ArrayList<>(List.of(words));
        for (Throws one : both()) {
            cells.add(fields(one).put(key, measure.of(one.sample()), 1));
        }
        cells.add(Unit.METRE.words());
        table.row(cells);
    }

    private List<Throws> both() {
        return then == null ? List.of(now) : List.of(now, then);
    }

    private Fields fields(Throws one) {
        return answer.results().section("throws").section(one == now ? TODAY : label);
    }

    /** What makes throws differ, and how much the speed does. */
    private void sources() {
        Fields results = answer.results();
        List<String> words = new ArrayList<>();
        for (Map.Entry<Scattered, Double> share : now.shares().entrySet()) {
            Fields item = results.item("heights_differ_by");
            item.put("what", share.getKey().words());
            words.add(share.getKey().words() + " (" + item.put("share_pct", Unit.PERCENT.fromSi(share.getValue()), 0)
                    + " %)");
        }
        Fields scatter = results.section("throw_scatter");
        for (Scattered one : Scattered.values()) {
            Unit unit = Unit.of(one.key());
            scatter.put(one.key(), unit.fromSi(now.deviation(one)), 1);
        }
        if (!words.isEmpty()) {
            answer.say("Heights differ by: " + String.join(", ", words) + ".");
        }
        if (!asked.speedGiven()) {
            String seen = results.put(
                    "seen_height_scatter_m",
                    asked.today().scenario().launch().thrower().heightScatter(),
                    1);
            double speed = now.deviation(Scattered.SPEED);
            answer.say(
                    speed > 0
                            ? "Your heights scatter by " + seen + " m: so the speed of your throws scatters by "
                                    + Numbers.fixed(Unit.PERCENT.fromSi(speed), 1) + " %."
                            : "Your heights scatter by " + seen
                                    + " m, and all else gives more than that: no throw differs in speed here. Maybe"
                                    + " throw_scatter in the launch file says too much.");
        }
    }

    /** How the next throw of each may come out, and how many would tell them apart. */
    private void next() {
        Fields results = answer.results();
        String chance = results.put("next_throw_higher_pct", Unit.PERCENT.fromSi(then.chanceAbove(now)), 0);
        answer.say("Its next throw is higher than the next one of today with a chance of " + chance + " %.");
        Sample before = now.sample();
        Sample after = then.sample();
        if (before.size() < 2 || after.size() < 2) {
            answer.verdict("Too few of these throws have a launch to count: there is nothing to compare.");
            return;
        }
        double exact = after.mean() - before.mean();
        Difference difference = new Difference(before.mean(), after.mean(), Unit.METRE, 1);
        double scatter = Math.sqrt((squared(before) + squared(after)) / 2);
        int needed = ThrowsNeeded.aSide(exact, scatter);
        results.put("average_height_change_m", exact, 2);
        results.put("shown_height_change_m", difference.amount(), 1);
        putNeeded(results, needed);
        answer.verdict(
                difference.same()
                        ? "On the average it is as high as today; to tell them apart takes "
                                + ThrowsNeeded.words(needed) + "."
                        : "On the average it is " + difference.words(Direction.HEIGHT) + "; to show that takes "
                                + ThrowsNeeded.words(needed)
                                + (needed > ThrowsNeeded.CEILING ? "." : ", thrown in turn."));
    }

    private static double squared(Sample sample) {
        return sample.deviation() * sample.deviation();
    }

    private void putNeeded(Fields fields, int needed) {
        fields.put("throws_a_side", needed == Integer.MAX_VALUE ? Double.NaN : needed, 0);
        fields.put("throws_a_side_shown", needed > ThrowsNeeded.CEILING ? Double.NaN : ThrowsNeeded.shown(needed), 0);
        answer.results().put("more_than_so_many_are_not_worth_it", ThrowsNeeded.CEILING);
    }

    /** Without a version: what gains this scatter lets one see. */
    private void hopes() {
        double scatter = now.sample().deviation();
        List<String> words = new ArrayList<>();
        for (double gain : HOPED_FOR) {
            Fields item = answer.results().item("to_show");
            String metres = item.put("gain_m", gain, 1);
            int needed = ThrowsNeeded.aSide(gain, scatter);
            putNeeded(item, needed);
            String many = ThrowsNeeded.words(needed).replaceFirst(" throws a side.*", "");
            words.add(metres + " m " + many);
        }
        answer.verdict("Throws a side that would show a gain: " + String.join(", ", words) + ".");
    }

    private Rows rows() {
        List<String> keys = new ArrayList<>(List.of("throw"));
        for (Scattered one : Scattered.values()) {
            keys.add(one.key());
        }
        String height = ResultQuantities.APEX_HEIGHT.key();
        keys.add("today_" + height);
        if (then != null) {
            keys.add("version_" + height);
        }
        Rows rows = new Rows(keys);
        for (int i = 0; i < now.count(); i++) {
            List<Object> cells = new ArrayList<>(List.of((double) (i + 1)));
            for (Scattered one : Scattered.values()) {
                cells.add(Unit.of(one.key()).fromSi(now.off(i, one)));
            }
            cells.add(now.height(i));
            if (then != null) {
                cells.add(then.height(i));
            }
            rows.add(cells);
        }
        return rows;
    }

    private Figure figure() {
        List<ScatterFigure.Heights> heights = new ArrayList<>();
        for (Throws one : both()) {
            double[] all = new double[one.count()];
            for (int i = 0; i < all.length; i++) {
                all[i] = one.height(i);
            }
            heights.add(new ScatterFigure.Heights(one == now ? TODAY : label, all));
        }
        return ScatterFigure.of(
                answer.verdict(),
                now.count() + (then == null ? " throws" : " throws of each; solid: today, dashed: " + label),
                FlyFigures.foot(asked.version()),
                ResultQuantities.APEX_HEIGHT,
                heights);
    }
}
