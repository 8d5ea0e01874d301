package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.sawfly.aero.ApparentMass;
import org.sawfly.glider.Bifilar;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;

/** Reads swings of the whole glider on two strings, each of which sets one moment of inertia. */
final class SwingReader {
    private static final int FIRST_ANGULAR = 3;

    /**
     * One swing and where it stands.
     *
     * @param in           where
     * @param halfDistance between the strings, half [m]
     * @param length       of the strings [m]
     * @param period       of one swing to and fro [s]
     */
    record Read(In in, double halfDistance, double length, double period) {}

    private SwingReader() {}

    static Map<Bifilar.Axis, Read> read(In in) {
        return in.map("swings", "the glider swung on two strings, ready to fly, about one of its axes", all -> {
            Map<Bifilar.Axis, Read> swings = new EnumMap<>(Bifilar.Axis.class);
            for (Bifilar.Axis axis : Bifilar.Axis.values()) {
                String key = axis.name().toLowerCase(Locale.ROOT);
                Read read = all.optionalMap(key, "this axis hung upright", SwingReader::one);
                if (read != null && all.has(key)) {
                    swings.put(axis, read);
                }
            }
            return swings;
        });
    }

    private static Read one(In in) {
        double apart = in.number("strings_apart_mm", between(20, 2000), 600, "distance between the strings");
        double length = in.number("string_length_mm", between(100, 5000), 1200, "length of each string");
        double period = in.number("period_s", between(0.1, 20), 1.9, "time of one swing to and fro, best of many");
        return new Read(in, 0.5 * apart, length, period);
    }

    /** The swings that show the inertias of another glider, on the same strings. */
    static Map<Bifilar.Axis, Bifilar> swingsOf(Glider glider, Map<Bifilar.Axis, Read> swings) {
        Map<Bifilar.Axis, Bifilar> made = new EnumMap<>(Bifilar.Axis.class);
        MassProperties mass = MassProperties.of(glider);
        swings.forEach((axis, read) -> {
            double own =
                    switch (axis) {
                        case ROLL -> mass.inertia().ixx();
                        case PITCH -> mass.inertia().iyy();
                        case YAW -> mass.inertia().izz();
                    };
            Bifilar strings = new Bifilar(axis, mass.mass(), read.halfDistance, read.length, read.period);
            made.put(axis, strings.swinging(own + carriedAir(glider, mass, axis)));
        });
        return made;
    }

    /** Inertia of the air carried along about an axis [kg m2]. */
    private static double carriedAir(Glider glider, MassProperties mass, Bifilar.Axis axis) {
        int row = FIRST_ANGULAR + axis.ordinal();
        return ApparentMass.of(glider, mass.cg()).matrix()[row][row];
    }

    /** The glider with the inertias that were swung; the air carried along is taken off. */
    static Glider apply(Glider glider, Map<Bifilar.Axis, Read> swings) {
        Glider result = glider;
        for (Map.Entry<Bifilar.Axis, Read> swing : swings.entrySet()) {
            Bifilar.Axis axis = swing.getKey();
            Read read = swing.getValue();
            MassProperties mass = MassProperties.of(result);
            double air = carriedAir(result, mass, axis);
            try {
                result = new Bifilar(axis, mass.mass(), read.halfDistance, read.length, read.period)
                        .applyTo(result, air);
            } catch (DesignException e) {
                read.in.problem("period_s", e.getMessage(), "");
            }
        }
        return result;
    }
}
