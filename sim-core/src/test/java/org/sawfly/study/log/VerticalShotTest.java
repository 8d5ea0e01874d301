package org.sawfly.study.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.math.Inertia;
import org.sawfly.math.Quaternion;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Controls;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.Surroundings;

/**
 * A log that no flight of ours wrote: a body shot straight up against a drag of 1/2 rho CdA v^2, on paper. Rising,
 * v = vt tan(atan(v0/vt) - g t/vt); falling, v = vt tanh(g t/vt).
 */
class VerticalShotTest {
    private static final double GRAVITY = 9.80665;
    private static final double DENSITY = 1.225;
    private static final double MASS = 0.25;
    private static final double GUESSED_AREA = 0.004;

    private static DoubleUnaryOperator onPaper(double speed, double dragArea) {
        double vt = Math.sqrt(2 * MASS * GRAVITY / (DENSITY * dragArea));
        double phase = Math.atan(speed / vt);
        double rising = vt / GRAVITY * phase;
        double top = vt * vt / (2 * GRAVITY) * Math.log1p(speed * speed / (vt * vt));
        return t -> t < rising
                ? 1.2 + top + vt * vt / GRAVITY * Math.log(Math.cos(phase - GRAVITY * t / vt))
                : 1.2 + top - vt * vt / GRAVITY * Math.log(Math.cosh(GRAVITY * (t - rising) / vt));
    }

    /** The same body by the equations of motion, with a drag area to be found. */
    private static final class Shot implements ThrowModel {
        @Override
        public List<Held> held() {
            return List.of();
        }

        @Override
        public DoubleUnaryOperator flight(double speed, double drag, double[] off) {
            RigidBody body = new RigidBody(
                    MASS,
                    new Inertia(0.01, 0.01, 0.02, 0, 0, 0),
                    new Ball(drag * GUESSED_AREA),
                    DENSITY,
                    Axes.PITCH,
                    still(),
                    hands());
            double[] state = new double[StateLayout.SIZE];
            Quaternion.fromAngles(0, Math.PI / 2, 0, state, StateLayout.ATTITUDE);
            state[StateLayout.DOWN] = -1.2;
            state[StateLayout.U] = speed;
            HeightCurve curve = new HeightCurve();
            Adaptive.usual().run(body, 0, state, 5, List.of(), List.of(curve));
            return curve;
        }
    }

    private record Ball(double dragArea) implements AeroModel {
        @Override
        public AeroEvaluator evaluator() {
            return new AeroEvaluator() {
                @Override
                public void evaluate(Motion m, Loads loads) {
                    double half = 0.5 * m.density * Math.sqrt(m.u * m.u + m.v * m.v + m.w * m.w) * dragArea;
                    loads.fx = -half * m.u;
                    loads.fy = -half * m.v;
                    loads.fz = -half * m.w;
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

    @ParameterizedTest
    @CsvSource({"33, 0.0042, 10", "33, 0.0036, 5", "28, 0.0050, 20"})
    void theDragAreaComesBack(double speed, double dragArea, double rate) {
        HeightLog log =
                MadeLog.of(new DoubleUnaryOperator[] {onPaper(speed, dragArea)}, Calibration.IN_HAND, rate, 0, 0, null);
        Calibrated found = new Calibration(new Shot()).fit(List.of(log));
        assertThat(found.drag().value() * GUESSED_AREA).isCloseTo(dragArea, within(0.01 * dragArea));
        assertThat(found.throwsFitted().get(0).speed().value()).isCloseTo(speed, within(0.005 * speed));
    }

    @Test
    void ofVeryManyThrowsTheFirstAreEnough() {
        DoubleUnaryOperator[] shots = new DoubleUnaryOperator[Calibration.MOST_THROWS + 2];
        Arrays.fill(shots, onPaper(30, 0.004));
        Calibrated found =
                new Calibration(new Shot()).fit(List.of(MadeLog.of(shots, Calibration.IN_HAND, 5, 0, 0, null)));
        assertThat(found.throwsFitted()).hasSize(Calibration.MOST_THROWS);
        assertThat(found.skipped()).containsExactly("2 more throws are left out: 60 say enough");
        assertThat(found.meanSpeed().value()).isCloseTo(30, within(0.15));
    }

    private static Surroundings still() {
        return (height, sample) -> {
            sample.density = DENSITY;
            sample.kinematicViscosity = 1.5e-5;
            sample.gravity = GRAVITY;
        };
    }

    private static Controls hands() {
        return new Controls() {
            @Override
            public void command(double t, double[] state, Motion motion, double[] commands) {
                Arrays.fill(commands, 0);
            }
        };
    }
}
