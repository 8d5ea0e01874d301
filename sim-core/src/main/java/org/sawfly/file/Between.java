package org.sawfly.file;

import java.util.Collection;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A key and a range for its value, in the unit of the key; an end left out is infinite.
 *
 * @param path key path
 * @param from lower end
 * @param to upper end, above the lower one
 */
public record Between(String path, double from, double to) {
    private static final Pattern RANGE =
            Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?)?\\s*\\.\\.\\s*(-?\\d{1,9}(?:\\.\\d{1,9})?)?");

    /**
     * A range written {@code KEY=FROM..TO}.
     *
     * @param option where it stands, for messages
     * @throws InputException when it is none
     */
    public static Between parse(String written, String option) {
        Problems problems = new Problems();
        Place place = Place.whole(option);
        int equals = written.indexOf('=');
        double from = Double.NaN;
        double to = Double.NaN;
        String path = equals < 0 ? "" : Settings.path(written.substring(0, equals));
        Matcher range = RANGE.matcher(written.substring(equals + 1).strip());
        if (equals <= 0) {
            problems.add(place, "", Ascii.printable(written) + " is not KEY=FROM..TO", "preset.elevator_up_mm=0..3");
        } else if (!range.matches() || range.group(1) == null && range.group(2) == null) {
            String text = Ascii.printable(written.substring(equals + 1));
            String meant = text.matches("\\d{1,9}(\\.\\d{1,9})?") ? path + "=" + text + ".." : path + "=0..3";
            problems.add(place, path, "\"" + text + "\" is no range FROM..TO of plain numbers", meant);
        } else {
            from = range.group(1) == null ? Double.NEGATIVE_INFINITY : Double.parseDouble(range.group(1));
            to = range.group(2) == null ? Double.POSITIVE_INFINITY : Double.parseDouble(range.group(2));
            if (!(from < to)) {
                String text = Ascii.printable(written.substring(equals + 1));
                problems.add(
                        place,
                        path,
                        "the range " + text + " does not rise",
                        from == to ? "" : path + "=" + range.group(2) + ".." + range.group(1));
            }
        }
        problems.throwIfAny();
        return new Between(path, from, to);
    }

    /** The known word nearest to a misspelt one, or an empty text when none is near. */
    public static String nearest(String written, Collection<String> known) {
        return Spelling.nearest(written, known);
    }
}
