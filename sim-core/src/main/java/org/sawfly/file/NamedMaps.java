package org.sawfly.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;

/** Maps whose keys are names the user chose: parts, holes, versions. */
final class NamedMaps {
    private NamedMaps() {}

    static <T> Map<String, T> read(
            In in, String key, String exampleName, String words, BiFunction<String, In, T> reader) {
        if (in.described() != null) {
            Described inner = in.described().inner(key, Described.Kind.NAMED_MAPS, words, exampleName);
            reader.apply(exampleName, in.inside(key, new Node.Keys(in.place(), Map.of()), inner));
        }
        Node value = in.take(key);
        Map<String, T> read = new LinkedHashMap<>();
        if (value instanceof Node.Keys keys) {
            keys.entries().forEach((name, entry) -> one(in, key, name, entry, reader, read));
        } else if (value instanceof Node.Items) {
            in.problem(key, "names with values are needed here, not a list", exampleName + ": {...}, without a dash");
        } else if (value != null) {
            in.problem(key, "names with values are needed here, not " + value.words(), exampleName + ": {...}");
        }
        return Collections.unmodifiableMap(read);
    }

    private static <T> void one(
            In in, String key, String name, Node.Entry entry, BiFunction<String, In, T> reader, Map<String, T> read) {
        Problems problems = in.reading().problems();
        String path = in.pathOf(key) + "." + name;
        if (name.isBlank() || name.contains(".") || name.contains("=") || name.contains(",")) {
            problems.add(entry.place(), in.pathOf(key), "a name must not be empty and has no point, comma or =", "");
            return;
        }
        Node value = entry.value();
        boolean nothing = value instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.NOTHING;
        if (value instanceof Node.Keys || nothing) {
            Node.Keys keys = value instanceof Node.Keys found ? found : new Node.Keys(value.place(), Map.of());
            In inside = in.inside(key + "." + name, keys, null);
            read.put(name, reader.apply(name, inside));
            inside.refuseUnknown();
        } else {
            problems.add(value.place(), path, "keys with values are needed here, not " + value.words());
        }
    }
}
