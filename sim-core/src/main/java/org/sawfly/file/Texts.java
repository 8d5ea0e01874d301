package org.sawfly.file;

import java.util.List;
import java.util.Locale;

/** Turns written words into texts and choices, or says what is wrong with them. */
final class Texts {
    private static final int LONGEST = 200;

    private Texts() {}

    /** The text of a value; null when there is none or after a problem. */
    static String of(In in, String key, Node node) {
        if (node == null) {
            return null;
        }
        if (!(node instanceof Node.Scalar scalar)) {
            in.reading().problems().add(node.place(), in.pathOf(key), "a text is needed here, not " + node.words());
            return null;
        }
        String text = scalar.text().strip();
        if (text.isEmpty()) {
            in.reading().problems().add(node.place(), in.pathOf(key), "has no value; a text is needed");
            return null;
        }
        if (text.matches("[\\u201c\\u201d\\u201e\\u2018\\u2019\\u00ab\\u00bb].*")) {
            in.reading()
                    .problems()
                    .add(node.place(), in.pathOf(key), "begins with a curly quote", "straight quotes, or none at all");
        }
        if (text.length() > LONGEST) {
            in.reading().problems().add(node.place(), in.pathOf(key), "longer than " + LONGEST + " characters");
            return null;
        }
        return text;
    }

    /** The choice written; null when left out or after a problem. */
    static <E extends Enum<E>> E choice(In in, String key, Node node, List<E> offered) {
        if (node == null) {
            return null;
        }
        List<String> words = words(offered);
        if (node instanceof Node.Scalar scalar) {
            int found = words.indexOf(scalar.text()
                    .strip()
                    .toLowerCase(Locale.ROOT)
                    .replace('-', '_')
                    .replace(' ', '_'));
            if (found >= 0) {
                return offered.get(found);
            }
            String near = Spelling.nearest(scalar.text(), words);
            in.reading()
                    .problems()
                    .add(
                            node.place(),
                            in.pathOf(key),
                            "one of " + String.join(", ", words) + " is needed, not " + scalar.words(),
                            near);
            return null;
        }
        in.reading()
                .problems()
                .add(
                        node.place(),
                        in.pathOf(key),
                        "one of " + String.join(", ", words) + " is needed, not " + node.words());
        return null;
    }

    static <E extends Enum<E>> List<String> words(List<E> offered) {
        return offered.stream().map(Texts::word).toList();
    }

    static String word(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT);
    }
}
