package org.sawfly.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sawfly.motion.AirBodies.FREE;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.air.Atmosphere;
import org.sawfly.air.Wind;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quaternion;

class RigidBodyTest {
    private static final PlateGlider GLIDER = new PlateGlider(0.01);

    /** A release: 33 m/s, nose up 0.7 rad, heading 0.3 rad, yawed and turning. */
    private static double[] release(double beta, double r) {
        double[] state = AirBodies.state(0, 0.7, 0.3, 33 * Math.cos(beta), 33 * Math.sin(beta), 0.5);
        state[StateLayout.R] = r;
        return state;
    }

    private static double[] fly(RigidBody body, double[] start, double time, double tolerance) {
        double[] state = start.clone();
        body.settle(0, state);
        Adaptive.of(tolerance).run(body, 0, state, time, List.of(), List.of());
        return state;
    }

    @Test
    void torqueFreeBodyKeepsAngularMomentumAndEnergy() {
        Inertia inertia = new Inertia(0.012, 0.010, 0.021, 0.001, -0.0006, 0.0004);
        RigidBody body = new RigidBody(
                0.24,
                inertia,
                new AirBodies.ConstantAreas(0, 0),
                1,
                Axes.ALL,
                (height, sample) -> sample.density = 1,
                FREE);
        double[] state = AirBodies.state(0.1, 0.7, 0.3, 0, 0, 0);
        state[StateLayout.R] = -6;
        state[StateLayout.P] = 4;
        state[StateLayout.Q] = 2;
        double[] before = momentum(inertia, state);
        double energy = body.energy(0, state);
        double[] end = state.clone();
        Integrator integrator = Adaptive.of(1e-12);
        for (int second = 0; second < 30; second++) {
            integrator.run(body, second, end, second + 1, List.of(), List.of());
        }
        double[] after = momentum(inertia, end);
        for (int i = 0; i < 3; i++) {
            assertThat(after[i]).isCloseTo(before[i], within(1e-9));
        }
        assertThat(body.energy(30, end)).isCloseTo(energy, within(1e-9 * energy));
        assertThat(end[StateLayout.ATTITUDE]).isNotCloseTo(state[StateLayout.ATTITUDE], within(1e-3));
    }

    private static double[] momentum(Inertia inertia, double[] state) {
        double p = state[StateLayout.P];
        double q = state[StateLayout.Q];
        double r = state[StateLayout.R];
        double x = inertia.ixx() * p - inertia.ixy() * q - inertia.ixz() * r;
        double y = -inertia.ixy() * p + inertia.iyy() * q - inertia.iyz() * r;
        double z = -inertia.ixz() * p - inertia.iyz() * q + inertia.izz() * r;
        double[] rotation = new double[9];
        Kinematics.rotation(state, rotation);
        double[] earth = new double[3];
        for (int i = 0; i < 3; i++) {
            earth[i] = rotation[3 * i] * x + rotation[3 * i + 1] * y + rotation[3 * i + 2] * z;
        }
        return earth;
    }

    @Test
    void symmetricFlightIsTheSameWithAnyAxes() {
        double[] start = release(0, 0);
        double[] all = fly(AirBodies.body(GLIDER, Axes.ALL, AirBodies.still(), FREE), start, 1.5, 1e-9);
        double[] yaw = fly(AirBodies.body(GLIDER, Axes.PITCH_YAW, AirBodies.still(), FREE), start, 1.5, 1e-9);
        double[] pitch = fly(AirBodies.body(GLIDER, Axes.PITCH, AirBodies.still(), FREE), start, 1.5, 1e-9);
        assertThat(Kinematics.height(all)).isGreaterThan(10);
        assertThat(yaw).containsExactly(all, within(1e-9));
        assertThat(pitch).containsExactly(all, within(1e-9));
    }

    /** In {@code ALL} with the moment that holds the prescribed rolling, everything moves as in {@code PITCH_YAW}. */
    @Test
    void prescribedRollIsTheWholeBodyWithAHoldingMoment() {
        WithRollMoment model = new WithRollMoment();
        Controls controls = new AirBodies.Levelling();
        RigidBody held = AirBodies.body(GLIDER, Axes.PITCH_YAW, AirBodies.sheared(), controls);
        RigidBody free = AirBodies.body(model, Axes.ALL, AirBodies.sheared(), controls);
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            double[] state = AirBodies.state(random.nextGaussian(), random.nextGaussian(), 0.3, 20, 3, 1);
            for (int k = StateLayout.V; k <= StateLayout.W; k++) {
                state[k] += random.nextGaussian();
            }
            state[StateLayout.Q] = random.nextGaussian();
            state[StateLayout.R] = 5 * random.nextGaussian();
            held.settle(0, state);
            double[] wanted = new double[StateLayout.SIZE];
            double[] rates = new double[StateLayout.SIZE];
            held.derivatives(0, state, wanted);
            model.moment = 0;
            free.derivatives(0, state, rates);
            double without = rates[StateLayout.P];
            model.moment = 1;
            free.derivatives(0, state, rates);
            model.moment = (wanted[StateLayout.P] - without) / (rates[StateLayout.P] - without);
            free.derivatives(0, state, rates);
            rates[StateLayout.ROLL_HOLD] = -model.moment * state[StateLayout.P];
            assertThat(rates).containsExactly(wanted, within(1e-9));
            assertThat(wanted[StateLayout.P]).isCloseTo(slopeOfRollRate(controls, state, wanted), within(1e-6));
        }
    }

    private static double slopeOfRollRate(Controls controls, double[] state, double[] rates) {
        double h = 1e-6;
        double[] moved = state.clone();
        for (int i = 0; i < state.length; i++) {
            moved[i] = state[i] + h * rates[i];
        }
        double above = controls.rollRate(h, moved);
        for (int i = 0; i < state.length; i++) {
            moved[i] = state[i] - h * rates[i];
        }
        return (above - controls.rollRate(-h, moved)) / (2 * h);
    }

    private static final class WithRollMoment implements AeroModel {
        private double moment;

        @Override
        public AeroEvaluator evaluator() {
            AeroEvaluator inner = GLIDER.evaluator();
            return new AeroEvaluator() {
                @Override
                public void evaluate(Motion motion, Loads loads) {
                    inner.evaluate(motion, loads);
                    loads.mx += moment;
                }

                @Override
                public double settledDownwash(Motion motion) {
                    return inner.settledDownwash(motion);
                }
            };
        }

        @Override
        public Reference reference() {
            return GLIDER.reference();
        }

        @Override
        public double[][] apparentMass() {
            return GLIDER.apparentMass();
        }
    }

    @ParameterizedTest
    @EnumSource(Axes.class)
    void energyLedgerCloses(Axes axes) {
        RigidBody body = AirBodies.body(GLIDER, axes, AirBodies.sheared(), new AirBodies.Levelling());
        double[] start = axes == Axes.PITCH ? release(0, 0) : release(-0.1, -6);
        if (axes == Axes.ALL) {
            start[StateLayout.P] = 3;
        }
        body.settle(0, start);
        double energy = body.energy(0, start);
        for (double tolerance : new double[] {1e-6, 1e-11}) {
            double[] end = fly(body, start, 5, tolerance);
            double fallen = energy - body.energy(5, end);
            assertThat(fallen).isGreaterThan(20);
            assertThat(RigidBody.energyLost(end)).isCloseTo(fallen, within(100 * tolerance * energy));
            assertThat(Math.abs(end[StateLayout.WIND])).isGreaterThan(1);
            if (axes == Axes.PITCH_YAW) {
                assertThat(Math.abs(end[StateLayout.ROLL_HOLD])).isGreaterThan(1e-3);
            }
        }
    }

    @Test
    void steadyWindOnlyCarriesTheFlightAlong() {
        Surroundings wind = (height, sample) -> {
            AirBodies.still().at(height, sample);
            sample.windNorth = -4;
            sample.windEast = 2;
        };
        double[] start = release(-0.1, -6);
        double[] rotation = new double[9];
        Kinematics.rotation(start, rotation);
        double[] carried = start.clone();
        for (int i = 0; i < 3; i++) {
            carried[StateLayout.U + i] += rotation[i] * -4 + rotation[3 + i] * 2;
        }
        double[] still = fly(AirBodies.body(GLIDER, Axes.ALL, AirBodies.still(), FREE), start, 3, 1e-11);
        double[] windy = fly(AirBodies.body(GLIDER, Axes.ALL, wind, FREE), carried, 3, 1e-11);
        assertThat(windy[StateLayout.NORTH] + 12).isCloseTo(still[StateLayout.NORTH], within(1e-7));
        assertThat(windy[StateLayout.EAST] - 6).isCloseTo(still[StateLayout.EAST], within(1e-7));
        assertThat(windy[StateLayout.DOWN]).isCloseTo(still[StateLayout.DOWN], within(1e-7));
        for (int i = 0; i < 4; i++) {
            assertThat(windy[StateLayout.ATTITUDE + i]).isCloseTo(still[StateLayout.ATTITUDE + i], within(1e-8));
        }
    }

    /** Mirrored in the plane of symmetry: east, v, the first and third part of the attitude's axis, p, r, aileron, rudder. */
    @ParameterizedTest
    @EnumSource(
            value = Axes.class,
            names = {"PITCH_YAW", "ALL"})
    void mirroredFlightsMirror(Axes axes) {
        Controls right = new AirBodies.Fixed(-0.02, 0.01, 0.03, 0.05);
        Controls left = new AirBodies.Fixed(-0.02, 0.01, -0.03, -0.05);
        double[] start = release(-0.1, -6);
        double[] end = fly(AirBodies.body(GLIDER, axes, AirBodies.still(), right), start, 3, 1e-8);
        double[] mirrored = fly(AirBodies.body(GLIDER, axes, AirBodies.still(), left), mirror(start), 3, 1e-8);
        assertThat(Math.abs(end[StateLayout.EAST])).isGreaterThan(0.5);
        assertThat(mirrored).containsExactly(mirror(end), within(1e-9));
    }

    private static double[] mirror(double[] state) {
        double[] mirrored = state.clone();
        int[] odd = {
            StateLayout.EAST,
            StateLayout.V,
            StateLayout.ATTITUDE + 1,
            StateLayout.ATTITUDE + 3,
            StateLayout.P,
            StateLayout.R,
            StateLayout.AILERON,
            StateLayout.RUDDER
        };
        for (int i : odd) {
            mirrored[i] = -state[i];
        }
        return mirrored;
    }

    @Test
    void signsAreAsSaid() {
        double[] rates = new double[StateLayout.SIZE];
        double[] state = AirBodies.state(0, 0, 0, 10, 0, 0);
        RigidBody body = AirBodies.body(GLIDER, Axes.ALL, AirBodies.still(), FREE);
        state[StateLayout.ELEVATOR] = 0.1;
        body.derivatives(0, state, rates);
        double down = rates[StateLayout.Q];
        state[StateLayout.ELEVATOR] = -0.1;
        body.derivatives(0, state, rates);
        assertThat(rates[StateLayout.Q]).as("elevator up turns the nose up").isGreaterThan(down);
        state[StateLayout.RUDDER] = 0.1;
        body.derivatives(0, state, rates);
        assertThat(rates[StateLayout.R]).as("rudder left turns the nose left").isNegative();
        state[StateLayout.RUDDER] = 0;
        state[StateLayout.AILERON] = 0.1;
        body.derivatives(0, state, rates);
        assertThat(rates[StateLayout.P]).as("aileron right rolls right").isPositive();
        state[StateLayout.AILERON] = 0;
        state[StateLayout.V] = 1;
        assertThat(Kinematics.beta(body.motionAt(0, state)))
                .as("wind from the right")
                .isPositive();
        body.derivatives(0, state, rates);
        assertThat(rates[StateLayout.R]).as("the fin turns the nose into it").isPositive();
        state[StateLayout.W] = 1;
        assertThat(Kinematics.alpha(body.motionAt(0, state)))
                .as("wind from below")
                .isPositive();
    }

    @Test
    void noseElevationRunsThroughTheVertical() {
        double[] rotation = new double[9];
        double heading = 0.6;
        for (double nose : new double[] {-0.5, 0, 1, 1.5, 1.7, 2.5}) {
            double[] q = new double[4];
            boolean over = nose > Math.PI / 2;
            Quaternion.fromAngles(
                    over ? Math.PI : 0, over ? Math.PI - nose : nose, over ? heading + Math.PI : heading, q, 0);
            Quaternion.toMatrix(q, 0, rotation);
            assertThat(Kinematics.noseElevation(rotation, heading, 0)).isCloseTo(nose, within(1e-12));
            double whateverHeading = over ? Math.PI - nose : nose;
            assertThat(Kinematics.noseElevation(rotation, 2.1, 1)).isCloseTo(whateverHeading, within(1e-12));
        }
    }

    @Test
    void noseElevationAcrossTheThrowIsFreeOfItsPlane() {
        double[] rotation = new double[9];
        double[] q = new double[4];
        Quaternion.fromAngles(0.4, -0.05, 0.5 * Math.PI, q, 0);
        Quaternion.toMatrix(q, 0, rotation);
        assertThat(Kinematics.noseElevation(rotation, 0, 0))
                .as("straight down in the plane of the throw")
                .isCloseTo(-0.5 * Math.PI, within(1e-12));
        assertThat(Kinematics.noseElevation(rotation, 0, 1)).isCloseTo(-0.05, within(1e-12));
    }

    @Test
    void bodyAtRestOnTheGroundOfSpaceShowsOneG() {
        RigidBody body = AirBodies.body(GLIDER, Axes.ALL, AirBodies.still(), FREE);
        double[] state = AirBodies.state(0.2, 0.3, 0, 0, 0, 0);
        double[] rates = new double[StateLayout.SIZE];
        double[] force = new double[3];
        body.specificForce(0, state, rates, force);
        assertThat(Math.sqrt(force[0] * force[0] + force[1] * force[1] + force[2] * force[2]))
                .isCloseTo(AirBodies.GRAVITY, within(1e-12));
        assertThat(force[2]).as("held up: upwards").isNegative();
    }

    @Test
    void fieldsAirIsTheAtmosphereWithItsWind() {
        AirSample sample = new AirSample();
        FieldAir field = new FieldAir(Atmosphere.STANDARD, new Wind(4, 0.2), Math.PI / 2, 300);
        field.at(10, sample);
        assertThat(sample.density).isEqualTo(Atmosphere.STANDARD.density(310));
        assertThat(sample.kinematicViscosity).isCloseTo(Atmosphere.STANDARD.kinematicViscosity(310), within(1e-18));
        assertThat(sample.windEast).isCloseTo(4, within(1e-12));
        assertThat(sample.windNorth).isCloseTo(0, within(1e-12));
        double before = sample.windEastPerHeight;
        field.at(10.001, sample);
        double above = sample.windEast;
        field.at(9.999, sample);
        assertThat(before).isCloseTo((above - sample.windEast) / 0.002, within(1e-6));
        field.at(Double.NaN, sample);
        field.at(1e9, sample);
        assertThat(sample.density).isPositive();
        assertThat(field.apparentDensity()).isCloseTo(0.9714, within(1e-3));
    }

    @Test
    void evaluatingAllocatesNothing() {
        Surroundings field = new FieldAir(Atmosphere.STANDARD, new Wind(3, 0.14), 0.5, 200);
        RigidBody body = AirBodies.body(new AirBodies.ConstantAreas(0.002, 0.05), Axes.PITCH_YAW, field, FREE);
        double[] state = release(-0.1, -6);
        double[] rates = new double[StateLayout.SIZE];
        com.sun.management.ThreadMXBean threads =
                (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 5; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int i = 0; i < 10_000; i++) {
                body.derivatives(0, state, rates);
            }
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(least).isLessThan(10_000);
    }
}
