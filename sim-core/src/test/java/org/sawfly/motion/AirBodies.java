package org.sawfly.motion;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Loss;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.math.Inertia;

/** Bodies whose loads are known in closed form, their surroundings and controls: what the equations are tested with. */
final class AirBodies {
    static final double GRAVITY = 9.80665;
    static final double DENSITY = 1.225;

    private AirBodies() {}

    /**
     * Force by drag area [m2] and lift area [m2], constant, and a thrust along the path [N]; lift lies across the path in
     * the plane of symmetry.
     */
    record ConstantAreas(double dragArea, double liftArea, double thrust) implements AeroModel {
        ConstantAreas(double dragArea, double liftArea) {
            this(dragArea, liftArea, 0);
        }

        @Override
        public AeroEvaluator evaluator() {
            return new AeroEvaluator() {
                @Override
                public void evaluate(Motion m, Loads loads) {
                    double speed = Math.sqrt(m.u * m.u + m.v * m.v + m.w * m.w);
                    double half = 0.5 * m.density * speed;
                    double drag = half * dragArea - (thrust == 0 ? 0 : thrust / speed);
                    loads.fx = half * liftArea * m.w - drag * m.u;
                    loads.fy = -drag * m.v;
                    loads.fz = -half * liftArea * m.u - drag * m.w;
                    loads.power[Loss.BODIES.ordinal()] = drag * speed * speed;
                }

                @Override
                public double settledDownwash(Motion motion) {
                    return 0;
                }
            };
        }

        @Override
        public Reference reference() {
            return new Reference(1, 1, 1, 0, 0);
        }

        @Override
        public double[][] apparentMass() {
            return new double[6][6];
        }
    }

    /** Still air of one density under one gravity. */
    static Surroundings still() {
        return (height, sample) -> {
            sample.density = DENSITY;
            sample.kinematicViscosity = 1.5e-5;
            sample.gravity = GRAVITY;
        };
    }

    /** Still air over heights, as a sample. */
    static AirSample sample() {
        AirSample sample = new AirSample();
        still().at(0, sample);
        return sample;
    }

    /** Wind growing with height, from 3 m/s at 0 by 0.05 m/s a metre, to north-east. */
    static Surroundings sheared() {
        return (height, sample) -> {
            still().at(height, sample);
            sample.windNorth = 3 + 0.05 * height;
            sample.windEast = 0.5 * sample.windNorth;
            sample.windNorthPerHeight = 0.05;
            sample.windEastPerHeight = 0.025;
        };
    }

    /** Servos asked to stay at fixed places; roll rate zero. */
    record Fixed(double elevator, double camber, double aileron, double rudder) implements Controls {
        @Override
        public void command(double t, double[] state, Motion motion, double[] commands) {
            commands[0] = elevator;
            commands[1] = camber;
            commands[2] = aileron;
            commands[3] = rudder;
        }
    }

    static final Controls FREE = new Fixed(0, 0, 0, 0);

    /** Rolls the wings level: p = -3 R32, R32 the sine of the right wing's drop. */
    static final class Levelling implements Controls {
        private final double[] rotation = new double[9];

        @Override
        public void command(double t, double[] state, Motion motion, double[] commands) {
            FREE.command(t, state, motion, commands);
        }

        @Override
        public double rollRate(double t, double[] state) {
            Kinematics.rotation(state, rotation);
            return -3 * rotation[7];
        }

        @Override
        public double rollAcceleration(double t, double[] state) {
            double p = rollRate(t, state);
            return -3 * (rotation[8] * p - rotation[6] * state[StateLayout.R]);
        }
    }

    static Inertia inertia() {
        return new Inertia(0.012, 0.010, 0.021, 0, -0.0006, 0);
    }

    static RigidBody body(AeroModel model, Axes axes, Surroundings surroundings, Controls controls) {
        return new RigidBody(0.24, inertia(), model, 1, axes, surroundings, controls);
    }

    /** A state at the origin: angles as in {@link org.sawfly.math.Quaternion#fromAngles}, velocity over the ground. */
    static double[] state(double roll, double pitch, double yaw, double u, double v, double w) {
        double[] state = new double[StateLayout.SIZE];
        org.sawfly.math.Quaternion.fromAngles(roll, pitch, yaw, state, StateLayout.ATTITUDE);
        state[StateLayout.U] = u;
        state[StateLayout.V] = v;
        state[StateLayout.W] = w;
        return state;
    }
}
