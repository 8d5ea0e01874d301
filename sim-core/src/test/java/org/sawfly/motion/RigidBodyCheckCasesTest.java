package org.sawfly.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sawfly.motion.AirBodies.FREE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.air.Atmosphere;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quaternion;

/** Published rigid-body check cases (shared/reference/rigid-body, each with its source), flown by the glider's equations. */
class RigidBodyCheckCasesTest {
    /** Standard gravitational parameter and radius of the case's Earth. */
    private static final double EARTH_PARAMETER = 3.986004418e14;

    private static final double EARTH_RADIUS = 6371007.1809;
    private static final double SPHERE_MASS = 14.5939029;
    private static final double SLUG_FOOT_SQUARED = 1.3558179483314;

    private static double[][] table(String name) throws IOException {
        return Files.readAllLines(Path.of("../shared/reference/rigid-body", name)).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("time"))
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray(double[][]::new);
    }

    private static double[] start(double height) {
        double[] state = AirBodies.state(0, 0, 0, 0, 0, 0);
        state[StateLayout.DOWN] = -height;
        state[StateLayout.P] = Math.toRadians(10);
        state[StateLayout.Q] = Math.toRadians(20);
        state[StateLayout.R] = Math.toRadians(30);
        return state;
    }

    private static RigidBody sphere(boolean roundEarth) {
        Surroundings surroundings = (height, sample) -> {
            double radius = EARTH_RADIUS + height;
            sample.gravity = roundEarth ? EARTH_PARAMETER / (radius * radius) : 9.7921;
            sample.density = Atmosphere.STANDARD.density(height);
        };
        return new RigidBody(
                SPHERE_MASS,
                new Inertia(4.88, 4.88, 4.88, 0, 0, 0),
                new AirBodies.ConstantAreas(0.1 * 0.018241465, 0),
                1,
                Axes.ALL,
                surroundings,
                FREE);
    }

    @ParameterizedTest
    @CsvSource({"true, 1e-3, 1e-4", "false, 1.0, 0.12"})
    void sphereWithDragFallsAsPublished(boolean roundEarth, double heightTolerance, double speedTolerance)
            throws IOException {
        double[] rotation = new double[9];
        double[][] rows = table("sphere-with-drag.csv");
        assertThat(rows).hasNumberOfRows(31);
        RigidBody body = sphere(roundEarth);
        Integrator integrator = Adaptive.of(1e-10);
        double[] state = start(9144);
        for (int i = 1; i < rows.length; i++) {
            integrator.run(body, rows[i - 1][0], state, rows[i][0], List.of(), List.of());
            Kinematics.rotation(state, rotation);
            assertThat(Kinematics.height(state)).isCloseTo(rows[i][1], within(heightTolerance));
            assertThat(-Kinematics.climbRate(state, rotation)).isCloseTo(rows[i][2], within(speedTolerance));
        }
    }

    @Test
    void constantRatesTurnTheSphereAsPublished() throws IOException {
        double[] rotation = new double[9];
        RigidBody body = sphere(true);
        Integrator integrator = Adaptive.of(1e-12);
        double[] state = start(9144);
        double[][] rows = table("sphere-with-drag.csv");
        for (int i = 1; i < rows.length; i++) {
            integrator.run(body, rows[i - 1][0], state, rows[i][0], List.of(), List.of());
            Kinematics.rotation(state, rotation);
            assertThat(Math.toDegrees(Quaternion.roll(rotation))).isCloseTo(rows[i][3], within(1e-6));
            assertThat(Math.toDegrees(Quaternion.pitch(rotation))).isCloseTo(rows[i][4], within(1e-6));
            assertThat(Math.toDegrees(Quaternion.yaw(rotation))).isCloseTo(rows[i][5], within(1e-6));
        }
    }

    private static RigidBody brick() {
        return new RigidBody(
                2.2,
                new Inertia(
                        SLUG_FOOT_SQUARED * 0.001894220,
                        SLUG_FOOT_SQUARED * 0.006211019,
                        SLUG_FOOT_SQUARED * 0.007194665,
                        0,
                        0,
                        0),
                new AirBodies.ConstantAreas(0, 0),
                1,
                Axes.ALL,
                AirBodies.still(),
                FREE);
    }

    @Test
    void brickTumblesAsPublished() throws IOException {
        double[] rotation = new double[9];
        double[][] rates = table("tumbling-brick.csv");
        double[][] angles = table("tumbling-brick-attitude.csv");
        assertThat(rates).hasNumberOfRows(31);
        Integrator adaptive = Adaptive.of(1e-13);
        Integrator fixed = new FixedStep(0.01, 100_000);
        double[] state = start(9144);
        double[] fixedState = state.clone();
        for (int i = 1; i < rates.length; i++) {
            adaptive.run(brick(), rates[i - 1][0], state, rates[i][0], List.of(), List.of());
            fixed.run(brick(), rates[i - 1][0], fixedState, rates[i][0], List.of(), List.of());
            for (int k = 0; k < 3; k++) {
                double rate = Math.toDegrees(state[StateLayout.P + k]);
                assertThat(rate).isCloseTo(rates[i][1 + k], within(1e-6));
                assertThat(Math.toDegrees(fixedState[StateLayout.P + k])).isCloseTo(rate, within(1e-8));
            }
            Kinematics.rotation(state, rotation);
            assertThat(Math.toDegrees(Quaternion.roll(rotation))).isCloseTo(angles[i][1], within(1e-6));
            assertThat(Math.toDegrees(Quaternion.pitch(rotation))).isCloseTo(angles[i][2], within(1e-6));
            assertThat(Math.toDegrees(Quaternion.yaw(rotation))).isCloseTo(angles[i][3], within(1e-6));
        }
    }
}
