package org.sawfly.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
    private record Balance(double cg, double load) {}

    private static final Quantity<Balance> CG =
            new Quantity<>("cg_mm", "CG behind leading edge", Unit.MILLIMETRE, 1, Balance::cg);
    private static final Quantity<Balance> LOAD = new Quantity<>("max_load_g", "load", Unit.LOAD, 0, Balance::load);

    @Test
    void showsItself() {
        Balance balance = new Balance(0.06904, 59.4);
        assertThat(CG.text(balance)).isEqualTo("69.0");
        assertThat(CG.textWithUnit(balance)).isEqualTo("69.0 mm");
        assertThat(CG.shown(balance)).isEqualTo(69.0);
        assertThat(CG.title()).isEqualTo("CG behind leading edge, mm");
        assertThat(LOAD.textWithUnit(balance)).isEqualTo("59 g");
        assertThat(CG.textWithUnit(new Balance(Double.NaN, 0))).isEqualTo("-");
    }

    @Test
    void readsFromWhatHoldsTheResult() {
        Quantity<Balance[]> second = CG.of(pair -> pair[1]);
        assertThat(second.text(new Balance[] {new Balance(1, 0), new Balance(0.0705, 0)}))
                .isEqualTo("70.5");
    }

    @ParameterizedTest
    @CsvSource({"cg, MILLIMETRE", "cg_m, MILLIMETRE", "ratio_m, NUMBER", "weight_g_per_m, METRE", "mass_kg, GRAM"})
    void refusesAKeyThatSaysAnotherUnit(String key, Unit unit) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Quantity<Balance>(key, "words", unit, 1, Balance::cg))
                .withMessageContaining(key);
    }

    @Test
    void refusesWhatIsNoKey() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Quantity<Balance>("", "words", Unit.NUMBER, 1, Balance::cg));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Quantity<Balance>("a_mm", " ", Unit.MILLIMETRE, 1, Balance::cg));
    }
}
