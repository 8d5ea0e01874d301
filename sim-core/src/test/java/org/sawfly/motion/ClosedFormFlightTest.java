package org.sawfly.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sawfly.motion.AirBodies.DENSITY;
import static org.sawfly.motion.AirBodies.FREE;
import static org.sawfly.motion.AirBodies.GRAVITY;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.math.Inertia;

/** Flights with an answer on paper: the vertical shot and the glider of constant lift coefficient. */
class ClosedFormFlightTest {
    private static final StopEvent TOP = new StopEvent() {
        private final double[] rotation = new double[9];

        @Override
        public double value(double t, double[] state) {
            Kinematics.rotation(state, rotation);
            return Kinematics.climbRate(state, rotation);
        }

        @Override
        public Crossing crossing() {
            return Crossing.FALLING;
        }
    };

    private static RigidBody body(double mass, double dragArea, double liftArea, Axes axes) {
        return new RigidBody(
                mass,
                new Inertia(0.01, 0.01, 0.02, 0, 0, 0),
                new AirBodies.ConstantAreas(dragArea, liftArea),
                1,
                axes,
                AirBodies.still(),
                FREE);
    }

    /** Closed form, drag growing with the square of the speed; the last two columns are its values, recomputed. */
    @ParameterizedTest
    @CsvSource({
        "33, 1.5707963267948966, PITCH, 37.0289, 2.57730",
        "33, 0.3, ALL, 37.0289, 2.57730",
        "30, 1.5707963267948966, PITCH, 32.3096, 2.42737"
    })
    void verticalShotReachesTheHeightOnPaper(double speed, double nose, Axes axes, double height, double time) {
        double terminal = Math.sqrt(2 * 0.25 * GRAVITY / (DENSITY * 0.0042));
        double paperHeight = terminal * terminal / (2 * GRAVITY) * Math.log(1 + speed * speed / (terminal * terminal));
        double paperTime = terminal / GRAVITY * Math.atan(speed / terminal);
        assertThat(terminal).isCloseTo(30.8711, within(1e-4));
        double[] state = AirBodies.state(0, nose, 0.4, speed * Math.sin(nose), 0, -speed * Math.cos(nose));
        Stop stop = Adaptive.of(1e-9).run(body(0.25, 0.0042, 0, axes), 0, state, 20, List.of(TOP), List.of());
        assertThat(stop.event()).isZero();
        assertThat(Kinematics.height(state))
                .isCloseTo(paperHeight, within(1e-5))
                .isCloseTo(height, within(1e-4));
        assertThat(stop.time()).isCloseTo(paperTime, within(1e-5)).isCloseTo(time, within(1e-5));
    }

    /**
     * Constant lift coefficient without drag (Lanchester, Aerodonetics, 1908; Zhukovskii, 1891), in units of the trimmed
     * speed and the trimmed speed over g. Values from memory of the closed form, recomputed.
     */
    @ParameterizedTest
    @CsvSource({"1.2, .884058, .260134, 5.986756, .329221", "1.5, .774609, .817398, 5.424808, .824990"})
    void gliderWithoutDragKeepsItsInvariants(double start, double v, double theta, double x, double z) {
        double mass = 0.24;
        double trimmed = 10;
        double liftArea = 2 * mass * GRAVITY / (DENSITY * trimmed * trimmed);
        double[] rotation = new double[9];
        double[] state = AirBodies.state(0, 0, 0, start * trimmed, 0, 0);
        double first = start * start * start - 3 * start;
        double second = start * start / 2;
        StepWatcher watcher = step -> {
            double[] seen = new double[StateLayout.SIZE];
            step.at(step.end(), seen);
            Kinematics.rotation(seen, rotation);
            double speed = Kinematics.groundSpeed(seen) / trimmed;
            double path = Kinematics.pathAngle(seen, rotation);
            double height = Kinematics.height(seen) * GRAVITY / (trimmed * trimmed);
            assertThat(speed * speed * speed - 3 * speed * Math.cos(path)).isCloseTo(first, within(1e-9));
            assertThat(speed * speed / 2 + height).isCloseTo(second, within(1e-9));
        };
        double end = 6 * trimmed / GRAVITY;
        Adaptive.of(1e-12).run(body(mass, 0, liftArea, Axes.PITCH), 0, state, end, List.of(), List.of(watcher));
        Kinematics.rotation(state, rotation);
        assertThat(Kinematics.groundSpeed(state) / trimmed).isCloseTo(v, within(1e-5));
        assertThat(Kinematics.pathAngle(state, rotation)).isCloseTo(theta, within(1e-5));
        assertThat(state[StateLayout.NORTH] * GRAVITY / (trimmed * trimmed)).isCloseTo(x, within(1e-5));
        assertThat(Kinematics.height(state) * GRAVITY / (trimmed * trimmed)).isCloseTo(z, within(1e-5));
    }

    /** Lanchester's period, pi sqrt(2) V/g: 4.5305 s at 10 m/s; between two tops. */
    @Test
    void smallSwingsHaveLanchestersPeriod() {
        double mass = 0.24;
        double liftArea = 2 * mass * GRAVITY / (DENSITY * 100);
        RigidBody body = body(mass, 0, liftArea, Axes.PITCH);
        Integrator integrator = Adaptive.of(1e-11);
        double[] state = AirBodies.state(0, 0, 0, 10.001, 0, 0);
        double first =
                integrator.run(body, 0, state, 20, List.of(TOP), List.of()).time();
        Stop second = integrator.run(body, first, state, 20, List.of(TOP), List.of());
        assertThat(second.time() - first).isCloseTo(4.5305, within(1e-4));
    }

    /**
     * Frequency sqrt(2) g/V. The damping ratio is 1/(sqrt(2) L/D) in level flight with a thrust along the path (Lanchester's
     * approximation as in Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, section 6.2). In a glide weight takes the place
     * of the thrust and turns against the path: V gamma' gains g sin(gamma0) gamma, the damping is half as much again.
     */
    @ParameterizedTest
    @CsvSource({"true, 1", "false, 1.5"})
    void dragDampsTheSwingsAsLanchesterSays(boolean level, double factor) {
        double mass = 0.24;
        double ratio = 20;
        double path = level ? 0 : -Math.atan(1 / ratio);
        double liftArea = 2 * mass * GRAVITY * Math.cos(path) / (DENSITY * 100);
        double thrust = level ? mass * GRAVITY / ratio : 0;
        Linear linear = Linear.around(
                mass,
                new Inertia(0.01, 0.01, 0.02, 0, 0, 0),
                new AirBodies.ConstantAreas(liftArea / ratio, liftArea, thrust),
                1,
                AirBodies.sample(),
                new Glide(10, 0.05, 0, 0, path, 0, 0, 0));
        double[][] a = linear.longitudinal();
        double frequency = Math.sqrt(a[0][0] * a[1][1] - a[0][1] * a[1][0]);
        double damping = factor / (Math.sqrt(2) * ratio);
        assertThat(frequency).isCloseTo(Math.sqrt(2) * GRAVITY / 10, within(0.003 * frequency));
        assertThat(-(a[0][0] + a[1][1]) / (2 * frequency)).isCloseTo(damping, within(0.01 * damping));
    }
}
