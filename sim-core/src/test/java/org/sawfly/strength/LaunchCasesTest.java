package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.aero.Corrections;
import org.sawfly.flight.Demo;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.LaunchLoads;
import org.sawfly.flight.RearLoads;
import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.Wing;
import org.sawfly.math.Vec3;
import org.sawfly.motion.Axes;

class LaunchCasesTest {
    private static final double FRONT = -0.118;
    private static final FlightPlan PLAN = Demo.plan(33, 8, Axes.PITCH_YAW);
    private static final LaunchCases CASES = LaunchCases.of(PLAN, LaunchCases.LETTING_GO);

    /** Bending moments a simpler hand calculation of such a glider gives; common practice, no source. */
    @Test
    void the_four_cases_have_their_signs_and_sizes() {
        double spin = CASES.at(LoadCase.SPIN, FRONT).right();
        double unloaded = CASES.at(LoadCase.SPIN_FIN_UNLOADED, FRONT).right();
        double release = CASES.at(LoadCase.RELEASE, FRONT).right();
        assertThat(spin).as("outward, the fin pulling inward").isBetween(3.0, 6.0);
        assertThat(unloaded).as("inertia alone").isBetween(7.5, 10.0);
        assertThat(release).as("rebound to the other side").isBetween(-10.0, -6.0);
        assertThat(CASES.at(LoadCase.PULL_UP, FRONT).up())
                .as("the tail is pressed down to raise the nose")
                .isNegative();
    }

    @Test
    void the_spin_is_the_release_solvers() {
        RearLoads spin = LaunchLoads.inSpin(PLAN);
        // 60 to 63 times gravity sideways in this spin: W^2 R, R = reach + distance of the CG from the peg
        double rate = spin.rates().norm();
        double radius = 30 / rate;
        double sideways =
                Math.hypot(spin.specificForce().x(), spin.specificForce().y());
        double gain = spin.turning().norm() / (rate * rate);
        assertThat(gain).isCloseTo(1 / (4 * Math.PI * 1.5), within(1e-12));
        assertThat(sideways).isCloseTo(rate * rate * radius * Math.hypot(1, gain), withinPercentage(0.1));
        assertThat(spin.specificForce().y())
                .as("to the left, towards the thrower")
                .isNegative();
        assertThat(spin.finForce()).as("the fin's lift points inward").isNegative();
    }

    @Test
    void inertia_alone_is_mass_times_acceleration() {
        RearLoads spin = LaunchLoads.inSpin(PLAN).finUnloaded();
        LoadedBoom boom = CASES.boom();
        double across = boom.at(FRONT, spin).across();
        double outward = -spin.specificForce().y();
        // all behind the pod accelerated like the CG, but for the growing of the spin, which takes a few per cent off
        assertThat(across / (boom.mass() * outward)).isBetween(0.95, 1.0);
    }

    @Test
    void free_after_release_means_that_forces_balance() {
        RearLoads free = LaunchLoads.letGo(PLAN);
        double mass = PLAN.craft().mass().mass();
        assertThat(Math.abs(free.specificForce().y()) * mass)
                .as("only the air pushes now")
                .isLessThan(2 * Math.abs(free.finForce()));
        assertThat(free.turning().z()).as("the fin brakes a left turn").isPositive();
    }

    @Test
    void a_harder_throw_loads_with_its_square() {
        BoomLoad soft = LaunchCases.of(Demo.plan(18, 8, Axes.PITCH_YAW), 0.01).at(LoadCase.SPIN_FIN_UNLOADED, FRONT);
        BoomLoad hard = LaunchCases.of(Demo.plan(33, 8, Axes.PITCH_YAW), 0.01).at(LoadCase.SPIN_FIN_UNLOADED, FRONT);
        // the run-up of 3 m/s does not turn
        assertThat(hard.right() / soft.right()).isCloseTo(Math.pow(30.0 / 15, 2), withinPercentage(2));
    }

    @Test
    void a_glider_let_go_at_rest_carries_its_weight_only() {
        FlightPlan drop = Demo.plan(0, 0, Axes.PITCH_YAW);
        LaunchCases cases = LaunchCases.of(drop, LaunchCases.LETTING_GO);
        BoomLoad held = cases.at(LoadCase.SPIN, FRONT);
        assertThat(held.right()).isCloseTo(0, within(1e-12));
        assertThat(held.lift()).isCloseTo(-9.80665 * cases.boom().mass(), within(1e-3));
        assertThat(ControlLoads.atRelease(drop).elevator()).isZero();
        assertThat(BoomStrength.of(cases).weakest().factor()).isGreaterThan(20);
    }

    @Test
    void hands_mirror() {
        Glider g = Demo.GLIDER;
        Wing w = g.wing();
        Wing other = new Wing(w.mass(), w.planform(), w.dihedral(), w.root(), w.tip(), w.flaperon(), Hand.LEFT);
        Glider left = new Glider(
                g.name(), other, g.tailplane(), g.fin(), g.boom(), g.pod(), g.parts(), g.noseLead(), g.correction());
        FlightPlan plan =
                Demo.plan(Demo.craft(left, Corrections.NONE), Demo.launch(Hand.LEFT, Demo.CALM), 33, 8, Axes.PITCH_YAW);
        LaunchCases mirrored = LaunchCases.of(plan, LaunchCases.LETTING_GO);
        for (LoadCase loadCase : LoadCase.values()) {
            BoomLoad a = CASES.at(loadCase, -0.3);
            BoomLoad b = mirrored.at(loadCase, -0.3);
            assertThat(b.right()).isCloseTo(-a.right(), within(1e-6));
            assertThat(b.up()).isCloseTo(a.up(), within(1e-6));
        }
    }

    /** An undamped oscillator whose load falls evenly to nothing in so many periods: integrated, largest value afterwards. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.33, 0.5, 0.8, 1.4})
    void overshoot_is_the_oscillators(double periods) {
        double omega = 2 * Math.PI;
        double x = 1;
        double v = 0;
        double step = 1e-4;
        double largest = 0;
        for (int i = 0; i * step < periods + 2; i++) {
            double t = i * step;
            double half = v + 0.5 * step * omega * omega * (load(t, periods) - x);
            x += step * half;
            v = half + 0.5 * step * omega * omega * (load(t + step, periods) - x);
            if (t > periods) {
                largest = Math.max(largest, -x);
            }
        }
        assertThat(BoomSwing.leftAfter(periods, 1)).isCloseTo(largest, within(1e-3));
    }

    private static double load(double t, double ramp) {
        return Math.max(0, 1 - t / ramp);
    }

    @Test
    void a_hand_that_opens_at_once_gives_the_full_rebound() {
        assertThat(BoomSwing.leftAfter(0, 1)).isEqualTo(1);
        double now = LaunchCases.of(PLAN, 0).at(LoadCase.RELEASE, FRONT).right();
        double slowly = LaunchCases.of(PLAN, 0.02).at(LoadCase.RELEASE, FRONT).right();
        assertThat(now).isLessThan(slowly);
        Vec3 still = LaunchLoads.letGo(PLAN).rates();
        assertThat(still.norm()).isCloseTo(LaunchLoads.inSpin(PLAN).rates().norm(), within(0.01));
    }
}
