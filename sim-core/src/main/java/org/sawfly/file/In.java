package org.sawfly.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Unit;

/**
 * One map of an input, asked key by key. A number comes out in SI and radians by the unit its key ends in. Whatever is
 * wrong is collected with its place, and reading goes on with the example value, so that one run finds everything.
 *
 * <p>Rule for readers: ask for every key first, decide afterwards. Then the same reader run on nothing, with something
 * to describe into, tells all keys there are.
 */
final class In {
    private final Reading reading;
    private final Node.Keys node;
    private final String path;
    private final Described described;
    private final Set<String> asked = new LinkedHashSet<>();
    private final List<In> quietly = new ArrayList<>();

    private In(Reading reading, Node.Keys node, String path, Described described) {
        this.reading = reading;
        this.node = node;
        this.path = path;
        this.described = described;
    }

    /** Reads a whole tree with a reader; null stands for a tree that could not be parsed. */
    static <T> T read(Node tree, Reading reading, Function<In, T> reader) {
        if (tree instanceof Node.Keys keys) {
            In in = new In(reading, keys, "", null);
            T result = reader.apply(in);
            in.refuseUnknown();
            return result;
        }
        if (tree != null) {
            String tight = tree instanceof Node.Scalar scalar && scalar.text().matches("(?s)\\w+:\\S.*")
                    ? "a space is missing after the colon"
                    : "each line is a key, a colon, a space and a value";
            reading.problems().add(tree.place(), "", "keys with values are needed here, not " + tree.words(), tight);
        }
        return null;
    }

    /** Runs a reader on nothing and returns what it asks for. */
    static Described describe(Function<In, ?> reader) {
        Described described = new Described();
        reader.apply(new In(new Reading(), nothing(Place.whole("")), "", described));
        return described;
    }

    private static Node.Keys nothing(Place place) {
        return new Node.Keys(place, Map.of());
    }

    boolean has(String key) {
        return node.get(key) != null;
    }

    String path() {
        return path;
    }

    Place place() {
        return node.place();
    }

    /** Where a key stands, or the map when it does not. */
    Place place(String key) {
        Node.Entry entry = node.entries().get(key);
        return entry == null ? node.place() : entry.place();
    }

    Reading reading() {
        return reading;
    }

    /** A number that must be there [SI]. */
    double number(String key, Bounds bounds, double example, String words) {
        Unit unit = unit(key);
        describeNumber(key, true, words, unit, bounds, example);
        double value = value(key, bounds, unit);
        if (Double.isNaN(value)) {
            if (!has(key)) {
                needed(key, words, Bounds.show(example));
            }
            value = example;
        }
        return unit.toSi(value);
    }

    /** A number that may be left out [SI], NaN then; the example when it is there and wrong. */
    double optional(String key, Bounds bounds, double example, String words) {
        Unit unit = unit(key);
        describeNumber(key, false, words, unit, bounds, example);
        double value = value(key, bounds, unit);
        return unit.toSi(Double.isNaN(value) && has(key) ? example : value);
    }

    /** A number with a fixed neutral value that stands for "nothing of it" and is no assumption [SI]. */
    double neutral(String key, Bounds bounds, double value, String words) {
        double read = optional(key, bounds, value, words);
        return Double.isNaN(read) ? unit(key).toSi(value) : read;
    }

    /** A number that is assumed, and listed so, when left out [SI]; value and half width in the unit of the key. */
    double assume(String key, Bounds bounds, double value, double plusMinus, String words) {
        double read = optional(key, bounds, value, words);
        return Double.isNaN(read) ? assumed(key, unit(key).toSi(value), plusMinus, words) : read;
    }

    /** What was read, or else a value worked out from others, listed as assumed [SI]. */
    double orAssume(double read, String key, double si, double plusMinus, String words) {
        return Double.isNaN(read) ? assumed(key, si, plusMinus, words) : read;
    }

    private double assumed(String key, double si, double plusMinus, String words) {
        if (!has(key)) {
            Unit unit = unit(key);
            double value = unit.fromSi(si);
            reading.assume(new Assumed(pathOf(key), value, Band.around(value, plusMinus), unit, words));
        }
        return si;
    }

    /** A text that must be there. */
    String text(String key, String example, String words) {
        describe(key, Described.Kind.TEXT, true, words, Unit.NUMBER, null, example, List.of());
        String read = Texts.of(this, key, take(key));
        if (read == null && !has(key)) {
            needed(key, words, example);
        }
        return read == null ? example : read;
    }

    /** A text that may be left out; null then. */
    String optionalText(String key, String example, String words) {
        describe(key, Described.Kind.TEXT, false, words, Unit.NUMBER, null, example, List.of());
        return Texts.of(this, key, take(key));
    }

    /** One of several words; the fallback, which may be null, when left out. */
    <E extends Enum<E>> E choice(String key, List<E> offered, E otherwise, String words) {
        List<String> named = Texts.words(offered);
        String example = otherwise == null ? named.get(0) : Texts.word(otherwise);
        describe(key, Described.Kind.CHOICE, false, words, Unit.NUMBER, null, example, named);
        E read = Texts.choice(this, key, take(key), offered);
        return read == null ? otherwise : read;
    }

    /** Several words of a list, in order; the fallback when left out. */
    <E extends Enum<E>> List<E> choices(String key, List<E> offered, List<E> otherwise, String words) {
        String example = "[" + String.join(", ", Texts.words(otherwise)) + "]";
        describe(key, Described.Kind.LIST_OF_TEXTS, false, words, Unit.NUMBER, null, example, Texts.words(offered));
        Node value = take(key);
        if (value == null) {
            return otherwise;
        }
        List<Node> items = value instanceof Node.Items list ? list.items() : List.of(value);
        List<E> read = new ArrayList<>();
        for (Node item : items) {
            E one = Texts.choice(this, key, item, offered);
            if (one != null && !read.contains(one)) {
                read.add(one);
            }
        }
        return read;
    }

    /** A list of texts; empty when left out. */
    List<String> texts(String key, String example, String words) {
        describe(key, Described.Kind.LIST_OF_TEXTS, false, words, Unit.NUMBER, null, "[" + example + "]", List.of());
        Node value = take(key);
        List<Node> items = value == null ? List.of() : value instanceof Node.Items list ? list.items() : List.of(value);
        List<String> read = new ArrayList<>();
        for (Node item : items) {
            String text = Texts.of(this, key, item);
            if (text != null) {
                read.add(text);
            }
        }
        return read;
    }

    /** A map inside, read from nothing when left out, so that its defaults hold and what it needs is asked for. */
    <T> T map(String key, String words, Function<In, T> reader) {
        Described inner = described == null ? null : described.inner(key, Described.Kind.MAP, words, "");
        return inside(key, inner, reader);
    }

    /** A map inside, or null when left out. */
    <T> T optionalMap(String key, String words, Function<In, T> reader) {
        T result = has(key) || described != null ? map(key, words, reader) : null;
        asked.add(key);
        return has(key) ? result : null;
    }

    /** Maps by name, in the order of the file; empty when left out. */
    <T> Map<String, T> named(String key, String exampleName, String words, BiFunction<String, In, T> reader) {
        return NamedMaps.read(this, key, exampleName, words, reader);
    }

    /** A list of maps, in order; empty when left out. */
    <T> List<T> list(String key, String words, Function<In, T> reader) {
        if (described != null) {
            Described inner = described.inner(key, Described.Kind.LIST_OF_MAPS, words, "");
            reader.apply(new In(reading, nothing(place(key)), pathOf(key), inner));
        }
        Node value = take(key);
        List<T> read = new ArrayList<>();
        if (value instanceof Node.Items items) {
            for (Node item : items.items()) {
                String itemPath = pathOf(key) + "[" + (read.size() + 1) + "]";
                if (item instanceof Node.Keys keys) {
                    In in = new In(reading, keys, itemPath, null);
                    read.add(reader.apply(in));
                    in.refuseUnknown();
                } else {
                    reading.problems().add(item.place(), itemPath, "keys with values are needed, not " + item.words());
                }
            }
        } else if (value != null) {
            problem(key, "a list is needed here, not " + value.words(), "each line begins with a dash");
        }
        return read;
    }

    /** The value as it stands, for a reader of its own kind; null when left out. */
    Node anything(String key, Described.Kind kind, String example, String words) {
        describe(key, kind, false, words, Unit.NUMBER, null, example, List.of());
        return take(key);
    }

    /** A map whose keys are those of another file, as it stands; empty when left out. */
    Node.Keys free(String key, String words) {
        Node value = anything(key, Described.Kind.ANYTHING, "", words);
        if (value == null || value instanceof Node.Keys) {
            return value == null ? nothing(place(key)) : (Node.Keys) value;
        }
        problem(key, "keys with values are needed here, not " + value.words(), "");
        return nothing(place(key));
    }

    /** Some of the keys as they stand, for a reader that comes later. */
    Node.Keys keysOf(String... keys) {
        return Edit.only(node, Set.of(keys), true);
    }

    /** The same map, described alike, whose problems and assumptions nobody hears of. */
    In quiet() {
        In quiet = new In(new Reading(), node, path, described);
        quietly.add(quiet);
        return quiet;
    }

    /** All keys that stand here and have not been asked for. */
    Set<String> rest() {
        Set<String> rest = new LinkedHashSet<>(node.entries().keySet());
        rest.removeAll(known());
        return rest;
    }

    /** Says that something is wrong at a key, or at the map when the key is not there. */
    void problem(String key, String what, String maybe) {
        Node value = node.get(key);
        reading.problems().add(value == null ? node.place() : value.place(), pathOf(key), what, maybe);
    }

    void doubt(String key, String what, String maybe) {
        Node value = node.get(key);
        reading.problems().doubt(value == null ? node.place() : value.place(), pathOf(key), what, maybe);
    }

    /** Says that a key must be there. */
    void needed(String key, String words, String example) {
        reading.problems().add(node.place(), pathOf(key), "is needed: " + words, "write " + key + ": " + example);
    }

    String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** A reader's view of one named map inside. */
    In inside(String key, Node.Keys keys, Described inner) {
        return new In(reading, keys, pathOf(key), inner);
    }

    Described described() {
        return described;
    }

    /** Marks a key as asked for and returns its value, null when it does not stand there. */
    Node take(String key) {
        asked.add(key);
        return node.get(key);
    }

    void refuseUnknown() {
        for (String key : rest()) {
            Node.Entry entry = node.entries().get(key);
            UnknownKey.report(this, key, entry, known(), node);
        }
    }

    private Set<String> known() {
        Set<String> known = new LinkedHashSet<>(asked);
        quietly.forEach(other -> known.addAll(other.asked));
        return known;
    }

    private <T> T inside(String key, Described inner, Function<In, T> reader) {
        Node value = take(key);
        Node.Keys keys = value instanceof Node.Keys found ? found : nothing(place(key));
        boolean wrong = value != null && value != keys;
        if (wrong) {
            problem(key, "keys with values are needed here, not " + value.words(), "");
        }
        Reading into = wrong ? new Reading() : reading;
        In in = new In(into, keys, pathOf(key), inner);
        T result = reader.apply(in);
        in.refuseUnknown();
        return result;
    }

    private double value(String key, Bounds bounds, Unit unit) {
        Node value = take(key);
        return value == null ? Double.NaN : NumberText.read(this, key, value, bounds, unit);
    }

    private void describeNumber(String key, boolean required, String words, Unit unit, Bounds bounds, double example) {
        if (described != null) {
            String shown = Bounds.show(example);
            describe(key, Described.Kind.NUMBER, required, words, unit, bounds, shown, List.of());
        }
    }

    private void describe(
            String key,
            Described.Kind kind,
            boolean required,
            String words,
            Unit unit,
            Bounds bounds,
            String example,
            List<String> choices) {
        if (described != null) {
            described.put(key, new Described.Key(kind, required, words, unit, bounds, example, choices, null));
        }
    }

    private static Unit unit(String key) {
        return Unit.of(key);
    }
}
