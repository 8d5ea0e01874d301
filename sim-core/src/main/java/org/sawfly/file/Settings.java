package org.sawfly.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sawfly.study.Setting;

/** Settings as written on a command line or flattened from a study file. */
public final class Settings {
    private Settings() {}

    /**
     * Settings written {@code KEY=VALUE,KEY=VALUE}; commas inside brackets belong to the value.
     *
     * @param written what stood behind the option
     * @param option  its name, for messages
     * @throws InputException when a piece is not KEY=VALUE
     */
    public static List<Setting> parse(String written, String option) {
        Problems problems = new Problems();
        List<Setting> settings = new ArrayList<>();
        for (String piece : pieces(written)) {
            int equals = piece.indexOf('=');
            if (equals <= 0 || equals == piece.length() - 1) {
                problems.add(
                        Place.whole(option),
                        "",
                        "\"" + Ascii.printable(piece) + "\" is not KEY=VALUE",
                        piece.matches("[0-9.]+") && written.contains(",")
                                ? "a point for the decimals"
                                : "boom.cut_mm=40");
            } else {
                settings.add(new Setting(
                        path(piece.substring(0, equals)),
                        piece.substring(equals + 1).strip()));
            }
        }
        problems.throwIfAny();
        return List.copyOf(settings);
    }

    /** The path of a key as people write it before a number: "cut" is the cut of the boom. */
    static String path(String written) {
        String key = written.strip();
        return key.equals("cut") ? "boom.cut_mm" : key;
    }

    private static List<String> pieces(String written) {
        List<String> pieces = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
            if (c == ',' && depth == 0) {
                pieces.add(written.substring(from, i));
                from = i + 1;
            }
        }
        pieces.add(written.substring(from));
        return pieces;
    }

    /** The change a setting makes; null, with a problem, when its path is none. */
    static Change change(Setting setting, Problems problems) {
        Place place = Place.whole(Ascii.printable(setting.toString()));
        Node value = Edit.value(setting.value(), place, problems);
        Node.Keys tree = Edit.single(setting.path(), value, place, problems);
        return tree == null ? null : Change.sorted(tree);
    }

    /** The settings that say the same as a tree. */
    static List<Setting> of(Node.Keys tree) {
        List<Setting> settings = new ArrayList<>();
        flatten("", tree, settings);
        return List.copyOf(settings);
    }

    private static void flatten(String path, Node.Keys tree, List<Setting> settings) {
        for (Map.Entry<String, Node.Entry> one : tree.entries().entrySet()) {
            String key = path.isEmpty() ? one.getKey() : path + "." + one.getKey();
            Node value = one.getValue().value();
            if (value instanceof Node.Keys inner && !inner.entries().isEmpty()) {
                flatten(key, inner, settings);
            } else {
                settings.add(new Setting(key, flow(value)));
            }
        }
    }

    /** A value on one line. */
    static String flow(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return switch (scalar.kind()) {
                case NUMBER, TRUTH, TEXT -> scalar.text();
                case QUOTED -> "\"" + scalar.text().replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
                case NOTHING -> "~";
            };
        }
        List<String> inside = new ArrayList<>();
        if (node instanceof Node.Items items) {
            items.items().forEach(item -> inside.add(flow(item)));
            return "[" + String.join(", ", inside) + "]";
        }
        ((Node.Keys) node).entries().forEach((key, entry) -> inside.add(flowKey(key) + ": " + flow(entry.value())));
        return "{" + String.join(", ", inside) + "}";
    }

    private static String flowKey(String key) {
        return key.matches("[A-Za-z][A-Za-z0-9_]*") ? key : "\"" + key + "\"";
    }
}
