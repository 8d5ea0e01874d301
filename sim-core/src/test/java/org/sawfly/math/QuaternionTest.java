package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class QuaternionTest {
    @Test
    void anglesSurviveTheWayThroughTheMatrix() {
        Random random = new Random(3);
        double[] q = new double[5];
        double[] matrix = new double[9];
        for (int i = 0; i < 100; i++) {
            double roll = 3.1 * (2 * random.nextDouble() - 1);
            double pitch = 1.5 * (2 * random.nextDouble() - 1);
            double yaw = 3.1 * (2 * random.nextDouble() - 1);
            Quaternion.fromAngles(roll, pitch, yaw, q, 1);
            for (int k = 1; k < 5; k++) {
                q[k] *= 1.7;
            }
            Quaternion.toMatrix(q, 1, matrix);
            assertThat(Quaternion.roll(matrix)).isCloseTo(roll, within(1e-12));
            assertThat(Quaternion.pitch(matrix)).isCloseTo(pitch, within(1e-12));
            assertThat(Quaternion.yaw(matrix)).isCloseTo(yaw, within(1e-12));
        }
    }

    @Test
    void noseUpPutsTheNoseUp() {
        double[] q = new double[4];
        double[] matrix = new double[9];
        Quaternion.fromAngles(0, 0.3, 0, q, 0);
        Quaternion.toMatrix(q, 0, matrix);
        assertThat(matrix[6]).as("the nose's part downwards").isCloseTo(-Math.sin(0.3), within(1e-15));
        Quaternion.fromAngles(0, 0, 0.3, q, 0);
        Quaternion.toMatrix(q, 0, matrix);
        assertThat(matrix[3]).as("the nose's part eastwards").isCloseTo(Math.sin(0.3), within(1e-15));
        Quaternion.fromAngles(0.3, 0, 0, q, 0);
        Quaternion.toMatrix(q, 0, matrix);
        assertThat(matrix[7]).as("the right wing's part downwards").isCloseTo(Math.sin(0.3), within(1e-15));
    }

    @Test
    void derivativeIsTheSlopeOfATurn() {
        double[] q = new double[4];
        double[] rate = new double[4];
        double[] above = new double[4];
        double h = 1e-6;
        Quaternion.fromAngles(0, 0.4, 0, q, 0);
        Quaternion.derivative(q, 0, 0, 1.5, 0, 0, rate);
        Quaternion.fromAngles(0, 0.4 + 1.5 * h, 0, above, 0);
        for (int i = 0; i < 4; i++) {
            assertThat(rate[i]).isCloseTo((above[i] - q[i]) / h, within(1e-5));
        }
    }

    @Test
    void restoringPullsTheLengthToOne() {
        double[] q = {1.1, 0, 0, 0};
        double[] rate = new double[4];
        Quaternion.derivative(q, 0, 0, 0, 0, 2, rate);
        assertThat(rate[0]).isNegative();
        Quaternion.normalise(q, 0);
        assertThat(q).containsExactly(1, 0, 0, 0);
    }
}
