package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TreeReaderTest {
    private final Problems problems = new Problems();

    @Test
    void knowsWhereEachValueStands() {
        Node.Keys tree = keys("a: 1\nb:\n  c: two\n  d: [3, {e: 4}]\n");

        assertThat(tree.get("a").place()).isEqualTo(new Place("f.yaml", 1, 4));
        Node.Keys b = (Node.Keys) tree.get("b");
        assertThat(b.entries().get("c").place()).isEqualTo(new Place("f.yaml", 3, 3));
        assertThat(b.get("c").place()).isEqualTo(new Place("f.yaml", 3, 6));
        Node.Items d = (Node.Items) b.get("d");
        assertThat(d.items().get(1).place()).isEqualTo(new Place("f.yaml", 4, 10));
        assertThat(problems.all()).isEmpty();
    }

    @Test
    void columnsCountCharactersAndNotBytes() {
        Node.Keys tree = keys("{a: \"\u00e9\ud83d\ude00\", b: 2}\n");
        assertThat(tree.get("b").place().column()).isEqualTo(14);
    }

    @Test
    void acceptsByteOrderMarkAndAnyLineEndAndJson() {
        assertThat(keys("\ufeffa: 1\r\nb: 2\r\n").entries()).containsOnlyKeys("a", "b");
        assertThat(keys("a: 1\rb: 2\r").entries()).containsOnlyKeys("a", "b");
        assertThat(keys("{\"a\": 1, \"b\": [1, 2]}").entries()).containsOnlyKeys("a", "b");
        assertThat(keys("---\na: 1\nb: 2\n").entries()).containsOnlyKeys("a", "b");
        assertThat(problems.all()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: &x 1            | 1:4 | an anchor",
                "&x a: 1            | 1:1 | an anchor",
                "a: &x {b: 1}       | 1:4 | an anchor",
                "a: 1;b: *x         | 2:4 | an alias",
                "a: !!str 1         | 1:4 | a tag",
                "a: !t {b: 1}       | 1:4 | a tag",
                "<<: {b: 1}         | 1:1 | a merge key",
                "a: 1;---;b: 2      | 3:1 | a second document",
                "a: 1;b: 2;a: 3     | 3:1 | a second time; first in line 1",
                "a: {b: 1, b: 2}    | 1:11 | a second time",
                "a: {b: 1;c: 2      | 2:2 | a comma or } is needed",
                "a: [1, 2;c: 2      | 2:2 | a comma or ] is needed",
                "a: b: c            | 1:5 | this colon cannot stand here",
                "a: 1; b: 2         | 2:3 | this colon cannot stand here",
                "x: 1;a: \"abc;b: 1 | 2:4 | this quote is not closed",
                "a: @x              | 1:4 | cannot begin a value",
                "%YAML 1.1;---;a: 1 | 1:1 | beginning with %",
            })
    void refusesAtTheTruePlace(String text, String place, String what) {
        read(text.strip().replace(';', '\n') + "\n");

        assertThat(problems.all()).isNotEmpty();
        Problem first = problems.all().get(0);
        assertThat(first.place()).hasToString("f.yaml:" + place);
        assertThat(first.what()).contains(what);
    }

    @Test
    void tellsEveryTabOfAnIndentAtOnce() {
        read("a:\n\tb: 1\n  c: 2\n \td: 3\n\t# a remark\n\t\n");
        assertThat(problems.all()).extracting(p -> p.place().toString()).containsExactly("f.yaml:2:1", "f.yaml:4:2");
        assertThat(problems.all().get(0).what()).contains("a tab in the indent");
    }

    @Test
    void collectsWhatIsRefusedAndGoesOn() {
        read("a: &x 1\nb: !t 2\nc: 1\nc: 2\n<<: {}\n");
        assertThat(problems.all()).hasSize(4);
    }

    @Test
    void namesTheMissingSpaceAfterAColon() {
        read("a: 1\nmass_g:231.4\nb: 2\n");
        assertThat(problems.all().get(0).maybe())
                .contains("line 2 lacks a space")
                .contains("mass_g: 231.4");
    }

    @Test
    void explainsAnotherEncoding() {
        Source.of("f.yaml", new byte[] {'a', ':', ' ', '1', '\n', 'b', ':', ' ', '6', (byte) 0xb0}, problems);
        Source.of("g.yaml", "a: 1\n".getBytes(StandardCharsets.UTF_16), problems);

        List<Problem> all = problems.all();
        assertThat(all.get(0).toString()).startsWith("f.yaml:2:5: the byte b0").contains("it is a degree sign");
        assertThat(all.get(1).toString()).startsWith("g.yaml: saved as UTF-16");
    }

    @Test
    void goesOnReadingAfterAWrongByte() {
        Source source =
                Source.of("f.yaml", new byte[] {'a', ':', ' ', (byte) 0xe9, '\n', 'b', ':', ' ', '2'}, problems);
        assertThat(((Node.Keys) TreeReader.read(source, problems)).entries()).containsOnlyKeys("a", "b");
        assertThat(problems.all()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "# only a remark\n",
                "\n\n",
                "\0\1\2",
                "\u0007",
                "}",
                "]",
                ":",
                "- - - -",
                "? x",
                "'",
                "|",
                "a: \ud800"
            })
    void refusesNonsenseWithoutAStackTrace(String text) {
        Reading reading = new Reading();
        Node tree = TreeReader.read(Source.of("f.yaml", text), reading.problems());
        In.read(tree, reading, in -> in.number("needed_mm", Bounds.above(0, 9), 1, "anything"));
        assertThat(reading.problems().all()).isNotEmpty();
        for (Problem problem : reading.problems().all()) {
            assertThat(problem.toString()).matches("[\\x20-\\x7e\\n]*");
        }
    }

    @Test
    void refusesWhatIsNestedWithoutEnd() {
        assertThat(read("a: " + "[".repeat(5000))).isNull();
        assertThat(read("a: " + "{a: ".repeat(5000))).isNull();
        assertThat(problems.all()).isNotEmpty();
    }

    @Test
    void refusesAFileTooLarge() {
        Source.of("f.yaml", new byte[Source.MOST_BYTES + 1], problems);
        assertThat(problems.all().get(0).what()).contains("larger than 1 MB");
    }

    private Node.Keys keys(String text) {
        return (Node.Keys) read(text);
    }

    private Node read(String text) {
        return TreeReader.read(Source.of("f.yaml", text), problems);
    }
}
