package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.util.DoubleComparator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.ApparentMass;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;

class GliderReaderTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final double DECALAGE = 0.02;

    private final Reading reading = new Reading();

    @Test
    void readsPloverAsItIsBuiltInTests() {
        Glider glider = read("plover.yaml").glider();
        Glider built = Plover.glider();

        assertThat(reading.problems().all()).isEmpty();
        assertThat(reading.problems().doubts()).isEmpty();
        same(glider.boom(), built.boom());
        same(glider.wing().planform(), built.wing().planform());
        same(glider.fin().above(), built.fin().above());
        same(glider.fin().below(), built.fin().below());
        same(glider.tailplane().planform(), built.tailplane().planform());
        same(glider.pod(), built.pod());
        same(glider.noseLead(), built.noseLead());
        assertThat(glider.parts().keySet())
                .containsExactlyElementsOf(built.parts().keySet());
        assertThat(glider.tailplane().x()).isCloseTo(built.tailplane().x(), within(1e-12));
        assertThat(glider.tailplane().z()).isCloseTo(built.tailplane().z(), within(1e-12));
    }

    private static void same(Object read, Object built) {
        assertThat(read)
                .usingRecursiveComparison()
                .withComparatorForType(new DoubleComparator(1e-12), Double.class)
                .isEqualTo(built);
    }

    @ParameterizedTest
    @CsvSource({"plover.yaml, 231.4, 69", "plover-ten-numbers.yaml, 231.4, 69", "reed.yaml, 218.0, 73"})
    void weighsAndBalancesAsMeasured(String file, double grams, double behind) {
        GliderReader.Read read = read(file);
        MassProperties mass = MassProperties.of(read.glider());
        assertThat(mass.mass()).isCloseTo(grams / 1000, within(1e-9));
        assertThat(mass.cg().x()).isCloseTo(-behind / 1000, within(1e-9));
        assertThat(reading.problems().all()).isEmpty();
        assertThat(reading.problems().doubts()).isEmpty();
        assertThat(Math.abs(read.glider().correction().mass())).isLessThan(0.002);
    }

    /** The ten-number file's assumptions are close to the full file's facts. */
    @Test
    void tenNumbersGiveTheLeadOfTheFullFile() {
        Glider few = read("plover-ten-numbers.yaml").glider();
        Glider full = read("plover.yaml").glider();
        assertThat(few.noseLead().mass()).isCloseTo(full.noseLead().mass(), within(0.0004));
        assertThat(few.tailplane().x()).isCloseTo(full.tailplane().x(), within(0.002));
        assertThat(few.fin().x()).isCloseTo(full.fin().x(), within(0.002));
        assertThat(few.wing().planform().area())
                .isCloseTo(full.wing().planform().area(), within(1e-6));
        assertThat(few.boom().frontDiameter()).isCloseTo(0.017, within(1e-12));
    }

    @Test
    void everyAssumptionIsListedWithItsNumber() {
        read("plover-ten-numbers.yaml");
        List<String> paths = reading.assumed().stream().map(Assumed::path).toList();
        assertThat(paths)
                .doesNotHaveDuplicates()
                .contains(
                        "wing.mass_g",
                        "wing.dihedral_deg",
                        "wing.section.thick_pct",
                        "wing.tip_section.thick_pct",
                        "wing.flaperon.chord_pct",
                        "tailplane.mass_g",
                        "tailplane.aspect_ratio",
                        "tailplane.leading_edge_behind_mm",
                        "tailplane.decalage_deg",
                        "fin.below_pct",
                        "boom.g_per_m",
                        "boom.specific_modulus_MNm_per_kg",
                        "pod.mass_g",
                        "parts.battery.mass_g",
                        "nose_lead.mass_g");
        assertThat(reading.assumed()).allSatisfy(one -> {
            assertThat(one.value()).isFinite();
            assertThat(one.band().low()).isLessThan(one.value());
            assertThat(one.band().high()).isGreaterThan(one.value());
        });
    }

    @Test
    void assumesNothingThatTheFullFileSays() {
        read("plover.yaml");
        assertThat(reading.assumed())
                .extracting(Assumed::path)
                .as("but what the wall bears, which no bench shows")
                .containsExactly("boom.wall.tension_MPa", "boom.wall.compression_MPa", "boom.wall.shear_MPa");
    }

    @Test
    void areaOfAStraightTaperComesOutWithinOnePercent() {
        double area = Outlines.wing(0.75, 0.18, 0.12).area();
        assertThat(area).isCloseTo(0.5 * (0.18 + 0.09) * 0.75, within(0.01 * 0.5 * 0.27 * 0.75));
    }

    @Test
    void dihedralFromTheBenchIsTheSame() {
        String text =
                "glider: x\nwing: {span_mm: 1500, root_chord_mm: 168, two_thirds_chord_mm: 140, other_tip_up_mm: 168.7}\n";
        Glider glider = readText(text).glider();
        assertThat(Math.toDegrees(glider.wing().dihedral())).isCloseTo(6.5, within(0.01));
    }

    @Test
    void gluedPiecesAreAdjustedToTheirWeighing() throws Exception {
        String text = Files.readString(SCENARIOS.resolve("plover.yaml"))
                + "weighings:\n  pod and boom: {of: [pod, boom], mass_g: 44.3, behind_mm: 95}\n";
        Glider glider = readText(text).glider();
        double pod = glider.pod().mass();
        double boom = glider.boom().mass();
        assertThat(pod + boom).isCloseTo(0.0443, within(1e-12));
        double boomX = -0.4167;
        assertThat((pod * glider.pod().cgX() + boom * boomX) / (pod + boom)).isCloseTo(-0.095, within(1e-4));
        assertThat(MassProperties.of(glider).mass()).isCloseTo(0.2314, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ready_to_fly.cg_mm     | 330   | ready_to_fly.cg_mm | from the nose",
                "ready_to_fly.mass_g    | 0.2314| ready_to_fly.mass_g | 231.4 (is 0.2314 in kg?)",
                "ready_to_fly.mass_g    | 160   | ready_to_fly.mass_g | weighed without the battery",
                "tailplane.area_dm2     | 193   | tailplane.area_dm2 | 1.93 (is 193 in cm2?)",
                "wing.span_mm           | 150   | wing.span_mm | 1500 (is 150 in cm?)",
                "wing.root_chord_mm     | 0     | wing.root_chord_mm | ",
                "boom.end_behind_mm     | -790  | boom.end_behind_mm | ",
                "tailplane.leading_edge_behind_mm | 472 | | ",
                "tailplane.leading_edge_behind_mm | 700 | tailplane | root leading edge",
                "tailplane.leading_edge_behind_mm | 110 | tailplane | trailing edge",
                "wing.stations          | '[{out_mm: 0, chord_mm: 168}, {out_mm: 0, chord_mm: 100}]' | wing.stations | leave out the three",
                "boom.length_mm         | 700   | boom.length_mm | end_behind_mm",
                "stab.area_dm2          | 1.9   | stab | tailplane",
            })
    void saysWhatIsWrongAndWhatWasMeant(String path, String value, String where, String maybe) throws Exception {
        Place place = Place.whole("command line");
        Problems problems = reading.problems();
        Node.Keys tree = (Node.Keys) TreeReader.read(
                Source.of("f.yaml", Files.readString(SCENARIOS.resolve("plover-ten-numbers.yaml"))), problems);
        Node.Keys changed = Edit.over(tree, Edit.single(path, Edit.value(value, place, problems), place, problems));
        In.read(changed, reading, reader()::read);
        if (where == null) {
            assertThat(problems.all()).isEmpty();
        } else {
            assertThat(problems.all()).anySatisfy(problem -> {
                assertThat(problem.path()).isEqualTo(where);
                assertThat(problem.maybe()).contains(maybe == null ? "" : maybe);
            });
        }
    }

    /** T = 2 pi sqrt(I L/(m g b^2)) with the carried air in I, and the glider alone in what is flown. */
    @Test
    void swingsOnTwoStringsSetTheInertiaWithoutTheCarriedAir() throws Exception {
        Glider plain = read("plover.yaml").glider();
        double carried = ApparentMass.of(plain, MassProperties.of(plain).cg()).matrix()[3][3];
        assertThat(carried).as("carried air about the roll axis").isBetween(0.003, 0.005);
        double wanted = 0.0160;
        double period = 2 * Math.PI * Math.sqrt((wanted + carried) * 1.2 / (0.2314 * 9.80665 * 0.3 * 0.3));
        String text = Files.readString(SCENARIOS.resolve("plover.yaml"))
                + "\nswings: {roll: {strings_apart_mm: 600, string_length_mm: 1200, period_s: " + period + "}}\n";
        Glider swung = readText(text).glider();
        assertThat(reading.problems().all()).isEmpty();
        assertThat(MassProperties.of(swung).inertia().ixx()).isCloseTo(wanted, within(1e-8));
        assertThat(MassProperties.of(swung).inertia().izz())
                .isCloseTo(MassProperties.of(plain).inertia().izz(), within(1e-12));
    }

    private static GliderReader reader() {
        return new GliderReader(new TableFiles(), (glider, corrections, camber) -> DECALAGE);
    }

    private GliderReader.Read read(String file) {
        Documents documents = new Documents(reading.problems());
        return In.read(documents.any(SCENARIOS.resolve(file)).tree(), reading, reader()::read);
    }

    private GliderReader.Read readText(String text) {
        return In.read(TreeReader.read(Source.of("f.yaml", text), reading.problems()), reading, reader()::read);
    }
}
