package org.sawfly.section;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The measured sections under shared/reference: shapes, lift runs and drag runs. */
final class Measurements {
    static final Path REFERENCE = Path.of("..", "shared", "reference");

    /** One measured point; value is cd of a drag run, cm (NaN where not measured) of a lift run; alpha [rad]. */
    record Point(String section, SectionShape shape, double reynolds, double alpha, double cl, double value) {}

    final List<Point> lift = new ArrayList<>();
    final List<Point> drag = new ArrayList<>();

    Measurements() {
        Map<String, SectionShape> shapes = new HashMap<>();
        for (String[] row : rows("section-shapes.csv")) {
            shapes.put(row[0], SectionShape.of(Double.parseDouble(row[1]) / 100, Double.parseDouble(row[2]) / 100, 0));
        }
        read("section-lift.csv", shapes, lift);
        read("section-drag.csv", shapes, drag);
    }

    private static void read(String file, Map<String, SectionShape> shapes, List<Point> points) {
        for (String[] row : rows(file)) {
            points.add(new Point(
                    row[0],
                    shapes.get(row[0]),
                    Double.parseDouble(row[2]),
                    Math.toRadians(Double.parseDouble(row[3])),
                    Double.parseDouble(row[4]),
                    row[5].isEmpty() ? Double.NaN : Double.parseDouble(row[5])));
        }
    }

    private static List<String[]> rows(String file) {
        List<String[]> rows = new ArrayList<>();
        try {
            for (String line : Files.readAllLines(REFERENCE.resolve(file))) {
                if (!line.startsWith("#")) {
                    rows.add(line.split(",", -1));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows.subList(1, rows.size());
    }
}
