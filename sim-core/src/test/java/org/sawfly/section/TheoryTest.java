package org.sawfly.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TheoryTest {
    /** Thin-aerofoil theory of the NACA four-digit mean lines, recomputed independently. */
    @ParameterizedTest
    @CsvSource({"0.02, 0.4, -2.0772, -0.05312", "0.04, 0.4, -4.1545, -0.10624", "0.02, 0.3, -1.9179, -0.04473"})
    void zeroLiftAngleAndMomentOfMeanLines(double camber, double place, double zeroLiftDeg, double moment) {
        ThinAerofoil line = ThinAerofoil.twoParabolas(camber, place);
        assertThat(Math.toDegrees(line.zeroLift())).isCloseTo(zeroLiftDeg, within(1e-4));
        assertThat(line.moment()).isCloseTo(moment, within(1e-5));
    }

    @Test
    void anyMeanLineAgreesWithTheClosedForm() {
        double p = 0.42;
        ThinAerofoil closed = ThinAerofoil.twoParabolas(0.019, p);
        ThinAerofoil summed = ThinAerofoil.of(x -> 0.038 * (p - x) / (x < p ? p * p : (1 - p) * (1 - p)));
        assertThat(summed.zeroLift()).isCloseTo(closed.zeroLift(), within(1e-8));
        assertThat(summed.moment()).isCloseTo(closed.moment(), within(1e-8));
        assertThat(summed.idealLift()).isCloseTo(closed.idealLift(), within(1e-7));
    }

    /** Glauert, R&M 1095; rows recomputed independently. */
    @ParameterizedTest
    @CsvSource({"0.25, 0.6090, 3.8264, -0.6495, -0.5653, -0.9436", "0.30, 0.6607, 4.1516, -0.6416, -0.6274, -0.9654"})
    void plainFlap(double chord, double tau, double lift, double moment, double hingeAlpha, double hingeDelta) {
        PlainFlap flap = PlainFlap.of(chord);
        assertThat(flap.effectiveness()).isCloseTo(tau, within(1e-4));
        assertThat(flap.liftSlope()).isCloseTo(lift, within(1e-3));
        assertThat(flap.momentSlope()).isCloseTo(moment, within(1e-4));
        assertThat(flap.hingeAlpha()).isCloseTo(hingeAlpha, within(1e-4));
        assertThat(flap.hingeDelta()).isCloseTo(hingeDelta, within(1e-4));
        assertThatThrownBy(() -> PlainFlap.of(1)).hasMessageContaining("flap chord");
    }

    /** Blasius 1908; Prandtl-Schlichting; rows recomputed. */
    @Test
    void flatPlate() {
        assertThat(FlatPlateFriction.laminar(1e5)).isCloseTo(0.004200, within(1e-6));
        assertThat(FlatPlateFriction.turbulent(1e5)).isCloseTo(0.007156, within(2e-6));
        assertThat(FlatPlateFriction.laminar(5e4)).isCloseTo(0.005939, within(1e-6));
        assertThat(FlatPlateFriction.mixed(1e5, 0)).isEqualTo(FlatPlateFriction.turbulent(1e5));
        assertThat(FlatPlateFriction.mixed(1e5, 1)).isCloseTo(FlatPlateFriction.laminar(1e5), within(1e-12));
        assertThat(FlatPlateFriction.mixed(1e5, 0.5))
                .isBetween(FlatPlateFriction.laminar(1e5), FlatPlateFriction.turbulent(1e5));
    }
}
