package org.sawfly.cli.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Widths of text, estimated so that a sheet is laid out alike whatever fonts a machine has: a little on the wide side of
 * the common sans-serif faces.
 */
final class Letters {
    /** Bold letters are so much wider. */
    static final double BOLD = 1.13;

    private static final String NARROW = " .,:;'|!iljIft()[]-";
    private static final String WIDE = "mwMW%@";

    private Letters() {}

    /** Width of a line of text [points]. */
    static double width(String text, double size) {
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            width += NARROW.indexOf(c) >= 0 ? 0.34 : WIDE.indexOf(c) >= 0 ? 0.95 : 0.62;
        }
        return width * size;
    }

    /** Breaks words into lines of at most the given width. */
    static List<String> wrap(String text, double size, double most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.trim().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > most) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
