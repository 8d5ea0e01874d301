package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EditTest {
    private final Problems problems = new Problems();
    private final Place place = Place.whole("command line");

    @Test
    void laysOneTreeOverAnotherAndKeepsPlaces() {
        Node.Keys base = tree("a: {b: 1, c: 2}\nd: [1, 2]\n");
        Node.Keys top = Edit.single("a.b", Edit.value("5", place, problems), place, problems);

        Node.Keys changed = Edit.over(base, top);

        Node.Keys a = (Node.Keys) changed.get("a");
        assertThat(((Node.Scalar) a.get("b")).text()).isEqualTo("5");
        assertThat(a.get("b").place().file()).isEqualTo("command line");
        assertThat(a.get("c").place()).isEqualTo(new Place("f.yaml", 1, 14));
        assertThat(((Node.Scalar) ((Node.Keys) base.get("a")).get("b")).text()).isEqualTo("1");
    }

    @Test
    void takesBackTheOtherWayOfSayingTheSame() {
        Node.Keys changed = Edit.over(tree("p: {ahead_mm: 5, mass_g: 1}"), tree("p: {behind_mm: 3}"));
        assertThat(((Node.Keys) changed.get("p")).entries()).containsOnlyKeys("mass_g", "behind_mm");
    }

    @Test
    void doesNotHideThatBothWereGivenAtOnce() {
        Node.Keys changed = Edit.over(tree("p: {}"), tree("p: {ahead_mm: 5, behind_mm: 3}"));
        assertThat(((Node.Keys) changed.get("p")).entries()).containsOnlyKeys("ahead_mm", "behind_mm");
    }

    @Test
    void readsValuesAsAFileWould() {
        assertThat(((Node.Scalar) Edit.value("0.85", place, problems)).kind()).isEqualTo(Node.Kind.NUMBER);
        assertThat(((Node.Scalar) Edit.value("rear_end", place, problems)).kind())
                .isEqualTo(Node.Kind.TEXT);
        assertThat(Edit.value("{a: 1}", place, problems)).isInstanceOf(Node.Keys.class);
        assertThat(problems.all()).isEmpty();
        Edit.value("{a: 1", place, problems);
        assertThat(problems.all()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0", "-0", "7", "-12.5", "0.000001", "1234567890123456", "007", "1.", ".5", "1e3", "+4", " 5"})
    void aNumberIsWhatTheReaderOfFilesMakesOfIt(String written) {
        Node.Scalar read = (Node.Scalar) TreeReader.read(Source.of("f.yaml", written), problems);
        assertThat(Edit.value(written, place, problems)).isEqualTo(new Node.Scalar(place, read.kind(), read.text()));
    }

    @Test
    void refusesAnEmptyPath() {
        assertThat(Edit.single("a..b", tree("{}"), place, problems)).isNull();
        assertThat(problems.all()).hasSize(1);
    }

    @Test
    void splitsATreeByItsKeys() {
        Node.Keys tree = tree("{a: 1, b: 2, c: 3}");
        assertThat(Edit.only(tree, Set.of("b"), true).entries()).containsOnlyKeys("b");
        assertThat(Edit.only(tree, Set.of("b"), false).entries()).containsOnlyKeys("a", "c");
    }

    private Node.Keys tree(String text) {
        return (Node.Keys) TreeReader.read(Source.of("f.yaml", text), problems);
    }
}
