package org.sawfly.quantity;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A unit people read or write, with the suffix a key ends in and the factor to SI.
 *
 * <p>{@link #LOAD} is a multiple of the weight: a plain number inside, written "g" and therefore with the same suffix as
 * {@link #GRAM}. A key of a file always means grams.
 */
public enum Unit {
    MILLIMETRE("mm", "mm", 1e-3),
    METRE("m", "m", 1),
    SQUARE_DECIMETRE("dm2", "dm2", 1e-2),
    SQUARE_CENTIMETRE("cm2", "cm2", 1e-4),
    GRAM("g", "g", 1e-3),
    KILOGRAM("kg", "kg", 1),
    GRAM_PER_METRE("g_per_m", "g/m", 1e-3),
    GRAM_PER_SQUARE_DECIMETRE("g_per_dm2", "g/dm2", 1e-1),
    DEGREE("deg", "deg", Math.PI / 180),
    DEGREE_PER_SECOND("deg_per_s", "deg/s", Math.PI / 180),
    TURNS_PER_SECOND("turns_per_s", "turns a second", 2 * Math.PI),
    METRE_PER_SECOND("mps", "m/s", 1),
    SECOND("s", "s", 1),
    MILLISECOND("ms", "ms", 1e-3),
    HERTZ("Hz", "Hz", 1),
    PERCENT("pct", "%", 1e-2),
    NEWTON("N", "N", 1),
    NEWTON_METRE("Nm", "N m", 1),
    NEWTON_MILLIMETRE("Nmm", "N mm", 1e-3),
    NEWTON_SQUARE_METRE("Nm2", "N m2", 1),
    KILOGRAM_SQUARE_METRE("kgm2", "kg m2", 1),
    KILOGRAM_PER_CUBIC_METRE("kg_per_m3", "kg/m3", 1),
    MEGAPASCAL("MPa", "MPa", 1e6),
    GIGAPASCAL("GPa", "GPa", 1e9),
    SPECIFIC_MODULUS("MNm_per_kg", "MN m/kg", 1e6),
    JOULE("J", "J", 1),
    CELSIUS("c", "C", 1, 273.15),
    /** Multiples of the weight. */
    LOAD("g", "g", 1),
    /** Without a dimension: a ratio, a tail volume, a count. Its keys end in no unit. */
    NUMBER("", "", 1);

    private static final Map<String, Unit> BY_SUFFIX = bySuffix();

    private final String suffix;
    private final String words;
    private final double factor;
    private final double offset;

    Unit(String suffix, String words, double factor) {
        this(suffix, words, factor, 0);
    }

    Unit(String suffix, String words, double factor, double offset) {
        this.suffix = suffix;
        this.words = words;
        this.factor = factor;
        this.offset = offset;
    }

    /** What a key in this unit ends in, after an underscore; empty for {@link #NUMBER}. */
    public String suffix() {
        return suffix;
    }

    /** As printed behind a number: "m/s"; empty for {@link #NUMBER}. */
    public String words() {
        return words;
    }

    /** From this unit to SI and radians (a temperature to kelvin). */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** From SI and radians to this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** A difference in SI in this unit: a temperature's zero plays no part. */
    public double differenceFromSi(double si) {
        return si / factor;
    }

    /** Whether a key may carry this unit: its longest ending that is a unit's must be this unit's. */
    public boolean fits(String key) {
        return suffix.equals(ofKey(key).map(Unit::suffix).orElse(""));
    }

    /** The unit of the number at a key; {@link #NUMBER} where the key ends in none. */
    public static Unit of(String key) {
        return ofKey(key).orElse(NUMBER);
    }

    /** The unit a key ends in, "boom.cut_mm" or plain "g_per_m"; grams for "g"; empty when it ends in none. */
    public static Optional<Unit> ofKey(String key) {
        int from = key.lastIndexOf('.') + 1;
        while (true) {
            Unit found = BY_SUFFIX.get(key.substring(from));
            int next = key.indexOf('_', from);
            if (found != null || next < 0) {
                return Optional.ofNullable(found);
            }
            from = next + 1;
        }
    }

    private static Map<String, Unit> bySuffix() {
        Map<String, Unit> units = new HashMap<>();
        for (Unit unit : values()) {
            if (unit != NUMBER) {
                units.putIfAbsent(unit.suffix, unit);
            }
        }
        return Map.copyOf(units);
    }
}
