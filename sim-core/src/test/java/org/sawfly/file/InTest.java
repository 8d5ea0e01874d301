package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InTest {
    private final Reading reading = new Reading();

    @Test
    void convertsByTheUnitOfTheKey() {
        String text = "{a_mm: 69, b_dm2: 1.93, c_g: 231.4, d_deg: 180, e_pct: 40, f_c: 15, plain: 2}";
        double[] read = read(text, in -> new double[] {
            in.number("a_mm", above(0, 100), 1, "x"),
            in.number("b_dm2", above(0, 100), 1, "x"),
            in.number("c_g", above(0, 1000), 1, "x"),
            in.number("d_deg", above(0, 180), 1, "x"),
            in.number("e_pct", above(0, 100), 1, "x"),
            in.number("f_c", between(-40, 50), 1, "x"),
            in.number("plain", above(0, 100), 1, "x")
        });
        double[] wanted = {0.069, 0.0193, 0.2314, Math.PI, 0.4, 288.15, 2};
        for (int i = 0; i < wanted.length; i++) {
            assertThat(read[i]).isCloseTo(wanted[i], within(1e-12));
        }
        assertThat(reading.problems().all()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "69,5      | write 69.5",
                "69.5mm    | write 69.5",
                "69.5 mm   | write 69.5",
                "6.95 cm   | write 69.5",
                "0.0695m   | write 69.5",
                "+69       | write 69",
                ".5        | write 0.5",
                "-.5       | write -0.5",
                "1_000     | write 1000",
                "1 000     | write 1000",
                "0x1F      | write 31",
                "007       | write 7",
                "'\"69.5\"' | write 69.5",
                "\u201c69.5\u201d | write 69.5",
                "\u221269  | write -69",
                "~69       | write 69",
                "69?       | write 69",
                "60-80     | from: 60, to: 80",
                "60..80    | from: 60, to: 80",
                "60\u201380 | from: 60, to: 80",
            })
    void saysHowANumberIsWritten(String written, String advice) {
        read("cg_mm: " + written, in -> in.number("cg_mm", above(0, 200), 69, "balance point"));
        assertThat(reading.problems().all()).hasSize(1);
        Problem problem = reading.problems().all().get(0);
        assertThat(problem.place()).isEqualTo(new Place("f.yaml", 1, 8));
        assertThat(problem.what()).contains("a number is needed in mm");
        assertThat(problem.maybe()).contains(advice);
    }

    @ParameterizedTest
    @CsvSource({".nan", ".inf", "-.inf", "1e999", "NaN", "Infinity", "many", "true", "''", "{}", "[1]"})
    void goesOnWithTheExampleAfterWhatIsNoNumber(String written) {
        double read = read("cg_mm: " + written, in -> in.number("cg_mm", above(0, 200), 69, "balance point"));
        assertThat(read).isEqualTo(0.069);
        assertThat(reading.problems().all()).hasSize(1);
        assertThat(reading.problems().all().get(0).toString()).matches("(?s)f.yaml:1:[78]: cg_mm: .*");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "area_dm2: 193       | 1.93 (is 193 in cm2?)",
                "area_dm2: 19300     | 1.93 (is 19300 in mm2?)",
                "mass_g: 0.2314      | 231.4 (is 0.2314 in kg?)",
                "span_mm: 150        | 1500 (is 150 in cm?)",
                "span_mm: 1.5        | 1500 (is 1.5 in m?)",
                "ahead_mm: -58       | behind_mm: 58",
                "elevator_up_mm: -2  | elevator_down_mm: 2",
            })
    void guessesAnotherUnitOrDirection(String text, String advice) {
        read(text, in -> {
            in.optional("area_dm2", above(0, 20).usually(1, 4), 1.9, "area");
            in.optional("mass_g", between(20, 2000).usually(150, 600), 230, "mass");
            in.optional("span_mm", between(300, 4000).usually(900, 2000), 1500, "span");
            in.optional("ahead_mm", between(0, 500), 58, "place");
            return in.optional("elevator_up_mm", between(0, 20), 0.8, "preset");
        });
        assertThat(reading.problems().all()).hasSize(1);
        assertThat(reading.problems().all().get(0).maybe()).contains(advice);
    }

    @Test
    void doubtsWhatIsUnusualAndAcceptsIt() {
        double read = read(
                "span_mm: 750", in -> in.number("span_mm", between(300, 4000).usually(900, 2000), 1500, "span"));
        assertThat(read).isEqualTo(0.75);
        assertThat(reading.problems().all()).isEmpty();
        assertThat(reading.problems().doubts().get(0).what()).isEqualTo("750 mm is unusual; usual are 900 to 2000 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "stab, tailplane",
        "Stabilizer, tailplane",
        "horizontal, tailplane",
        "HT, tailplane",
        "rudder, fin",
        "vertical, fin",
        "fuse, pod",
        "tailboom, boom",
        "tail boom, boom",
        "weight_g, mass_g",
        "Weight, mass_g",
        "AUW, mass_g",
        "COG_mm, cg_mm",
        "balance_point_mm, cg_mm",
        "span_m, span_mm: 1500",
        "span_cm, span_mm",
        "span, span_mm",
        "spam_mm, span_mm",
        "tailplain, tailplane",
        "half_span_mm, span_mm: 3 (from tip to tip",
    })
    void knowsTheWordsPeopleSay(String key, String meant) {
        read(key + ": 1.5", InTest::fewKeys);
        assertThat(reading.problems().all()).hasSize(1);
        assertThat(reading.problems().all().get(0).what()).isEqualTo("unknown key");
        assertThat(reading.problems().all().get(0).maybe()).startsWith(meant);
    }

    private static double fewKeys(In in) {
        for (String map : List.of("wing", "tailplane", "fin", "boom", "pod", "parts")) {
            in.optionalMap(map, "x", x -> 0.0);
        }
        in.optional("mass_g", above(0, 1000), 1, "x");
        in.optional("cg_mm", above(0, 1000), 1, "x");
        return in.optional("span_mm", above(0, 1000), 1, "x");
    }

    @Test
    void seesADecimalCommaInsideBraces() {
        read("{cg_mm: 69,5}", in -> in.number("cg_mm", above(0, 200), 69, "balance point"));
        assertThat(reading.problems().all()).hasSize(1);
        assertThat(reading.problems().all().get(0))
                .hasToString("f.yaml:1:12: the comma before 5 ends the number before it\n  Maybe write 69.5");
    }

    @Test
    void findsElevenProblemsInOneRun() {
        String text = """
                span_mm: 150
                mass_g: 231,4
                cg_mm: 69mm
                stab: {area_dm2: 1}
                wing:
                  chord_mm: -5
                  sweep: 3
                side: middle
                hole: [1, 2]
                list: {a: 1}
                """;
        read(text, in -> {
            in.number("span_mm", between(300, 4000), 1500, "span");
            in.number("mass_g", above(0, 900), 230, "mass");
            in.number("cg_mm", above(0, 900), 230, "balance point");
            in.number("lead_g", above(0, 900), 230, "lead");
            in.map("tailplane", "tail", t -> t.number("area_dm2", above(0, 5), 1, "area"));
            in.map("wing", "wing", w -> w.number("chord_mm", above(0, 5), 1, "chord"));
            in.choice("side", List.of(Thread.State.values()), Thread.State.NEW, "side");
            in.map("hole", "hole", h -> 0);
            return in.list("list", "list", l -> 0);
        });
        assertThat(reading.problems().all()).hasSize(11);
        assertThat(reading.problems().all()).isSortedAccordingTo((a, b) -> a.compareTo(b));
    }

    @Test
    void listsWhatIsAssumed() {
        double read = read("a: 1", in -> {
            in.neutral("a", above(0, 2), 1, "x");
            return in.assume("dihedral_deg", between(0, 20), 6.5, 1, "dihedral of each half");
        });
        assertThat(read).isCloseTo(Math.toRadians(6.5), within(1e-15));
        assertThat(reading.assumed()).hasSize(1);
        Assumed one = reading.assumed().get(0);
        assertThat(one.path()).isEqualTo("dihedral_deg");
        assertThat(one.value()).isCloseTo(6.5, within(1e-12));
        assertThat(one.band().low()).isCloseTo(5.5, within(1e-12));
    }

    @Test
    void readsNamedMapsInOrderAndPointsAtNames() {
        Map<String, Double> parts = read(
                "parts:\n  tail servos: {mass_g: 9.4}\n  battery: {mass_g: 15.2}\n  a.b: {mass_g: 1}\n  c: 5\n",
                in -> in.named(
                        "parts", "battery", "parts", (name, part) -> part.number("mass_g", above(0, 100), 1, "mass")));
        assertThat(parts.keySet()).containsExactly("tail servos", "battery");
        assertThat(reading.problems().all())
                .extracting(Problem::toString)
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("f.yaml:4:3: parts: a name"),
                        second -> assertThat(second).startsWith("f.yaml:5:6: parts.c: keys with values"));
    }

    @Test
    void describesItselfWhenRunOnNothing() {
        Described described = In.describe(in -> {
            in.number("span_mm", between(300, 4000), 1500, "span from tip to tip");
            in.named("parts", "battery", "other parts", (n, p) -> p.number("mass_g", above(0, 9), 1, "mass"));
            return in.list("stations", "stations", s -> s.optional("out_mm", between(0, 9), 1, "place"));
        });
        assertThat(described.keys()).containsOnlyKeys("span_mm", "parts", "stations");
        assertThat(described.keys().get("span_mm").required()).isTrue();
        assertThat(described.keys().get("parts").inner().keys()).containsOnlyKeys("mass_g");
        assertThat(described.keys().get("stations").inner().keys()).containsOnlyKeys("out_mm");
    }

    private <T> T read(String text, java.util.function.Function<In, T> reader) {
        Node tree = TreeReader.read(Source.of("f.yaml", text), reading.problems());
        return In.read(tree, reading, reader);
    }
}
