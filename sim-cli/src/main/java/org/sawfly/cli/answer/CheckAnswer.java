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
        List<Assumed> all = check.assumed();
        String count = answer.results().put("assumed_count", all.size());
        if (all.isEmpty()) {
            answer.lines("Nothing had to be assumed.");
            return;
        }
        answer.lines("Assumed, because nobody gave it (" + count + "); in brackets where it lies 9 times in 10:");
        List<String> lines = new ArrayList<>();
        for (Assumed one : all) {
            lines.add(line(one));
        }
        if (all.size() <= SINGLE_COLUMN) {
            Table table = new Table(2, 2).left().left();
            for (int i = 0; i < all.size(); i++) {
                table.row(lines.get(i), all.get(i).words());
            }
            answer.table(table);
            return;
        }
        Map<String, List<String>> bySection = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            String path = all.get(i).path();
            String section = path.substring(0, Math.max(0, path.indexOf('.')));
            String rest = section.isEmpty() ? lines.get(i) : lines.get(i).substring(section.length() + 1);
            bySection.computeIfAbsent(section, unused -> new ArrayList<>()).add(rest);
        }
        bySection.forEach((section, items) ->
                answer.say("  " + (section.isEmpty() ? "" : section + ": ") + String.join(", ", items)));
    }

    private String line(Assumed one) {
        Fields fields = answer.results().item("assumed");
        fields.put("path", one.path());
        fields.put("words", one.words());
        fields.put("unit", one.unit().words());
        fields.put("value", one.value(), DECIMALS);
        int decimals = Math.abs(one.value()) >= 1 ? 1 : DECIMALS;
        return one.path() + " " + Numbers.shortest(one.value(), decimals) + range(fields, one.band(), decimals);
    }

    private static String range(Fields fields, Band band, int decimals) {
        fields.put("low", band.low(), DECIMALS);
        fields.put("high", band.high(), DECIMALS);
        if (!(band.high() > band.low())) {
            return "";
        }
        return " (" + Numbers.shortest(band.low(), decimals) + (band.low() < 0 ? " to " : "-")
                + Numbers.shortest(band.high(), decimals) + ")";
    }

    private void verdict() {
        List<Assumed> least = check.assumed().stream()
                .filter(one -> doubt(one) > 0)
                .sorted(Comparator.comparingDouble(one -> -doubt(one)))
                .limit(TRUSTED_LEAST)
                .toList();
        List<String> words = new ArrayList<>();
        for (Assumed one : least) {
            words.add(one.path() + " (" + one.words() + ")");
        }
        answer.results().put("trusted_least", least.stream().map(Assumed::path).toList());
        if (words.isEmpty()) {
            answer.verdict(
                    "Everything was measured. What no bench shows stays: how it leaves the hand, the neutral point to"
                            + " about " + answer.results().put("neutral_point_known_to_mm", KNOWN_TO_MM, 0)
                            + " mm, and the drag to a tenth.");
            return;
        }
        answer.verdict("Trusted least: " + String.join("; ", words) + ". Measure those first.");
    }

    /** Half the range over the value: how little of it is known. */
    private static double doubt(Assumed one) {
        double half = 0.5 * (one.band().high() - one.band().low());
        return one.value() == 0 || one.path().startsWith(CHOSEN) ? 0 : half / Math.abs(one.value());
    }
}
