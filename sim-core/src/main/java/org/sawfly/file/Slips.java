package org.sawfly.file;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sawfly.quantity.Unit;

/** Guesses what was meant by a number that cannot be right: another unit, another sign, another way of writing. */
final class Slips {
    /** A unit people use where another is asked for, and its size in the unit asked for. */
    private record Other(String words, double size) {}

    private static final Map<Unit, List<Other>> OTHERS = Map.of(
            Unit.MILLIMETRE, List.of(new Other("cm", 10), new Other("m", 1000), new Other("inches", 25.4)),
            Unit.GRAM, List.of(new Other("kg", 1000), new Other("ounces", 28.35)),
            Unit.SQUARE_DECIMETRE,
                    List.of(
                            new Other("cm2", 0.01),
                            new Other("mm2", 1e-4),
                            new Other("m2", 100),
                            new Other("square inches", 0.064516)),
            Unit.METRE, List.of(new Other("mm", 0.001), new Other("cm", 0.01), new Other("feet", 0.3048)),
            Unit.METRE_PER_SECOND, List.of(new Other("km/h", 1 / 3.6)),
            Unit.DEGREE, List.of(new Other("rad", 180 / Math.PI)),
            Unit.SECOND, List.of(new Other("ms", 0.001)),
            Unit.PERCENT, List.of(new Other("a fraction", 100)));

    private static final Map<String, String> OPPOSITE = Map.of(
            "ahead", "behind",
            "behind", "ahead",
            "up", "down",
            "down", "up",
            "left", "right",
            "right", "left",
            "forward", "back",
            "above", "below",
            "below", "above");

    private static final String NUMBER = "\\d[\\d_ \\u00a0]*(?:[.,]\\d+)?|[.,]\\d+";
    private static final Pattern PLAIN = Pattern.compile("([+-]?)(" + NUMBER + ")");
    private static final Pattern HEX = Pattern.compile("0[xX]([0-9a-fA-F]{1,6})");
    private static final Pattern WITH_UNIT =
            Pattern.compile("([+-]?)(" + NUMBER + ")\\s*((?![eE][+-]?\\d)[A-Za-z%\\u00b0/\"'][A-Za-z0-9%/\\u00b2. ]*)");
    private static final Pattern RANGE = Pattern.compile("(" + NUMBER + ")\\s*(?:-|\\.\\.|to|/)\\s*(" + NUMBER + ").*");
    private static final Pattern ABOUT = Pattern.compile("(?:~|ca\\.?|about|approx\\.?|<|>|=)\\s*(.*?)|(.*?)\\s*\\?");

    private Slips() {}

    /** What a value outside its bounds may have meant, or an empty text. */
    static String ofSize(double value, Unit unit, Bounds bounds, String key) {
        if (value < 0 && bounds.accepts(-value)) {
            String turned = opposite(key);
            return turned.isEmpty()
                    ? Bounds.show(-value) + ", without the minus sign"
                    : turned + ": " + Bounds.show(-value) + " (there are no minus signs in these files)";
        }
        for (Other other : OTHERS.getOrDefault(unit, List.of())) {
            double meant = value * other.size;
            if (bounds.accepts(meant) && bounds.isUsual(meant)) {
                return Bounds.show(meant) + " (is " + Bounds.show(value) + " in " + other.words + "?)";
            }
        }
        return "";
    }

    /** The key for the other direction, or an empty text when the key names none. */
    static String opposite(String key) {
        String[] words = key.split("_", -1);
        for (int i = 0; i < words.length; i++) {
            String turned = OPPOSITE.get(words[i]);
            if (turned != null) {
                words[i] = turned;
                return String.join("_", words);
            }
        }
        return "";
    }

    /** How a text that should be a number would be written, or an empty text when that cannot be guessed. */
    static String ofWriting(String written, Unit unit) {
        String text = written.strip()
                .replaceAll("[\\u201c\\u201d\\u201e\\u2018\\u2019\\u00ab\\u00bb\"]", "")
                .replaceAll("[\\u2212\\u2013\\u2014]", "-")
                .strip();
        Matcher about = ABOUT.matcher(text);
        if (about.matches()) {
            text = (about.group(1) != null ? about.group(1) : about.group(2)).strip();
        }
        Matcher hex = HEX.matcher(text);
        if (hex.matches()) {
            return "write " + Integer.parseInt(hex.group(1), 16);
        }
        Matcher plain = PLAIN.matcher(text);
        if (plain.matches()) {
            return "write " + sign(plain.group(1)) + plain(plain.group(2));
        }
        Matcher range = RANGE.matcher(text);
        if (range.matches()) {
            return "one number belongs here; a range goes under vary: {from: " + plain(range.group(1)) + ", to: "
                    + plain(range.group(2)) + ", every: ...}";
        }
        Matcher withUnit = WITH_UNIT.matcher(text);
        if (withUnit.matches()) {
            String number = sign(withUnit.group(1)) + plain(withUnit.group(2));
            return "the unit is in the key: write "
                    + converted(number, withUnit.group(3).strip(), unit);
        }
        return "";
    }

    private static String converted(String number, String unitWritten, Unit unit) {
        String given =
                unitWritten.toLowerCase(Locale.ROOT).replace("\u00b2", "2").replace("sq ", "");
        Optional<Double> size = OTHERS.getOrDefault(unit, List.of()).stream()
                .filter(o -> o.words.equals(given))
                .map(Other::size)
                .findFirst();
        return size.map(s -> Bounds.show(Double.parseDouble(number) * s)).orElse(number);
    }

    private static String sign(String sign) {
        return sign.equals("-") ? "-" : "";
    }

    private static String plain(String number) {
        String digits = number.replaceAll("[_ \\u00a0]", "").replace(',', '.');
        String shown = digits.startsWith(".") ? "0" + digits : digits;
        return shown.replaceFirst("^0+(?=\\d)", "");
    }
}
