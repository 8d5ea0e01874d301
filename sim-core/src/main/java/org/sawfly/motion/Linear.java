package org.sawfly.motion;

import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Motion;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quaternion;

/**
 * The flown equations made linear around a steady glide, by central differences of {@link RigidBody} with all axes free,
 * controls held and the air as at one height. Row i, column k: how fast number i changes per number k.
 *
 * @param longitudinal of u [m/s], w [m/s], q [rad/s], nose elevation [rad], lagged downwash [m/s]
 * @param lateral of v [m/s], p [rad/s], r [rad/s], bank [rad]
 */
public record Linear(double[][] longitudinal, double[][] lateral) {
    private static final int NOSE = 100, BANK = 101;
    private static final int[] LONGITUDINAL = {
        StateLayout.U, StateLayout.W, StateLayout.Q, NOSE, StateLayout.DOWNWASH_LAG
    };
    private static final int[] LATERAL = {StateLayout.V, StateLayout.P, StateLayout.R, BANK};
    private static final double DIFFERENCE = 1e-4;

    /**
     * Around a glide.
     *
     * @param mass [kg]
     * @param inertia about the CG
     * @param model what the air does
     * @param apparentDensity as for {@link RigidBody}
     * @param air in which the glide was trimmed
     * @param glide the glide
     */
    public static Linear around(
            double mass, Inertia inertia, AeroModel model, double apparentDensity, AirSample air, Glide glide) {
        RigidBody body = new RigidBody(
                mass,
                inertia,
                model,
                apparentDensity,
                Axes.ALL,
                (height, sample) -> {
                    sample.density = air.density;
                    sample.kinematicViscosity = air.kinematicViscosity;
                    sample.gravity = air.gravity;
                },
                new Held(glide));
        return new Linear(matrix(body, glide, LONGITUDINAL), matrix(body, glide, LATERAL));
    }

    private static double[][] matrix(RigidBody body, Glide glide, int[] numbers) {
        double[][] matrix = new double[numbers.length][numbers.length];
        for (int k = 0; k < numbers.length; k++) {
            double[] above = rates(body, glide, numbers, numbers[k], DIFFERENCE);
            double[] below = rates(body, glide, numbers, numbers[k], -DIFFERENCE);
            for (int i = 0; i < numbers.length; i++) {
                matrix[i][k] = (above[i] - below[i]) / (2 * DIFFERENCE);
            }
        }
        return matrix;
    }

    private static double[] rates(RigidBody body, Glide glide, int[] numbers, int moved, double by) {
        double[] state = new double[StateLayout.SIZE];
        state[StateLayout.U] = glide.speed() * Math.cos(glide.alpha());
        state[StateLayout.W] = glide.speed() * Math.sin(glide.alpha());
        state[StateLayout.DOWNWASH_LAG] = glide.downwashLag();
        state[StateLayout.ELEVATOR] = glide.elevator();
        state[StateLayout.CAMBER] = glide.camber();
        double nose = glide.noseElevation() + (moved == NOSE ? by : 0);
        double bank = moved == BANK ? by : 0;
        if (moved < StateLayout.SIZE) {
            state[moved] += by;
        }
        Quaternion.fromAngles(bank, nose, 0, state, StateLayout.ATTITUDE);
        double[] rates = new double[StateLayout.SIZE];
        body.derivatives(0, state, rates);
        double p = state[StateLayout.P];
        double q = state[StateLayout.Q];
        double r = state[StateLayout.R];
        double[] out = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            out[i] = switch (numbers[i]) {
                case NOSE -> q * Math.cos(bank) - r * Math.sin(bank);
                case BANK -> p + Math.tan(nose) * (q * Math.sin(bank) + r * Math.cos(bank));
                default -> rates[numbers[i]];
            };
        }
        return out;
    }

    /** Servos held where the glide has them. */
    private record Held(Glide glide) implements Controls {
        @Override
        public void command(double t, double[] state, Motion motion, double[] commands) {
            commands[0] = glide.elevator();
            commands[1] = glide.camber();
            commands[2] = 0;
            commands[3] = 0;
        }
    }
}
