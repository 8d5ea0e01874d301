package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainNumbersTest {
    /** To the last bit what the JDK reads, for any number of up to 15 digits. */
    @Test
    void readsWhatTheJdkReads() {
        Random random = new Random(20);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder digits = new StringBuilder();
            int count = 1 + random.nextInt(15);
            for (int k = 0; k < count; k++) {
                digits.append((char) ('0' + random.nextInt(10)));
            }
            int point = random.nextInt(count + 1);
            if (point > 0) {
                digits.insert(point, '.');
            }
            String text = (random.nextBoolean() ? "-" : "") + digits;
            PlainNumbers numbers = new PlainNumbers(text);
            assertThat(numbers.next()).as(text).isEqualTo(Double.parseDouble(text));
            assertThat(numbers.atEnd()).isTrue();
        }
    }

    @Test
    void goesFromCommaToComma() {
        PlainNumbers numbers = new PlainNumbers("10000,-30,-0.5,7.");
        assertThat(numbers.next()).isEqualTo(10000);
        assertThat(numbers.next()).isEqualTo(-30);
        assertThat(numbers.atEnd()).isFalse();
        assertThat(numbers.next()).isEqualTo(-0.5);
        assertThat(numbers.next()).isEqualTo(7);
        assertThat(numbers.atEnd()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".5", "+1", " 1", "1 ", "1e3", "1.2.3", "--1", "NaN", "1;2", "1234567890123456"})
    void leavesEverythingElseAlone(String text) {
        assertThat(new PlainNumbers(text).next()).isNaN();
    }

    @Test
    void anEmptyLastCellIsNoNumber() {
        PlainNumbers numbers = new PlainNumbers("1,");
        assertThat(numbers.next()).isEqualTo(1);
        assertThat(numbers.atEnd()).isFalse();
        assertThat(numbers.next()).isNaN();
    }
}
