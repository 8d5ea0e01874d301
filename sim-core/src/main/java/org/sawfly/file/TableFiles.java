package org.sawfly.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.sawfly.section.Section;

/** Finds section tables: a CSV file beside the file that names it, or one that comes along, by name. Each is read once. */
final class TableFiles implements Sections.Tables {
    private static final String ALONG = "/org/sawfly/airfoil/";
    private static final String ENDING = ".csv";

    private final Map<String, Section> tables = new ConcurrentHashMap<>();

    @Override
    public Section table(In in, String key, String name) {
        Path from = Path.of(in.place(key).file());
        boolean file = name.endsWith(ENDING);
        Path path = file ? new Documents(in.reading().problems()).resolved(from, name, in.place(key), in.pathOf(key)) : null;
        if (file && path == null) {
            return null;
        }
        String known = file ? path.toAbsolutePath().normalize().toString() : name;
        Section table = tables.get(known);
        if (table == null) {
            byte[] bytes = file ? ofFile(path, in, key) : ofName(name, in, key);
            table = bytes == null ? null : TableText.read(Source.of(file ? path.toString() : name, bytes, in.reading().problems()), in, key);
            if (table != null) {
                Section before = tables.putIfAbsent(known, table);
                table = before == null ? table : before;
            }
        }
        return table;
    }

    private static byte[] ofFile(Path path, In in, String key) {
        return new Documents(in.reading().problems()).bytes(path, in.place(key), in.pathOf(key));
    }

    private static byte[] ofName(String name, In in, String key) {
        if (!name.matches("[a-z0-9-]+")) {
            in.problem(key, "is no name of a table", "the name of a file, ending in .csv");
            return null;
        }
        try (InputStream stream = TableFiles.class.getResourceAsStream(ALONG + name + ENDING)) {
            if (stream == null) {
                Path near = Path.of(name + ENDING);
                in.problem(
                        key,
                        "no section table " + name + " comes along",
                        Files.exists(near) ? name + ENDING : "a file: " + name + ENDING);
                return null;
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            in.problem(key, name + " cannot be read", "");
            return null;
        }
    }
}
