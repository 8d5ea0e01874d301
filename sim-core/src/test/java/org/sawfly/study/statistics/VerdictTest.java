package org.sawfly.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.sawfly.study.statistics.Verdict.Launched;

class VerdictTest {
    private static List<Launched> heights(double... heights) {
        return DoubleStream.of(heights)
                .mapToObj(h -> new Launched(h, Double.NaN, Double.NaN))
                .toList();
    }

    /**
     * Student's own data (The probable error of a mean, Biometrika 6, 1908, hours of sleep gained with two drugs): means 0.75
     * and 2.33; Welch's t 1.8608 with 17.776 degrees of freedom, two-sided probability 0.07939.
     */
    @Test
    void aTextbookCaseComesOutAsPublished() {
        List<Launched> first = heights(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0);
        List<Launched> second = heights(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4);
        Verdict verdict = Verdict.of(first, second);
        assertThat(verdict.difference()).isCloseTo(1.58, within(1e-9));
        assertThat(2 * (1 - verdict.confidence())).isCloseTo(0.07939, within(1e-5));
        assertThat(verdict.order()).isEqualTo(Verdict.Order.UNKNOWN);
        assertThat(verdict.more()).isEqualTo(ThrowsNeeded.aSide(1.58, verdict.deviation()) - 10);
    }

    @Test
    void aClearDifferenceIsSaidEitherWayRound() {
        List<Launched> low = heights(38, 39, 38.5, 39.4, 38.2);
        List<Launched> high = heights(44, 43.2, 44.5, 43.8, 44.1);
        assertThat(Verdict.of(low, high).confidence()).isGreaterThan(0.999);
        assertThat(Verdict.of(high, low).confidence()).isLessThan(0.001);
        assertThat(Verdict.of(low, high).more()).isZero();
        assertThat(Verdict.of(low, high).likely().low()).isGreaterThan(4);
    }

    @Test
    void oneFlukeIsLeftOutByTheRuleAndSaid() {
        Verdict verdict = Verdict.of(heights(40, 41, 40.5, 39.5, 12), heights(40, 41, 40.4, 39.7, 40.2));
        assertThat(verdict.leftOut()).extracting(Launched::height).containsExactly(12.0);
        assertThat(Math.abs(verdict.difference())).isLessThan(0.3);
    }

    @Test
    void equalHeightsAreNoOutliersAndNoReasonToFail() {
        Verdict verdict = Verdict.of(heights(40, 40, 40), heights(40, 40, 40, 40.3));
        assertThat(verdict.leftOut()).isEmpty();
        assertThat(verdict.difference()).isCloseTo(0.075, within(1e-12));
        Verdict same = Verdict.of(heights(40, 40), heights(40, 40));
        assertThat(same.more()).isEqualTo(Integer.MAX_VALUE);
    }

    @Test
    void driftIsTakenOutWhenTheSetsAlternate() {
        List<Launched> a = new ArrayList<>();
        List<Launched> b = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 16; i++) {
            boolean inB = i % 2 == 1;
            double height = 40 - 0.4 * i + (inB ? 1.5 : 0) + 0.3 * random.nextGaussian();
            (inB ? b : a).add(new Launched(height, i, Double.NaN));
        }
        Verdict verdict = Verdict.of(a, b);
        assertThat(verdict.order()).isEqualTo(Verdict.Order.MIXED);
        assertThat(verdict.drift()).isCloseTo(-0.4, within(0.06));
        assertThat(verdict.likely().contains(1.5)).isTrue();
        assertThat(verdict.more()).isZero();
    }

    @Test
    void windIsTakenOutWhereItIsGiven() {
        List<Launched> a = new ArrayList<>();
        List<Launched> b = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 20; i++) {
            boolean inB = (i / 2) % 2 == 1;
            double wind = 3 * random.nextDouble() + (inB ? 1 : 0);
            double height = 38 + 2 * wind + 0.4 * random.nextGaussian();
            (inB ? b : a).add(new Launched(height, i, wind));
        }
        Verdict verdict = Verdict.of(a, b);
        assertThat(verdict.perWind()).isCloseTo(2, within(0.3));
        assertThat(verdict.likely().contains(0)).isTrue();
        Verdict unordered = Verdict.of(withoutTimes(a), withoutTimes(b));
        assertThat(unordered.order()).isEqualTo(Verdict.Order.UNKNOWN);
        assertThat(unordered.perWind()).isCloseTo(2, within(0.3));
        assertThat(unordered.drift()).isNaN();
    }

    private static List<Launched> withoutTimes(List<Launched> set) {
        return set.stream()
                .map(one -> new Launched(one.height(), Double.NaN, one.wind()))
                .toList();
    }

    @Test
    void aWindThatWentAlongWithTheSetUpIsNotTakenOut() {
        List<Launched> a = List.of(new Launched(38, 1, 0), new Launched(38.2, 3, 0), new Launched(38.1, 5, 0));
        List<Launched> b = List.of(new Launched(41, 2, 3), new Launched(41.1, 4, 3), new Launched(41.3, 6, 3));
        Verdict verdict = Verdict.of(withoutTimes(a), withoutTimes(b));
        assertThat(verdict.perWind()).isNaN();
        assertThat(verdict.difference()).isCloseTo(3.033, within(0.001));
    }

    @Test
    void setsOneAfterTheOtherAreNotBlamedOnTheSetUpAlone() {
        List<Launched> a = List.of(new Launched(38, 1, 0), new Launched(38.2, 2, 0), new Launched(38.1, 3, 0));
        List<Launched> b = List.of(new Launched(41, 4, 0), new Launched(41.1, 5, 0), new Launched(41.3, 6, 0));
        Verdict verdict = Verdict.of(a, b);
        assertThat(verdict.order()).isEqualTo(Verdict.Order.BLOCKS);
    }

    @Test
    void aSingleLaunchIsNoSet() {
        assertThatThrownBy(() -> Verdict.of(heights(40), heights(41, 42))).hasMessageContaining("two launches");
    }

    /** Of sets that do not differ, 5 in 100 are said to: the level of the test. */
    @Test
    void falseAlarmsComeAsOftenAsStated() {
        SplittableRandom random = new SplittableRandom(11);
        int alarms = 0;
        int cases = 4000;
        for (int i = 0; i < cases; i++) {
            List<Launched> a = new ArrayList<>();
            List<Launched> b = new ArrayList<>();
            for (int k = 0; k < 16; k++) {
                (k % 2 == 0 ? a : b).add(new Launched(40 + 2 * random.nextGaussian(), k, Double.NaN));
            }
            alarms += Verdict.of(a, b).more() == 0 ? 1 : 0;
        }
        // the outlier rule makes sets look a little more alike within than they are
        assertThat(alarms / (double) cases).isBetween(0.035, 0.085);
    }
}
