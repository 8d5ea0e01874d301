package org.sawfly.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * Walks the tokens of a YAML text once into a tree. Strict: one document, no anchors, aliases, merge keys or tags, no
 * key twice. Each of these is reported at its own place and the walk goes on.
 */
final class TreeReader {
    private static final YAMLFactory YAML = new YAMLFactory();
    private static final int DEEPEST = 20;

    private final Source source;
    private final Problems problems;
    private final JsonParser parser;

    private TreeReader(Source source, Problems problems, JsonParser parser) {
        this.source = source;
        this.problems = problems;
        this.parser = parser;
    }

    /** The tree of a source, or null when it cannot be parsed or is empty; the reason is among the problems then. */
    static Node read(Source source, Problems problems) {
        if (!new LineCheck(source, problems).passes()) {
            return null;
        }
        try (JsonParser parser = YAML.createParser(ObjectReadContext.empty(), source.text())) {
            TreeReader reader = new TreeReader(source, problems, parser);
            JsonToken first = parser.nextToken();
            if (first == null) {
                problems.add(Place.whole(source.name()), "", "there is nothing in it", "");
                return null;
            }
            Node tree = reader.node(first, 0, "");
            if (parser.nextToken() != null) {
                problems.add(
                        reader.place(),
                        "",
                        "a second document begins here; one file holds one",
                        "take out the line --- and what follows");
            }
            return tree;
        } catch (TooDeep e) {
            return null;
        } catch (JacksonException e) {
            SyntaxAdvice.report(e, source, problems);
            return null;
        }
    }

    private Node node(JsonToken token, int depth, String path) {
        Place place = place();
        if (depth > DEEPEST) {
            problems.add(place, path, "nested more than " + DEEPEST + " deep", "");
            throw new TooDeep();
        }
        decorations(place, path);
        return switch (token) {
            case START_OBJECT -> keys(place, depth, path);
            case START_ARRAY -> items(place, depth, path);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(place, Node.Kind.NUMBER);
            case VALUE_TRUE, VALUE_FALSE -> scalar(place, Node.Kind.TRUTH);
            case VALUE_NULL -> scalar(place, Node.Kind.NOTHING);
            default -> text(place);
        };
    }

    private Node text(Place place) {
        int first = source.at(place.line(), place.column());
        boolean quoted = first == '"' || first == '\'' || first == '|' || first == '>';
        if (!quoted && parser.getString().equals("~")) {
            return scalar(place, Node.Kind.NOTHING);
        }
        return scalar(place, quoted ? Node.Kind.QUOTED : Node.Kind.TEXT);
    }

    private Node scalar(Place place, Node.Kind kind) {
        String text = parser.getString();
        return new Node.Scalar(place, kind, text == null ? "" : text);
    }

    private Node items(Place place, int depth, String path) {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(node(token, depth + 1, path + "[" + (items.size() + 1) + "]"));
        }
        return new Node.Items(place, items);
    }

    private Node keys(Place place, int depth, String path) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_OBJECT; token = parser.nextToken()) {
            Place keyPlace = place();
            String key = parser.getString();
            String keyPath = path.isEmpty() ? key : path + "." + key;
            decorations(keyPlace, keyPath);
            Node value = node(parser.nextToken(), depth + 1, keyPath);
            Node.Entry before = entries.get(key);
            if (key.equals("<<")) {
                problems.add(keyPlace, path, "<< (a merge key) is not read here", "write the keys out");
            } else if (before != null) {
                problems.add(
                        keyPlace,
                        keyPath,
                        "stands here a second time; first in line "
                                + before.place().line(),
                        "");
            } else {
                entries.put(key, new Node.Entry(keyPlace, value));
            }
        }
        return new Node.Keys(place, entries);
    }

    /** Refuses what YAML allows before a value and this program does not. */
    private void decorations(Place place, String path) {
        int first = source.at(place.line(), place.column());
        if (first == '&') {
            problems.add(place, path, "an anchor (&) is not read here", "write the value out");
        } else if (first == '*') {
            problems.add(place, path, "an alias (*) is not read here", "write the value out");
        } else if (first == '!') {
            problems.add(place, path, "a tag (!) is not read here", "write the value alone");
        }
    }

    private Place place() {
        TokenStreamLocation at = parser.currentTokenLocation();
        return new Place(source.name(), at.getLineNr(), at.getColumnNr());
    }

    /** Leaves the walk of a tree too deep to go on with. */
    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooDeep() {
            super(null, null, false, false);
        }
    }
}
