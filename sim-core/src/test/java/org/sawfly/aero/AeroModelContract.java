package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.section.Section;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

/** What every aerodynamic model keeps to. Signs come first: nose up and right positive. */
abstract class AeroModelContract {
    private static final long SEED = 20260117L;

    /** Makes the model that is tested. */
    interface Maker {
        AeroModel of(Glider glider, MassProperties mass, Corrections corrections, Models models);
    }

    /**
     * What is tested, of a glider whose sections stall.
     *
     * @param model of the whole glider
     * @param symmetric the same without anything that is on one side only, such as the peg
     */
    record Pair(AeroModel model, AeroModel symmetric) {
        static Pair of(Maker maker) {
            Models models = new Models();
            Glider glider = Plover.glider(table(-0.036), table(-0.033), table(0));
            MassProperties mass = MassProperties.of(glider);
            Corrections noBodies = Corrections.NONE.withDrag(new DragFactors(1, 1, 0, 1));
            return new Pair(maker.of(glider, mass, Corrections.NONE, models), maker.of(glider, mass, noBodies, models));
        }

        private static Section table(double zeroLift) {
            return SectionTable.of(new StallingSection(zeroLift), SectionGrid.usual(true));
        }
    }

    /** Made once for all tests of a model. */
    abstract Pair pair();

    private AeroModel model() {
        return pair().model();
    }

    private AeroModel symmetric() {
        return pair().symmetric();
    }

    /** Power may differ from force times velocity by rounding only, relative to the largest part. */
    private static final double ROUNDING = 1e-12;

    static Motion calm() {
        Motion m = new Motion();
        m.density = 1.225;
        m.kinematicViscosity = 1.46e-5;
        m.gz = 9.80665;
        return m;
    }

    private Loads at(Motion m) {
        return at(symmetric(), m);
    }

    private static Loads at(AeroModel model, Motion m) {
        Loads loads = new Loads();
        model.evaluator().evaluate(m, loads);
        return loads;
    }

    private Loads changed(Consumer<Motion> change) {
        Motion m = calm();
        m.u = 10;
        m.w = 0.3;
        change.accept(m);
        return at(m);
    }

    private Loads straight() {
        return changed(m -> {});
    }

    @Test
    void air_from_below_lifts_and_air_from_ahead_brakes() {
        assertThat(changed(m -> m.w += 0.3).fz).isLessThan(straight().fz);
        assertThat(straight().fx).isNegative();
    }

    @Test
    void turning_is_damped_about_every_axis() {
        assertThat(changed(m -> m.p = 1).mx).isNegative();
        assertThat(changed(m -> m.q = 1).my).isLessThan(straight().my);
        assertThat(changed(m -> m.r = 1).mz).isNegative();
    }

    @Test
    void wind_from_the_right_turns_the_nose_right_rolls_left_and_pushes_left() {
        Loads loads = changed(m -> m.v = 1);
        assertThat(loads.mz).isPositive();
        assertThat(loads.mx).isNegative();
        assertThat(loads.fy).isNegative();
    }

    @Test
    void yawing_right_rolls_right_because_the_left_half_is_faster() {
        assertThat(changed(m -> m.r = 1).mx).isPositive();
    }

    @Test
    void elevator_down_lifts_the_tail_and_lowers_the_nose() {
        Loads loads = changed(m -> m.elevator = 0.05);
        assertThat(loads.my).isLessThan(straight().my);
        assertThat(loads.fz).isLessThan(straight().fz);
    }

    @Test
    void rudder_left_turns_the_nose_left() {
        Loads loads = changed(m -> m.rudder = 0.1);
        assertThat(loads.mz).isNegative();
        assertThat(loads.fy).isPositive();
    }

    @Test
    void aileron_rolls_right_and_camber_lifts() {
        assertThat(changed(m -> m.aileron = 0.05).mx).isPositive();
        assertThat(changed(m -> m.camber = 0.05).fz).isLessThan(straight().fz);
    }

    @Test
    void downwash_at_the_tail_raises_the_nose() {
        assertThat(changed(m -> m.downwashLag = 0.3).my).isGreaterThan(straight().my);
    }

    @Test
    void downwash_settles_at_the_value_it_moves_towards() {
        Motion m = calm();
        m.u = 9;
        m.w = 0.4;
        AeroEvaluator evaluator = symmetric().evaluator();
        double settled = evaluator.settledDownwash(m);
        assertThat(settled).isPositive();
        Loads loads = new Loads();
        m.downwashLag = settled;
        evaluator.evaluate(m, loads);
        assertThat(loads.downwashLagRate).isZero();
        m.downwashLag = 0;
        evaluator.evaluate(m, loads);
        assertThat(loads.downwashLagRate).isPositive();
    }

    @Test
    void a_wake_that_goes_off_across_the_wing_misses_the_tail() {
        double attached = Math.abs(downwashAt(5));
        double begins = Math.abs(downwashAt(70));
        assertThat(begins).isGreaterThan(0.1 * attached);
        // S(2 cos 80 deg) = 0.23 is left of the wake there; without it more than half of what there is at 70 would be
        assertThat(Math.abs(downwashAt(80))).isLessThan(0.25 * begins);
        // no step where the tail begins to lead
        assertThat(downwashAt(89.99) - downwashAt(90.01)).isCloseTo(0, within(1e-4 * attached));
    }

    /** Settled downwash at 10 m/s [m/s]. */
    private double downwashAt(double degrees) {
        Motion m = calm();
        m.u = 10 * Math.cos(Math.toRadians(degrees));
        m.w = 10 * Math.sin(Math.toRadians(degrees));
        return symmetric().evaluator().settledDownwash(m);
    }

    @Test
    void no_wind_gives_no_force_and_finite_numbers() {
        Loads loads = at(calm());
        assertThat(new double[] {loads.fx, loads.fy, loads.fz, loads.mx, loads.my, loads.mz})
                .containsOnly(new double[] {0}, within(1e-9));
        assertThat(loads.downwashLagRate).isEqualTo(0, within(1e-9));
        assertThat(loads.boomUp).isFinite();
        assertThat(loads.boomRight).isFinite();
    }

    @Test
    void mirror_images_mirror() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            Motion m = random(random);
            Motion image = copy(m);
            image.v = -m.v;
            image.p = -m.p;
            image.r = -m.r;
            image.gy = -m.gy;
            image.aileron = -m.aileron;
            image.rudder = -m.rudder;
            Loads a = at(m);
            Loads b = at(image);
            double force = 1e-9 * (1 + Math.abs(a.fx) + Math.abs(a.fy) + Math.abs(a.fz));
            assertThat(b.fx).as("seed %d, case %d", SEED, i).isCloseTo(a.fx, within(force));
            assertThat(b.fy).isCloseTo(-a.fy, within(force));
            assertThat(b.fz).isCloseTo(a.fz, within(force));
            assertThat(b.mx).isCloseTo(-a.mx, within(force));
            assertThat(b.my).isCloseTo(a.my, within(force));
            assertThat(b.mz).isCloseTo(-a.mz, within(force));
            assertThat(b.boomRight).isCloseTo(-a.boomRight, within(force));
        }
    }

    @Test
    void powers_sum_to_what_the_force_takes_from_the_motion() {
        Random random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            Motion m = random(random);
            Loads l = at(model(), m);
            double sum = 0;
            double largest = 1;
            for (double power : l.power) {
                sum += power;
                largest = Math.max(largest, Math.abs(power));
            }
            double taken = -(l.fx * m.u + l.fy * m.v + l.fz * m.w + l.mx * m.p + l.my * m.q + l.mz * m.r);
            double scale = Math.max(
                    largest, Math.abs(l.fx * m.u) + Math.abs(l.fz * m.w) + Math.abs(l.mx * m.p) + Math.abs(l.mz * m.r));
            assertThat(sum).as("seed %d, case %d", SEED, i).isCloseTo(taken, within(ROUNDING * scale));
        }
    }

    @Test
    void section_drag_and_bodies_only_take_power_in_straight_flight() {
        Motion m = calm();
        m.u = 10;
        m.w = 0.3;
        Loads loads = at(model(), m);
        for (Loss loss : new Loss[] {Loss.WING_PROFILE, Loss.TAILPLANE_PROFILE, Loss.FIN_PROFILE, Loss.BODIES}) {
            assertThat(loads.power[loss.ordinal()]).as(loss.name()).isPositive();
        }
    }

    @Test
    void the_answer_does_not_depend_on_what_was_asked_before() {
        Random random = new Random(SEED);
        AeroModel model = model();
        AeroEvaluator used = model.evaluator();
        for (int i = 0; i < 200; i++) {
            Motion m = random(random);
            Loads a = new Loads();
            Loads b = new Loads();
            used.evaluate(m, a);
            model.evaluator().evaluate(m, b);
            assertThat(numbers(a)).as("seed %d, case %d", SEED, i).isEqualTo(numbers(b));
            used.settledDownwash(m);
        }
    }

    /** Every force changes by less than the step of the wind direction can explain, over two full circles of it. */
    @Test
    void forces_are_continuous_over_all_wind_directions() {
        double[][][] circles = {
            {{1, 0, 0}, {0, 0, 1}}, {{1, 0, 0}, {0, 1, 0}}, {{0, 1, 0}, {0, 0, 1}}, {{1, 0.3, 0}, {-0.2, 1, 0.1}}
        };
        for (double[][] circle : circles) {
            for (double turning : new double[] {0, 15}) {
                double coarse = largestStep(circle, turning, 7200);
                double fine = largestStep(circle, turning, 72000);
                assertThat(fine).isLessThan(0.3 * coarse);
            }
        }
    }

    private double largestStep(double[][] circle, double turning, int steps) {
        AeroEvaluator evaluator = model().evaluator();
        double largest = 0;
        double[] last = null;
        Loads loads = new Loads();
        for (int i = 0; i <= steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            Motion m = calm();
            m.u = 12 * (Math.cos(angle) * circle[0][0] + Math.sin(angle) * circle[1][0]);
            m.v = 12 * (Math.cos(angle) * circle[0][1] + Math.sin(angle) * circle[1][1]);
            m.w = 12 * (Math.cos(angle) * circle[0][2] + Math.sin(angle) * circle[1][2]);
            m.r = turning;
            evaluator.evaluate(m, loads);
            double[] now = numbers(loads);
            for (int k = 0; last != null && k < 6; k++) {
                largest = Math.max(largest, Math.abs(now[k] - last[k]));
            }
            last = now;
        }
        return largest;
    }

    @Test
    void spinning_on_the_spot_is_finite_and_continuous() {
        for (double r : new double[] {-20, -1e-6, 0, 1e-6, 20}) {
            Motion m = calm();
            m.r = r;
            assertThat(numbers(at(m))).doesNotContain(Double.NaN);
            Motion near = calm();
            near.r = r;
            near.u = 1e-7;
            near.w = -1e-7;
            assertThat(at(near).mz).isCloseTo(at(m).mz, within(1e-3));
            assertThat(at(near).fz).isCloseTo(at(m).fz, within(1e-3));
        }
    }

    @Test
    void the_apparent_mass_is_symmetric_and_positive() {
        double[][] a = model().apparentMass();
        for (int i = 0; i < 6; i++) {
            assertThat(a[i][i]).isGreaterThanOrEqualTo(0);
            for (int j = 0; j < 6; j++) {
                assertThat(a[i][j]).isCloseTo(a[j][i], within(1e-15));
            }
        }
    }

    @Test
    void evaluating_allocates_nothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        AeroEvaluator evaluator = model().evaluator();
        Loads loads = new Loads();
        Motion m = random(new Random(SEED));
        for (int i = 0; i < 20000; i++) {
            evaluator.evaluate(m, loads);
        }
        long self = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(self);
        for (int i = 0; i < 1000; i++) {
            m.w += 1e-3;
            evaluator.evaluate(m, loads);
            m.downwashLag = evaluator.settledDownwash(m);
        }
        assertThat(threads.getThreadAllocatedBytes(self) - before).isLessThan(1000);
    }

    static Motion random(Random random) {
        Motion m = calm();
        m.u = 25 * (random.nextDouble() * 1.6 - 0.6);
        m.v = 10 * (2 * random.nextDouble() - 1);
        m.w = 10 * (2 * random.nextDouble() - 1);
        m.p = 10 * (2 * random.nextDouble() - 1);
        m.q = 10 * (2 * random.nextDouble() - 1);
        m.r = 20 * (2 * random.nextDouble() - 1);
        m.gx = 9 * (2 * random.nextDouble() - 1);
        m.gy = 9 * (2 * random.nextDouble() - 1);
        m.elevator = 0.3 * (2 * random.nextDouble() - 1);
        m.camber = 0.2 * (2 * random.nextDouble() - 1);
        m.aileron = 0.2 * (2 * random.nextDouble() - 1);
        m.rudder = 0.3 * (2 * random.nextDouble() - 1);
        m.downwashLag = random.nextDouble();
        return m;
    }

    private static Motion copy(Motion m) {
        Motion c = calm();
        c.u = m.u;
        c.v = m.v;
        c.w = m.w;
        c.p = m.p;
        c.q = m.q;
        c.r = m.r;
        c.gx = m.gx;
        c.gy = m.gy;
        c.gz = m.gz;
        c.elevator = m.elevator;
        c.camber = m.camber;
        c.aileron = m.aileron;
        c.rudder = m.rudder;
        c.downwashLag = m.downwashLag;
        return c;
    }

    private static double[] numbers(Loads l) {
        return new double[] {
            l.fx, l.fy, l.fz, l.mx, l.my, l.mz, l.downwashLagRate, l.finAngle, l.wingAngle, l.boomUp, l.boomRight
        };
    }
}
