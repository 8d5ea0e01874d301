package org.sawfly.section;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes the tables of the demo gliders' invented sections into module airfoil-data. Run as a program from sim-core after the
 * estimate has changed.
 */
final class DemoSections {
    static final Path FOLDER = Path.of("..", "airfoil-data", "src", "main", "resources", "org", "sawfly", "airfoil");

    private DemoSections() {}

    public static void main(String[] args) {
        all().forEach((name, shape) -> {
            try {
                Files.writeString(FOLDER.resolve(name + ".csv"), text(name, shape));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Names and shapes; thickness, camber, flap chord over chord. */
    static Map<String, SectionShape> all() {
        Map<String, SectionShape> shapes = new TreeMap<>();
        shapes.put("turnstone", SectionShape.of(0.062, 0.019, 0.32));
        shapes.put("sanderling", SectionShape.of(0.054, 0.017, 0.32));
        shapes.put("dunlin", SectionShape.of(0.06, 0, 0.40));
        shapes.put("knot", SectionShape.of(0.06, 0, 0.45));
        return shapes;
    }

    static String text(String name, SectionShape shape) {
        StringBuilder text = new StringBuilder();
        text.append(String.format(
                Locale.ROOT,
                "# %s: an invented section, %.1f %% thick, %.1f %% camber, flap %.0f %% of the chord.%n"
                        + "# Estimated from these three numbers, not measured; see sim-core/theory/sections.md for the errors.%n"
                        + "reynolds,flap_deg,alpha_deg,cl,cd,cm%n",
                name,
                100 * shape.thickness(),
                100 * shape.camber(),
                100 * shape.flapChord()));
        SectionGrid grid = SectionGrid.usual(true);
        SectionEstimate estimate = new SectionEstimate(shape);
        double[] out = new double[3];
        for (double re : grid.reynolds()) {
            for (double flap : grid.flaps()) {
                Section run = estimate.prepared(re, flap);
                for (double alpha : grid.alphas()) {
                    run.at(alpha, re, flap, out);
                    text.append(Math.round(re))
                            .append(',')
                            .append(number(Math.toDegrees(flap)))
                            .append(',')
                            .append(number(Math.toDegrees(alpha)))
                            .append(',')
                            .append(number(out[0]))
                            .append(',')
                            .append(number(out[1]))
                            .append(',')
                            .append(number(out[2]))
                            .append('\n');
                }
            }
        }
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    /** At most four decimals, no zeros at the end, no minus zero. */
    private static String number(double value) {
        double rounded = Math.round(value * 1e4) / 1e4 + 0.0;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }
}
