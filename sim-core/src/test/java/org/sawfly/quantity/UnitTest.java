package org.sawfly.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    @ParameterizedTest
    @EnumSource
    void thereAndBack(Unit unit) {
        assertThat(unit.fromSi(unit.toSi(12.5))).isCloseTo(12.5, within(1e-12));
        assertThat(unit.differenceFromSi(unit.toSi(3) - unit.toSi(1))).isCloseTo(2, within(1e-12));
    }

    @Test
    void factors() {
        assertThat(Unit.MILLIMETRE.toSi(69)).isCloseTo(0.069, within(1e-15));
        assertThat(Unit.SQUARE_DECIMETRE.toSi(20)).isCloseTo(0.2, within(1e-15));
        assertThat(Unit.DEGREE.toSi(180)).isEqualTo(Math.PI);
        assertThat(Unit.CELSIUS.toSi(15)).isEqualTo(288.15);
        assertThat(Unit.TURNS_PER_SECOND.toSi(0.5)).isEqualTo(Math.PI);
        assertThat(Unit.GRAM_PER_SQUARE_DECIMETRE.toSi(5.4)).isCloseTo(0.54, within(1e-15));
        assertThat(Unit.LOAD.toSi(7)).isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource({
        "boom.cut_mm, MILLIMETRE",
        "height_scatter_m, METRE",
        "g_per_m, GRAM_PER_METRE",
        "boom_g_per_m, GRAM_PER_METRE",
        "parts.battery.mass_g, GRAM",
        "release_turns_per_s, TURNS_PER_SECOND",
        "min_sink_mps, METRE_PER_SECOND",
        "iyy_kgm2, KILOGRAM_SQUARE_METRE",
        "stiffness_Nm2, NEWTON_SQUARE_METRE",
        "moment_Nm, NEWTON_METRE",
        "peg_force_N, NEWTON",
        "temperature_c, CELSIUS"
    })
    void theKeySaysTheUnit(String key, Unit unit) {
        assertThat(Unit.ofKey(key)).contains(unit);
        assertThat(unit.fits(key)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"tail_volume_h", "tail_volume_v", "best_glide_ratio", "cutmm", "cut_mm.far"})
    void othersSayNone(String key) {
        assertThat(Unit.ofKey(key)).isEmpty();
        assertThat(Unit.NUMBER.fits(key)).isTrue();
        assertThat(Unit.MILLIMETRE.fits(key)).isFalse();
    }
}
