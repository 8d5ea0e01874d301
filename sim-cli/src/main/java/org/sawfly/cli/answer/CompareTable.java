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
    private static final int NAME_WIDTH = 8;

    private final Fields results;
    private final Result today;
    private final List<Version> versions;
    private final Map<String, BoomLook> booms;
    private final HowSure sure;
    private final Table table = new Table(2, 2);

    /** With ranges where it is known how sure the differences are; null for none. */
    CompareTable(Fields results, Result today, List<Version> versions, Map<String, BoomLook> booms, HowSure sure) {
        this.results = results;
        this.today = today;
        this.versions = versions;
        this.booms = booms;
        this.sure = sure;
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
        battery("battery moved forward", 1);
        battery("battery moved back", -1);
        row(ResultQuantities.CG, "CG behind leading edge", Direction.PLACE);
        row(ResultQuantities.STATIC_MARGIN, "margin, glide", Direction.AMOUNT);
        row(ResultQuantities.LAUNCH_MARGIN, "margin, launch speed", Direction.AMOUNT);
        volume(ResultQuantities.TAIL_VOLUME_H, "tail volume, tailplane", Usual.TAIL_VOLUME_H);
        volume(ResultQuantities.TAIL_VOLUME_V, "tail volume, fin", Usual.TAIL_VOLUME_V);
        if (versions.size() > 1) {
            damping();
        }
        if (!booms.isEmpty()) {
            boom(BoomQuantities.MOVES_HEAVY, "500 g at the tail moves it");
            boom(BoomQuantities.LEAST_RESERVE, "boom bears the throw, times");
        }
        seen(ResultQuantities.APEX_HEIGHT, "launch height", Direction.HEIGHT, Seeing.HEIGHT_M);
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
        return table;
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
        table.row(cells);
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
        table.row(cells);
    }

    /** How far the battery went one way; no line when it does so in no version. */
    private void battery(String words, int forward) {
        List<String> cells = new ArrayList<>(List.of(words, Numbers.fixed(0, 1)));
        boolean moves = false;
        for (Version version : versions) {
            Result result = version.answered().result();
            double moved = result == null ? Double.NaN : forward * ResultQuantities.BATTERY_FORWARD.shown(result);
            moves |= moved > 0;
            cells.add(Numbers.fixed(moved < 0 ? 0 : moved, 1));
        }
        if (!moves) {
            return;
        }
        cells.add(Unit.MILLIMETRE.words());
        Result only = only();
        if (only != null) {
            double back = -ResultQuantities.BATTERY_FORWARD.shown(only);
            cells.add(new Difference(0, back, Unit.MILLIMETRE, 1).words(Direction.PLACE));
        }
        results.section("versions").section(TODAY).put("battery_forward_mm", 0.0, 1);
        table.row(cells);
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
        table.row(cells);
    }

    private void seen(Quantity<Result> quantity, String words, Direction direction, double smallest) {
        List<String> cells = cells(quantity, words);
        Result only = only();
        if (only != null) {
            cells.add(words(quantity, difference(quantity, only), direction, smallest));
        }
        table.row(cells);
    }

    /** A quantity that is positive to the right, with the side in a letter. */
    private void side(Quantity<Outcome> quantity, String words) {
        List<String> cells = new ArrayList<>(List.of(words, FlySideways.letter(quantity, today.outcome())));
        for (Version version : versions) {
            Result result = version.answered().result();
            cells.add(result == null ? Numbers.NONE : FlySideways.letter(quantity, result.outcome()));
        }
        cells.add(quantity.unit().words());
        table.row(cells);
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
        table.row(cells);
    }

    /** With several versions: how much of today's damping each has. */
    private void damping() {
        table.row(percents("pitch damping", "pitch_damping_pct", r -> r.feel().pitchDamping()));
        table.row(percents("yaw damping", "yaw_damping_pct", r -> r.feel().yawDamping()));
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
    private static String[] broken(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > NAME_WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder();
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines.toArray(String[]::new);
    }
}
