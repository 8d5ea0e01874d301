package org.sawfly.file;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.sawfly.quantity.Unit;

/**
 * The heading of a log: which column is which.
 *
 * @param names of all columns
 * @param time its column, from 0
 * @param timeUnit seconds or milliseconds
 * @param height its column, from 0
 * @param wind its column, from 0; -1 for none
 */
record LogHeading(List<String> names, int time, Unit timeUnit, int height, int wind) {
    private static final List<String> NEEDED = List.of("time_s", "height_m");
    private static final String MILLISECONDS = "time_ms";
    private static final String EXAMPLE = "the first line is to be time_s,height_m";

    /** Reads it; null, with one problem, when it does not name what is needed. */
    static LogHeading of(String line, Place place, Problems problems) {
        List<String> names = Arrays.stream(line.split(",", -1))
                .map(name -> bare(name).toLowerCase(Locale.ROOT))
                .toList();
        boolean milliseconds = names.contains(MILLISECONDS) && !names.contains("time_s");
        int time = names.indexOf(milliseconds ? MILLISECONDS : "time_s");
        int height = names.indexOf("height_m");
        if (time >= 0 && height >= 0) {
            return new LogHeading(
                    names, time, milliseconds ? Unit.MILLISECOND : Unit.SECOND, height, names.indexOf("wind_mps"));
        }
        if (line.indexOf('\0') >= 0 || line.startsWith("\u00FF\u00FE") || line.startsWith("\u00FE\u00FF")) {
            problems.add(place, "", "no text in UTF-8", "save it again as CSV in UTF-8");
        } else if (line.indexOf(';') >= 0 || line.indexOf('\t') >= 0) {
            problems.add(
                    place,
                    "",
                    "the columns must be separated by commas",
                    "save it with commas between and points in the numbers");
        } else if (names.stream().allMatch(name -> name.matches("[-+0-9.e]*"))) {
            problems.add(place, "", "the heading is missing that names the columns", EXAMPLE);
        } else if (names.size() == 1) {
            problems.add(place, "", "two columns are needed, a time and a height; this is one", EXAMPLE);
        } else {
            String missing = time < 0 ? NEEDED.get(0) : NEEDED.get(1);
            problems.add(
                    place,
                    "",
                    "no column is called " + missing + ": they are " + shortened(String.join(", ", names)),
                    meant(names, time < 0));
        }
        return null;
    }

    /** A cell without blanks and quotes around it. */
    static String bare(String cell) {
        String bare = cell.strip();
        boolean quoted = bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"");
        return quoted ? bare.substring(1, bare.length() - 1).strip() : bare;
    }

    private static String meant(List<String> names, boolean time) {
        for (String name : names) {
            if (time && (name.contains("time") || name.contains("sec") || name.equals("t"))) {
                return "\"" + name + "\" is it: call it time_s when it is in seconds, time_ms in milliseconds";
            }
            boolean height = name.contains("height") || name.contains("alt") || name.equals("h");
            if (!time && height && (name.contains("ft") || name.contains("feet"))) {
                return "\"" + name + "\" is in feet: divide by 3.281 and call it height_m";
            }
            if (!time && height) {
                return "\"" + name + "\" is it: call it height_m when it is in metres";
            }
        }
        return "";
    }

    private static String shortened(String names) {
        return names.length() <= 60 ? names : names.substring(0, 57) + "...";
    }
}
