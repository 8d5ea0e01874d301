package org.sawfly.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {
    private static final double RELATIVE_DENSITY = 2e-6;

    @ParameterizedTest
    @CsvSource({"1000, 281.651, 89876.3, 1.11166", "2000, 275.154, 79501.4, 1.006554", "500, 284.900, 95461.3, 1.167273"
    })
    void agrees_with_the_printed_standard_at_geometric_heights(
            double height, double temperature, double pressure, double density) {
        // Source: ISO 2533:1975, tables; US Standard Atmosphere 1976
        Air air = Atmosphere.STANDARD.at(height);
        assertThat(air.temperature()).isCloseTo(temperature, within(1e-3));
        assertThat(air.pressure()).isCloseTo(pressure, within(1.0));
        assertThat(air.density()).isCloseTo(density, within(RELATIVE_DENSITY * density));
    }

    @Test
    void viscosity_and_the_pressure_at_a_geopotential_height_agree_with_the_standard() {
        // Source: ISO 2533:1975, tables
        assertThat(Atmosphere.STANDARD.at(1000).viscosity()).isCloseTo(1.75785e-5, within(5e-11));
        double geometric = Standard.EARTH_RADIUS * 1000 / (Standard.EARTH_RADIUS - 1000);
        assertThat(Atmosphere.geopotential(geometric)).isCloseTo(1000, within(1e-9));
        assertThat(Atmosphere.STANDARD.pressure(geometric)).isCloseTo(89874.57, within(0.01));
    }

    @Test
    void at_sea_level_the_air_is_the_standard_air() {
        Air air = Atmosphere.STANDARD.at(0);
        assertThat(air.temperature()).isEqualTo(Standard.TEMPERATURE);
        assertThat(air.pressure()).isEqualTo(Standard.PRESSURE);
        assertThat(air.density()).isCloseTo(Standard.DENSITY, within(RELATIVE_DENSITY * Standard.DENSITY));
    }

    @Test
    void warm_air_is_thinner_and_more_viscous_at_the_same_pressure() {
        Atmosphere warm = Atmosphere.withTemperature(303.15, 400);
        assertThat(warm.temperature(400)).isCloseTo(303.15, within(1e-9));
        assertThat(warm.pressure(400)).isEqualTo(Atmosphere.STANDARD.pressure(400));
        double ratio = warm.density(400) / Atmosphere.STANDARD.density(400);
        assertThat(ratio).isCloseTo(Atmosphere.STANDARD.temperature(400) / 303.15, withinPercentage(1e-9));
        assertThat(warm.at(400).viscosity())
                .isGreaterThan(Atmosphere.STANDARD.at(400).viscosity());
        assertThat(warm.kinematicViscosity(400)).isEqualTo(warm.at(400).kinematicViscosity());
    }

    @Test
    void heights_outside_the_formulas_are_refused() {
        assertThatThrownBy(() -> Atmosphere.STANDARD.at(20000)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Atmosphere.STANDARD.at(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Atmosphere(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
