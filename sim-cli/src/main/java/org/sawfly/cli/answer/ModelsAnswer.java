package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.sawfly.aero.ModelChoice;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.BalanceQuantities;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Setting;

/** One glider, or one change of it, answered by both models: what the choice of model does to each answer. */
public final class ModelsAnswer {
    private static final List<Quantity<Result>> SHOWN = List.of(
            ResultQuantities.NOSE_LEAD,
            BalanceQuantities.NEUTRAL_POINT.of(Result::margins),
            ResultQuantities.STATIC_MARGIN,
            ResultQuantities.LAUNCH_MARGIN,
            OutcomeQuantities.RELEASE_SPEED.of(Result::outcome),
            ResultQuantities.APEX_HEIGHT,
            ResultQuantities.SETTLED_HEIGHT,
            ResultQuantities.FIRST_SWING,
            ResultQuantities.MIN_SINK,
            ResultQuantities.BEST_GLIDE);

    private final Answer answer = new Answer("compare");
    private final Map<ModelChoice, Pair> pairs;
    private final boolean changed;

    /**
     * What one model says.
     *
     * @param today of the glider as it is
     * @param version of the changed one; the same as today when nothing is changed
     */
    public record Pair(Result today, Result version) {
        double change(Quantity<Result> quantity) {
            return Difference.of(quantity, today, version).amount();
        }
    }

    private ModelsAnswer(Map<ModelChoice, Pair> pairs, boolean changed) {
        this.pairs = new EnumMap<>(pairs);
        this.changed = changed;
    }

    /**
     * The whole answer.
     *
     * @param title what is compared, in one line
     * @param changes against the file; empty for the glider as it is
     * @param pairs what each model says
     */
    public static Answer of(String title, List<Setting> changes, Map<ModelChoice, Pair> pairs) {
        ModelsAnswer made = new ModelsAnswer(pairs, !changes.isEmpty());
        made.write(title, changes);
        return made.answer;
    }

    private void write(String title, List<Setting> changes) {
        Result today = pairs.get(ModelChoice.TAIL_VOLUME).today();
        answer.inputs().put("glider", today.plan().craft().glider().name());
        answer.inputs().put("launch", today.plan().launch().name());
        answer.inputs().put("changes", changes.stream().map(Setting::toString).toList());
        answer.inputs().put("model", "both");
        answer.sayFlush(title);
        answer.say("Each model works out the throw from the usual height and the first swing by itself;"
                + " what they differ in is the change.");
        answer.gap();
        Table table = new Table(2, 2).left("");
        for (ModelChoice model : pairs.keySet()) {
            Fields fields = answer.results().section("models").section(Case.model(model));
            fields.section("today")
                    .putAll(ResultQuantities.ALL, pairs.get(model).today());
            table.right(model == ModelChoice.TAIL_VOLUME ? "fast" : Case.model(model), changed ? "today" : "");
            if (changed) {
                fields.section("changed")
                        .putAll(ResultQuantities.ALL, pairs.get(model).version());
                table.right("", "changed");
            }
        }
        table.left("").right("strip against", changed ? "fast, change" : "fast");
        SHOWN.forEach(quantity -> row(table, quantity));
        answer.table(table);
        Cautions.of(changes).forEach(answer::caution);
        pairs.values().stream()
                .map(Pair::version)
                .filter(version -> !Cautions.of(version).isEmpty())
                .findFirst()
                .ifPresent(version -> Cautions.of(version).forEach(answer::caution));
        verdict();
    }

    private void row(Table table, Quantity<Result> quantity) {
        List<String> cells = new ArrayList<>(List.of(quantity.words()));
        for (Pair pair : pairs.values()) {
            cells.add(quantity.text(pair.today()));
            if (changed) {
                cells.add(quantity.text(pair.version()));
            }
        }
        cells.add(quantity.unit().words());
        double apart = apart(quantity);
        answer.results().section("strip_against_fast").put(quantity.key(), apart, quantity.decimals());
        cells.add(new Difference(0, apart, Unit.NUMBER, quantity.decimals()).words(Direction.AMOUNT));
        table.row(cells);
    }

    /** By how much the strips say more than the fast model: of the change, or of the answer itself. */
    private double apart(Quantity<Result> quantity) {
        Pair fast = pairs.get(ModelChoice.TAIL_VOLUME);
        Pair strip = pairs.get(ModelChoice.STRIP);
        double amount = changed
                ? strip.change(quantity) - fast.change(quantity)
                : Difference.of(quantity, fast.today(), strip.today()).amount();
        return Numbers.rounded(amount, quantity.decimals());
    }

    private void verdict() {
        Pair fast = pairs.get(ModelChoice.TAIL_VOLUME);
        Pair strip = pairs.get(ModelChoice.STRIP);
        Quantity<Result> height = ResultQuantities.SETTLED_HEIGHT;
        if (FarSwing.of(fast.version())) {
            FarSwing.say(answer);
            return;
        }
        if (!changed) {
            answer.verdict("Settled height " + height.text(fast.today()) + " m by the fast model, "
                    + height.text(strip.today()) + " m by strips.");
        } else if (Math.abs(apart(height)) < Seeing.HEIGHT_M) {
            String both = words(height, fast, Direction.HEIGHT);
            String strips = words(height, strip, Direction.HEIGHT);
            answer.verdict(
                    apart(height) == 0
                            ? "Both models say the same of this change: settled height " + both + "."
                            : "Both models say nearly the same of this change: settled height " + both
                                    + " by the fast one, " + strips + " by strips; nobody can see that apart.");
        } else {
            answer.verdict("The models part over this change: settled height "
                    + words(height, fast, Direction.HEIGHT) + " by the fast one, "
                    + words(height, strip, Direction.HEIGHT) + " by strips. Believe the strips.");
        }
    }

    private String words(Quantity<Result> quantity, Pair pair, Direction direction) {
        Difference difference = Difference.of(quantity, pair.today(), pair.version());
        answer.results()
                .section("changes")
                .put(pair == pairs.get(ModelChoice.STRIP) ? "strip_m" : "fast_m", difference.amount(), 1);
        return difference.words(direction);
    }
}
