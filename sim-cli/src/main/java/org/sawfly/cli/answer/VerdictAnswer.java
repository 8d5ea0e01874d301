package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.sawfly.cli.chart.VerdictFigure;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.log.LoggedLaunch;
import org.sawfly.study.statistics.Sample;
import org.sawfly.study.statistics.ThrowsNeeded;
import org.sawfly.study.statistics.Verdict;
import org.sawfly.study.statistics.Verdict.Launched;

/** Whether the launches of one set-up were higher than those of another. */
public final class VerdictAnswer {
    private static final Quantity<Sample> MEAN = height("mean_height_m", "mean height", Sample::mean);
    private static final Quantity<Sample> SCATTER = height("scatter_m", "scatter", Sample::deviation);
    private static final Quantity<Sample> LOWEST = height("lowest_m", "lowest", one -> one.quantile(0));
    private static final Quantity<Sample> HIGHEST = height("highest_m", "highest", one -> one.quantile(1));
    private static final double SUREST = 99;

    private final Answer answer = new Answer("verdict");
    private final Side a;
    private final Side b;
    private final Verdict verdict;

    /**
     * A launch that counts.
     *
     * @param logged as its log shows it
     * @param launched as it is compared
     */
    public record Entry(LoggedLaunch logged, Launched launched) {}

    /**
     * One set.
     *
     * @param name "A" or "B"
     * @param files its logs
     * @param entries its launches
     */
    public record Side(String name, List<String> files, List<Entry> entries) {
        /** The launches as they are compared. */
        public List<Launched> launched() {
            return entries.stream().map(Entry::launched).toList();
        }
    }

    private VerdictAnswer(Side a, Side b, Verdict verdict) {
        this.a = a;
        this.b = b;
        this.verdict = verdict;
    }

    /** The whole answer. */
    public static Answer of(Side a, Side b, Verdict verdict) {
        VerdictAnswer made = new VerdictAnswer(a, b, verdict);
        made.sets();
        made.confounders();
        made.end();
        made.rows();
        return made.answer;
    }

    private static Quantity<Sample> height(String key, String words, ToDoubleFunction<Sample> getter) {
        return new Quantity<>(key, words, Unit.METRE, 1, getter);
    }

    private static Sample kept(Side side) {
        List<Launched> out = Verdict.outliers(side.launched());
        return Sample.of(side.launched().stream()
                .filter(one -> !out.contains(one))
                .mapToDouble(Launched::height)
                .toArray());
    }

    private void sets() {
        answer.sayFlush("Set A: " + files(a) + ". Set B: " + files(b) + ".");
        Fields rule = answer.inputs().section("rule");
        answer.say("Rule, fixed beforehand: a launch is left out that lies further from the middle of its own set than "
                + rule.put("outlier_deviations", Verdict.OUTLIER, 1)
                + " times the scatter which the nearer half of the set shows (taken as "
                + rule.put("least_deviation_m", Verdict.LEAST_DEVIATION, 1) + " m at least).");
        Table table = new Table()
                .left("set")
                .right("launches")
                .right("left out")
                .right("mean", "height, m")
                .right("scatter", "m")
                .right("lowest", "m")
                .right("highest", "m");
        for (Side side : List.of(a, b)) {
            Fields fields = answer.results().section("sets").section(side.name());
            Sample kept = kept(side);
            List<String> cells = new ArrayList<>(List.of(
                    side.name(),
                    fields.put("launches", side.entries().size()),
                    fields.put("left_out", side.entries().size() - kept.size())));
            for (Quantity<Sample> one : List.of(MEAN, SCATTER, LOWEST, HIGHEST)) {
                cells.add(fields.put(one, kept));
            }
            table.row(cells);
        }
        answer.table(table);
    }

    private String files(Side side) {
        answer.inputs().put(side.name(), side.files());
        List<String> names = side.files();
        return names.size() <= 3
                ? String.join(", ", names)
                : answer.inputs().put("logs_in_" + side.name(), names.size()) + " logs";
    }

    private void confounders() {
        Fields results = answer.results();
        results.put("order", verdict.order().name().toLowerCase(Locale.ROOT));
        double drift = verdict.drift();
        results.put("drift_a_throw_m", drift, 2);
        switch (verdict.order()) {
            case UNKNOWN ->
                answer.say(
                        "In which order they were thrown is not known (--order ABBA or --one-clock tells it): a drift of"
                                + " thrower or air would look like a difference.");
            case BLOCKS ->
                answer.say(
                        "One set was thrown before the other: a drift of thrower or air would look the same. Next time"
                                + " change over every few throws.");
            case MIXED ->
                answer.say(
                        Double.isNaN(drift)
                                ? "The sets were mixed, but the launches are too few to take a drift out."
                                : "The sets were mixed; a drift is taken out: from throw to throw "
                                        + new Difference(0, drift, Unit.METRE, 2).words(Direction.HEIGHT) + ".");
        }
        double perWind = verdict.perWind();
        results.put("each_mps_of_wind_m", perWind, 1);
        boolean winds =
                entries().stream().anyMatch(one -> !Double.isNaN(one.launched().wind()));
        if (!Double.isNaN(perWind)) {
            answer.say("The wind is taken out: each m/s of it made a launch "
                    + new Difference(0, perWind, Unit.METRE, 1).words(Direction.HEIGHT) + ".");
        } else if (winds) {
            answer.say("The wind is not taken out: it is not given for every launch, went along with the set-up, or the"
                    + " launches are too few.");
        }
    }

    private List<Entry> entries() {
        List<Entry> all = new ArrayList<>(a.entries());
        all.addAll(b.entries());
        return all;
    }

    private void end() {
        Fields results = answer.results();
        boolean plain = Double.isNaN(verdict.drift()) && Double.isNaN(verdict.perWind());
        Difference difference =
                plain ? Difference.of(MEAN, kept(a), kept(b)) : new Difference(0, verdict.difference(), Unit.METRE, 1);
        results.put("b_less_a_m", verdict.difference(), 1);
        results.put("b_less_a_shown_m", difference.amount(), 1);
        Band likely = verdict.likely();
        results.band("b_less_a_m", likely, 1);
        results.put("b_higher_pct", Unit.PERCENT.fromSi(verdict.confidence()), 0);
        results.put("one_launch_scatter_m", verdict.deviation(), 1);
        boolean worthIt = verdict.more() <= ThrowsNeeded.CEILING;
        results.put("more_launches_each", worthIt ? verdict.more() : Double.NaN, 0);
        results.put("most_launches_worth_it", ThrowsNeeded.CEILING);
        String how = (difference.same() ? "as high as A" : difference.words(Direction.HEIGHT) + " than A") + " ("
                + range(likely) + ", 9 times in 10)";
        if (verdict.more() == 0) {
            answer.verdict("B is " + (verdict.difference() > 0 ? "higher" : "lower") + ", " + sure() + " sure: B is "
                    + how + ".");
        } else if (worthIt) {
            answer.caution(Cautions.THROW);
            answer.verdict(
                    "Not enough throws: " + verdict.more() + " more each would show a difference of this size. So far"
                            + " B is " + how + ", which way is " + sure() + " sure.");
        } else {
            answer.verdict("No difference worth the throws it would take to show it, more than " + ThrowsNeeded.CEILING
                    + " more each: B is " + how + ".");
        }
    }

    /** "97 in 100": of nothing more than 99. */
    private String sure() {
        Fields results = answer.results();
        double percent = Unit.PERCENT.fromSi(Math.max(verdict.confidence(), 1 - verdict.confidence()));
        String shown = results.put("sure_in_100", Math.min(SUREST, Math.floor(percent)), 0);
        return (percent > SUREST ? "more than " : "") + shown + " in " + results.put("sure_of", 100);
    }

    private static String range(Band likely) {
        if (likely.spansZero()) {
            return "from " + new Difference(0, likely.low(), Unit.METRE, 1).words(Direction.HEIGHT) + " to "
                    + new Difference(0, likely.high(), Unit.METRE, 1).words(Direction.HEIGHT);
        }
        return Numbers.range(likely.high() > 0 ? likely : likely.negated(), 1) + " m";
    }

    private void rows() {
        Rows rows = new Rows(List.of("set", "log", "released_s", "height_m", "wind_mps", "left_out"));
        List<VerdictFigure.Dot> dots = new ArrayList<>();
        for (Side side : List.of(a, b)) {
            List<Launched> out = Verdict.outliers(side.launched());
            for (Entry one : side.entries()) {
                boolean left = out.contains(one.launched());
                rows.add(List.of(
                        side.name(),
                        one.logged().log().name(),
                        one.logged().launch().release(),
                        one.launched().height(),
                        one.launched().wind(),
                        left ? "yes" : "no"));
                dots.add(new VerdictFigure.Dot(
                        side.name(), one.launched().time(), one.launched().height(), left));
            }
        }
        answer.rows(rows);
        answer.figure(VerdictFigure.of(
                answer.verdict(),
                "Left out by the rule: in brackets. Lines: means of what is left.",
                files(a) + "; " + files(b),
                dots,
                List.of(
                        new VerdictFigure.Mean("A: " + MEAN.textWithUnit(kept(a)), MEAN.value(kept(a))),
                        new VerdictFigure.Mean("B: " + MEAN.textWithUnit(kept(b)), MEAN.value(kept(b))))));
    }
}
