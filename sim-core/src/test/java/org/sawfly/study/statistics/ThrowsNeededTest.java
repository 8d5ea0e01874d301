package org.sawfly.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThrowsNeededTest {
    /**
     * J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd ed. 1988, table 2.4.1, n a side by d, 5 % both
     * sides, power .80 (rows read second-hand). The table rounds: it may lie one throw beside the exact number.
     */
    @ParameterizedTest
    @CsvSource({
        "0.10, 1571",
        "0.20, 393",
        "0.30, 175",
        "0.40, 99",
        "0.50, 64",
        "0.60, 45",
        "0.70, 33",
        "0.80, 26",
        "1.00, 17",
        "1.20, 12",
        "1.40, 9"
    })
    void sampleSizesAreThoseOfTheHandbook(double ratio, int tabulated) {
        int exact = ThrowsNeeded.aSide(ratio, 1);
        assertThat(ThrowsNeeded.power(exact, ratio)).isGreaterThanOrEqualTo(0.8);
        assertThat(ThrowsNeeded.power(exact - 1, ratio)).isLessThan(0.8);
        assertThat(exact).isCloseTo(tabulated, within(1));
    }

    @Test
    void ofASmallTableTheExactNumbersAreThoseOfTheHandbook() {
        assertThat(ThrowsNeeded.aSide(0.5, 1)).isEqualTo(64);
        assertThat(ThrowsNeeded.aSide(0.8, 1)).isEqualTo(26);
        assertThat(ThrowsNeeded.aSide(1.6, 2)).isEqualTo(26);
    }

    @Test
    void extremesEnd() {
        assertThat(ThrowsNeeded.aSide(100, 1)).isEqualTo(2);
        assertThat(ThrowsNeeded.aSide(1e-9, 1)).isEqualTo(Integer.MAX_VALUE);
        assertThat(ThrowsNeeded.aSide(0, 1)).isEqualTo(Integer.MAX_VALUE);
        assertThat(ThrowsNeeded.aSide(1, 0)).isEqualTo(2);
    }

    @Test
    void wordsHaveACeiling() {
        assertThat(ThrowsNeeded.words(7)).isEqualTo("7 throws a side");
        assertThat(ThrowsNeeded.words(58)).isEqualTo("about 60 throws a side");
        assertThat(ThrowsNeeded.words(393)).isEqualTo("about 400 throws a side");
        assertThat(ThrowsNeeded.words(501)).isEqualTo("more than 500 throws a side: leave it");
    }
}
