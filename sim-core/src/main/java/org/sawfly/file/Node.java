package org.sawfly.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of an input tree that knows where it stands. Immutable, so that a change shares all it does not touch. */
sealed interface Node {
    Place place();

    /** What the value is, in words for a message. */
    String words();

    /** How a single value was written. */
    enum Kind {
        NUMBER,
        TEXT,
        QUOTED,
        TRUTH,
        NOTHING
    }

    /** A single value; {@code text} is as written, without quotes. */
    record Scalar(Place place, Kind kind, String text) implements Node {
        @Override
        public String words() {
            return switch (kind) {
                case NUMBER -> "the number " + text;
                case TEXT, QUOTED -> "the text \"" + shortened(text) + "\"";
                case TRUTH -> text;
                case NOTHING -> "nothing";
            };
        }

        private static String shortened(String text) {
            String line = Ascii.printable(text.strip());
            return line.length() <= 40 ? line : line.substring(0, 37) + "...";
        }
    }

    /** A list. */
    record Items(Place place, List<Node> items) implements Node {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list";
        }
    }

    /** Keys with values, in the order of the file. */
    record Keys(Place place, Map<String, Entry> entries) implements Node {
        public Keys {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String words() {
            return "keys with values";
        }

        /** The value at a key, or null. */
        Node get(String key) {
            Entry entry = entries.get(key);
            return entry == null ? null : entry.value();
        }

        /** The same keys with one replaced or added at the end. */
        Keys with(String key, Entry entry) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            changed.put(key, entry);
            return new Keys(place, changed);
        }

        /** The same keys without one. */
        Keys without(String key) {
            if (!entries.containsKey(key)) {
                return this;
            }
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            changed.remove(key);
            return new Keys(place, changed);
        }
    }

    /**
     * A key with its value.
     *
     * @param place where the key stands
     * @param value its value
     */
    record Entry(Place place, Node value) {}
}
