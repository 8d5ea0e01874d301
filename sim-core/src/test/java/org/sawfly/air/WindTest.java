package org.sawfly.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WindTest {
    private final Wind wind = new Wind(5, 0.2);

    @Test
    void blows_as_stated_at_ten_metres_and_follows_the_power_law() {
        assertThat(wind.at(10)).isEqualTo(5);
        assertThat(wind.at(40)).isCloseTo(5 * Math.pow(4, 0.2), within(1e-12));
        assertThat(new Wind(-5, 0.2).at(40)).isEqualTo(-wind.at(40));
    }

    @Test
    void stops_changing_below_half_a_metre() {
        assertThat(wind.at(0.1)).isEqualTo(wind.at(0.5));
        assertThat(wind.at(-3)).isEqualTo(wind.at(0.5));
        assertThat(wind.gradient(0.2)).isEqualTo(0);
    }

    @Test
    void gradient_is_the_slope_of_the_profile() {
        double difference = (wind.at(2.001) - wind.at(1.999)) / 0.002;
        assertThat(wind.gradient(2)).isCloseTo(difference, within(1e-6));
    }

    @Test
    void without_exponent_it_is_the_same_everywhere() {
        assertThat(new Wind(3, 0).at(0.1)).isEqualTo(3);
        assertThat(new Wind(3, 0).gradient(5)).isEqualTo(0);
        assertThat(Wind.CALM.at(30)).isEqualTo(0);
    }

    @Test
    void numbers_that_are_none_are_refused() {
        assertThatThrownBy(() -> new Wind(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Wind(3, -0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
