package org.sawfly.file;

import java.util.Locale;

/** Turns text from outside into what any terminal can show. */
final class Ascii {
    private Ascii() {}

    /** Keeps printable ASCII; anything else becomes its code point in words. */
    static String printable(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c >= ' ' && c < 0x7f) {
                shown.append((char) c);
            } else if (c == '\n') {
                shown.append("\\n");
            } else if (c == '\t') {
                shown.append("\\t");
            } else {
                shown.append(code(c));
            }
        });
        return shown.toString();
    }

    static String code(int codePoint) {
        String hex = Integer.toHexString(codePoint).toUpperCase(Locale.ROOT);
        return "<U+" + "0".repeat(Math.max(0, 4 - hex.length())) + hex + ">";
    }
}
