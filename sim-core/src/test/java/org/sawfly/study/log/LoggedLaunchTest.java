package org.sawfly.study.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoggedLaunchTest {
    private static final int THROWS = 40;

    private static double meanTop(double rate, double noise, DoubleUnaryOperator flight) {
        DoubleUnaryOperator[] flights = new DoubleUnaryOperator[THROWS];
        java.util.Arrays.fill(flights, flight);
        HeightLog log = MadeLog.of(flights, Calibration.IN_HAND, rate, noise, 0, new SplittableRandom(9));
        List<LoggedLaunch> launches = LoggedLaunch.of(log);
        assertThat(launches).hasSize(THROWS);
        return launches.stream().mapToDouble(LoggedLaunch::height).average().orElseThrow();
    }

    /** The highest sample alone would stand 0.2 m too high at 5 a second and 0.4 m at 20. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 10, 20, 50})
    void theTopDoesNotDependOnTheRate(double rate) {
        DoubleUnaryOperator flight = CalibrationTest.PLOVER.flight(
                35, 1, new double[CalibrationTest.PLOVER.held().size()]);
        double top = 0;
        for (double t = 0; t < 6; t += 0.01) {
            top = Math.max(top, flight.applyAsDouble(t));
        }
        assertThat(meanTop(rate, 0.25, flight)).isCloseTo(top, within(0.15));
    }

    @Test
    void windsAreThoseOfTheClimb() {
        double[] times = new double[400];
        double[] heights = new double[400];
        double[] winds = new double[400];
        for (int i = 0; i < 400; i++) {
            times[i] = i / 10.0;
            double t = times[i] - 20;
            heights[i] = t < 0 ? 1.2 : t < 3 ? 1.2 + 40 * (1 - (1 - t / 3) * (1 - t / 3)) : 41.2 - 0.5 * (t - 3);
            winds[i] = i < 200 ? Double.NaN : i < 235 ? 2 : 9;
        }
        LoggedLaunch launch =
                LoggedLaunch.of(new HeightLog("windy", times, heights, winds)).get(0);
        assertThat(launch.wind()).isEqualTo(2);
        assertThat(launch.height()).isCloseTo(41.2, within(0.1));
        assertThat(launch.place()).isEqualTo("windy at 20 s");
    }
}
