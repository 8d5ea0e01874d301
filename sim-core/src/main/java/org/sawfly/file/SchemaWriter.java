package org.sawfly.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import org.sawfly.quantity.Unit;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the readers ask for, told to others: a JSON Schema (draft 2020-12) for editors, a page of all keys, the key paths.
 * Made by running the readers on nothing.
 */
public final class SchemaWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** The three kinds of file. */
    public enum Kind {
        GLIDER("a glider", in -> new GliderReader(new TableFiles(), (glider, corrections, camber) -> 0).read(in)),
        LAUNCH("a way of launching", LaunchReader::read),
        STUDY("a study: something varied, or versions compared", StudyFile::keys);

        private final String words;
        private final Function<In, ?> reader;

        Kind(String words, Function<In, ?> reader) {
            this.words = words;
            this.reader = reader;
        }

        /** Name without ending of the schema's file. */
        public String fileName() {
            return Texts.word(this) + ".schema.json";
        }

        private Described described() {
            return In.describe(reader);
        }
    }

    private SchemaWriter() {}

    /** The schema of a kind of file as JSON text. */
    public static String schema(Kind kind) {
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "sawfly: " + kind.words);
        object(schema, kind.described());
        return MAPPER.writerWithDefaultPrettyPrinter()
                        .writeValueAsString(schema)
                        .replace("\r\n", "\n") + "\n";
    }

    /** All key paths of a kind of file, names in capitals where the user chooses them. */
    public static List<String> paths(Kind kind) {
        TreeSet<String> paths = new TreeSet<>();
        paths("", kind.described(), paths);
        return List.copyOf(paths);
    }

    /** A page that lists all keys of all kinds of file, as Markdown. */
    public static String reference() {
        StringBuilder page = new StringBuilder("# Keys of the files\n\nWritten from the readers themselves.\n");
        for (Kind kind : Kind.values()) {
            page.append("\n## ")
                    .append(Texts.word(kind))
                    .append(": ")
                    .append(kind.words)
                    .append("\n\n");
            page.append("| key | what it is | may be | example or default |\n| --- | --- | --- | --- |\n");
            rows("", kind.described(), page);
        }
        page.append("\n## change: what moves other things along\n\n");
        page.append("Besides these every key of a glider or launch file can be changed.\n\n");
        page.append("| key | what it is | may be | example or default |\n| --- | --- | --- | --- |\n");
        rows("", In.describe(Designs::read), page);
        return page.toString();
    }

    private static void object(ObjectNode schema, Described described) {
        schema.put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        List<String> required = new ArrayList<>();
        described.keys().forEach((name, key) -> {
            value(properties.putObject(name), key);
            if (key.required()) {
                required.add(name);
            }
        });
        if (!required.isEmpty()) {
            required.forEach(schema.putArray("required")::add);
        }
        schema.put("additionalProperties", false);
    }

    private static void value(ObjectNode schema, Described.Key key) {
        String unit = key.unit() == Unit.NUMBER ? "" : " [" + key.unit().words() + "]";
        schema.put("description", key.words() + unit);
        switch (key.kind()) {
            case NUMBER -> {
                schema.put("type", "number");
                schema.put(
                        key.bounds().open() ? "exclusiveMinimum" : "minimum",
                        key.bounds().low());
                schema.put("maximum", key.bounds().high());
                schema.putArray("examples").add(Double.parseDouble(key.example()));
            }
            case TEXT -> schema.put("type", "string");
            case CHOICE -> key.choices().forEach(schema.putArray("enum")::add);
            case MAP -> object(schema, key.inner());
            case NAMED_MAPS -> {
                schema.put("type", "object");
                object(schema.putObject("additionalProperties"), key.inner());
            }
            case LIST_OF_MAPS -> {
                schema.put("type", "array");
                object(schema.putObject("items"), key.inner());
            }
            case LIST_OF_TEXTS -> {
                schema.put("type", "array");
                ObjectNode items = schema.putObject("items");
                if (key.choices().isEmpty()) {
                    items.put("type", "string");
                } else {
                    key.choices().forEach(items.putArray("enum")::add);
                }
            }
            case RANGES, ANYTHING -> schema.put("type", "object");
        }
    }

    private static String nameOf(Map.Entry<String, Described.Key> one) {
        return switch (one.getValue().kind()) {
            case NAMED_MAPS -> one.getKey() + ".NAME";
            case LIST_OF_MAPS -> one.getKey() + "[]";
            default -> one.getKey();
        };
    }

    private static void paths(String before, Described described, TreeSet<String> paths) {
        for (Map.Entry<String, Described.Key> one : described.keys().entrySet()) {
            String path = before + nameOf(one);
            if (one.getValue().inner() == null) {
                paths.add(path);
            } else {
                paths(path + ".", one.getValue().inner(), paths);
            }
        }
    }

    private static void rows(String before, Described described, StringBuilder page) {
        for (Map.Entry<String, Described.Key> one : described.keys().entrySet()) {
            Described.Key key = one.getValue();
            String path = before + nameOf(one);
            if (key.inner() == null) {
                page.append("| `")
                        .append(path)
                        .append("` | ")
                        .append(key.words())
                        .append(" | ");
                page.append(mayBe(key)).append(" | ").append(key.example()).append(" |\n");
            } else {
                page.append("| `")
                        .append(path)
                        .append("` | ")
                        .append(key.words())
                        .append(" | | |\n");
                rows(path + ".", key.inner(), page);
            }
        }
    }

    private static String mayBe(Described.Key key) {
        String needed = key.required() ? "needed; " : "";
        return switch (key.kind()) {
            case NUMBER -> needed + key.bounds().words(key.unit()).replace("must be ", "");
            case CHOICE, LIST_OF_TEXTS -> needed + String.join(", ", key.choices());
            case TEXT -> needed + "text";
            case RANGES, ANYTHING, MAP, NAMED_MAPS, LIST_OF_MAPS -> needed + "keys with values";
        };
    }
}
