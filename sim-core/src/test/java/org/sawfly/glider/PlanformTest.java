package org.sawfly.glider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanformTest {
    private final Planform plover = Plover.glider().wing().planform();

    @ParameterizedTest
    @CsvSource({"0.5, 0.77778, 0.44444", "0.4, 0.742857, 0.428571"})
    void mean_chord_of_a_straight_taper(double taper, double chord, double out) {
        // Source: closed form 2/3 (1 + t + t^2)/(1 + t) and 1/3 (1 + 2 t)/(1 + t), recomputed
        Planform straight = new Planform(List.of(new Station(0, 1, 0), new Station(1, taper, 0)));
        assertThat(straight.meanChord()).isCloseTo(chord, within(5e-6));
        assertThat(straight.meanChordOut()).isCloseTo(out, within(5e-6));
    }

    @Test
    void leading_edge_of_the_mean_chord_lies_on_the_straight_leading_edge() {
        Planform swept = new Planform(List.of(new Station(0, 1, 0), new Station(2, 0.4, 0.5)));
        assertThat(swept.meanChordBack()).isCloseTo(swept.backAt(swept.meanChordOut()), within(1e-15));
        assertThat(swept.meanChord()).isCloseTo(swept.chordAt(swept.meanChordOut()), within(1e-15));
    }

    @Test
    void a_rectangle_has_its_span_over_its_chord_as_aspect_ratio() {
        Planform rectangle = new Planform(List.of(new Station(0, 0.1, 0), new Station(0.6, 0.1, 0)));
        assertThat(rectangle.aspectRatio()).isCloseTo(12, within(1e-12));
    }

    @Test
    void more_stations_on_the_same_lines_change_nothing() {
        Planform coarse = new Planform(List.of(new Station(0, 0.2, 0), new Station(0.5, 0.1, 0.04)));
        Planform fine = new Planform(
                List.of(new Station(0, 0.2, 0), new Station(0.25, 0.15, 0.02), new Station(0.5, 0.1, 0.04)));
        assertThat(fine.area()).isCloseTo(coarse.area(), within(1e-15));
        assertThat(fine.meanChord()).isCloseTo(coarse.meanChord(), within(1e-15));
        assertThat(fine.meanChordBack()).isCloseTo(coarse.meanChordBack(), within(1e-15));
        assertThat(fine.chordAt(0.1)).isCloseTo(coarse.chordAt(0.1), within(1e-15));
        assertThat(fine.backAt(0.4)).isCloseTo(coarse.backAt(0.4), within(1e-15));
    }

    @Test
    void scaling_keeps_the_shape_and_scales_the_area() {
        Planform larger = plover.scaled(1.44);
        assertThat(larger.area()).isCloseTo(1.44 * plover.area(), within(1e-12));
        assertThat(larger.span()).isCloseTo(1.2 * plover.span(), within(1e-12));
        assertThat(larger.meanChord()).isCloseTo(1.2 * plover.meanChord(), within(1e-12));
        assertThat(larger.meanChordBack()).isCloseTo(1.2 * plover.meanChordBack(), within(1e-12));
        assertThat(larger.aspectRatio()).isCloseTo(plover.aspectRatio(), within(1e-9));
    }

    @Test
    void stations_out_of_order_or_without_chord_are_refused_in_words() {
        Station root = new Station(0, 0.1, 0);
        assertThatThrownBy(() -> new Planform(List.of(root, new Station(0.5, 0.1, 0), new Station(0.4, 0.1, 0))))
                .hasMessageContaining("station 3 does not lie outside station 2");
        assertThatThrownBy(() -> new Planform(List.of(root))).hasMessageContaining("two stations");
        assertThatThrownBy(() -> new Planform(List.of(new Station(0.1, 0.1, 0), new Station(0.5, 0.1, 0))))
                .hasMessageContaining("root");
        assertThatThrownBy(() -> new Station(0, 0, 0)).hasMessageContaining("chord");
        assertThatThrownBy(() -> new Station(0, Double.NaN, 0)).hasMessageContaining("chord");
    }
}
