package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;

/**
 * A varied quantity in words.
 *
 * @param path its key path
 * @param values in the unit of the key
 * @param understood what was understood: "9 cuts, 0 to 80 mm every 10 mm"
 * @param today its value as it is today; NaN when it has none
 */
public record VariedAxis(String path, List<Double> values, String understood, double today) {
    private static final int DECIMALS = 6;
    private static final double WIDE = 20;
    private static final double NARROW = 2;
    private static final double FINE = 0.1;
    private static final int NARROW_COLUMN = 8;

    /** A range as it was understood, with a better word for what is counted where there is one. */
    public static String understood(String path, String words) {
        return path.equals(ChangeWords.CUT) ? words.replaceFirst("value", "cut") : words;
    }

    /** What is varied, for a title: "CG moved". */
    public String words() {
        return isCut() ? "how much off the boom" : isCg() ? "CG moved" : name();
    }

    /** Whether it is the cut of the boom. */
    boolean isCut() {
        return path.equals(ChangeWords.CUT);
    }

    /** Whether it is the balance point. */
    boolean isCg() {
        return path.equals("ready_to_fly.cg_mm");
    }

    /** A value as short as it can be. */
    String text(double value) {
        return Numbers.shortest(value, DECIMALS);
    }

    /** A value with its unit: "40 mm". */
    String textWithUnit(double value) {
        return text(value) + (unit().isEmpty() ? "" : " " + unit());
    }

    /** A place between values, no finer than the range makes sense of: "103 mm". */
    String rounded(double value) {
        double range = values.stream().mapToDouble(v -> v).max().orElse(0)
                - values.stream().mapToDouble(v -> v).min().orElse(0);
        int digits = range >= WIDE ? 0 : range >= NARROW ? 1 : range >= FINE ? 2 : 3;
        return Numbers.shortest(value, digits) + (unit().isEmpty() ? "" : " " + unit());
    }

    /** Its unit in words, empty for none. */
    String unit() {
        return Unit.ofKey(path).map(Unit::words).orElse("");
    }

    /** Lines over its column. */
    String[] heading() {
        List<String> lines = new ArrayList<>();
        for (String word : (name() + " " + unit()).strip().split(" ")) {
            int last = lines.size() - 1;
            boolean fits = last >= 0 && lines.get(last).length() + 1 + word.length() <= NARROW_COLUMN;
            if (fits && !word.equals(unit())) {
                lines.set(last, lines.get(last) + " " + word);
            } else {
                lines.add(word);
            }
        }
        return lines.toArray(String[]::new);
    }

    /** What it is called. */
    String name() {
        return switch (path) {
            case ChangeWords.CUT -> "cut";
            case "ready_to_fly.cg_mm" -> "CG";
            case "fin.scale_area" -> "fin area";
            case "tailplane.scale_area" -> "tail area";
            default -> {
                String suffix =
                        Unit.ofKey(path).map(unit -> "_" + unit.suffix()).orElse("");
                String bare = path.endsWith(suffix) ? path.substring(0, path.length() - suffix.length()) : path;
                String[] words = bare.split("\\.", -1);
                String last = words[words.length - 1].replace('_', ' ');
                yield words.length < 2 ? last : words[words.length - 2].replace('_', ' ') + " " + last;
            }
        };
    }

    /** The title of an axis of a chart. */
    String title() {
        return switch (path) {
            case ChangeWords.CUT -> "mm off the boom";
            case "ready_to_fly.cg_mm" -> "CG behind the leading edge, mm";
            case "fin.scale_area" -> "area of the fin, times today's";
            case "tailplane.scale_area" -> "area of the tailplane, times today's";
            default -> unit().isEmpty() ? name() : name() + ", " + unit();
        };
    }

    /** What one more step of it is: "Each 2 mm back", "Each 10 mm off". */
    String step(double size) {
        return "Each " + textWithUnit(size) + (isCg() ? " back" : isCut() ? " off" : " more");
    }

    /** Today's value stands between others; within a billionth it is the value itself. */
    boolean isToday(double value) {
        return Math.abs(value - today) < 1e-9 * Math.max(1, Math.abs(today));
    }
}
