package org.sawfly.study.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.quantity.Band;

class LaunchFinderTest {
    /** Up in 3 s to 40 m, then level; the glide and the landing come from the maker of logs. */
    private static DoubleUnaryOperator hop(double top) {
        return t -> t < 3 ? 1.5 + (top - 1.5) * (1 - (1 - t / 3) * (1 - t / 3)) : top;
    }

    private static final DoubleUnaryOperator[] THREE = {hop(40), hop(44), hop(36)};

    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 13.7, 50})
    void findsEveryLaunchWithItsGroundAndRelease(double rate) {
        HeightLog log = MadeLog.of(THREE, 1.2, rate, 0.3, 0.05, new SplittableRandom(3));
        List<FoundLaunch> launches = new LaunchFinder(log).find();
        assertThat(launches).hasSize(3);
        for (int n = 0; n < 3; n++) {
            FoundLaunch launch = launches.get(n);
            double release = log.times()[0] + n * MadeLog.BETWEEN + MadeLog.QUIET;
            assertThat(launch.release()).isCloseTo(release, within(0.3 + 1.5 / rate));
            assertThat(launch.top() - launch.ground()).isCloseTo(THREE[n].applyAsDouble(3) - 1.2, within(1.2));
            assertThat(launch.end()).isGreaterThan(launch.topTime() + 15);
        }
    }

    @Test
    void neitherThermalsNorNoiseAreLaunches() {
        SplittableRandom random = new SplittableRandom(1);
        double[] times = new double[20_000];
        double[] heights = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i / 20.0;
            heights[i] = 40 + 30 * Math.sin(times[i] / 10) + 0.4 * random.nextGaussian();
        }
        assertThat(new LaunchFinder(new HeightLog("thermals", times, heights)).find())
                .isEmpty();
    }

    @Test
    void millionsOfRowsOfNonsenseEnd() {
        SplittableRandom random = new SplittableRandom(1);
        double[] times = new double[2_000_000];
        double[] heights = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i / 50.0;
            heights[i] = 100 * random.nextDouble();
        }
        assertThat(new LaunchFinder(new HeightLog("nonsense", times, heights)).find())
                .isEmpty();
    }

    @Test
    void aLongStillGlideGivesItsSink() {
        DoubleUnaryOperator glide = t -> t < 3 ? hop(60).applyAsDouble(t) : 60 - 0.31 * (t - 3);
        int count = 1000;
        double[] times = new double[count];
        double[] heights = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = i / 10.0;
            heights[i] = times[i] < 15 ? 1.2 : glide.applyAsDouble(times[i] - 15);
        }
        HeightLog log = new HeightLog("still", times, heights);
        GlideSink sink = GlideSink.of(log, new LaunchFinder(log).find().get(0));
        assertThat(sink.sink()).isCloseTo(0.31, within(1e-9));
        assertThat(sink.calm()).isTrue();
        assertThat(sink.pieces()).isEqualTo(6);
        assertThat(sink.likely().contains(0.31)).isTrue();
    }

    @Test
    void restlessAirAndShortGlidesAreSeen() {
        HeightLog log = MadeLog.of(THREE, 1.2, 10, 0, 0, null);
        GlideSink brief = GlideSink.of(log, new LaunchFinder(log).find().get(0));
        assertThat(brief.sink()).isNaN();
        assertThat(brief.calm()).isFalse();
    }

    /** Student's t at 95 % with two freedoms is 2.9200 (tables, as in StudentTTest). */
    @Test
    void severalGlidesDifferByTheAirTheyMet() {
        GlideSink none = GlideSink.of(List.of());
        assertThat(none.sink()).isNaN();
        GlideSink restless = glide(0.9, 0.5);
        assertThat(GlideSink.of(List.of(none, restless)).sink()).isNaN();
        GlideSink one = glide(0.3, 0.05);
        assertThat(GlideSink.of(List.of(one, restless, none)).likely()).isEqualTo(one.likely());
        GlideSink three = GlideSink.of(List.of(one, glide(0.36, 0.05), restless, glide(0.33, 0.05)));
        assertThat(three.sink()).isCloseTo(0.33, within(1e-12));
        assertThat(three.pieces()).isEqualTo(3);
        assertThat(three.likely().high() - 0.33).isCloseTo(2.9200 * 0.03 / Math.sqrt(3), within(1e-5));
    }

    private static GlideSink glide(double sink, double unrest) {
        return new GlideSink(sink, Band.around(sink, 0.02), unrest, 4);
    }

    @Test
    void wrongUnitsAreSuspected() {
        HeightLog log = MadeLog.of(THREE, 1.2, 10, 0, 0, null);
        assertThat(log.suspicions()).isEmpty();
        double[] feet =
                java.util.Arrays.stream(log.heights()).map(h -> h / 0.3048).toArray();
        assertThat(new HeightLog("feet", log.times(), feet).suspicions())
                .singleElement()
                .extracting(HeightLog.Suspicion::maybe)
                .asString()
                .contains("feet");
        double[] milliseconds =
                java.util.Arrays.stream(log.times()).map(t -> 1000 * t).toArray();
        assertThat(new HeightLog("ms", milliseconds, log.heights()).suspicions())
                .singleElement()
                .extracting(HeightLog.Suspicion::maybe)
                .asString()
                .contains("milliseconds");
    }

    @Test
    void logsThatAreNoneAreRefusedInWords() {
        assertThatThrownBy(() -> new HeightLog("a.csv", new double[0], new double[0]))
                .hasMessage("a.csv: fewer than two samples");
        assertThatThrownBy(() -> new HeightLog("a.csv", new double[] {1, 1}, new double[2]))
                .hasMessageContaining("does not come after");
        assertThatThrownBy(() -> new HeightLog("a.csv", new double[] {1, 2}, new double[] {0, Double.NaN}))
                .hasMessageContaining("sample 2 is not a number");
    }
}
