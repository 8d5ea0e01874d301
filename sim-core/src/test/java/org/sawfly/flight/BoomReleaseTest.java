package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.ModelChoice;
import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.FieldAir;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;

/** The boom as the tip leaves the hand. */
class BoomReleaseTest {
    /** The tip slides off within this [s]. */
    private static final double SLIDES_OFF = 0.03;
    /** While it swings [s]. */
    private static final double SWINGS = 0.2;
    /** So soft that it is let go half bent: it swings about twice while the tip slides off else. */
    private static final Corrections SOFT = Corrections.NONE.withBoomStiffness(0.3);

    private static Craft craft(Glider glider, Corrections corrections) {
        return Craft.of(glider, corrections, Demo.MODELS, ModelChoice.STRIP, Demo.SETTINGS, Demo.CALM.ground());
    }

    /** Bent outward in the spin, where inertia asks more of it than the fin gives back; let go, it swings inward. */
    @ParameterizedTest
    @EnumSource(Hand.class)
    void let_go_it_swings_inward(Hand hand) {
        double outward = hand == Hand.RIGHT ? 1 : -1;
        Craft craft = craft(hand == Hand.RIGHT ? Demo.GLIDER : Mirror.of(Demo.GLIDER), SOFT);
        FlightPlan plan = Demo.plan(craft, Demo.launch(hand, Demo.CALM), 33, 0, Axes.PITCH_YAW);
        ReleaseSolver solver = new ReleaseSolver(craft, plan.launch(), Demo.CALM.ground());
        solver.solve(33, 33, 0, plan.presetElevator(), Pilot.presetCamber(craft, plan.launch()), 0, true);
        double spinning = outward * solver.bentRight();

        double frequency = craft.model().boomFrequency(BoomSwing.Plane.SIDE);
        double[] start = at(plan, 0);
        double begun = outward * start[StateLayout.BOOM_RIGHT];
        double free = outward * followed(plan, start);
        assertThat(spinning).isGreaterThan(Math.toRadians(1));
        assertThat(free).isLessThan(spinning - Math.toRadians(1));
        double left = BoomSwing.leftAfter(SLIDES_OFF, frequency);
        assertThat(left).isBetween(0.4, 0.8);
        assertThat(begun).isCloseTo(free + left * (spinning - free), within(1e-4));
        assertThat(start[StateLayout.BOOM_RIGHT_RATE]).isZero();
        double quarter = 0.25 / frequency;
        assertThat(outward * at(plan, quarter)[StateLayout.BOOM_RIGHT]).isLessThan(begun - 0.5 * (begun - free));
    }

    /**
     * Held by its tip the glider bends its boom outward, where inertia asks more of it than the fin gives back. That turns
     * the fin to the other side, it pushes the tail inward, and the nose settles further out; the softer the boom the more.
     */
    @ParameterizedTest
    @EnumSource(ModelChoice.class)
    void a_soft_boom_lets_the_nose_out(ModelChoice model) {
        double rigid = noseOutward(model, 1e6);
        double usual = noseOutward(model, 1);
        double soft = noseOutward(model, 0.5);
        assertThat(usual - rigid).isBetween(Math.toRadians(0.1), Math.toRadians(3));
        assertThat(soft - usual).isBetween(0.5 * (usual - rigid), Math.toRadians(3));
    }

    /** A release does not depend on the one that the same solver found before, however soft the boom. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.3})
    void a_release_knows_nothing_of_the_one_before(double stiffness) {
        Corrections corrections = Corrections.NONE.withBoomStiffness(stiffness);
        Craft craft = craft(Demo.GLIDER, corrections);
        Launch launch = Demo.launch(Hand.RIGHT, Demo.CALM);
        ReleaseSolver fresh = new ReleaseSolver(craft, launch, Demo.CALM.ground());
        ReleaseSolver used = new ReleaseSolver(craft, launch, Demo.CALM.ground());
        used.solve(45, 45, 20, -0.1, 0, 0.1, true);
        assertThat(used.solve(33, 33, 11, 0, 0, 0, true)).isEqualTo(fresh.solve(33, 33, 11, 0, 0, 0, true));
        assertThat(used.bentRight()).isEqualTo(fresh.bentRight());
    }

    private static double noseOutward(ModelChoice model, double stiffness) {
        Corrections corrections = Corrections.NONE.withBoomStiffness(stiffness);
        Craft craft = Craft.of(Demo.GLIDER, corrections, Demo.MODELS, model, Demo.SETTINGS, Demo.CALM.ground());
        FlightPlan plan = Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), 33, 0, Axes.PITCH_YAW);
        ReleaseSolver solver = new ReleaseSolver(craft, plan.launch(), Demo.CALM.ground());
        Release release = solver.solve(33, 33, 0, 0, Pilot.presetCamber(craft, plan.launch()), 0, true);
        return release.spin().noseOutward();
    }

    /** Slope of the boom if it followed its load at once [rad]. */
    private static double followed(FlightPlan plan, double[] state) {
        Craft craft = plan.craft();
        FieldAir field = Demo.CALM.field();
        RigidBody body = new RigidBody(
                craft.mass().mass(),
                craft.mass().inertia(),
                craft.model(),
                field.apparentDensity(),
                Axes.PITCH_YAW,
                field,
                new Pilot(craft, plan.launch(), plan.presetElevator(), plan.axes(), plan.steering()));
        return body.loadsAt(0, state).boomRight;
    }

    private static double[] at(FlightPlan plan, double time) {
        double[] found = new double[StateLayout.SIZE];
        Flight.watch(plan, step -> {
            if (step.start() <= time && time <= step.end()) {
                step.at(time, found);
            }
        });
        return found;
    }

    /** The quick swing up and down has died away, whatever steps the integrator takes. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20})
    void the_integrator_does_not_shake_it(double yawRate) {
        Craft craft = craft(Demo.GLIDER, Corrections.NONE);
        FlightPlan plan = Demo.plan(craft, Demo.launch(Hand.RIGHT, Demo.CALM), 33, yawRate, Axes.PITCH_YAW);
        FlightPlan fine = new FlightPlan(
                craft,
                plan.launch(),
                33,
                yawRate,
                plan.presetElevator(),
                plan.axes(),
                plan.steering(),
                () -> Adaptive.of(1e-9));
        double slope = 0.1 / (2 * Math.PI * craft.model().boomFrequency(BoomSwing.Plane.VERTICAL));
        assertThat(slope).isLessThan(Math.toRadians(0.02));
        assertThat(shaking(plan)).isCloseTo(shaking(fine), within(0.1));
        assertThat(Flight.fly(plan).maxLoad()).isCloseTo(Flight.fly(fine).maxLoad(), within(0.02));
    }

    /** Greatest rate of the slope up and down in the second half of the swing [rad/s]. */
    private static double shaking(FlightPlan plan) {
        double[] greatest = {0};
        double[] state = new double[StateLayout.SIZE];
        Flight.watch(plan, step -> {
            if (step.start() >= 0.5 * SWINGS && step.end() <= SWINGS) {
                for (double share : List.of(0.25, 0.5, 0.75, 1.0)) {
                    step.at(step.start() + share * (step.end() - step.start()), state);
                    greatest[0] = Math.max(greatest[0], Math.abs(state[StateLayout.BOOM_UP_RATE]));
                }
            }
        });
        return greatest[0];
    }
}
