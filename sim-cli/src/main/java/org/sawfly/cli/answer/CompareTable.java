package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.glider.RebalanceRule.Keep;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.BoomLook;
import org.sawfly.study.BoomQuantities;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** The table of a comparison: one row a quantity, one column a version; with one version also what changes, in words. */
final class CompareTable {
    private static final String TODAY = "today";
    /** Letters a name has over its column, by the number of versions. */
    private static final int[] NAME_WIDTHS = {0, 8, 17, 12, 10};

    private static final String LAUNCH = "launch height";

    private final Fields results;
    private final Result today;
    private final List<Version> versions;
    private final Map<String, BoomLook> booms;
    private final HowSure sure;
    private final Brevity brevity;
    private final Table table = new Table(2, 2);
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> folded = new ArrayList<>();

    /** With ranges where it is known how sure the differences are; null for none. */
    CompareTable(
            Fields results,
            Result today,
            List<Version> versions,
            Map<String, BoomLook> booms,
            HowSure sure,
            Brevity brevity) {
        this.results = results;
        this.today = today;
        this.versions = versions;
        this.booms = booms;
        this.sure = sure;
        this.brevity = brevity;
    }

    /** The rows in which nothing is to be seen, in one sentence; empty for none. Known after {@link #table}. */
    String folded() {
        if (folded.isEmpty()) {
            return "";
        }
        String what = versions.size() == 1 ? "Too small to see: " : "The same in all: ";
        return what + String.join("; ", folded) + ".";
    }

    Table table() {
        table.left("").right(TODAY);
        versions.forEach(version -> table.right(broken(version.label())));
        table.left("");
        if (versions.size() == 1) {
            table.left(sure == null ? "change" : "change (9 times in 10)");
        }
        putAll();
        row(ResultQuantities.MASS, "mass", Direction.WEIGHT);
        row(ResultQuantities.NOSE_LEAD, "nose lead", Direction.LEAD);
        battery();
        row(ResultQuantities.CG, "CG behind leading edge", Direction.PLACE);
        row(ResultQuantities.STATIC_MARGIN, "margin, glide", Direction.AMOUNT);
        row(ResultQuantities.LAUNCH_MARGIN, "margin, launch speed", Direction.AMOUNT);
        volume(ResultQuantities.TAIL_VOLUME_H, "tail volume, tailplane", Usual.TAIL_VOLUME_H);
        volume(ResultQuantities.TAIL_VOLUME_V, "tail volume, fin", Usual.TAIL_VOLUME_V);
        if (versions.size() > 1) {
            damping();
        }
        if (!booms.isEmpty()) {
            boom(BoomQuantities.MOVES_HEAVY, "boom moves under 500 g");
            boom(BoomQuantities.LEAST_RESERVE, "boom bears throw, times");
        }
        seen(ResultQuantities.APEX_HEIGHT, LAUNCH, Direction.HEIGHT, Seeing.HEIGHT_M);
        if (versions.size() > 1 && sure != null) {
            ends();
        }
        seen(ResultQuantities.SETTLED_HEIGHT, "settled in the glide", Direction.HEIGHT, Seeing.HEIGHT_M);
        seen(ResultQuantities.FIRST_SWING, "first swing of the nose", Direction.AMOUNT, Seeing.SWING_DEG);
        if (today.plan().axes() == Axes.ALL) {
            side(OutcomeQuantities.ROLLED, "roll after release");
            side(OutcomeQuantities.SLANT, "lean of the climb");
            side(OutcomeQuantities.DRIFT, "top to the side");
            side(OutcomeQuantities.HEADING, "heading at the top");
        }
        seen(ResultQuantities.MIN_SINK, "least sink", Direction.AMOUNT, Seeing.SINK_MPS);
        clock(ResultQuantities.STILL_AIR_CIRCLING, "still air, circling");
        fold();
        rows.forEach(table::row);
        return table;
    }

    /** Takes rows out that say nothing new, where there are at least two of them. */
    private void fold() {
        List<List<String>> same = rows.stream().filter(this::saysNothing).toList();
        if (same.size() < 2) {
            return;
        }
        rows.removeAll(same);
        for (List<String> row : same) {
            folded.add((row.get(0) + " " + row.get(2) + " " + row.get(versions.size() + 2)).strip());
        }
    }

    private boolean saysNothing(List<String> row) {
        if (row.get(0).equals(LAUNCH)) {
            return false;
        }
        if (versions.size() == 1) {
            return brevity.folds() && row.get(row.size() - 1).equals(Difference.TOO_SMALL);
        }
        return row.subList(1, versions.size() + 2).stream().distinct().count() == 1;
    }

    /** Between what ends the launches of several versions lie against today's, 9 times in 10. */
    private void ends() {
        List<String> worst = new ArrayList<>(List.of("worst, 9 times in 10", ""));
        List<String> best = new ArrayList<>(List.of("best, 9 times in 10", ""));
        List<String> lost = new ArrayList<>(List.of(sure.lostOf(), sure.lostCount(0)));
        for (int i = 1; i <= versions.size(); i++) {
            boolean none = versions.get(i - 1).answered().result() == null;
            worst.add(none ? Numbers.NONE : sure.launchEnd(i, Band::low));
            best.add(none ? Numbers.NONE : sure.launchEnd(i, Band::high));
            lost.add(none ? Numbers.NONE : sure.lostCount(i));
        }
        String unit = ResultQuantities.APEX_HEIGHT.unit().words();
        worst.add(unit);
        best.add(unit);
        rows.add(worst);
        rows.add(best);
        if (!lost.subList(1, lost.size()).stream().allMatch("0"::equals)) {
            lost.add("");
            rows.add(lost);
        }
    }

    private void putAll() {
        Fields section = results.section("versions");
        section.section(TODAY).putAll(ResultQuantities.ALL, today);
        for (Version version : versions) {
            Fields one = section.section(version.label());
            one.put("ended", version.answered().ended());
            Result result = version.answered().result();
            if (result != null) {
                one.putAll(ResultQuantities.ALL, result);
            }
        }
    }

    private void row(Quantity<Result> quantity, String words, Direction direction) {
        List<String> cells = cells(quantity, words);
        Result only = only();
        if (only != null) {
            Difference difference = difference(quantity, only);
            boolean kept = difference.same() && isKept(quantity);
            cells.add(kept ? "kept" : words(quantity, difference, direction, 0));
        }
        rows.add(cells);
    }

    /** A difference, with its likely range where that is known. */
    private String words(Quantity<Result> quantity, Difference difference, Direction direction, double smallest) {
        if (sure != null && HowSure.tells(quantity)) {
            return difference.words(direction, sure.band(1, quantity), smallest);
        }
        return smallest == 0 ? difference.words(direction) : Seeing.words(difference, direction, smallest);
    }

    private boolean isKept(Quantity<Result> quantity) {
        Keep keep = versions.get(0).rule().keep();
        return keep == Keep.MARGIN && quantity == ResultQuantities.STATIC_MARGIN
                || keep == Keep.CG && quantity == ResultQuantities.CG;
    }

    /** What is known of the booms, where a version has one. */
    private void boom(Quantity<BoomLook> quantity, String words) {
        List<String> cells = new ArrayList<>(List.of(words));
        List<String> labels = new ArrayList<>(List.of(TODAY));
        versions.forEach(version -> labels.add(version.label()));
        for (String label : labels) {
            BoomLook look = booms.get(label);
            cells.add(
                    look == null
                            ? Numbers.NONE
                            : results.section("booms").section(label).put(quantity, look));
        }
        cells.add(quantity.unit().words());
        BoomLook changed = versions.size() == 1 ? booms.get(versions.get(0).label()) : null;
        if (changed != null) {
            Difference difference = Difference.of(quantity, booms.get(TODAY), changed);
            cells.add(difference.words(Direction.AMOUNT));
            results.section("changes").section(versions.get(0).label()).difference(quantity.key(), difference);
        }
        rows.add(cells);
    }

    /** How far the battery went, and which way; no line when it stays in every version. */
    private void battery() {
        List<String> ways = new ArrayList<>();
        boolean several = versions.size() > 1;
        for (Version version : versions) {
            Result result = version.answered().result();
            double forward = result == null ? Double.NaN : ResultQuantities.BATTERY_FORWARD.shown(result);
            Difference moved = new Difference(0, -forward, Unit.MILLIMETRE, 1);
            boolean stays = moved.same() || Double.isNaN(forward);
            ways.add(
                    stays
                            ? Numbers.NONE
                            : several ? moved.wordsWithoutUnit(Direction.PLACE) : Numbers.fixed(Math.abs(forward), 1));
        }
        results.section("versions").section(TODAY).put("battery_forward_mm", 0.0, 1);
        if (ways.stream().allMatch(Numbers.NONE::equals)) {
            return;
        }
        List<String> cells = new ArrayList<>(List.of("battery moved", several ? Numbers.NONE : Numbers.fixed(0, 1)));
        cells.addAll(ways);
        cells.add(Unit.MILLIMETRE.words());
        Result only = only();
        if (only != null) {
            double back = -ResultQuantities.BATTERY_FORWARD.shown(only);
            cells.add(new Difference(0, back, Unit.MILLIMETRE, 1).words(Direction.PLACE));
        }
        rows.add(cells);
    }

    private void volume(Quantity<Result> quantity, String words, Band usual) {
        List<String> cells = cells(quantity, words);
        results.section("usual").put(quantity.key(), new double[] {usual.low(), usual.high()});
        String range = "(usual " + Numbers.shortest(usual.low(), 3) + "-" + Numbers.shortest(usual.high(), 3) + ")";
        Result only = only();
        if (only != null) {
            Difference difference = difference(quantity, only);
            cells.add((difference.percentWords() + "  " + range).strip());
        }
        rows.add(cells);
    }

    private void seen(Quantity<Result> quantity, String words, Direction direction, double smallest) {
        List<String> cells = cells(quantity, words);
        Result only = only();
        if (only != null) {
            cells.add(words(quantity, difference(quantity, only), direction, smallest));
        }
        rows.add(cells);
    }

    /** A quantity that is positive to the right, with the side in a letter. */
    private void side(Quantity<Outcome> quantity, String words) {
        List<String> cells = new ArrayList<>(List.of(words, FlySideways.letter(quantity, today.outcome())));
        for (Version version : versions) {
            Result result = version.answered().result();
            cells.add(result == null ? Numbers.NONE : FlySideways.letter(quantity, result.outcome()));
        }
        cells.add(quantity.unit().words());
        rows.add(cells);
    }

    private void clock(Quantity<Result> quantity, String words) {
        List<String> cells = new ArrayList<>(List.of(words, Numbers.clock(quantity.value(today))));
        for (Version version : versions) {
            Result result = version.answered().result();
            cells.add(result == null ? Numbers.NONE : Numbers.clock(quantity.value(result)));
        }
        cells.add("");
        Result only = only();
        if (only != null) {
            cells.add(words(quantity, difference(quantity, only), Direction.TIME, Seeing.TIME_S));
        }
        rows.add(cells);
    }

    /** With several versions: how much of today's damping each has. */
    private void damping() {
        List<String> pitch =
                percents("pitch damping", "pitch_damping_pct", r -> r.feel().pitchDamping());
        List<String> yaw =
                percents("yaw damping", "yaw_damping_pct", r -> r.feel().yawDamping());
        if (brevity.damping()) {
            rows.add(pitch);
            rows.add(yaw);
        }
    }

    private interface Measure {
        double of(Result result);
    }

    private List<String> percents(String words, String key, Measure measure) {
        double whole = Unit.PERCENT.fromSi(1);
        List<String> cells = new ArrayList<>(List.of(words));
        cells.add(results.section("versions").section(TODAY).put(key, whole, 0));
        for (Version version : versions) {
            Result result = version.answered().result();
            double share = result == null ? Double.NaN : whole * measure.of(result) / measure.of(today);
            cells.add(results.section("versions").section(version.label()).put(key, share, 0));
        }
        cells.add(Unit.PERCENT.words());
        return cells;
    }

    private List<String> cells(Quantity<Result> quantity, String words) {
        List<String> cells = new ArrayList<>(List.of(words, quantity.text(today)));
        for (Version version : versions) {
            Result result = version.answered().result();
            cells.add(result == null ? Numbers.NONE : quantity.text(result));
        }
        cells.add(quantity.unit().words());
        for (Version version : versions) {
            if (version.answered().result() != null) {
                difference(version.label(), quantity, version.answered().result());
            }
        }
        return cells;
    }

    private Difference difference(Quantity<Result> quantity, Result result) {
        return difference(versions.get(0).label(), quantity, result);
    }

    private Difference difference(String label, Quantity<Result> quantity, Result result) {
        return results.section("changes")
                .section(label)
                .difference(quantity.key(), Difference.of(quantity, today, result));
    }

    /** The result of the only version; null when there are more or when it has none. */
    private Result only() {
        return versions.size() == 1 ? versions.get(0).answered().result() : null;
    }

    /** A name in lines that fit over a column of numbers. */
    private String[] broken(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > NAME_WIDTHS[versions.size()]) {
                lines.add(line.toString());
                line = new StringBuilder();
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines.toArray(String[]::new);
    }
}
