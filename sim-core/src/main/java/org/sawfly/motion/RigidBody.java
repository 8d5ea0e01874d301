package org.sawfly.motion;

import java.util.Arrays;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Loss;
import org.sawfly.aero.Motion;
import org.sawfly.math.Inertia;
import org.sawfly.math.LinearSystem;
import org.sawfly.math.Quaternion;

/**
 * The equations of motion of a rigid glider over a flat earth, one a flight. Sources: Etkin and Reid, Dynamics of Flight,
 * 3rd ed. 1996, chapter 4; Stevens and Lewis, Aircraft Control and Simulation, 2nd ed. 2003, section 1.5.
 *
 * <pre>
 *   m (v' + omega x v)             = F + m g - A (xi_a')      v over the ground, body axes at the CG
 *   I omega' + omega x (I omega)   = M - A (xi_a') + hold
 * </pre>
 *
 * <p>A is the apparent mass. It multiplies the derivatives, taken in body axes, of the motion through the air
 * {@code xi_a = (v - R^T wind, omega)} and nothing else; gravity does not act on it. So the same flight in a steady wind
 * is the same flight, carried along. A stands for the density it was made with throughout one flight (over 60 m it would
 * change by 0.6 %), which keeps the energy of the carried air exact.
 *
 * <p>Locked axes: the block of the free axes of the mass matrix is inverted once and set among zeros, so that one
 * right-hand side serves all. With {@link Axes#PITCH_YAW} the roll rate and its derivative come from {@link Controls}; what
 * holds it is a moment about x whose work is an integral of the state.
 *
 * <p>The energy {@code m g h + 1/2 m v^2 + 1/2 omega I omega + 1/2 xi_a A xi_a} falls by the integrals of
 * {@link StateLayout}, which are summed apart from the motion and so test it.
 */
public final class RigidBody implements Equations {
    /** Pull of the quaternion's length towards one [1/s]. */
    private static final double RESTORING = 2;

    private static final int ROLL = 3;
    private static final int ORDER = 6;

    private final double mass;
    private final Inertia inertia;
    private final boolean rollPrescribed;
    private final Axes axes;
    private final AeroEvaluator aero;
    private final Surroundings surroundings;
    private final Controls controls;
    private final double[] apparent = new double[ORDER * ORDER];
    private final double[] total = new double[ORDER * ORDER];
    private final double[] inverse = new double[ORDER * ORDER];

    private final Motion motion = new Motion();
    private final Loads loads = new Loads();
    private final AirSample air = new AirSample();
    private final double[] rotation = new double[9];
    private final double[] push = new double[ORDER];
    private final double[] change = new double[ORDER];
    private final double[] commands = new double[StateLayout.SERVOS];
    /** What the loads of the last derivatives belong to: those at the end of a step are often asked for again. */
    private final double[] loadedState = new double[StateLayout.SIZE];

    private double loadedTime = Double.NaN;
    private boolean boomSwings;
    private final Loads asked = new Loads();
    private double windX;
    private double windY;
    private double windZ;

    /**
     * Made for one flight.
     *
     * @param mass [kg]
     * @param inertia about the CG
     * @param model what the air does
     * @param apparentDensity density the apparent mass stands for, over that of the standard at sea level [1]
     * @param axes which freedoms are flown
     * @param surroundings air, wind, gravity
     * @param controls what is asked of the servos and of the roll rate
     */
    public RigidBody(
            double mass,
            Inertia inertia,
            AeroModel model,
            double apparentDensity,
            Axes axes,
            Surroundings surroundings,
            Controls controls) {
        this.mass = mass;
        this.inertia = inertia;
        this.axes = axes;
        this.rollPrescribed = axes == Axes.PITCH_YAW;
        this.aero = model.evaluator();
        this.surroundings = surroundings;
        this.controls = controls;
        double[][] carried = model.apparentMass();
        double[][] matrix = {
            {mass, 0, 0, 0, 0, 0},
            {0, mass, 0, 0, 0, 0},
            {0, 0, mass, 0, 0, 0},
            {0, 0, 0, inertia.ixx(), -inertia.ixy(), -inertia.ixz()},
            {0, 0, 0, -inertia.ixy(), inertia.iyy(), -inertia.iyz()},
            {0, 0, 0, -inertia.ixz(), -inertia.iyz(), inertia.izz()}
        };
        for (int i = 0; i < ORDER; i++) {
            for (int k = 0; k < ORDER; k++) {
                apparent[ORDER * i + k] = apparentDensity * carried[i][k];
                matrix[i][k] += apparent[ORDER * i + k];
                total[ORDER * i + k] = matrix[i][k];
            }
        }
        boolean[] free =
                switch (axes) {
                    case PITCH -> new boolean[] {true, false, true, false, true, false};
                    case PITCH_YAW -> new boolean[] {true, true, true, false, true, true};
                    case ALL -> new boolean[] {true, true, true, true, true, true};
                };
        double[][] inverted = LinearSystem.inverseOfBlock(matrix, free);
        for (int i = 0; i < ORDER; i++) {
            System.arraycopy(inverted[i], 0, inverse, ORDER * i, ORDER);
        }
    }

    @Override
    public int size() {
        return StateLayout.SIZE;
    }

    @Override
    public void derivatives(double t, double[] state, double[] rates) {
        look(t, state);
        aero.evaluate(motion, loads);
        loadedTime = t;
        System.arraycopy(state, 0, loadedState, 0, loadedState.length);
        controls.command(t, state, motion, commands);
        double u = state[StateLayout.U];
        double v = state[StateLayout.V];
        double w = state[StateLayout.W];
        double p = motion.p;
        double q = motion.q;
        double r = motion.r;
        double[] a = rotation;
        double north = a[0] * u + a[1] * v + a[2] * w;
        double east = a[3] * u + a[4] * v + a[5] * w;
        double down = a[6] * u + a[7] * v + a[8] * w;

        // wind as seen from the body: its derivative in body axes is R^T (dW/dh h') - omega x W
        double gustNorth = -air.windNorthPerHeight * down;
        double gustEast = -air.windEastPerHeight * down;
        double driftX = q * windZ - r * windY - (a[0] * gustNorth + a[3] * gustEast);
        double driftY = r * windX - p * windZ - (a[1] * gustNorth + a[4] * gustEast);
        double driftZ = p * windY - q * windX - (a[2] * gustNorth + a[5] * gustEast);

        double momentumX = inertia.ixx() * p - inertia.ixy() * q - inertia.ixz() * r;
        double momentumY = -inertia.ixy() * p + inertia.iyy() * q - inertia.iyz() * r;
        double momentumZ = -inertia.ixz() * p - inertia.iyz() * q + inertia.izz() * r;
        push[0] = loads.fx + mass * (motion.gx - (q * w - r * v));
        push[1] = loads.fy + mass * (motion.gy - (r * u - p * w));
        push[2] = loads.fz + mass * (motion.gz - (p * v - q * u));
        push[3] = loads.mx - (q * momentumZ - r * momentumY);
        push[4] = loads.my - (r * momentumX - p * momentumZ);
        push[5] = loads.mz - (p * momentumY - q * momentumX);
        double rollAcceleration = rollPrescribed ? controls.rollAcceleration(t, state) : 0;
        for (int i = 0; i < ORDER; i++) {
            int row = ORDER * i;
            push[i] -= apparent[row] * driftX + apparent[row + 1] * driftY + apparent[row + 2] * driftZ;
            change[i] = push[i] - total[row + ROLL] * rollAcceleration;
        }
        multiply(inverse, change, rates);
        if (rollPrescribed) {
            rates[StateLayout.P] = rollAcceleration;
        }

        rates[StateLayout.NORTH] = north;
        rates[StateLayout.EAST] = east;
        rates[StateLayout.DOWN] = down;
        Quaternion.derivative(state, StateLayout.ATTITUDE, p, q, r, RESTORING, rates);
        rates[StateLayout.DOWNWASH_LAG] = loads.downwashLagRate;
        for (int i = 0; i < StateLayout.SERVOS; i++) {
            rates[StateLayout.ELEVATOR + i] = Servo.speed(state[StateLayout.ELEVATOR + i], commands[i]);
        }
        boomRates(state, rates);
        for (int i = 0; i < Loss.COUNT; i++) {
            rates[StateLayout.LOSSES + i] = loads.power[i];
        }
        rates[StateLayout.ROLL_HOLD] = rollPrescribed ? -holdingMoment(rates) * p : 0;
        rates[StateLayout.WIND] = -(windX * airForce(0, loads.fx, rates, driftX, driftY, driftZ)
                + windY * airForce(1, loads.fy, rates, driftX, driftY, driftZ)
                + windZ * airForce(2, loads.fz, rates, driftX, driftY, driftZ));
    }

    private void boomRates(double[] state, double[] rates) {
        rates[StateLayout.BOOM_UP] = boomSwings ? state[StateLayout.BOOM_UP_RATE] : 0;
        rates[StateLayout.BOOM_UP_RATE] = loads.boomUpAcceleration;
        rates[StateLayout.BOOM_RIGHT] = boomSwings ? state[StateLayout.BOOM_RIGHT_RATE] : 0;
        rates[StateLayout.BOOM_RIGHT_RATE] = loads.boomRightAcceleration;
    }

    /**
     * Lets the boom swing, or follow its load at once. To be called between runs; the state tells from where it swings.
     *
     * @param swings only where the model knows how
     */
    public void letBoomSwing(boolean swings) {
        boomSwings = swings;
        loadedTime = Double.NaN;
    }

    /** Fills motion, air and rotation for a state. */
    private void look(double t, double[] state) {
        Quaternion.toMatrix(state, StateLayout.ATTITUDE, rotation);
        surroundings.at(-state[StateLayout.DOWN], air);
        double[] a = rotation;
        windX = a[0] * air.windNorth + a[3] * air.windEast;
        windY = a[1] * air.windNorth + a[4] * air.windEast;
        windZ = a[2] * air.windNorth + a[5] * air.windEast;
        motion.u = state[StateLayout.U] - windX;
        motion.v = state[StateLayout.V] - windY;
        motion.w = state[StateLayout.W] - windZ;
        motion.p = rollPrescribed ? controls.rollRate(t, state) : state[StateLayout.P];
        motion.q = state[StateLayout.Q];
        motion.r = state[StateLayout.R];
        motion.density = air.density;
        motion.kinematicViscosity = air.kinematicViscosity;
        motion.gx = air.gravity * a[6];
        motion.gy = air.gravity * a[7];
        motion.gz = air.gravity * a[8];
        motion.elevator = state[StateLayout.ELEVATOR];
        motion.camber = state[StateLayout.CAMBER];
        motion.aileron = state[StateLayout.AILERON];
        motion.rudder = state[StateLayout.RUDDER];
        motion.downwashLag = state[StateLayout.DOWNWASH_LAG];
        motion.boomSwings = boomSwings;
        motion.boomUp = state[StateLayout.BOOM_UP];
        motion.boomUpRate = state[StateLayout.BOOM_UP_RATE];
        motion.boomRight = state[StateLayout.BOOM_RIGHT];
        motion.boomRightRate = state[StateLayout.BOOM_RIGHT_RATE];
    }

    private static void multiply(double[] matrix, double[] x, double[] rates) {
        double x0 = x[0];
        double x1 = x[1];
        double x2 = x[2];
        double x3 = x[3];
        double x4 = x[4];
        double x5 = x[5];
        for (int i = 0; i < ORDER; i++) {
            int row = ORDER * i;
            double sum = matrix[row] * x0
                    + matrix[row + 1] * x1
                    + matrix[row + 2] * x2
                    + matrix[row + 3] * x3
                    + matrix[row + 4] * x4
                    + matrix[row + 5] * x5;
            rates[(i < ROLL ? StateLayout.U : StateLayout.P - ROLL) + i] = sum;
        }
    }

    private static double rowTimes(double[] matrix, int row, double[] rates) {
        int at = ORDER * row;
        return matrix[at] * rates[StateLayout.U]
                + matrix[at + 1] * rates[StateLayout.V]
                + matrix[at + 2] * rates[StateLayout.W]
                + matrix[at + 3] * rates[StateLayout.P]
                + matrix[at + 4] * rates[StateLayout.Q]
                + matrix[at + 5] * rates[StateLayout.R];
    }

    /** Moment about x of whatever holds the roll rate [N m]. */
    private double holdingMoment(double[] rates) {
        return rowTimes(total, ROLL, rates) - push[ROLL];
    }

    /** Force of the air along one body axis, the reaction of the carried air included [N]. */
    private double airForce(int axis, double force, double[] rates, double driftX, double driftY, double driftZ) {
        int at = ORDER * axis;
        return force
                - rowTimes(apparent, axis, rates)
                - (apparent[at] * driftX + apparent[at + 1] * driftY + apparent[at + 2] * driftZ);
    }

    /**
     * Puts right what rounding has moved: the quaternion's length, what is locked, a prescribed roll rate. To be called
     * before a run.
     */
    public void settle(double t, double[] state) {
        Quaternion.normalise(state, StateLayout.ATTITUDE);
        if (axes == Axes.PITCH) {
            state[StateLayout.V] = 0;
            state[StateLayout.P] = 0;
            state[StateLayout.R] = 0;
        } else if (rollPrescribed) {
            state[StateLayout.P] = controls.rollRate(t, state);
        }
    }

    /** Motion through the air in a state; the object is this body's own and holds until the next call. */
    public Motion motionAt(double t, double[] state) {
        look(t, state);
        return motion;
    }

    /** What the air does in a state; the object is this body's own and holds until the next call. */
    public Loads loadsAt(double t, double[] state) {
        look(t, state);
        if (t == loadedTime && Arrays.equals(state, loadedState)) {
            return loads;
        }
        aero.evaluate(motion, asked);
        return asked;
    }

    /** Lag state the downwash settles at in the motion of a state [m/s]. */
    public double settledDownwash(double t, double[] state) {
        return aero.settledDownwash(motionAt(t, state));
    }

    /** Energy of height, motion, turning and carried air [J]; gravity as at the state's height. */
    public double energy(double t, double[] state) {
        look(t, state);
        double u = state[StateLayout.U];
        double v = state[StateLayout.V];
        double w = state[StateLayout.W];
        double p = motion.p;
        double q = motion.q;
        double r = motion.r;
        double turning = inertia.ixx() * p * p + inertia.iyy() * q * q + inertia.izz() * r * r;
        double products = inertia.ixy() * p * q + inertia.ixz() * p * r + inertia.iyz() * q * r;
        double[] xi = {motion.u, motion.v, motion.w, p, q, r};
        double carried = 0;
        for (int i = 0; i < ORDER; i++) {
            for (int k = 0; k < ORDER; k++) {
                carried += xi[i] * apparent[ORDER * i + k] * xi[k];
            }
        }
        return mass * air.gravity * -state[StateLayout.DOWN]
                + 0.5 * (mass * (u * u + v * v + w * w) + turning - 2 * products + carried);
    }

    /** Sum of the energy integrals of a state: what {@link #energy} should have fallen by [J]. */
    public static double energyLost(double[] state) {
        double sum = 0;
        for (int i = StateLayout.LOSSES; i < StateLayout.SIZE; i++) {
            sum += state[i];
        }
        return sum;
    }

    /**
     * Writes the specific force at the CG in body axes: acceleration less gravity, what an accelerometer shows [m/s2].
     *
     * @param t time [s]
     * @param state the state
     * @param rates its derivative, as {@link #derivatives} gave it
     * @param force where to write x, y, z
     */
    public void specificForce(double t, double[] state, double[] rates, double[] force) {
        look(t, state);
        double u = state[StateLayout.U];
        double v = state[StateLayout.V];
        double w = state[StateLayout.W];
        force[0] = rates[StateLayout.U] + motion.q * w - motion.r * v - motion.gx;
        force[1] = rates[StateLayout.V] + motion.r * u - motion.p * w - motion.gy;
        force[2] = rates[StateLayout.W] + motion.p * v - motion.q * u - motion.gz;
    }
}
