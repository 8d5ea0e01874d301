package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.Balance;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Part;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.BalanceQuantities;
import org.sawfly.strength.Reserve;
import org.sawfly.study.Answered;
import org.sawfly.study.BoomLook;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.TryFirst;

/** Today's glider beside its versions: the table, what is felt, the grams, what to try first, and what to do. */
public final class CompareAnswer {
    private static final double HALF_GRAM = 0.5;
    private static final double LEAST_SLIDE_MM = 0.5;
    private static final double NOTICED_MARGIN_PCT = 0.1;
    /** What the glue of a cut is called among the parts. */
    static final String JOINT = "new joint";

    private final Answer answer = new Answer("compare");
    private final Result today;
    private final List<Version> versions;
    private final Map<String, BoomLook> booms;
    private final HowSure sure;
    private final Brevity brevity;

    /**
     * What was asked.
     *
     * @param title what is compared, in one line
     * @param first of the versions: what it says of preset and pilot holds for all
     */
    public record Asked(String title, Scenario first) {}

    private CompareAnswer(
            Result today, List<Version> versions, Map<String, BoomLook> booms, HowSure sure, Brevity brevity) {
        this.today = today;
        this.versions = versions;
        this.booms = booms;
        this.sure = sure;
        this.brevity = brevity;
    }

    /**
     * The answer, as much of it as a page holds.
     *
     * @param asked
     * @param today its result
     * @param versions one or more
     * @param booms what they bear by label, today's under "today"; empty when the boom is not mended
     * @param sure how sure the differences are, versions in the same order; null for no ranges
     */
    public static Answer of(
            Asked asked, Result today, List<Version> versions, Map<String, BoomLook> booms, HowSure sure) {
        Answer answer = null;
        for (int level = 0; level <= Brevity.SHORTEST; level++) {
            CompareAnswer made = new CompareAnswer(today, versions, booms, sure, new Brevity(level));
            made.write(asked.title(), asked.first());
            answer = made.answer;
            if (TextWriter.write(answer).lines().count() <= Brevity.MOST_LINES) {
                break;
            }
        }
        return answer;
    }

    private void write(String title, Scenario first) {
        Glider glider = today.plan().craft().glider();
        answer.inputs().put("glider", glider.name());
        answer.inputs().put("launch", today.plan().launch().name());
        answer.inputs().put("preset_rule", ChangeWords.rules(first));
        head(title, ChangeWords.rules(first) + "; " + today.plan().launch().name() + " throws.");
        CompareTable table = new CompareTable(answer.results(), today, versions, booms, sure, brevity);
        answer.table(table.table());
        if (!table.folded().isEmpty()) {
            answer.say(table.folded());
        }
        for (Version version : versions) {
            Answered answered = version.answered();
            if (!answered.flew()) {
                answer.say("  " + version.label() + ": " + answered.ended() + ".");
            }
        }
        if (sure != null) {
            howSure();
        }
        if (versions.size() == 1 && versions.get(0).answered().result() != null) {
            feel(versions.get(0), versions.get(0).answered().result());
        }
        for (Version version : versions) {
            if (version.answered().result() != null) {
                grams(version, version.answered().result());
            }
        }
        versions.get(0).tryFirst().ifPresent(this::tryFirst);
        for (Version version : versions) {
            Cautions.of(version.changes()).forEach(answer::caution);
        }
        for (Version version : versions) {
            Result result = version.answered().result();
            if (result != null) {
                Cautions.of(result).forEach(answer::caution);
            }
        }
        booms.forEach((label, boom) -> {
            Reserve weakest = boom.strength().weakest();
            if (weakest.factor() < BoomAnswer.WEAK) {
                answer.caution(Cautions.weakSpot(label, weakest));
            }
        });
        answer.rows(CompareRows.of(today, versions, sure));
        new CompareVerdict(answer, today, versions, sure).write();
    }

    /** What is compared and by which rules: in one line where several versions have one title and it fits. */
    private void head(String title, String rules) {
        String both = title + ". " + rules;
        if (versions.size() > 1 && both.length() <= TextWriter.WIDTH) {
            answer.sayFlush(both);
        } else {
            answer.sayFlush(title);
            answer.say((versions.size() == 1 ? ChangeWords.keeps(versions.get(0).rule()) + " " : "") + rules);
        }
        if (brevity.gap()) {
            answer.gap();
        }
    }

    private void howSure() {
        Fields results = answer.results();
        sure.put(results);
        sure.putValues(0, results.section("versions").section("today"));
        Map<String, String> reasons = new LinkedHashMap<>();
        for (int i = 1; i <= versions.size(); i++) {
            Version version = versions.get(i - 1);
            if (version.answered().result() == null) {
                continue;
            }
            sure.putValues(i, results.section("versions").section(version.label()));
            sure.putDifferences(i, results.section("changes").section(version.label()));
            reasons.put(version.label(), sure.greatestReason(i));
        }
        if (versions.size() == 1 && !reasons.isEmpty()) {
            answer.say("How sure: " + sure.launchAndReasons(1));
        } else if (!reasons.isEmpty()) {
            answer.say("Why so wide: " + why(reasons) + "." + sure.seen());
        }
    }

    /** What the range of each version hangs on most; once where it is the same for all. */
    private static String why(Map<String, String> reasons) {
        Map<String, List<String>> labels = new LinkedHashMap<>();
        reasons.forEach((label, reason) ->
                labels.computeIfAbsent(reason, key -> new ArrayList<>()).add(label));
        if (labels.size() == 1) {
            return reasons.values().iterator().next();
        }
        List<String> words = new ArrayList<>();
        labels.forEach((reason, who) ->
                words.add((reason.isEmpty() ? "nothing in particular" : reason) + " (" + String.join(", ", who) + ")"));
        return String.join("; ", words);
    }

    private void feel(Version version, Result result) {
        Fields changes = answer.results().section("changes").section(version.label());
        String pitch = percent(
                changes,
                "pitch_damping_change_pct",
                today.feel().pitchDamping(),
                result.feel().pitchDamping());
        String yaw = percent(
                changes,
                "yaw_damping_change_pct",
                today.feel().yawDamping(),
                result.feel().yawDamping());
        String elevator = percent(
                changes,
                "elevator_throw_change_pct",
                1 / today.feel().elevatorPower(),
                1 / result.feel().elevatorPower());
        String rudder = percent(
                changes,
                "rudder_throw_change_pct",
                1 / today.feel().rudderPower(),
                1 / result.feel().rudderPower());
        Difference cruise = changes.difference(
                ResultQuantities.CRUISE_ELEVATOR_UP.key(),
                Difference.of(ResultQuantities.CRUISE_ELEVATOR_UP, today, result));
        answer.say("What you will feel: pitch damping " + pitch + ", yaw damping " + yaw + ". Elevator throws "
                + elevator + ", rudder " + rudder + "; elevator in cruise "
                + (cruise.same() ? "the same" : cruise.words(Direction.UP_DOWN)) + ".");
    }

    private static String percent(Fields fields, String key, double before, double after) {
        double percent = Numbers.rounded(Unit.PERCENT.fromSi(after / before - 1), 0);
        fields.put(key, percent, 0);
        if (percent == 0) {
            return "the same";
        }
        return Numbers.fixed(Math.abs(percent), 0) + " % " + (percent < 0 ? "less" : "more");
    }

    private void grams(Version version, Result result) {
        Fields fields = answer.results().section("versions").section(version.label());
        Glider after = result.plan().craft().glider();
        String which = versions.size() == 1 ? "The grams: " : "The grams, " + version.label() + ": ";
        List<Grams.Item> items = Grams.of(today, result);
        if (items.isEmpty() && versions.size() > 1) {
            return;
        }
        StringBuilder words = new StringBuilder(which + Grams.words(items, version.cuts(), fields) + ".");
        Part joint = after.parts().get(JOINT);
        if (joint != null && versions.size() == 1) {
            double lead =
                    HALF_GRAM * Balance.of(after).leadPerMass(joint.place().x());
            String costs = fields.put("half_gram_at_the_joint_costs_g", lead, 1);
            if (brevity.glue()) {
                words.append(" Half a gram of glue back there costs you " + costs + " g of lead.");
            }
        }
        if (brevity.grams(versions.size() == 1)) {
            answer.say(words.toString());
        }
    }

    private void tryFirst(TryFirst tried) {
        Quantity<Result> margin = ResultQuantities.STATIC_MARGIN;
        double now = margin.shown(today);
        double then = Numbers.rounded(Unit.PERCENT.fromSi(tried.marginShare()), margin.decimals());
        boolean tooLittle = then < Cautions.LITTLE_MARGIN_PCT;
        double lead = Unit.GRAM.fromSi(tried.leadPutIn());
        double battery = Unit.MILLIMETRE.fromSi(tried.batteryForward());
        boolean nothingToDo = Numbers.rounded(lead, 1) == 0 && Math.abs(battery) < LEAST_SLIDE_MM;
        if (tooLittle || nothingToDo || Math.abs(then - now) < NOTICED_MARGIN_PCT / 2) {
            return;
        }
        Fields fields = answer.results().section("try_first");
        String percent = fields.put(BalanceQuantities.STATIC_MARGIN.key(), then, margin.decimals());
        String place = fields.put("cg_mm", Unit.MILLIMETRE.fromSi(tried.cg()), 1);
        String leadWords = new Difference(0, lead, Unit.GRAM, 1).words(Direction.LEAD);
        fields.put("lead_put_in_g", Numbers.rounded(lead, 1), 1);
        fields.put("battery_forward_mm", Numbers.rounded(battery, 0), 0);
        String how = Numbers.rounded(lead, 1) == 0 ? "" : leadWords + " of lead";
        if (Math.abs(battery) >= LEAST_SLIDE_MM) {
            String slid = "slide the battery " + Numbers.fixed(Math.abs(battery), 0) + " mm "
                    + (battery > 0 ? "forward" : "back");
            how = slid + (how.isEmpty() ? "" : " and " + how);
        }
        Version first = versions.get(0);
        String which = versions.size() == 1 ? "it" : "\"" + fields.put("version", first.label()) + "\"";
        if (brevity.tryFirst()) {
            answer.say("Try it first, no saw: at TODAY's CG " + which + " would have " + percent
                    + " % margin. You get that now with the CG at " + place + " mm: " + how
                    + " and fly it. (In pitch only.)");
        }
    }
}
