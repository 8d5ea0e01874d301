package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/**
 * An ordered tree of what is known: one object of the JSON document. Every number goes in under a key that ends in its
 * unit and comes back as the text to print. NaN stands for none.
 */
public final class Fields {
    private static final String BANDS = "bands";

    private final Map<String, Object> entries = new LinkedHashMap<>();

    /** Puts a number of a result and returns it as printed, without its unit: "69.0". */
    public <T> String put(Quantity<T> quantity, T result) {
        enter(quantity.key(), quantity.value(result));
        return quantity.text(result);
    }

    /** Puts several numbers of one result. */
    public <T> Fields putAll(Collection<Quantity<T>> quantities, T result) {
        quantities.forEach(quantity -> put(quantity, result));
        return this;
    }

    /**
     * Puts a number that belongs to no result and returns it as printed.
     *
     * @param key ends in the unit
     * @param inUnit the number in that unit
     * @param decimals decimals of the text
     * @return the number as printed, without its unit
     */
    public String put(String key, double inUnit, int decimals) {
        enter(key, inUnit);
        return Numbers.fixed(inUnit, decimals);
    }

    /** Puts a count and returns it as printed. */
    public String put(String key, long count) {
        enter(key, (double) count);
        return Long.toString(count);
    }

    /** Puts words and returns them. */
    public String put(String key, String words) {
        enter(key, Objects.requireNonNull(words, key));
        return words;
    }

    /** Puts a yes or no. */
    public void put(String key, boolean yes) {
        enter(key, yes);
    }

    /** Puts a list of numbers, all in the unit the key ends in. */
    public void put(String key, double[] inUnit) {
        List<Object> list = new ArrayList<>();
        for (double value : inUnit) {
            list.add(value);
        }
        enter(key, list);
    }

    /** Puts a list of words. */
    public void put(String key, List<String> words) {
        enter(key, List.copyOf(words));
    }

    /** Puts the likely range of a number, in its unit, under "bands" and returns it as printed: "34.4-35.7". */
    public <T> String band(Quantity<T> quantity, Band inUnit) {
        return band(quantity.key(), inUnit, quantity.decimals());
    }

    /** Puts the likely range of a number, in the unit of its key, under "bands" and returns it as printed. */
    public String band(String key, Band inUnit, int decimals) {
        section(BANDS).put(key, new double[] {inUnit.low(), inUnit.high()});
        return Numbers.range(inUnit, decimals);
    }

    /** Puts a difference of two printed numbers, which is what the text says in words, and returns it. */
    public Difference difference(String key, Difference difference) {
        put(key, difference.amount(), difference.decimals());
        double percent = difference.percent();
        if (difference.unit() == Unit.NUMBER && !Double.isNaN(percent)) {
            put(key + "_change_pct", percent, 0);
        }
        return difference;
    }

    /** The object under a key, made when it is not there yet. */
    public Fields section(String key) {
        Object there = entries.computeIfAbsent(key, unused -> new Fields());
        if (there instanceof Fields fields) {
            return fields;
        }
        throw new IllegalStateException("\"" + key + "\" is no section: it holds " + there);
    }

    /** A new object at the end of the list under a key. */
    public Fields item(String key) {
        Object there = entries.computeIfAbsent(key, unused -> new Items());
        if (there instanceof Items items) {
            return items.add();
        }
        throw new IllegalStateException("\"" + key + "\" is no list: it holds " + there);
    }

    /** The entries in their order: Double, String, Boolean, List or Fields. */
    Map<String, Object> entries() {
        return Collections.unmodifiableMap(entries);
    }

    private void enter(String key, Object value) {
        Object there = entries.putIfAbsent(key, value);
        if (there != null && !there.equals(value)) {
            throw new IllegalStateException("\"" + key + "\" is " + there + " and " + value);
        }
    }

    /** A list of objects that grows. */
    static final class Items {
        private final List<Fields> list = new ArrayList<>();

        Fields add() {
            Fields fields = new Fields();
            list.add(fields);
            return fields;
        }

        List<Fields> list() {
            return list;
        }
    }
}
