package org.sawfly.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {
    @ParameterizedTest
    @CsvSource({
        "41.25, 1, 41.3",
        "41.2499999999999, 1, 41.3",
        "41.249, 1, 41.2",
        "-0.04, 1, 0.0",
        "-0.05, 1, -0.1",
        "0.15, 1, 0.2",
        "1234567.5, 0, 1234568",
        "NaN, 2, -",
        "-Infinity, 2, -",
        "-0.0, 0, 0"
    })
    void fixedDecimals(double value, int decimals, String text) {
        assertThat(Numbers.fixed(value, decimals)).isEqualTo(text);
    }

    @Test
    void theMachinesLanguageDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Numbers.fixed(1234.5, 1)).isEqualTo("1234.5");
            assertThat(Numbers.clock(135)).isEqualTo("2:15");
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource({"10, 10", "4.50, 4.5", "0.254, 0.25", "100, 100", "0, 0", "-0.001, 0", "NaN, -"})
    void shortest(double value, String text) {
        assertThat(Numbers.shortest(value, 2)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.1",
        "0.30000000000000004, 0.3",
        "123456789.123456789, 123456789.123",
        "-0.0, 0",
        "1.5e-9, 1.5E-9",
        "0.0000025, 0.0000025",
        "1e30, 1E+30",
        "250, 250",
        "NaN, null",
        "Infinity, null"
    })
    void forMachines(double value, String text) {
        assertThat(Numbers.machine(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "135, 2:15, 2 min 15 s",
        "59.6, 1:00, 1 min 0 s",
        "7.2, 0:07, 7 s",
        "0, 0:00, 0 s",
        "-65, -1:05, -1 min 5 s",
        "NaN, -, -"
    })
    void clock(double seconds, String clock, String words) {
        assertThat(Numbers.clock(seconds)).isEqualTo(clock);
        assertThat(Numbers.clockWords(seconds)).isEqualTo(words);
    }

    @Test
    void ranges() {
        assertThat(Numbers.range(new Band(34.44, 35.66), 1)).isEqualTo("34.4-35.7");
        assertThat(Numbers.range(new Band(-0.1, 0.1), 1)).isEqualTo("-0.1 to 0.1");
        assertThat(Numbers.range(new Band(-0.04, 0.1), 1)).isEqualTo("0.0-0.1");
        assertThat(Numbers.range(new Band(Double.NaN, 1), 1)).isEqualTo("-");
    }
}
