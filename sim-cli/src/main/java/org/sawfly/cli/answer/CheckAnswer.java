package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.file.Assumed;
import org.sawfly.file.FileCheck;
import org.sawfly.file.Problem;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;

/** What a file says, what it leaves to be assumed, and which numbers are trusted least. */
public final class CheckAnswer {
    private static final int DECIMALS = 4;
    /** Settings are chosen, not measured: no doubt about them. */
    private static final String CHOSEN = "glide_settings";

    private static final int SINGLE_COLUMN = 14;
    /** Assumptions that are shown one to a line. */
    private static final int MOST_SEEN = 6;

    private static final int TRUSTED_LEAST = 3;
    /** What is known of a neutral point without a dive test, either way [mm]; common practice, no source. */
    static final double KNOWN_TO_MM = 3;

    private final Answer answer = new Answer("check");
    private final FileCheck check;

    private CheckAnswer(FileCheck check) {
        this.check = check;
    }

    /** The whole answer about a file that was accepted. */
    public static Answer of(String file, FileCheck check) {
        CheckAnswer made = new CheckAnswer(check);
        made.answer.inputs().put("file", file);
        made.write(file);
        return made.answer;
    }

    private void write(String file) {
        Fields results = answer.results();
        results.put("kind", check.kind());
        results.put("name", check.name());
        answer.sayFlush(file + ": " + check.kind() + " \"" + check.name() + "\", nothing wrong with it");
        if (!check.doubts().isEmpty()) {
            answer.lines("Unusual, but accepted:");
            for (Problem doubt : check.doubts()) {
                Fields one = results.item("unusual");
                one.put("path", doubt.path());
                one.put("what", doubt.what() + (doubt.maybe().isEmpty() ? "" : ". Maybe " + doubt.maybe()));
                answer.say("  " + one.put("words", doubt.toString().replace("\n  Maybe", ". Maybe")));
            }
        }
        assumed();
        verdict();
    }

    private void assumed() {
        List<Assumed> all = inOrder();
        String count = answer.results().put("assumed_count", all.size());
        if (all.isEmpty()) {
            answer.lines("Nothing had to be assumed.");
            return;
        }
        List<Assumed> first = all.stream().filter(this::isSeen).limit(MOST_SEEN).toList();
        answer.say("Assumed, because nobody gave it (" + count + "); in brackets where it lies 9 times in 10"
                + (first.isEmpty() ? ":" : "; what it may do to the launch height, the most first:"));
        Table most = new Table(2, 2).left().right();
        List<String> few = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        for (Assumed one : all) {
            Fields fields = fields(one);
            if (first.contains(one)) {
                most.row(value(one) + range(one), effect(one));
            } else if (all.size() <= SINGLE_COLUMN) {
                few.add("  " + value(one) + range(one) + ": " + words(one));
            } else {
                rest.add(value(one));
            }
            fields.put("launch_height_m", effectOf(one), 1);
        }
        if (!first.isEmpty()) {
            answer.table(most);
        }
        few.forEach(answer::say);
        if (!rest.isEmpty()) {
            double least = first.isEmpty() ? 0 : Numbers.rounded(effectOf(first.get(first.size() - 1)), 1);
            answer.say("The others" + (least > 0 ? ", none of which does more" : "") + ": " + bySection(rest) + ".");
        }
    }

    /** What does most to the launch stands first; what nothing is known of keeps the order of the file. */
    private List<Assumed> inOrder() {
        return check.assumed().stream()
                .sorted(Comparator.comparingDouble(one -> -effectOf(one)))
                .toList();
    }

    /** What it may do to the launch height [m]; 0 for what is chosen and not measured, and where nothing is known. */
    private double effectOf(Assumed one) {
        double effect = check.effects().getOrDefault(one.path(), 0.0);
        return Double.isNaN(effect) || one.path().startsWith(CHOSEN) ? 0 : effect;
    }

    private boolean isSeen(Assumed one) {
        return Numbers.rounded(effectOf(one), 1) > 0 || Double.isInfinite(effectOf(one));
    }

    private String effect(Assumed one) {
        double effect = effectOf(one);
        return Double.isInfinite(effect) ? "may not fly" : Numbers.fixed(effect, 1) + " m";
    }

    private Fields fields(Assumed one) {
        Fields fields = answer.results().item("assumed");
        fields.put("path", one.path());
        fields.put("words", one.words());
        fields.put("unit", one.unit().words());
        fields.put("value", one.value(), DECIMALS);
        fields.put("low", one.band().low(), DECIMALS);
        fields.put("high", one.band().high(), DECIMALS);
        return fields;
    }

    private static int decimals(Assumed one) {
        return Math.abs(one.value()) >= 1 ? 1 : DECIMALS;
    }

    private static String value(Assumed one) {
        return one.path() + " " + Numbers.shortest(one.value(), decimals(one));
    }

    private static String range(Assumed one) {
        Band band = one.band();
        if (!(band.high() > band.low())) {
            return "";
        }
        int decimals = decimals(one);
        return " (" + Numbers.shortest(band.low(), decimals) + (band.low() < 0 ? " to " : "-")
                + Numbers.shortest(band.high(), decimals) + ")";
    }

    /** What it is, as long as it fits beside the number. */
    private static String words(Assumed one) {
        return one.words().replaceAll(":.*", "");
    }

    /** "wing: mass_g 114, above_boom_mm 12; boom: ...", each part's keys in braces. */
    private static String bySection(List<String> values) {
        Map<String, Map<String, List<String>>> sections = new LinkedHashMap<>();
        for (String value : values) {
            String path = value.substring(0, value.lastIndexOf(' '));
            int first = path.indexOf('.');
            int last = path.lastIndexOf('.');
            String section = first < 0 ? "" : path.substring(0, first);
            String inner = last > first ? path.substring(first + 1, last) : "";
            sections.computeIfAbsent(section, unused -> new LinkedHashMap<>())
                    .computeIfAbsent(inner, unused -> new ArrayList<>())
                    .add(value.substring(last + 1));
        }
        List<String> words = new ArrayList<>();
        sections.forEach((section, inner) -> {
            List<String> inside = new ArrayList<>();
            inner.forEach((name, keys) ->
                    inside.add((name.isEmpty() ? "" : name + " ") + String.join(name.isEmpty() ? ", " : " ", keys)));
            words.add((section.isEmpty() ? "" : section + ": ") + String.join(", ", inside));
        });
        return String.join("; ", words);
    }

    private void verdict() {
        List<Assumed> least =
                inOrder().stream().filter(this::isSeen).limit(TRUSTED_LEAST).toList();
        answer.results().put("trusted_least", least.stream().map(Assumed::path).toList());
        if (!least.isEmpty()) {
            List<String> words = new ArrayList<>();
            least.forEach(one -> words.add(one.path() + " (" + words(one) + ")"));
            answer.verdict("Trusted least, by what they may do to the launch: " + String.join("; ", words)
                    + ". Measure those first.");
            return;
        }
        if (check.effects().isEmpty() && !check.assumed().isEmpty()) {
            answer.verdict("Which of these matters most, a glider shows: sawfly check with a study that names both.");
            return;
        }
        answer.verdict(
                "Everything that counts for the launch was measured. What no bench shows stays: how it leaves the hand, the"
                        + " neutral point to about "
                        + answer.results().put("neutral_point_known_to_mm", KNOWN_TO_MM, 0)
                        + " mm, and the drag to a tenth.");
    }
}
