package org.sawfly.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.sawfly.section.SectionEstimate;
import org.sawfly.section.SectionShape;
import org.sawfly.section.SectionTable;

/**
 * Finds section tables: a CSV file beside the file that names it, one that comes along, by name, or the estimate of a
 * shape. Each is made once and the same one given back, for a wing is known by its tables.
 */
final class TableFiles implements Sections.Tables {
    private static final String ENDING = ".csv";

    private final Map<String, SectionTable> read = new ConcurrentHashMap<>();
    private final Map<SectionShape, SectionTable> estimated = new ConcurrentHashMap<>();

    /** Whether a name is that of a file, not of a table that comes along. */
    static boolean isFile(String name) {
        return name.strip().endsWith(ENDING);
    }

    @Override
    public SectionTable estimate(SectionShape shape) {
        return estimated.computeIfAbsent(shape, s -> new SectionEstimate(s).table());
    }

    @Override
    public SectionTable table(In in, String key, String name) {
        return isFile(name) ? ofFile(in, key, name) : ofName(in, key, name);
    }

    private SectionTable ofName(In in, String key, String name) {
        SectionTable table = read.get(name);
        if (table == null) {
            table = kept(name, SectionFile.named(name, in.reading().problems()));
        }
        if (table == null) {
            in.problem(key, "no section table of that name comes along", "a file: " + Ascii.printable(name) + ENDING);
        }
        return table;
    }

    private SectionTable ofFile(In in, String key, String name) {
        Problems problems = in.reading().problems();
        Path from = Path.of(in.place(key).file());
        Path path = new Documents(problems).resolved(from, name, in.place(key), in.pathOf(key));
        if (path == null) {
            return null;
        }
        if (!Files.isRegularFile(path)) {
            in.problem(key, "there is no file " + path, Documents.neighbour(path));
            return null;
        }
        String known = path.toAbsolutePath().normalize().toString();
        SectionTable table = read.get(known);
        return table == null ? kept(known, SectionFile.read(path, problems)) : table;
    }

    private SectionTable kept(String name, SectionTable table) {
        if (table == null) {
            return null;
        }
        SectionTable before = read.putIfAbsent(name, table);
        return before == null ? table : before;
    }
}
