package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** Joins the catalogues that stand beside their results. */
class ResultQuantitiesTest {
    @Test
    void keysAndWordsAreUnique() {
        assertThat(ResultQuantities.ALL).extracting(Quantity::key).doesNotHaveDuplicates();
        assertThat(ResultQuantities.ALL).extracting(Quantity::words).doesNotHaveDuplicates();
    }

    @Test
    void unitsAreThoseOfTheKeys() {
        assertThat(ResultQuantities.ALL).allSatisfy(quantity -> {
            Unit ofKey = Unit.of(quantity.key());
            boolean load = quantity.unit() == Unit.LOAD && ofKey == Unit.GRAM;
            assertThat(load || ofKey == quantity.unit()).as(quantity.key()).isTrue();
        });
    }

    @Test
    void whatIsPromisedUnderAKeyIsThere() {
        List<String> promised = List.of(
                "mass_g",
                "cg_mm",
                "neutral_point_mm",
                "static_margin_pct",
                "tail_volume_h",
                "tail_volume_v",
                "nose_lead_g",
                "ixx_kgm2",
                "iyy_kgm2",
                "izz_kgm2",
                "release_speed_mps",
                "apex_height_m",
                "apex_time_s",
                "settled_height_m",
                "first_swing_deg",
                "max_load_g",
                "min_sink_mps",
                "min_sink_speed_mps",
                "best_glide_ratio",
                "still_air_time_s");
        assertThat(ResultQuantities.ALL).extracting(Quantity::key).containsAll(promised);
    }

    @Test
    void cataloguesOfTheBoomAndTheBenchJoin() {
        List<Quantity<BoomLook>> boom = BoomQuantities.OF_BOOM;
        assertThat(boom).extracting(Quantity::key).doesNotHaveDuplicates();
        assertThat(boom).extracting(Quantity::words).doesNotHaveDuplicates();
        assertThat(boom)
                .extracting(Quantity::key)
                .doesNotContainAnyElementsOf(
                        ResultQuantities.ALL.stream().map(Quantity::key).toList());
        assertThat(ToleranceQuantities.OF_SIZE).extracting(Quantity::key).doesNotHaveDuplicates();
        assertThat(ToleranceQuantities.OF_ERROR).extracting(Quantity::key).doesNotHaveDuplicates();
    }
}
