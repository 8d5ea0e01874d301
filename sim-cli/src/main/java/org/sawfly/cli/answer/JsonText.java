package org.sawfly.cli.answer;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.sawfly.quantity.Numbers;

/**
 * Writes a tree as JSON (RFC 8259): two spaces a level, lists of plain values on one line, 12 significant digits, null
 * for NaN, everything beyond ASCII escaped.
 */
final class JsonText {
    private static final int FIRST_PRINTABLE = 0x20;
    private static final int LAST_ASCII = 0x7e;

    private final StringBuilder text = new StringBuilder();

    private JsonText() {}

    static String of(Map<String, ?> document) {
        JsonText json = new JsonText();
        json.object(document, "");
        return json.text.append('\n').toString();
    }

    private void value(Object value, String indent) {
        if (value instanceof Fields fields) {
            object(fields.entries(), indent);
        } else if (value instanceof Fields.Items items) {
            list(items.list(), indent);
        } else if (value instanceof List<?> list) {
            list(list, indent);
        } else if (value instanceof Double number) {
            text.append(Numbers.machine(number));
        } else if (value instanceof Boolean yes) {
            text.append(yes);
        } else {
            string(value.toString());
        }
    }

    private void object(Map<String, ?> entries, String indent) {
        if (entries.isEmpty()) {
            text.append("{}");
            return;
        }
        String inner = indent + "  ";
        String before = "{\n";
        for (Map.Entry<String, ?> entry : entries.entrySet()) {
            text.append(before).append(inner);
            string(entry.getKey());
            text.append(": ");
            value(entry.getValue(), inner);
            before = ",\n";
        }
        text.append('\n').append(indent).append('}');
    }

    private void list(List<?> values, String indent) {
        boolean flat = values.stream().allMatch(value -> value instanceof Double || value instanceof Boolean);
        String inner = indent + "  ";
        text.append('[');
        for (int i = 0; i < values.size(); i++) {
            text.append(i == 0 ? "" : flat ? ", " : ",");
            if (!flat) {
                text.append('\n').append(inner);
            }
            value(values.get(i), inner);
        }
        text.append(flat || values.isEmpty() ? "" : "\n" + indent).append(']');
    }

    private void string(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (c == '\n') {
                text.append("\\n");
            } else if (c < FIRST_PRINTABLE || c > LAST_ASCII) {
                text.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                text.append(c);
            }
        }
        text.append('"');
    }
}
