package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.file.ScenarioFile;
import org.sawfly.file.Settings;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Launch;

class ThrowsTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final ScenarioFile PLOVER =
            ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
    private static final Workbench BENCH = new Workbench();
    private static final Result TODAY = BENCH.answer(PLOVER.with(List.of()));
    private static final Throws.Drawn FEW = new Throws.Drawn(64, 1, 2);

    private static Map<Scattered, Double> only(Map<Scattered, Double> some) {
        Map<Scattered, Double> all = new EnumMap<>(Scattered.class);
        for (Scattered one : Scattered.values()) {
            all.put(one, some.getOrDefault(one, 0.0));
        }
        return all;
    }

    private static Map<Scattered, Double> usual() {
        return PLOVER.throwScatter(List.of());
    }

    private static double heightAt(double faster) {
        FlightPlan plan = TODAY.plan();
        return Flight.fly(plan.withRelease(plan.releaseSpeed() * (1 + faster), plan.yawRate()))
                .top()
                .height();
    }

    @Test
    void aSmallScatterOfTheSpeedScattersHeightsByTheSlope() {
        double small = 0.005;
        Throws thrown = Throws.of(TODAY, only(Map.of(Scattered.SPEED, small)), FEW);
        double slope = (heightAt(small) - heightAt(-small)) / (2 * small);
        // 64 points of a normal cut at three deviations
        assertThat(thrown.sample().deviation()).isCloseTo(slope * small, within(0.03 * slope * small));
        assertThat(thrown.sample().mean()).isCloseTo(heightAt(0), within(0.05));
        assertThat(thrown.shares().keySet()).containsExactly(Scattered.SPEED);
    }

    @Test
    void theScatterOfTheSpeedFollowsFromThatOfTheHeights() {
        Throws thrown = Throws.of(TODAY, usual(), FEW);
        assertThat(thrown.sample().deviation()).isCloseTo(2, within(0.03));
        assertThat(thrown.deviation(Scattered.SPEED)).isBetween(0.01, 0.035);
        assertThat(thrown.shares()).containsKey(Scattered.SPEED);
    }

    @Test
    void nothingIsLeftForTheSpeedWhereAllElseDoesMore() {
        Map<Scattered, Double> windy = new EnumMap<>(usual());
        windy.put(Scattered.WIND, 2.5);
        Throws thrown = Throws.of(TODAY, windy, FEW);
        assertThat(thrown.deviation(Scattered.SPEED)).isZero();
        assertThat(thrown.sample().deviation()).isGreaterThan(2);
    }

    @Test
    void withoutScatterEveryThrowIsTheSame() {
        Throws thrown = Throws.of(TODAY, only(Map.of()), FEW);
        assertThat(thrown.sample().deviation()).isLessThan(1e-9);
        assertThat(thrown.height(0)).isCloseTo(41, within(1e-4));
        assertThat(thrown.chanceAbove(thrown)).isEqualTo(0.5);
        assertThat(thrown.shares()).isEmpty();
    }

    @Test
    void aHigherGliderIsHigherMoreOftenAndBothChancesAddUp() {
        Throws now = Throws.of(TODAY, usual(), FEW);
        Result forward = BENCH.answer(PLOVER.with(Settings.parse("ready_to_fly.cg_mm=64", "--change")));
        Throws then = Throws.of(forward, now.deviations(), FEW);
        assertThat(then.sample().mean()).isGreaterThan(now.sample().mean() + 0.2);
        assertThat(then.chanceAbove(now)).isBetween(0.53, 0.8);
        assertThat(then.chanceAbove(now) + now.chanceAbove(then)).isCloseTo(1, within(1e-12));
        assertThat(then.off(7, Scattered.WIND)).isEqualTo(now.off(7, Scattered.WIND));
    }

    @Test
    void anyNumberOfThreadsAndTheSameSeedGiveTheSame() {
        Throws one = Throws.of(TODAY, usual(), new Throws.Drawn(40, 5, 1));
        Throws three = Throws.of(TODAY, usual(), new Throws.Drawn(40, 5, 3));
        Throws other = Throws.of(TODAY, usual(), new Throws.Drawn(40, 6, 3));
        for (int i = 0; i < one.count(); i++) {
            assertThat(three.height(i)).isEqualTo(one.height(i));
        }
        assertThat(other.height(0)).isNotEqualTo(one.height(0));
    }

    /** The numbers of the study of an early and a late release, at 20 deg of the circle. */
    @Test
    void lettingGoLateFlattensThePathAndBanks() {
        double spin = TODAY.outcome().release().spin().rate();
        double[] off = new double[Scattered.values().length];
        off[Scattered.LETTING_GO.ordinal()] = Math.toRadians(20) / spin;
        Launch late = Scattered.thrown(TODAY.plan(), spin, off).launch();
        assertThat(Math.toDegrees(late.releaseClimb())).isCloseTo(9.4, within(0.05));
        assertThat(Math.toDegrees(late.releaseBank())).isCloseTo(3.45, within(0.05));
        off[Scattered.LETTING_GO.ordinal()] *= -1;
        Launch early = Scattered.thrown(TODAY.plan(), spin, off).launch();
        assertThat(Math.toDegrees(early.releaseClimb())).isCloseTo(9.4, within(0.05));
        assertThat(Math.toDegrees(early.releaseBank())).isCloseTo(-3.45, within(0.05));
    }
}
