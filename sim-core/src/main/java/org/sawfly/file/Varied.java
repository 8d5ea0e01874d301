package org.sawfly.file;

import java.util.List;
import org.sawfly.study.Axis;
import org.sawfly.study.Vary;

/**
 * A quantity and the values it takes one after the other.
 *
 * @param path   key path
 * @param values in the unit of the key
 * @param words  what was understood: "9 values, 0 to 80 mm every 10 mm"
 */
public record Varied(String path, List<Double> values, String words) {
    /** More values than this are refused. */
    static final int MOST_VALUES = Vary.MOST_ROWS;

    public Varied {
        values = List.copyOf(values);
    }

    /**
     * A range written {@code KEY=FROM..TO/STEP} or {@code KEY=0,20,40}.
     *
     * @throws InputException when it is none
     */
    public static Varied parse(String written, String option) {
        Problems problems = new Problems();
        int equals = written.indexOf('=');
        Varied varied = null;
        if (equals <= 0) {
            problems.add(
                    Place.whole(option),
                    "",
                    "\"" + Ascii.printable(written) + "\" is not KEY=FROM..TO/STEP",
                    "boom.cut_mm=0..80/10");
        } else {
            Place place = Place.whole(option);
            String value = written.substring(equals + 1).strip();
            Node node = new Node.Scalar(place, Node.Kind.TEXT, value);
            varied = Ranges.read(Settings.path(written.substring(0, equals)), node, problems);
        }
        problems.throwIfAny();
        return varied;
    }

    /** The same for a study. */
    public Axis axis() {
        return new Axis(path, values);
    }
}
