package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.stability.Derivatives;

/**
 * The fast model against strips, on the demo glider and on changed ones: what is promised as long as the first swing stays under
 * {@link Swing#beyondFastModel() 45 degrees}.
 */
class TwoModelsTest {
    /** [m] */
    private static final double APEX = 0.35;
    /** [deg] */
    private static final double SWING = 1;
    /** Of what a change makes [m], and [1]. */
    private static final double PAIRED = 0.1;

    private static final List<ModelPairs.Pair> PAIRS = new ArrayList<>();

    @BeforeAll
    static void fly() {
        for (double cut : ModelPairs.CUTS) {
            for (double fin : ModelPairs.FINS) {
                PAIRS.addAll(ModelPairs.flown(cut, fin));
            }
        }
    }

    private static List<ModelPairs.Pair> promised() {
        return PAIRS.stream().filter(ModelPairs.Pair::within).toList();
    }

    @Test
    void nearly_all_of_them_are_promised() {
        assertThat(PAIRS).hasSize(54);
        assertThat(promised()).hasSizeGreaterThanOrEqualTo(48);
    }

    @Test
    void tops_and_swings_agree() {
        List<Executable> all = new ArrayList<>();
        for (ModelPairs.Pair pair : promised()) {
            all.add(() -> assertThat(pair.topError()).as("top, %s", pair).isCloseTo(0, within(APEX)));
            all.add(() ->
                    assertThat(pair.swingError()).as("first swing, %s", pair).isCloseTo(0, within(SWING)));
        }
        assertAll(all);
    }

    /** In the same throw: versions that differ in the cut alone or in the fin alone, and every one against today's glider. */
    @Test
    void what_a_change_costs_agrees() {
        List<Executable> all = new ArrayList<>();
        for (ModelPairs.Pair to : promised()) {
            for (ModelPairs.Pair from : promised()) {
                boolean one = to.cut() == from.cut() || to.fin() == from.fin() || from.cut() == 0 && from.fin() == 1;
                if (one && to.speed() == from.speed() && to.rate() == from.rate()) {
                    double strips =
                            to.strips().top().height() - from.strips().top().height();
                    double fast = to.fast().top().height() - from.fast().top().height();
                    all.add(() -> assertThat(fast)
                            .as("from %s to %s", from, to)
                            .isCloseTo(strips, within(Math.max(PAIRED, PAIRED * Math.abs(strips)))));
                }
            }
        }
        assertAll(all);
    }

    @ParameterizedTest
    @CsvSource({"0, .75", "0, 1", "0, 1.25", ".04, .75", ".04, 1", ".04, 1.25", ".08, .75", ".08, 1", ".08, 1.25"})
    void neutral_points_and_derivatives_agree(double cut, double fin) {
        double[] points = ModelPairs.neutralPoints(ModelPairs.changed(cut, fin));
        assertThat(points[0]).isCloseTo(points[1], within(0.0006));
        Derivatives[] d = ModelPairs.derivatives(ModelPairs.changed(cut, fin));
        assertThat(d[0].pitch().liftByAngle()).isCloseTo(d[1].pitch().liftByAngle(), withinPercentage(5));
        assertThat(d[0].pitch().momentByAngle()).isCloseTo(d[1].pitch().momentByAngle(), withinPercentage(5));
        assertThat(d[0].pitch().momentByRate()).isCloseTo(d[1].pitch().momentByRate(), withinPercentage(5));
        assertThat(d[0].sideslip().force()).isCloseTo(d[1].sideslip().force(), withinPercentage(5));
        assertThat(d[0].sideslip().yaw()).isCloseTo(d[1].sideslip().yaw(), withinPercentage(7));
        assertThat(d[0].yawRate().yaw()).isCloseTo(d[1].yawRate().yaw(), withinPercentage(5));
    }
}
