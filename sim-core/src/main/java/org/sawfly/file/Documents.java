package org.sawfly.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Reads files from disk, each once, and finds the files they name relative to themselves. */
final class Documents {
    /** What a file says it is, by its first key. */
    enum Kind {
        GLIDER("glider"),
        LAUNCH("launch"),
        STUDY("study");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    /**
     * A file that was read.
     *
     * @param path where it is
     * @param kind what it says it is; null when it does not say
     * @param tree its tree
     */
    record Document(Path path, Kind kind, Node.Keys tree) {}

    private final Problems problems;
    private final Map<Path, Document> read = new HashMap<>();

    Documents(Problems problems) {
        this.problems = problems;
    }

    /** The file named on the command line, of any kind; null after a problem. */
    Document any(Path path) {
        return load(path, Place.whole(path.toString()), "");
    }

    /** A text that comes as a stream, of any kind; null after a problem. */
    Document stream(String name, InputStream in) throws IOException {
        return parsed(Path.of(name), in.readNBytes(Source.MOST_BYTES + 1));
    }

    /** The file named on the command line, of one kind; null after a problem. */
    Document of(Kind kind, Path path) {
        return checked(kind, any(path), Place.whole(path.toString()), "");
    }

    /** A file named at a key of another one, relative to that one; null after a problem. */
    Document referred(Kind kind, Path from, String name, In in, String key) {
        Place place = in.place(key);
        Path path = resolved(from, name, place, in.pathOf(key));
        return path == null ? null : checked(kind, load(path, place, in.pathOf(key)), place, in.pathOf(key));
    }

    /** The path of a file named in another one; null after a problem. */
    Path resolved(Path from, String name, Place place, String keyPath) {
        try {
            Path folder = from.toAbsolutePath().getParent();
            Path target = folder.resolve(name).normalize();
            Path base = Path.of("").toAbsolutePath();
            return from.isAbsolute() || !target.startsWith(base) ? target : base.relativize(target);
        } catch (InvalidPathException e) {
            problems.add(place, keyPath, "\"" + Ascii.printable(name) + "\" is no name of a file", "");
            return null;
        }
    }

    /** What was meant by a file of another kind on a command line. */
    private static String meant(Kind needed, Document given) {
        if (needed != Kind.GLIDER) {
            return "";
        }
        return given.kind() == Kind.STUDY
                ? "sawfly vary or sawfly compare, which take studies"
                : "the glider's file first, then --launch " + given.path();
    }

    private Document checked(Kind kind, Document document, Place place, String keyPath) {
        if (document == null || document.kind() == null) {
            return null;
        }
        if (document.kind() != kind) {
            String is = document.kind().key();
            problems.add(
                    place,
                    keyPath,
                    "a " + kind.key() + " file is needed here; " + document.path() + " is a " + is + " file",
                    keyPath.isEmpty() ? meant(kind, document) : "");
            return null;
        }
        return document;
    }

    private Document load(Path path, Place place, String keyPath) {
        Path key = path.toAbsolutePath().normalize();
        if (read.containsKey(key)) {
            return read.get(key);
        }
        byte[] bytes = bytes(path, place, keyPath);
        Document document = bytes == null ? null : parsed(path, bytes);
        read.put(key, document);
        return document;
    }

    private Document parsed(Path path, byte[] bytes) {
        Source source = Source.of(path.toString(), bytes, problems);
        Node tree = bytes.length > Source.MOST_BYTES ? null : TreeReader.read(source, problems);
        if (tree instanceof Node.Keys keys) {
            return new Document(path, kind(keys), keys);
        }
        if (tree != null) {
            In.read(tree, new Reading(problems), in -> null);
        }
        return null;
    }

    private Kind kind(Node.Keys tree) {
        String first = tree.entries().isEmpty()
                ? ""
                : tree.entries().keySet().iterator().next();
        for (Kind kind : Kind.values()) {
            if (kind.key().equals(first)) {
                return kind;
            }
        }
        for (Kind kind : new Kind[] {Kind.STUDY, Kind.LAUNCH, Kind.GLIDER}) {
            if (tree.entries().containsKey(kind.key())) {
                problems.add(
                        tree.entries().get(kind.key()).place(),
                        kind.key(),
                        "must be the first key of the file",
                        "move it up");
                return kind;
            }
        }
        problems.add(
                tree.place(),
                "",
                "the first key says what the file is: glider, launch or study",
                "glider: a name, as the first line");
        return null;
    }

    private byte[] bytes(Path path, Place place, String keyPath) {
        if (Files.isDirectory(path)) {
            problems.add(place, keyPath, path + " is a folder, not a file", "");
            return null;
        }
        if (!Files.exists(path)) {
            String maybe =
                    path.toString().equals("-") ? "sawfly check -, which alone reads standard input" : neighbour(path);
            String which = path.toString().equals(place.file()) ? "of this name" : path.toString();
            problems.add(place, keyPath, "there is no file " + which, maybe);
            return null;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(Source.MOST_BYTES + 1);
        } catch (IOException e) {
            problems.add(
                    place, keyPath, path + " cannot be read: " + e.getClass().getSimpleName(), "");
            return null;
        }
    }

    /** The file in the same folder, or in one beside or above it, that was probably meant. */
    static String neighbour(Path path) {
        Path absolute = path.toAbsolutePath().normalize();
        Path name = absolute.getFileName();
        Path folder = absolute.getParent();
        if (name == null || folder == null) {
            return "";
        }
        String wanted = name.toString();
        Set<String> here = names(folder);
        String near = Spelling.nearest(wanted, here);
        for (String one : here) {
            if (near.isEmpty() && one.toLowerCase(Locale.ROOT).startsWith(wanted.toLowerCase(Locale.ROOT) + ".")) {
                near = one;
            }
        }
        if (!near.isEmpty()) {
            Path parent = path.getParent();
            return (parent == null ? Path.of(near) : parent.resolve(near)).toString();
        }
        for (String place : new String[] {"scenarios", ".."}) {
            Path other = folder.resolve(place).resolve(wanted);
            if (Files.isRegularFile(other)) {
                Path parent = path.getParent();
                return (parent == null ? Path.of(place) : parent.resolve(place))
                        .resolve(wanted)
                        .toString();
            }
        }
        return "";
    }

    private static Set<String> names(Path folder) {
        Set<String> names = new TreeSet<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.limit(2000)
                        .filter(Files::isRegularFile)
                        .forEach(f -> names.add(f.getFileName().toString()));
            } catch (IOException e) {
                return names;
            }
        }
        return names;
    }
}
