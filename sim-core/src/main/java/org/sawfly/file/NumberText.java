package org.sawfly.file;

import org.sawfly.quantity.Unit;

/** Turns a written number into a value, in the unit of its key, or says what is wrong with it. */
final class NumberText {
    private NumberText() {}

    /** The value in the unit of the key; NaN after a problem. */
    static double read(In in, String key, Node node, Bounds bounds, Unit unit) {
        if (!(node instanceof Node.Scalar scalar)) {
            in.problem(key, "one number is needed here, not " + node.words(), "");
            return Double.NaN;
        }
        double value = parse(scalar);
        if (Double.isNaN(value)) {
            String what = scalar.kind() == Node.Kind.NOTHING
                    ? "has no value; a number is needed" + in(unit)
                    : "a number is needed" + in(unit) + ", not " + scalar.words();
            in.problem(key, what, maybe(scalar, unit));
            return Double.NaN;
        }
        if (Double.isInfinite(value)) {
            in.problem(key, "a finite number is needed, not " + scalar.text(), "");
            return Double.NaN;
        }
        if (!bounds.accepts(value)) {
            in.problem(
                    key,
                    Bounds.withUnit(value, unit) + " is out of range: " + bounds.words(unit),
                    Slips.ofSize(value, unit, bounds, key));
            return Double.NaN;
        }
        if (!bounds.isUsual(value)) {
            in.doubt(
                    key,
                    Bounds.withUnit(value, unit) + " is unusual; " + bounds.usualWords(unit),
                    Slips.ofSize(value, unit, bounds, key));
        }
        return value;
    }

    /** The value of a number token, infinite when no finite number; NaN when the token is no number. */
    static double parse(Node.Scalar scalar) {
        if (scalar.kind() != Node.Kind.NUMBER) {
            return Double.NaN;
        }
        try {
            double value = Double.parseDouble(scalar.text());
            return Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
        } catch (NumberFormatException e) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private static String maybe(Node.Scalar scalar, Unit unit) {
        return switch (scalar.kind()) {
            case TEXT -> Slips.ofWriting(scalar.text(), unit);
            case QUOTED -> {
                String advice = Slips.ofWriting(scalar.text(), unit);
                yield advice.isEmpty() ? "" : "without the quotes: " + advice;
            }
            case TRUTH, NOTHING, NUMBER -> "";
        };
    }

    private static String in(Unit unit) {
        return unit == Unit.NUMBER ? "" : " in " + unit.words();
    }
}
