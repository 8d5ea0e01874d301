package org.sawfly.study.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The long version of what {@link CalibrationTest} samples; run by the profile {@code slow}. */
class CalibrationLong {
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 20})
    void truthLiesWithinTheStatedRangeNineTimesInTen(double rate) {
        Coverage coverage = Coverage.of(CalibrationTest.PLOVER, rate, 200, (long) rate);
        assertThat(coverage.speeds() / 200.0).as("%s", coverage).isBetween(0.85, 0.95);
        assertThat(coverage.drags() / 200.0).as("%s", coverage).isBetween(0.85, 0.95);
    }
}
