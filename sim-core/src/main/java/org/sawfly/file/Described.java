package org.sawfly.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.quantity.Unit;

/** What the readers asked for in a dry run: the keys of one map, in the order in which they were asked. */
final class Described {
    /** What kind of value a key takes. */
    enum Kind {
        NUMBER,
        TEXT,
        CHOICE,
        MAP,
        NAMED_MAPS,
        LIST_OF_MAPS,
        LIST_OF_TEXTS,
        RANGES,
        ANYTHING
    }

    /**
     * One key.
     *
     * @param kind     kind of value
     * @param required whether it must be there
     * @param words    what it is
     * @param unit     unit of a number, else NUMBER
     * @param bounds   bounds of a number, else null
     * @param example  example or default as it would be written; empty when there is none
     * @param choices  what can be chosen
     * @param inner    keys of the map inside, else null
     */
    record Key(
            Kind kind,
            boolean required,
            String words,
            Unit unit,
            Bounds bounds,
            String example,
            List<String> choices,
            Described inner) {}

    private final Map<String, Key> keys = new LinkedHashMap<>();

    void put(String name, Key key) {
        keys.putIfAbsent(name, key);
    }

    Map<String, Key> keys() {
        return keys;
    }

    /** Joins the keys of a map read twice, by different readers. */
    Described inner(String name, Kind kind, String words, String example) {
        Key known = keys.get(name);
        if (known != null && known.inner() != null) {
            return known.inner();
        }
        Described inner = new Described();
        keys.put(name, new Key(kind, false, words, Unit.NUMBER, null, example, List.of(), inner));
        return inner;
    }
}
