package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How people get it wrong: each is answered with the place, what is wrong and, where it can be guessed, what was meant. */
class WrongInputsTest {
    private static final int NOT_WRITTEN = 5;

    @TempDir
    private Path folder;

    private String plover;

    @BeforeEach
    void copyFiles() throws IOException {
        for (String name : List.of("plover.yaml", "plover-ten-numbers.yaml", "club.yaml", "shorten-boom.yaml")) {
            Files.copy(Path.of(Runs.scenario(name)), folder.resolve(name));
        }
        plover = file("plover.yaml");
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private static Runs answered(int code, String... args) {
        Runs run = Runs.of(args);
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(code);
        assertThat(run.out() + run.err())
                .matches("[\\x20-\\x7e\\r\\n]*")
                .doesNotContain("Exception", "at org.", "a fault of the program");
        if (code == 2 || code == 3) {
            assertThat(run.out()).isEmpty();
        }
        return run;
    }

    static Stream<Arguments> spoiled() {
        String ten = "plover-ten-numbers.yaml";
        String full = "plover.yaml";
        String cg = "cg_mm: 69.0";
        return Stream.of(
                arguments(
                        "unknown key", full, "  dihedral_deg", "  dihedrl_deg", "14:3|unknown key|Maybe dihedral_deg"),
                arguments("another word", ten, "\ntailplane:", "\nstab:", "16:1|stab: unknown key|Maybe tailplane"),
                arguments("another word", ten, "\nfin:", "\nrudder:", "rudder: unknown key|Maybe fin"),
                arguments("another word", ten, "\nboom:", "\ntailboom:", "tailboom: unknown key|Maybe boom"),
                arguments("another word", ten, "ready_to_fly:", "AUW:", "AUW: unknown key|ready_to_fly: {mass_g: ...}"),
                arguments(
                        "another unit", ten, "span_mm: 1500", "span_m: 1.5", "span_m: unknown key|Maybe span_mm: 1500"),
                arguments("a word misspelt", ten, "\npod:", "\nfuselagee:", "fuselagee: unknown key|Maybe pod"),
                arguments(
                        "half span",
                        ten,
                        "span_mm: 1500",
                        "half_span_mm: 750",
                        "half_span_mm: unknown key|Maybe span_mm: 1500 (from tip to tip"),
                arguments("wrong type", full, "mass_g: 231.4", "mass_g: heavy", "8:11|a number is needed in g|heavy"),
                arguments("decimal comma", full, cg, "cg_mm: 69,5", "9:10|Maybe write 69.5"),
                arguments("decimal comma inside", ten, "{area_dm2: 1.20}", "{area_dm2: 1,20}", "17:|comma"),
                arguments("unit", full, cg, "cg_mm: 69mm", "9:10|the unit is in the key: write 69"),
                arguments("unit", full, "mass_g: 15.2", "mass_g: 15g", "write 15"),
                arguments("unit", ten, "span_mm: 1500", "span_mm: 1.5m", "write 1500"),
                arguments("unit", ten, "1.93}", "19.3 dm2}", "the unit is in the key"),
                arguments("no number", full, cg, "cg_mm: NaN", "a number is needed"),
                arguments("no number", full, cg, "cg_mm: .nan", "a finite number is needed"),
                arguments("endless", full, cg, "cg_mm: Infinity", "a number is needed"),
                arguments("endless", full, cg, "cg_mm: -.inf", "a finite number is needed"),
                arguments("endless", full, cg, "cg_mm: 1e999", "a finite number is needed"),
                arguments(
                        "negative", full, "chord_mm: 160", "chord_mm: -160", "18:31|stations[2].chord_mm|out of range"),
                arguments("zero", full, "end_diameter_mm: 8.5", "end_diameter_mm: 0", "0 mm is out of range"),
                arguments("out of order", full, "out_mm: 260", "out_mm: 560", "further out|from root to tip"),
                arguments("overlap", full, "edge_behind_mm: 640", "edge_behind_mm: 710", "into the fin|Maybe"),
                arguments("kilograms", full, "mass_g: 231.4", "mass_g: 0.2314", "Maybe 231.4 (is 0.2314 in kg?)"),
                arguments("centimetres", full, "end_behind_mm: 790", "end_behind_mm: 79", "Maybe 790 (is 79 in cm?)"),
                arguments("square centimetres", ten, "1.93}", "193}", "Maybe 1.93 (is 193 in cm2?)"),
                arguments("from the nose", full, cg, "cg_mm: 334", "not from the nose"),
                arguments("from the nose", ten, "cg_mm: 69", "cg_mm: 334", "nose lead|not from the nose"),
                arguments("minus sign", full, "ahead_mm: 205", "behind_mm: -205", "Maybe ahead_mm: 205"),
                arguments(
                        "negative size", full, "chord_mm: 168,", "chord_mm: -168,", "out of range|Maybe 168, without"),
                arguments("smart quote", full, "peg_tip: left", "peg_tip: \u201cleft\u201d", "U+201C|Maybe left"),
                arguments("tab", full, "  mass_g: 231.4", "\tmass_g: 231.4", "a tab in the indent"),
                arguments("two of one", "club.yaml", "  reach_mm", "  release_speed_mps: 33\n  reach_mm", "Maybe drop"),
                arguments(
                        "standing still", "club.yaml", "usual_height_m: 41", "release_speed_mps: 0", "0 m/s is out of"),
                arguments("too fast", "club.yaml", "usual_height_m: 41", "release_speed_mps: 300", "300 m/s is out of"),
                arguments(
                        "no such file",
                        "shorten-boom.yaml",
                        "plover.yaml",
                        "plovr.yaml",
                        "3:1|there is no file|Maybe|plover.yaml"),
                arguments("a dash", "shorten-boom.yaml", "{from: 0, to: 80, every: 10}", "0-80", "Maybe 0..80/STEP"),
                arguments("too many", "shorten-boom.yaml", "every: 10", "every: 0.00000008", "1000000001|2000000"),
                arguments("too long", "shorten-boom.yaml", "to: 80", "to: 800", "too long|not the length that stays"));
    }

    @ParameterizedTest(name = "{0}: {3}")
    @MethodSource("spoiled")
    void aSpoiledFileIsRefusedInWords(String what, String name, String from, String to, String said)
            throws IOException {
        String whole = Files.readString(folder.resolve(name));
        assertThat(whole).contains(from);
        Path spoiled = folder.resolve("spoiled.yaml");
        Files.writeString(spoiled, whole.replaceFirst(Pattern.quote(from), to));
        Runs run = answered(3, "check", spoiled.toString());
        assertThat(run.err()).contains(said.split("\\|"));
        assertThat(Arrays.stream(folder.toFile().list())).doesNotContain("spoiled.yaml.part");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "plover.yaml; mass_g: 15.2, ahead_mm; mass_g: 15.2, behind_mm; a part at the wrong place",
                "plover.yaml; edge_behind_mm: 640; edge_behind_mm: 472; wing's trailing edge",
                "plover-ten-numbers.yaml; span_mm: 1500; span_mm: 750; 231.4 g. Maybe wing.span_mm: that is one half",
                "plover-ten-numbers.yaml; span_mm: 1500; span_mm: 750; for such chords. Maybe that is one half",
                "plover-ten-numbers.yaml; mass_g: 231.4; mass_g: 216; without the battery"
            })
    void whatIsDoubtfulIsSaid(String name, String from, String to, String said) throws IOException {
        Path odd = folder.resolve("odd.yaml");
        Files.writeString(odd, Files.readString(folder.resolve(name)).replace(from, to));
        assertThat(answered(0, "check", odd.toString()).out().replaceAll("\\s+", " "))
                .contains(said);
    }

    @Test
    void stationsThatWereHalvedAreSaidToBe() throws IOException {
        Path odd = folder.resolve("odd.yaml");
        String whole = Files.readString(Path.of(plover));
        int tailplane = whole.indexOf("tailplane:");
        int fin = whole.indexOf("fin:");
        String halfTail = halved(whole.substring(tailplane, fin));
        Files.writeString(odd, whole.substring(0, tailplane) + halfTail + whole.substring(fin));
        assertThat(answered(0, "check", odd.toString()).out().replaceAll("\\s+", " "))
                .contains("tailplane.stations: are short for such chords. Maybe they were halved");
        String halfWing = halved(whole.substring(0, tailplane));
        Files.writeString(odd, halfWing + whole.substring(tailplane));
        assertThat(answered(3, "check", odd.toString()).err())
                .contains("flaperon.to_mm", "stations end 375 mm out: they were halved");
        Files.writeString(odd, halfWing.replace("to_mm: 720", "to_mm: 360") + whole.substring(tailplane));
        assertThat(answered(0, "check", odd.toString()).out().replaceAll("\\s+", " "))
                .contains("wing.stations: end 375 mm out, which is short for such chords. Maybe they were halved");
    }

    private static String halved(String stations) {
        return Pattern.compile("out_mm: (\\d+)")
                .matcher(stations)
                .replaceAll(found -> "out_mm: " + Double.parseDouble(found.group(1)) / 2);
    }

    @Test
    void standardInputIsCheckedAndNothingElse() throws IOException {
        byte[] text = Files.readAllBytes(Path.of(plover));
        Runs run = Runs.reading(new ByteArrayInputStream(text), "check", "-");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("standard input: glider \"plover\", nothing wrong");
        String study = Files.readString(folder.resolve("shorten-boom.yaml"));
        Runs refused = Runs.reading(
                new ByteArrayInputStream(study.replace("vary:", "varry:").getBytes(StandardCharsets.UTF_8)),
                "check",
                "-");
        assertThat(refused.code()).isEqualTo(3);
        assertThat(refused.err()).contains("standard input:", "varry: unknown key");
        assertThat(refused.out()).isEmpty();
        assertThat(answered(3, "fly", "-").err()).contains("check -, which alone reads standard input");
    }

    @Test
    void howAFileWasSavedDoesNotMatter() throws IOException {
        String whole = Files.readString(Path.of(plover));
        Path other = folder.resolve("saved.yaml");
        Files.writeString(other, "\ufeff" + whole.replace("\n", "\r\n"));
        answered(0, "check", other.toString());
        Files.write(other, whole.replace("each half;", "each half \u00b0;").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(answered(3, "check", other.toString()).err()).contains("degree sign", "UTF-8");
    }

    @Test
    void whatIsNoFileIsRefused() throws IOException {
        Path odd = folder.resolve("odd.yaml");
        assertThat(answered(3, "check", file("plovr.yaml")).err()).contains("there is no file", "Maybe", "plover.yaml");
        assertThat(answered(3, "fly", folder.toString()).err()).contains("is a folder");
        Files.write(odd, new byte[0]);
        assertThat(answered(3, "fly", odd.toString()).err()).contains("nothing in it");
        byte[] garbage = new byte[4000];
        new Random(1).nextBytes(garbage);
        Files.write(odd, garbage);
        assertThat(answered(3, odd.toString()).err())
                .contains("odd.yaml:1:", " more lines have such characters", "Maybe this is no text file")
                .matches(said -> said.lines().count() < 10, "is short");
        Files.writeString(odd, "# wide\n".repeat(200_000));
        assertThat(answered(3, "check", odd.toString()).err())
                .contains("larger than 1 MB")
                .doesNotContain("nothing in it");
        assertThat(answered(3, "fly", file("club.yaml")).err()).contains("a glider file is needed", "Maybe");
        assertThat(answered(3, file("shorten-boom.yaml")).err()).contains("sawfly vary");
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = ';',
            value = {
                "2; compare PLOVER --cut 40; Maybe --change boom.cut_mm=40",
                "3; compare PLOVER --change cut=40mm; write 40",
                "3; compare PLOVER --change boom.cut_mm=40,5; a point for the decimals",
                "3; compare PLOVER --change 40; Maybe boom.cut_mm=40",
                "3; compare PLOVER --change boom.cutt_mm=40; Maybe cut_mm",
                "3; compare PLOVER --change boom.cut=40; Maybe cut_mm",
                "3; compare PLOVER --change fin.scale_aera=1.1; Maybe scale_area",
                "3; compare PLOVER --change rebalanc.keep=cg; Maybe rebalance",
                "3; vary PLOVER --vary boom.cutt_mm=0..80/10; Maybe cut_mm",
                "3; compare PLOVER --change boom.cut_mm=632; not the length that stays",
                "3; compare PLOVER --change fin.mass_g=1e999; a finite number",
                "3; vary PLOVER --vary boom.cut_mm=0-80; Maybe 0..80/STEP",
                "3; vary PLOVER --vary boom.cut_mm=80..0/10; Maybe 0..80/10",
                "3; vary PLOVER --vary boom.cut_mm=0..80/0; steps above 0",
                "3; vary PLOVER --vary boom.cut_mm=0..80/10mm; is no range",
                "3; vary PLOVER --vary boom.cut_mm=0..800/100; too long",
                "3; vary PLOVER --vary cut=0..80/0.00000008; 1000000001",
                "2; vary PLOVER --vary boom.cut_mm=0..80/10 --vary boom.cut_mm=0..80/10; varied twice",
                "2; vary PLOVER; nothing to vary",
                "2; swing PLOVER --axis yaw --apart 600+-900 --length 1200 --period 2.5; known to 900 only",
                "2; swing PLOVER --axis yaw --apart 600 --length 1200 --period 0.01; known to 0.01 only",
                "3; vary PLOVERX; there is no file",
                "3; compare PLOVERX; there is no file",
                "3; vary PLOVER --vary boom.cut_mm=0..1e9/1; 1000000001 values",
                "3; vary PLOVER --vary boom.cut_mm=0..1e300/1e-300; so many values",
                "3; vary PLOVER --vary boom.cut_mm=0..1e999/1; finite numbers",
                "3; vary PLOVER --vary boom.cut_mm=0,20,0; the value 0 is there twice",
                "2; compare PLOVER --change boom.cut_mm=40 --write cut x.yaml; no version \"cut\". Maybe cut 40",
                "2; compare PLOVER --change boom.cut_mm=40 --write version -; name a file",
                "2; fly PLOVER --chart twice.png --chart-swing twice.png; named for two outputs",
                "2; fly PLOVER --chart twice.svg --csv ./twice.svg; named for two outputs",
                "2; compare PLOVER --change boom.cut_mm=40,cut=50; boom.cut_mm is there twice",
                "2; compare PLOVER --change boom.cut_mm=40 --draws many; 'many' is not a whole number",
                "2; compare PLOVER --change boom.cut_mm=40 --throws 20; Maybe --draws",
                "2; scatter PLOVER --draws -5; Maybe --throws",
                "3; vary PLOVER --vary boom.cut_mm=1e400; not the number 1e400",
                "2; fly PLOVER --chart x.pdf; .png or .svg",
                "5; fly PLOVER --chart nowhere/x.png; no folder",
                "4; fly PLOVER --change boom.cut_mm=300; no steady glide"
            })
    void wordsOnTheCommandLineGoWrongInWords(int code, String words, String said) {
        String[] args = words.replace("PLOVER", plover).split(" ");
        assertThat(answered(code, args).err()).contains(said);
    }

    @Test
    void nothingIsGuessedThatCannotBeMeant() {
        assertThat(answered(2, "tolerance", plover, "--draws", "20").err())
                .startsWith("sawfly: unknown option: '--draws'\nMore: ");
        assertThat(answered(3, "vary", plover, "--vary", "boom.cut_mm=1e400").err())
                .doesNotContain("Maybe");
    }

    @Test
    void aCgBehindTheNeutralPointIsFlownAndWarnedOf() throws IOException {
        Path odd = folder.resolve("odd.yaml");
        Files.writeString(odd, Files.readString(Path.of(plover)).replace("cg_mm: 69.0", "cg_mm: 78"));
        Runs card = answered(0, odd.toString());
        assertThat(card.out())
                .containsPattern("none: \\d\\.\\d mm")
                .contains("Warning:")
                .endsWith("the warning.\n");
        Files.writeString(odd, Files.readString(Path.of(plover)).replace("cg_mm: 69.0", "cg_mm: 95"));
        assertThat(answered(4, "fly", odd.toString()).err()).contains("CG lies BEHIND the neutral point, by ");
    }

    @Test
    void whatExistsStaysAndAFullDiskIsNoSuccess() throws IOException {
        String[] vary = {"vary", plover, "--vary", "boom.cut_mm=0..20/20", "--csv"};
        Path there = folder.resolve("there.csv");
        Files.writeString(there, "mine");
        assertThat(answered(NOT_WRITTEN, with(vary, there)).err()).contains("exists; --force");
        assertThat(there).hasContent("mine");
        Path device = Path.of("/dev/full");
        assumeTrue(Files.exists(device) && !Files.isRegularFile(device));
        Path full = Files.createSymbolicLink(folder.resolve("full.csv"), device);
        assertThat(answered(NOT_WRITTEN, with(vary, full)).err()).contains("could not be written");
        assertThat(full).isSymbolicLink();
        Path chart = Files.createSymbolicLink(folder.resolve("full.png"), device);
        Runs fly = answered(NOT_WRITTEN, "fly", plover, "--chart", chart.toString());
        assertThat(fly.out()).isEmpty();
        assertThat(fly.err()).contains("could not be written");
        Files.delete(full);
        Files.delete(chart);
    }

    private static String[] with(String[] args, Path last) {
        return Stream.concat(Arrays.stream(args), Stream.of(last.toString())).toArray(String[]::new);
    }
}
