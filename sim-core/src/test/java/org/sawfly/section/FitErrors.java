package org.sawfly.section;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.sawfly.section.Measurements.Point;

/**
 * Finds the numbers of the correlation anew and writes the error table of theory/sections.md between its two marks. Run as
 * a program from sim-core; it prints the numbers for {@link SectionCorrelation#FITTED}.
 */
final class FitErrors {
    static final Path NOTE = Path.of("theory", "sections.md");
    static final String BEGIN = "<!-- errors: begin -->\n";
    static final String END = "<!-- errors: end -->\n";
    private static final double[] BANDS = {50e3, 80e3, 125e3, 175e3, 250e3, 350e3};
    private static final String[] NAMES = {"60 000", "100 000", "150 000", "200 000", "300 000"};

    private final Measurements data = new Measurements();

    public static void main(String[] args) throws IOException {
        FitErrors errors = new FitErrors();
        SectionCorrelation c = CorrelationFit.fit(errors.data.lift, errors.data.drag);
        System.out.println("lift   " + list(c.lift()));
        System.out.println("drag   " + list(c.drag()));
        System.out.println("moment " + list(c.moment()));
        String table = errors.table();
        System.out.println(table);
        String note = Files.readString(NOTE);
        int from = note.indexOf(BEGIN) + BEGIN.length();
        Files.writeString(NOTE, note.substring(0, from) + table + note.substring(note.indexOf(END)));
    }

    SectionCorrelation fit() {
        return CorrelationFit.fit(data.lift, data.drag);
    }

    Measurements data() {
        return data;
    }

    /** The error table of the committed numbers, and of fits that leave out the section they are tried on. */
    String table() {
        List<double[]> errors = dragErrors(SectionCorrelation.FITTED, null);
        List<double[]> left = new ArrayList<>();
        double[] lift = liftErrors(SectionCorrelation.FITTED, null);
        List<double[]> leftLift = new ArrayList<>();
        for (String name : sections()) {
            SectionCorrelation c = CorrelationFit.fit(
                    data.lift.stream().filter(p -> !p.section().equals(name)).toList(),
                    data.drag.stream().filter(p -> !p.section().equals(name)).toList());
            left.addAll(dragErrors(c, name));
            leftLift.add(liftErrors(c, name));
        }
        StringBuilder text = new StringBuilder();
        text.append(
                "| cd at equal cl, Re | points | median | 9 of 10 within | bias | left out: median | left out: 9 of 10 |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- |\n");
        for (int b = 0; b < NAMES.length; b++) {
            double[] all = band(errors, b);
            double[] out = band(left, b);
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %.1f %% | %.1f %% | %+.1f %% | %.1f %% | %.1f %% |%n",
                    NAMES[b],
                    all.length,
                    100 * quantile(absolute(all), 0.5),
                    100 * quantile(absolute(all), 0.9),
                    100 * quantile(all, 0.5),
                    100 * quantile(absolute(out), 0.5),
                    100 * quantile(absolute(out), 0.9)));
        }
        text.append("\n| lift and moment | fit | left out |\n| --- | --- | --- |\n");
        String[] words = {
            "cl at equal angle up to 10 deg, root mean square",
            "zero-lift angle from 200 000 on, largest [deg]",
            "largest cl, root mean square",
            "cm up to 10 deg, root mean square"
        };
        for (int k = 0; k < words.length; k++) {
            text.append(String.format(Locale.ROOT, "| %s | %.3f | %.3f |%n", words[k], lift[k], gathered(leftLift, k)));
        }
        return text.toString();
    }

    private TreeSet<String> sections() {
        TreeSet<String> names = new TreeSet<>();
        data.drag.forEach(p -> names.add(p.section()));
        return names;
    }

    /** Reynolds number and relative error of every drag point (of one section, or of all). */
    List<double[]> dragErrors(SectionCorrelation c, String only) {
        Polars polars = new Polars(c);
        List<double[]> errors = new ArrayList<>();
        double[] out = new double[3];
        for (Point p : data.drag) {
            double alpha = polars.of(p).angleOf(p.cl());
            if ((only == null || p.section().equals(only)) && !Double.isNaN(alpha)) {
                polars.of(p).at(alpha, out);
                errors.add(new double[] {p.reynolds(), out[1] / p.value() - 1});
            }
        }
        return errors;
    }

    /** Errors of cl, zero-lift angle [deg], largest cl and cm; NaN where a section has none measured. */
    double[] liftErrors(SectionCorrelation c, String only) {
        Polars polars = new Polars(c);
        double[] out = new double[3];
        double[] sums = new double[4];
        int[] counts = new int[4];
        double top = 0;
        Point before = null;
        for (Point p : data.lift) {
            if (only != null && !p.section().equals(only)) {
                continue;
            }
            boolean sameRun =
                    before != null && before.section().equals(p.section()) && before.reynolds() == p.reynolds();
            polars.of(p).at(p.alpha(), out);
            if (Math.abs(p.alpha()) < Math.toRadians(10)) {
                add(sums, counts, 0, out[0] - p.cl());
                if (!Double.isNaN(p.value())) {
                    add(sums, counts, 3, out[2] - p.value());
                }
            }
            if (sameRun && before.cl() < 0 && p.cl() >= 0 && p.alpha() > before.alpha() && p.reynolds() > 1.5e5) {
                double share = before.cl() / (before.cl() - p.cl());
                double zero = before.alpha() + share * (p.alpha() - before.alpha());
                double error = Math.abs(polars.of(p).angleOf(0) - zero);
                sums[1] = Math.max(sums[1], Math.toDegrees(error));
                counts[1]++;
            }
            if (before != null && !sameRun) {
                add(sums, counts, 2, polars.of(before).maximum() - top);
                top = 0;
            }
            top = Math.max(top, p.alpha() < Math.toRadians(15) ? p.cl() : top);
            before = p;
        }
        if (before != null) {
            add(sums, counts, 2, polars.of(before).maximum() - top);
        }
        for (int k = 0; k < 4; k++) {
            double mean = k == 1 ? sums[k] : Math.sqrt(sums[k] / counts[k]);
            sums[k] = counts[k] == 0 ? Double.NaN : mean;
        }
        return sums;
    }

    private static void add(double[] sums, int[] counts, int k, double error) {
        sums[k] += error * error;
        counts[k]++;
    }

    private static double gathered(List<double[]> all, int k) {
        double[] some = all.stream()
                .mapToDouble(e -> e[k])
                .filter(e -> !Double.isNaN(e))
                .toArray();
        return k == 1
                ? Arrays.stream(some).max().orElseThrow()
                : Math.sqrt(Arrays.stream(some).map(e -> e * e).average().orElseThrow());
    }

    static double[] band(List<double[]> errors, int b) {
        return errors.stream()
                .filter(e -> e[0] >= BANDS[b] && e[0] < BANDS[b + 1])
                .mapToDouble(e -> e[1])
                .toArray();
    }

    static double[] absolute(double[] values) {
        return Arrays.stream(values).map(Math::abs).toArray();
    }

    static double quantile(double[] values, double q) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double place = q * (sorted.length - 1);
        int i = (int) Math.min(place, sorted.length - 2.0);
        return sorted[i] + (place - i) * (sorted[i + 1] - sorted[i]);
    }

    private static String list(double[] values) {
        StringBuilder text = new StringBuilder();
        for (double v : values) {
            text.append(text.length() == 0 ? "" : ", ").append(String.format(Locale.ROOT, "%.5g", v));
        }
        return text.toString();
    }
}
