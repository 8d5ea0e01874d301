package org.sawfly.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IntegratorTest {
    /** A pendulum of full swing: x'' = -sin x. */
    private record Pendulum() implements Equations {
        @Override
        public int size() {
            return 2;
        }

        @Override
        public void derivatives(double t, double[] state, double[] rates) {
            rates[0] = state[1];
            rates[1] = -Math.sin(state[0]);
        }
    }

    /** x reaches a level. */
    private record Level(double level, Crossing crossing) implements StopEvent {
        @Override
        public double value(double t, double[] state) {
            return state[0] - level;
        }
    }

    private static Adaptive adaptive(double tolerance) {
        return new Adaptive(tolerance, new double[] {tolerance, tolerance}, 100_000);
    }

    private static Integrator integrator(String kind) {
        return kind.equals("adaptive") ? adaptive(1e-11) : new FixedStep(0.005, 100_000);
    }

    private static double[] exact(double t) {
        double[] state = {0.1, 1.5};
        adaptive(1e-13).run(new Pendulum(), 0, state, t, List.of(), List.of());
        return state;
    }

    @Test
    void takesTheStepsOfHipparchus() {
        double[] absolute = {1e-6, 1e-6};
        double[] relative = {1e-6, 1e-6};
        DormandPrince54Integrator theirs =
                new DormandPrince54Integrator(Adaptive.SMALLEST_STEP, Adaptive.LARGEST_STEP, absolute, relative);
        theirs.setInitialStepSize(1e-6);
        List<Double> ends = new ArrayList<>();
        theirs.addStepHandler(step -> ends.add(step.getCurrentState().getTime()));
        Pendulum pendulum = new Pendulum();
        double[] result = theirs.integrate(
                        new OrdinaryDifferentialEquation() {
                            @Override
                            public int getDimension() {
                                return 2;
                            }

                            @Override
                            public double[] computeDerivatives(double t, double[] y) {
                                double[] rates = new double[2];
                                pendulum.derivatives(t, y, rates);
                                return rates;
                            }
                        },
                        new ODEState(0, new double[] {1e-9, 1.5}),
                        10)
                .getPrimaryState();
        double[] state = {1e-9, 1.5};
        List<Double> ours = new ArrayList<>();
        Adaptive adaptive = new Adaptive(1e-6, absolute, 100_000);
        adaptive.startWith(1e-6);
        adaptive.run(pendulum, 0, state, 10, List.of(), List.of(step -> ours.add(step.end())));
        assertThat(ours).hasSameSizeAs(ends);
        for (int i = 0; i < ours.size(); i++) {
            assertThat(ours.get(i)).isCloseTo(ends.get(i), within(1e-6));
        }
        assertThat(adaptive.evaluations()).isEqualTo(theirs.getEvaluations());
        assertThat(state).containsExactly(result, within(1e-10));
    }

    @ParameterizedTest
    @ValueSource(strings = {"adaptive", "fixed"})
    void denseOutputLiesOnTheSolution(String kind) {
        double[] state = {0.1, 1.5};
        double[] seen = new double[2];
        double[] last = {0};
        int[] count = {0};
        integrator(kind).run(new Pendulum(), 0, state, 6, List.of(), List.of(step -> {
            assertThat(step.start()).isEqualTo(last[0]);
            last[0] = step.end();
            if (++count[0] % 10 != 0) {
                return;
            }
            for (double part : new double[] {0, 0.3, 0.7, 1}) {
                double t = step.start() + part * (step.end() - step.start());
                step.at(t, seen);
                assertThat(seen).containsExactly(exact(t), within(1e-9));
            }
        }));
        assertThat(last[0]).isEqualTo(6);
        assertThat(state).containsExactly(exact(6), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"adaptive", "fixed"})
    void stopsAtTheFirstRootInItsDirectionAndGoesOnFromThere(String kind) {
        Integrator integrator = integrator(kind);
        double[] state = {0.1, 1.5};
        List<StopEvent> stops =
                List.of(new Level(1.2, StopEvent.Crossing.FALLING), new Level(1.0, StopEvent.Crossing.RISING));
        List<Double> ends = new ArrayList<>();
        Stop first = integrator.run(new Pendulum(), 0, state, 20, stops, List.of(step -> ends.add(step.end())));
        assertThat(first.event()).isEqualTo(1);
        assertThat(state[0]).isCloseTo(1, within(1e-9)).isGreaterThanOrEqualTo(1);
        assertThat(exact(first.time())[0]).isCloseTo(1, within(1e-9));
        assertThat(ends.get(ends.size() - 1)).isEqualTo(first.time());
        Stop second = integrator.run(new Pendulum(), first.time(), state, 20, stops, List.of());
        assertThat(second.event()).isZero();
        assertThat(exact(second.time())[0]).isCloseTo(1.2, within(1e-9));
        assertThat(exact(second.time())[1]).isNegative();
        Stop third = integrator.run(new Pendulum(), second.time(), state, 20, stops, List.of());
        assertThat(third.event()).isEqualTo(1);
        Stop none = integrator.run(new Pendulum(), third.time(), state, third.time() + 0.1, stops, List.of());
        assertThat(none).isEqualTo(new Stop(third.time() + 0.1, Stop.AT_END));
    }

    @Test
    void fixedStepIsOfFourthOrder() {
        double[] errors = new double[2];
        for (int i = 0; i < 2; i++) {
            double[] state = {0.1, 1.5};
            new FixedStep(0.05 / (1 + i), 100_000).run(new Pendulum(), 0, state, 6, List.of(), List.of());
            errors[i] = Math.hypot(state[0] - exact(6)[0], state[1] - exact(6)[1]);
        }
        assertThat(errors[0] / errors[1]).isBetween(12.0, 20.0);
    }

    @Test
    void fixedStepAllocatesNothing() {
        FixedStep integrator = new FixedStep(0.01, 10_000_000);
        Pendulum pendulum = new Pendulum();
        double[] state = {0.1, 1.5};
        List<StopEvent> stops = List.of(new Level(9, StopEvent.Crossing.RISING));
        double[] seen = new double[2];
        List<StepWatcher> watchers = List.of(step -> step.at(step.start() + 0.001, seen));
        com.sun.management.ThreadMXBean threads =
                (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 5; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            integrator.run(pendulum, 0, state, 100, stops, watchers);
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(least).as("for 10 000 steps").isLessThan(10_000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"adaptive", "fixed"})
    void boundOnEvaluationsIsNamed(String kind) {
        Integrator integrator = kind.equals("adaptive")
                ? new Adaptive(1e-12, new double[] {1e-12, 1e-12}, 500)
                : new FixedStep(1e-4, 500);
        assertThatThrownBy(() -> integrator.run(new Pendulum(), 0, new double[] {0.1, 1.5}, 100, List.of(), List.of()))
                .isInstanceOfSatisfying(
                        IntegrationException.class,
                        e -> assertThat(e.reason()).isEqualTo(IntegrationException.Reason.TOO_MANY_EVALUATIONS));
    }

    /** x' = x^2 leaves the numbers at t = 1. */
    @ParameterizedTest
    @ValueSource(strings = {"adaptive", "fixed"})
    void motionThatLeavesTheNumbersIsNamed(String kind) {
        Equations explosion = new Equations() {
            @Override
            public int size() {
                return 2;
            }

            @Override
            public void derivatives(double t, double[] state, double[] rates) {
                Arrays.fill(rates, 0);
                rates[0] = state[0] * state[0];
            }
        };
        assertThatThrownBy(() -> integrator(kind).run(explosion, 0, new double[] {1, 0}, 5, List.of(), List.of()))
                .isInstanceOf(IntegrationException.class);
        assertThatThrownBy(() ->
                        integrator(kind).run(explosion, 0, new double[] {Double.NaN, 0}, 5, List.of(), List.of()))
                .isInstanceOfSatisfying(
                        IntegrationException.class,
                        e -> assertThat(e.reason()).isEqualTo(IntegrationException.Reason.NOT_FINITE));
    }
}
