package org.sawfly.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;

class TrimTest {
    private static final PlateGlider GLIDER = new PlateGlider(0.01);
    private static final double MASS = 0.24;
    private static final Trim TRIM = new Trim(GLIDER, MASS, AirBodies.sample());

    @Test
    void forcesAndMomentsVanish() {
        for (double speed = 5.5; speed < 27; speed += 1.3) {
            Glide glide = TRIM.atSpeed(0.03, speed);
            Motion motion = new Motion();
            Loads loads = new Loads();
            glide.fill(AirBodies.sample(), motion);
            AeroEvaluator evaluator = GLIDER.evaluator();
            evaluator.evaluate(motion, loads);
            assertThat(loads.fx + MASS * motion.gx).isCloseTo(0, within(1e-11));
            assertThat(loads.fz + MASS * motion.gz).isCloseTo(0, within(1e-11));
            assertThat(loads.my).isCloseTo(0, within(1e-11));
            assertThat(motion.downwashLag).isEqualTo(evaluator.settledDownwash(motion));
            assertThat(glide.ratio()).isCloseTo(-1 / Math.tan(glide.pathAngle()), within(1e-9));
            assertThat(glide.speed()).isEqualTo(speed);
        }
    }

    /** The equations of motion see a trimmed glide as steady and straight. */
    @Test
    void trimmedGlideGoesOnAsItIs() {
        Glide glide = TRIM.atLift(0.02, 0.6);
        double[] state = AirBodies.state(
                0,
                glide.noseElevation(),
                0,
                glide.speed() * Math.cos(glide.alpha()),
                0,
                glide.speed() * Math.sin(glide.alpha()));
        state[StateLayout.DOWNWASH_LAG] = glide.downwashLag();
        state[StateLayout.ELEVATOR] = glide.elevator();
        state[StateLayout.CAMBER] = glide.camber();
        RigidBody body = AirBodies.body(
                GLIDER, Axes.ALL, AirBodies.still(), new AirBodies.Fixed(glide.elevator(), glide.camber(), 0, 0));
        double[] start = state.clone();
        Adaptive.usual().run(body, 0, state, 3, List.of(), List.of());
        assertThat(-Kinematics.height(state)).isCloseTo(3 * glide.sink(), within(1e-6));
        for (int i = StateLayout.U; i < StateLayout.LOSSES; i++) {
            assertThat(state[i]).isCloseTo(start[i], within(1e-7));
        }
    }

    @Test
    void speedAndLiftCoefficientLeadToTheSameGlide() {
        Glide byLift = TRIM.atLift(0.05, 0.5);
        Glide bySpeed = TRIM.atSpeed(0.05, byLift.speed());
        assertThat(byLift.liftCoefficient()).isCloseTo(0.5, within(1e-11));
        assertThat(bySpeed.alpha()).isCloseTo(byLift.alpha(), within(1e-10));
        assertThat(bySpeed.elevator()).isCloseTo(byLift.elevator(), within(1e-10));
        assertThat(bySpeed.sink()).isCloseTo(byLift.sink(), within(1e-10));
    }

    @Test
    void fasterGlidesTakeLessAngleAndMoreElevatorDown() {
        Glide slow = TRIM.atSpeed(0, 7);
        Glide fast = TRIM.atSpeed(0, 14);
        assertThat(fast.alpha()).isLessThan(slow.alpha());
        assertThat(fast.elevator()).isGreaterThan(slow.elevator());
        assertThat(slow.sink()).isBetween(0.1, 1.0);
    }

    @Test
    void sweepsAreSmooth() {
        double[] sink = new double[60];
        for (int i = 0; i < sink.length; i++) {
            sink[i] = TRIM.atSpeed(0, 7 + 0.01 * i).sink();
        }
        for (int i = 3; i < sink.length; i++) {
            double third = sink[i] - 3 * sink[i - 1] + 3 * sink[i - 2] - sink[i - 3];
            assertThat(third).isCloseTo(0, within(1e-6));
            assertThat(Math.abs(third)).isLessThan(Math.abs(sink[i] - 2 * sink[i - 1] + sink[i - 2]) + 1e-10);
        }
    }

    @Test
    void saysWhyThereIsNoGlide() {
        assertThatThrownBy(() -> TRIM.atSpeed(0, 2))
                .isInstanceOfSatisfying(
                        NoTrimException.class,
                        e -> assertThat(e.reason())
                                .isIn(
                                        NoTrimException.Reason.NOT_ENOUGH_LIFT,
                                        NoTrimException.Reason.NOT_ENOUGH_ELEVATOR));
        assertThatThrownBy(() -> TRIM.atSpeed(0, 60))
                .isInstanceOfSatisfying(
                        NoTrimException.class, e -> assertThat(e.reason()).isEqualTo(NoTrimException.Reason.TOO_FAST));
        Trim heavyNose = new Trim(new PlateGlider(-0.30), MASS, AirBodies.sample());
        assertThatThrownBy(() -> heavyNose.atSpeed(0, 7))
                .isInstanceOfSatisfying(
                        NoTrimException.class,
                        e -> assertThat(e.reason()).isEqualTo(NoTrimException.Reason.NOT_ENOUGH_ELEVATOR));
        assertThatThrownBy(() -> TRIM.atSpeed(0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TRIM.atLift(0, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A small disturbance of the whole equations follows the matrices. */
    @Test
    void linearEquationsFollowTheWholeOnes() {
        Glide glide = TRIM.atLift(0, 0.5);
        Linear linear = Linear.around(MASS, AirBodies.inertia(), GLIDER, 1, AirBodies.sample(), glide);
        RigidBody body = AirBodies.body(
                GLIDER, Axes.ALL, AirBodies.still(), new AirBodies.Fixed(glide.elevator(), glide.camber(), 0, 0));
        double[] state = AirBodies.state(
                1e-4,
                glide.noseElevation() + 2e-4,
                0,
                glide.speed() * Math.cos(glide.alpha()) + 1e-3,
                -1e-3,
                glide.speed() * Math.sin(glide.alpha()) - 1e-3);
        state[StateLayout.DOWNWASH_LAG] = glide.downwashLag() + 1e-3;
        state[StateLayout.ELEVATOR] = glide.elevator();
        state[StateLayout.Q] = 2e-3;
        state[StateLayout.P] = -1e-3;
        state[StateLayout.R] = 3e-3;
        double[] longitudinal = {1e-3, -1e-3, 2e-3, 2e-4, 1e-3};
        double[] lateral = {-1e-3, -1e-3, 3e-3, 1e-4};
        Adaptive.of(1e-11).run(body, 0, state, 0.8, List.of(), List.of());
        new FixedStep(0.001, 100_000).run(linearly(linear.longitudinal()), 0, longitudinal, 0.8, List.of(), List.of());
        new FixedStep(0.001, 100_000).run(linearly(linear.lateral()), 0, lateral, 0.8, List.of(), List.of());
        assertThat(state[StateLayout.U] - glide.speed() * Math.cos(glide.alpha()))
                .isCloseTo(longitudinal[0], within(1e-6));
        assertThat(state[StateLayout.W] - glide.speed() * Math.sin(glide.alpha()))
                .isCloseTo(longitudinal[1], within(1e-6));
        assertThat(state[StateLayout.Q]).isCloseTo(longitudinal[2], within(1e-6));
        assertThat(state[StateLayout.V]).isCloseTo(lateral[0], within(1e-6));
        assertThat(state[StateLayout.P]).isCloseTo(lateral[1], within(1e-6));
        assertThat(state[StateLayout.R]).isCloseTo(lateral[2], within(1e-6));
        assertThat(Math.abs(lateral[0])).isGreaterThan(5e-5);
        assertThat(Math.abs(longitudinal[0])).isGreaterThan(5e-5);
    }

    private static Equations linearly(double[][] matrix) {
        return new Equations() {
            @Override
            public int size() {
                return matrix.length;
            }

            @Override
            public void derivatives(double t, double[] state, double[] rates) {
                for (int i = 0; i < matrix.length; i++) {
                    double sum = 0;
                    for (int k = 0; k < matrix.length; k++) {
                        sum += matrix[i][k] * state[k];
                    }
                    rates[i] = sum;
                }
            }
        };
    }
}
