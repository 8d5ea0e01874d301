package org.sawfly.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SampleTest {
    @Test
    void quantilesLieWhereTheirDefinitionPutsThem() {
        Sample sample = Sample.of(4, 1, 3, 2, Double.NaN, 5);
        assertThat(sample.size()).isEqualTo(5);
        assertThat(sample.median()).isEqualTo(3);
        // the second of five lies at (2 - 1/3)/(5 + 1/3)
        assertThat(sample.quantile(5 / 16.0)).isCloseTo(2, within(1e-12));
        assertThat(sample.quantile(0)).isEqualTo(1);
        assertThat(sample.quantile(1)).isEqualTo(5);
        assertThat(sample.mean()).isEqualTo(3);
        assertThat(sample.deviation()).isCloseTo(Math.sqrt(2.5), within(1e-12));
    }

    @Test
    void aWildValueHardlyMovesTheRobustDeviation() {
        Sample tame = Sample.of(-2, -1, 0, 1, 2);
        assertThat(tame.robustDeviation()).isCloseTo(1.4826, within(1e-4));
        assertThat(Sample.of(-2, -1, 0, 1, 2000).robustDeviation()).isEqualTo(tame.robustDeviation());
    }

    @Test
    void ofNoneThereIsNothing() {
        assertThat(Sample.of().median()).isNaN();
        assertThat(Sample.of().mean()).isNaN();
        assertThat(Sample.of(1).deviation()).isNaN();
        assertThat(Sample.of(1).quantile(0.95)).isEqualTo(1);
    }
}
