package org.sawfly.quantity;

import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * A number of a result, stated once: what it is called in files and in words, in which unit and how finely it is shown,
 * and where it is found. Catalogues of quantities stand beside the results they describe.
 *
 * @param <T> the result it is read from
 * @param key name in JSON, CSV and paths; ends in the unit's suffix
 * @param words name in text and on charts: "launch height"
 * @param unit unit it is shown in
 * @param decimals decimals it is shown with
 * @param getter reads it, in SI and radians; NaN when there is none
 */
public record Quantity<T>(String key, String words, Unit unit, int decimals, ToDoubleFunction<? super T> getter) {
    private static final Pattern KEY = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_. -]*");
    private static final int MOST_DECIMALS = 9;

    /** Checks that the key's ending is the unit. */
    public Quantity {
        Objects.requireNonNull(getter, "getter");
        if (!KEY.matcher(key).matches()) {
            throw new IllegalArgumentException("\"" + key + "\" is no key");
        }
        if (!unit.fits(key)) {
            String wanted = unit == Unit.NUMBER ? "no unit" : "_" + unit.suffix();
            throw new IllegalArgumentException("key \"" + key + "\" must end in " + wanted + ", the unit of " + words);
        }
        if (words.isBlank() || decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("words \"" + words + "\", decimals " + decimals + " of " + key);
        }
    }

    /** The number in SI and radians. */
    public double si(T result) {
        return getter.applyAsDouble(result);
    }

    /** The number in its unit, not rounded. */
    public double value(T result) {
        return unit.fromSi(si(result));
    }

    /** The number in its unit as it is printed. */
    public double shown(T result) {
        return Numbers.rounded(value(result), decimals);
    }

    /** The number as text, without its unit: "69.0"; "-" when there is none. */
    public String text(T result) {
        return Numbers.fixed(value(result), decimals);
    }

    /** The number as text with its unit: "69.0 mm"; "-" when there is none. */
    public String textWithUnit(T result) {
        return withUnit(text(result));
    }

    /** A range in this unit as text: "34.4-35.7". */
    public String range(Band inUnit) {
        return Numbers.range(inUnit, decimals);
    }

    /** Name and unit, for an axis or a heading: "launch height, m". */
    public String title() {
        return unit == Unit.NUMBER ? words : words + ", " + unit.words();
    }

    /** The same number read from something that holds the result. */
    public <S> Quantity<S> of(Function<? super S, ? extends T> result) {
        return new Quantity<>(key, words, unit, decimals, outer -> getter.applyAsDouble(result.apply(outer)));
    }

    private String withUnit(String text) {
        return text.equals(Numbers.NONE) || unit == Unit.NUMBER ? text : text + " " + unit.words();
    }
}
