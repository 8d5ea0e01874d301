package org.sawfly.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks at the lines of a source before they are parsed, for what a parser would misplace or misunderstand. */
final class LineCheck {
    private static final Pattern TIGHT_COLON = Pattern.compile("^\\s*(?:- )?([A-Za-z][A-Za-z0-9_.]*):([^\\s/:].*)$");

    /** More lines than this with such characters, and it is no text file: nobody wants to read of each. */
    private static final int MOST_ODD_LINES = 3;

    private final Source source;
    private final Problems problems;

    LineCheck(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /** True when the lines can go to the parser. */
    boolean passes() {
        boolean good = characters();
        List<Integer> tabbed = new ArrayList<>();
        for (int i = 0; i < source.lines().size(); i++) {
            String line = source.lines().get(i);
            int first = firstOfContent(line);
            if (first < line.length() && line.charAt(first) != '#') {
                String indent = line.substring(0, first);
                if (indent.indexOf('\t') >= 0) {
                    tabbed.add(i + 1);
                } else if (indent.indexOf('\u00a0') >= 0) {
                    good = false;
                    problems.add(
                            place(i + 1, indent.indexOf('\u00a0') + 1),
                            "",
                            "a no-break space in the indent",
                            "copied from a web page: type ordinary spaces");
                } else if (line.charAt(0) == '%') {
                    good = false;
                    problems.add(place(i + 1, 1), "", "a line beginning with % is not read here", "take it out");
                }
            }
        }
        for (int line : tabbed) {
            problems.add(
                    place(line, source.lines().get(line - 1).indexOf('\t') + 1),
                    "",
                    "a tab in the indent; only spaces count",
                    "two spaces for each step");
        }
        return good && tabbed.isEmpty();
    }

    /** The nearest line at or above one that has a colon without a space after it, or null. */
    static String tightColon(Source source, int line) {
        for (int i = Math.min(line, source.lines().size()); i >= 1 && i >= line - 1; i--) {
            Matcher tight = TIGHT_COLON.matcher(source.lines().get(i - 1));
            if (tight.matches()) {
                return "line " + i + " lacks a space after the colon: " + Ascii.printable(tight.group(1)) + ": "
                        + Ascii.printable(tight.group(2).strip());
            }
        }
        return null;
    }

    /** Whether every line holds only what a text file can hold; tells of the first few that do not. */
    private boolean characters() {
        int odd = 0;
        for (int i = 0; i < source.lines().size(); i++) {
            String line = source.lines().get(i);
            int at = oddCharacter(line);
            if (at >= 0 && ++odd <= MOST_ODD_LINES) {
                problems.add(
                        place(i + 1, line.codePointCount(0, at) + 1),
                        "",
                        "the character " + Ascii.code(line.charAt(at)) + " cannot stand in a text file",
                        line.charAt(at) == 0 ? "this is no text file" : "");
            }
        }
        if (odd > MOST_ODD_LINES) {
            int more = odd - MOST_ODD_LINES;
            problems.add(
                    Place.whole(source.name()),
                    "",
                    more + (more == 1 ? " more line has" : " more lines have") + " such characters",
                    "this is no text file");
        }
        return odd == 0;
    }

    /** Where the first character stands that no text file has; -1 when there is none. */
    private static int oddCharacter(String line) {
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean control =
                    c < ' ' && c != '\t' || c >= 0x7f && c < 0xa0 && c != 0x85 || c == '\ufffe' || c == '\uffff';
            boolean lone = Character.isSurrogate(c)
                    && !(Character.isHighSurrogate(c)
                            && i + 1 < line.length()
                            && Character.isLowSurrogate(line.charAt(i + 1)))
                    && !(Character.isLowSurrogate(c) && i > 0 && Character.isHighSurrogate(line.charAt(i - 1)));
            if (control || lone) {
                return i;
            }
        }
        return -1;
    }

    private static int firstOfContent(String line) {
        int i = 0;
        while (i < line.length() && (line.charAt(i) == ' ' || line.charAt(i) == '\t' || line.charAt(i) == '\u00a0')) {
            i++;
        }
        return i;
    }

    private Place place(int line, int column) {
        return new Place(source.name(), line, column);
    }
}
