package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.BenchErrors;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.ModelChoice;
import org.sawfly.flight.Demo;
import org.sawfly.flight.Mirror;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.math.Vec3;
import org.sawfly.motion.Axes;

class ToleranceTest {
    private static final double DEGREE = Math.toRadians(1);
    private static final Workbench BENCH = new Workbench();
    private static final Scenario SCENARIO = new Scenario(
            Demo.GLIDER,
            Demo.GLIDER,
            Demo.GLIDER,
            new RebalanceRule(RebalanceRule.Keep.NOTHING, List.of(), Double.NaN),
            Demo.launch(Hand.RIGHT, Demo.CALM),
            Demo.SETTINGS,
            PresetRule.FROM_NEW_CRUISE,
            Corrections.NONE,
            Axes.PITCH_YAW);
    private static final Result SQUARE = BENCH.answer(SCENARIO);

    private static Tolerance of(BenchError error, double angle) {
        return Tolerance.of(BENCH, SCENARIO, SQUARE, error, angle);
    }

    @Test
    void no_error_costs_nothing() {
        Tolerance none = of(BenchError.FIN_SKEW, 0);
        assertThat(none.height()).isZero();
        assertThat(none.sink()).isZero();
        assertThat(none.elevatorDown()).isZero();
    }

    @Test
    void incidence_is_taken_up_by_the_elevator() {
        Tolerance half = of(BenchError.TAILPLANE_INCIDENCE, 0.5 * DEGREE);
        assertThat(half.elevatorDown())
                .as("tailplane nose up lifts the tail: elevator up")
                .isNegative();
        // theory of a 40 % flap: 1 deg of incidence is some 1.3 deg of flap, the half of that 0.3 mm over 29 mm; at a
        // Reynolds
        // number of 22 000 a flap works less
        assertThat(half.elevatorDown()).isLessThan(-0.0003);
        Scenario strips = SCENARIO.flown(SCENARIO.flying().by(ModelChoice.STRIP));
        Tolerance byStrips =
                Tolerance.of(BENCH, strips, BENCH.answer(strips), BenchError.TAILPLANE_INCIDENCE, 0.5 * DEGREE);
        assertThat(half.elevatorDown()).isCloseTo(byStrips.elevatorDown(), within(0.00002));
        assertThat(Math.abs(half.height())).isLessThan(0.5);
        assertThat(half.reading(Demo.GLIDER)).isCloseTo(0.072 * 0.5 * DEGREE, within(1e-12));
    }

    @Test
    void a_skewed_fin_costs_more_the_more_it_is_skewed() {
        double one = of(BenchError.FIN_SKEW, DEGREE).height();
        double three = of(BenchError.FIN_SKEW, 3 * DEGREE).height();
        assertThat(one).isNegative();
        assertThat(three).isLessThan(2 * one);
    }

    @Test
    void each_error_is_one_angle_and_has_a_length_for_the_ruler() {
        for (BenchError error : BenchError.values()) {
            assertThat(error.of(0)).isEqualTo(BenchErrors.NONE);
            if (error.isAngle()) {
                assertThat(error.of(0.01)).isNotEqualTo(BenchErrors.NONE);
                assertThat(error.length(Demo.GLIDER)).isBetween(0.05, 0.8);
                assertThat(error.on(Demo.GLIDER, 0.01)).isSameAs(Demo.GLIDER);
            } else {
                assertThat(error.of(0.01)).isEqualTo(BenchErrors.NONE);
            }
        }
        assertThat(BenchError.TAILPLANE_INCIDENCE.of(0.01).tailplaneIncidence()).isEqualTo(0.01);
        assertThat(BenchError.BOOM_SKEW.of(0.01).boomSkew()).isEqualTo(0.01);
    }

    @Test
    void a_balance_off_its_place_moves_the_cg_that_way() {
        Vec3 cg = MassProperties.of(Demo.GLIDER).cg();
        Vec3 back = MassProperties.of(BenchError.CG_BACK.on(Demo.GLIDER, 0.002)).cg();
        Vec3 right =
                MassProperties.of(BenchError.CG_RIGHT.on(Demo.GLIDER, 0.002)).cg();
        assertThat(back.x() - cg.x()).isCloseTo(-0.002, within(1e-9));
        assertThat(right.y() - cg.y()).isCloseTo(0.002, within(1e-9));
    }

    @Test
    void the_size_that_costs_so_much_costs_so_much() {
        Squareness square = new Squareness(BENCH, SCENARIO, SQUARE);
        List<Sensitivity> all = square.all(0.5, 0.01, 2);
        assertThat(all).extracting(Sensitivity::error).doesNotContain(BenchError.TAILPLANE_SKEW, BenchError.CG_RIGHT);
        assertThat(all).extracting(Sensitivity::heightReading).isSorted();
        for (Sensitivity one : all) {
            if (!Double.isInfinite(one.costsHeight())) {
                assertThat(-square.of(one.error(), one.costsHeight()).height())
                        .as(one.error().words())
                        .isCloseTo(0.5, within(0.05));
            }
            if (!Double.isInfinite(one.costsSink())) {
                assertThat(square.of(one.error(), one.costsSink()).sink() / square.sink())
                        .as(one.error().words())
                        .isCloseTo(0.01, within(0.002));
            }
        }
    }

    @Test
    void errors_send_the_launch_to_the_side_that_theory_names() {
        Map<BenchError, Astray> right = degrees(Hand.RIGHT);
        assertThat(right.get(BenchError.FIN_SKEW).heading())
                .as("fin nose right is pushed right by the air: nose goes left")
                .isNegative();
        assertThat(right.get(BenchError.BOOM_SKEW).heading()).isNegative();
        assertThat(right.get(BenchError.WING_TWIST).rolled())
                .as("more lift on the right rolls it left")
                .isNegative();
        assertThat(right.get(BenchError.CG_RIGHT).rolled()).isPositive();
        assertThat(right.get(BenchError.TAILPLANE_SKEW).heading()).isCloseTo(0, within(1e-3));
        Map<BenchError, Astray> left = degrees(Hand.LEFT);
        for (BenchError error : BenchError.values()) {
            boolean pitches = error == BenchError.TAILPLANE_INCIDENCE || error == BenchError.CG_BACK;
            double mirrored = pitches ? -1 : 1;
            assertThat(left.get(error).rolled())
                    .as(error.words())
                    .isCloseTo(mirrored * right.get(error).rolled(), within(1e-6));
            assertThat(left.get(error).heading())
                    .as(error.words())
                    .isCloseTo(mirrored * right.get(error).heading(), within(1e-6));
        }
    }

    private static Map<BenchError, Astray> degrees(Hand hand) {
        Glider glider = hand == Hand.RIGHT ? Demo.GLIDER : Mirror.of(Demo.GLIDER);
        Scenario thrown = new Scenario(
                glider,
                glider,
                glider,
                SCENARIO.rebalance(),
                Demo.launch(hand, Demo.CALM),
                Demo.SETTINGS,
                PresetRule.FROM_NEW_CRUISE,
                Corrections.NONE,
                Axes.PITCH_YAW);
        Map<BenchError, Astray> all = new EnumMap<>(BenchError.class);
        for (Straying one : Straying.all(BENCH, thrown, 2)) {
            all.put(one.error(), one.perDegree() == null ? one.perMillimetre() : one.perDegree());
        }
        return all;
    }
}
