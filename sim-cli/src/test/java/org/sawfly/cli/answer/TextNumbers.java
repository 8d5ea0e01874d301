package org.sawfly.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sawfly.quantity.Numbers;

/**
 * Checks that an answer's JSON carries every number its text shows: each number of the text is a number of the tree
 * rounded to as many decimals (the sign may have become a word), or stands in words that the tree holds (a glider's
 * name), or is part of a house phrase. Times on the clock count as seconds.
 */
public final class TextNumbers {
    private static final Pattern NUMBER = Pattern.compile("(\\d+:\\d\\d)|(\\d+ min \\d+)|(\\d*\\.?\\d+)");
    private static final Pattern HOUSE_PHRASE =
            Pattern.compile("9 times in 10|10 % less|9 of 10|first three|dm2|kgm2|m2");

    private TextNumbers() {}

    /** Fails when a number of the text is missing from the JSON. */
    public static void assertAllInJson(Answer answer) {
        assertThat(missing(answer)).as("numbers of the text that JSON lacks").isEmpty();
    }

    static List<String> missing(Answer answer) {
        List<Double> numbers = new ArrayList<>();
        StringBuilder words = new StringBuilder(answer.command());
        collect(answer.inputs(), numbers, words);
        collect(answer.results(), numbers, words);
        List<String> missing = new ArrayList<>();
        String text = HOUSE_PHRASE.matcher(textWithoutCautions(answer)).replaceAll("");
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            String shown = matcher.group();
            boolean known = numbers.stream().anyMatch(number -> prints(number, shown));
            if (!known && !words.toString().contains(shown)) {
                missing.add(shown);
            }
        }
        return missing;
    }

    static String textWithoutCautions(Answer answer) {
        StringBuilder text = new StringBuilder();
        answer.blocks()
                .forEach(block -> text.append(String.join("\n", block.lines())).append('\n'));
        return text.append(answer.verdict()).toString();
    }

    private static boolean prints(double number, String shown) {
        if (shown.contains(":")) {
            return Numbers.clock(Math.abs(number)).equals(shown);
        }
        if (shown.contains("min")) {
            return Numbers.clockWords(Math.abs(number)).startsWith(shown + " ");
        }
        int point = shown.indexOf('.');
        int decimals = point < 0 ? 0 : shown.length() - point - 1;
        String printed = Numbers.fixed(Math.abs(number), decimals);
        return printed.equals(shown) || printed.equals("0" + shown);
    }

    private static void collect(Object node, List<Double> numbers, StringBuilder words) {
        if (node instanceof Fields fields) {
            fields.entries().forEach((key, value) -> {
                words.append('\n').append(key);
                collect(value, numbers, words);
            });
        } else if (node instanceof Fields.Items items) {
            items.list().forEach(item -> collect(item, numbers, words));
        } else if (node instanceof List<?> list) {
            list.forEach(item -> collect(item, numbers, words));
        } else if (node instanceof Double number) {
            numbers.add(number);
        } else {
            words.append('\n').append(node);
        }
    }
}
