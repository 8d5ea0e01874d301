package org.sawfly.file;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;

/**
 * Says in plain words where and why a text is no YAML. The parser's own location is that of the token before; the true
 * marks stand in its message: the first is where the construct began, the last where it broke.
 */
final class SyntaxAdvice {
    private static final Pattern MARK = Pattern.compile("line (\\d+), column (\\d+):");

    private SyntaxAdvice() {}

    static void report(JacksonException e, Source source, Problems problems) {
        String message = e.getMessage() == null ? "" : e.getMessage();
        Place begun = null;
        Place broken = null;
        Matcher mark = MARK.matcher(message);
        while (mark.find()) {
            broken = new Place(source.name(), Integer.parseInt(mark.group(1)), Integer.parseInt(mark.group(2)));
            begun = begun == null ? broken : begun;
        }
        if (broken == null) {
            TokenStreamLocation at = e.getLocation();
            broken = at == null
                    ? Place.whole(source.name())
                    : new Place(source.name(), at.getLineNr(), at.getColumnNr());
            begun = broken;
        }
        explain(message, source, begun, broken, problems);
    }

    private static void explain(String message, Source source, Place begun, Place broken, Problems problems) {
        if (message.contains("while parsing a flow mapping") || message.contains("while parsing a flow sequence")) {
            String open = message.contains("flow mapping") ? "{" : "[";
            String close = open.equals("{") ? "}" : "]";
            problems.add(
                    broken,
                    "",
                    "a comma or " + close + " is needed before this",
                    "the " + open + " of line " + begun.line() + ", column " + begun.column() + " is not closed");
        } else if (message.contains("while scanning a quoted scalar")) {
            problems.add(
                    begun, "", "this quote is not closed", "a quote is missing at the end of line " + begun.line());
        } else if (message.contains("mapping values are not allowed here")) {
            String tight = LineCheck.tightColon(source, broken.line() - 1);
            problems.add(
                    broken,
                    "",
                    "this colon cannot stand here",
                    tight != null
                            ? tight
                            : "the line above lacks a colon, this line is indented too far, or a text with a colon needs"
                                    + " quotes");
        } else if (message.contains("could not find expected ':'")) {
            String tight = LineCheck.tightColon(source, broken.line());
            problems.add(
                    begun,
                    "",
                    "a colon is missing after this",
                    tight != null ? tight : "key: value, with a space between");
        } else if (message.contains("that cannot start any token")) {
            int c = source.at(broken.line(), broken.column());
            problems.add(
                    broken,
                    "",
                    "the character " + (c > ' ' && c < 0x7f ? Character.toString(c) : Ascii.code(c))
                            + " cannot begin a value",
                    "it needs quotes round it");
        } else if (message.contains("while parsing a block mapping")
                || message.contains("while parsing a block collection")) {
            problems.add(
                    broken,
                    "",
                    "this does not line up with the lines above",
                    "indent it like its neighbours; the block begins in line " + begun.line());
        } else if (message.contains("Expected a property name")) {
            problems.add(broken, "", "a key must be a single word", "");
        } else if (message.contains("undefined alias")) {
            problems.add(broken, "", "an alias (*) is not read here", "write the value out");
        } else {
            int end = message.indexOf('\n');
            String first = end < 0 ? message : message.substring(0, end);
            problems.add(broken, "", "cannot be read: " + Ascii.printable(first), "");
        }
    }
}
