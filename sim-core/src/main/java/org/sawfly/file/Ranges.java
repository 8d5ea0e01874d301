package org.sawfly.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sawfly.quantity.Unit;

/** Reads ranges: {@code {from: 0, to: 80, every: 10}}, {@code [0, 20, 40]}, {@code 0..80/10} and {@code 0,20,40}. */
final class Ranges {
    private static final String NUMBER = "(-?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d{1,3})?)";
    /** Up to so many values their number is told. */
    private static final double COUNTED = 1e12;

    private static final Pattern SPAN = Pattern.compile(NUMBER + "\\s*\\.\\.\\s*" + NUMBER + "\\s*/\\s*" + NUMBER);
    private static final Pattern DASHED = Pattern.compile(NUMBER + "\\s*(?:-|to|\\.\\.)\\s*" + NUMBER + "(.*)");

    private Ranges() {}

    /** The values of a range; null, with a problem, when it is none. */
    static Varied read(String path, Node node, Problems problems) {
        if (node instanceof Node.Keys keys) {
            return ofKeys(path, keys, problems);
        }
        if (node instanceof Node.Items items) {
            return ofItems(path, items, problems);
        }
        String text = ((Node.Scalar) node).text().strip();
        Matcher span = SPAN.matcher(text);
        if (span.matches()) {
            return span(path, node.place(), new String[] {span.group(1), span.group(2), span.group(3)}, problems);
        }
        List<Node> items = new ArrayList<>();
        for (String piece : text.split(",", -1)) {
            items.add(Edit.value(piece.strip(), node.place(), new Problems()));
        }
        Matcher dashed = DASHED.matcher(text);
        if (dashed.matches()) {
            problems.add(
                    node.place(),
                    path,
                    "\"" + Ascii.printable(text) + "\" is no range",
                    dashed.group(1) + ".." + dashed.group(2) + "/STEP, with the step in place of STEP");
            return null;
        }
        return ofItems(path, new Node.Items(node.place(), items), problems);
    }

    private static Varied ofItems(String path, Node.Items items, Problems problems) {
        Unit unit = Unit.of(path);
        List<Double> values = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Node item : items.items()) {
            double value = item instanceof Node.Scalar scalar ? NumberText.parse(scalar) : Double.NaN;
            if (!Double.isFinite(value)) {
                String written = item instanceof Node.Scalar scalar ? scalar.text() : "";
                problems.add(
                        item.place(),
                        path,
                        "a number or a range is needed, not " + item.words(),
                        written.isEmpty() ? "0..80/10" : Slips.ofWriting(written, unit));
                return null;
            }
            values.add(value);
            words.add(Bounds.show(value));
        }
        String twice = words.stream()
                .filter(word -> words.indexOf(word) != words.lastIndexOf(word))
                .findFirst()
                .orElse("");
        if (!twice.isEmpty()) {
            problems.add(items.place(), path, "the value " + twice + " is there twice", "");
            return null;
        }
        if (values.isEmpty()) {
            problems.add(items.place(), path, "no values to go through", "[0, 20, 40]");
            return null;
        }
        String end = unit == Unit.NUMBER ? "" : " " + unit.words();
        String shown = words.size() <= 12 ? ", " + String.join(" ", words) + end : "";
        return new Varied(path, values, values.size() + (values.size() == 1 ? " value" : " values") + shown);
    }

    private static Varied ofKeys(String path, Node.Keys keys, Problems problems) {
        String[] names = {"from", "to", "every"};
        String[] texts = new String[names.length];
        boolean good = true;
        for (int i = 0; i < names.length; i++) {
            Node value = keys.get(names[i]);
            boolean number = value instanceof Node.Scalar scalar && Double.isFinite(NumberText.parse(scalar));
            if (number) {
                texts[i] = ((Node.Scalar) value).text();
            } else {
                good = false;
                String what = value == null ? "is needed" : "a number is needed, not " + value.words();
                problems.add(
                        value == null ? keys.place() : value.place(),
                        path + "." + names[i],
                        what,
                        "{from: 0, to: 80, every: 10}");
            }
        }
        for (String key : keys.entries().keySet()) {
            if (!List.of(names).contains(key)) {
                good = false;
                problems.add(
                        keys.entries().get(key).place(),
                        path + "." + Ascii.printable(key),
                        "unknown key",
                        UnknownKey.maybe(key, keys.get(key), List.of(names)));
            }
        }
        return good ? span(path, keys.place(), texts, problems) : null;
    }

    /** From, to, every; counted in decimals, so that 0..1/0.1 has eleven values and its last is 1. */
    private static Varied span(String path, Place place, String[] texts, Problems problems) {
        double from = Double.parseDouble(texts[0]);
        double to = Double.parseDouble(texts[1]);
        double every = Double.parseDouble(texts[2]);
        Unit unit = Unit.of(path);
        if (!Double.isFinite(from) || !Double.isFinite(to) || !Double.isFinite(every)) {
            problems.add(place, path, "a range needs finite numbers", "0..80/10");
            return null;
        }
        if (!(every > 0) || to < from) {
            problems.add(
                    place,
                    path,
                    "a range goes upwards in steps above 0",
                    every == 0
                            ? texts[0] + ".." + texts[1] + "/STEP, with the step in place of STEP"
                            : Bounds.show(Math.min(from, to)) + ".." + Bounds.show(Math.max(from, to)) + "/"
                                    + Bounds.show(Math.abs(every)));
            return null;
        }
        double steps = Math.floor((to - from) / every + 1e-9);
        if (steps + 1 > Varied.MOST_VALUES) {
            problems.add(
                    place,
                    path,
                    (steps < COUNTED ? Bounds.show(steps + 1) : "so many") + " values are too many; at most "
                            + Varied.MOST_VALUES + " are accepted",
                    "larger steps");
            return null;
        }
        List<Double> values = new ArrayList<>();
        BigDecimal start = BigDecimal.valueOf(from);
        BigDecimal step = BigDecimal.valueOf(every);
        for (int i = 0; i <= (int) steps; i++) {
            values.add(start.add(step.multiply(BigDecimal.valueOf(i))).doubleValue());
        }
        double last = values.get(values.size() - 1);
        String reached = to - last > 1e-6 * every ? "; " + Bounds.show(to) + " is no whole step" : "";
        String words = values.size() + (values.size() == 1 ? " value, " : " values, ") + Bounds.show(from) + " to "
                + Bounds.withUnit(last, unit) + " every " + Bounds.withUnit(every, unit) + reached;
        return new Varied(path, values, words);
    }
}
