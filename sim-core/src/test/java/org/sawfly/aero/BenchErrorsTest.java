package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;

class BenchErrorsTest {
    private static final Models MODELS = new Models();
    private static final Glider GLIDER = Plover.glider();
    private static final double DEGREE = Math.toRadians(1);

    private static Loads loads(BenchErrors errors, double v, double elevator) {
        Corrections corrections = new Corrections(new DragFactors(1, 1, 0, 1), 1, 1, 1, 1, 1, 0, errors);
        AeroModel model = TailVolumeModel.of(GLIDER, MassProperties.of(GLIDER), corrections, MODELS);
        Motion m = new Motion();
        m.u = 12;
        m.v = v;
        m.w = 0.3;
        m.density = 1.225;
        m.kinematicViscosity = 1.46e-5;
        m.gz = 9.8;
        m.elevator = elevator;
        AeroEvaluator evaluator = model.evaluator();
        m.downwashLag = evaluator.settledDownwash(m);
        Loads loads = new Loads();
        evaluator.evaluate(m, loads);
        return loads;
    }

    private static Loads with(BenchErrors errors) {
        return loads(errors, 0, 0);
    }

    private static BenchErrors only(int which, double size) {
        double[] e = new double[7];
        e[which] = size;
        return new BenchErrors(e[0], e[1], e[2], e[3], e[4], e[5], e[6]);
    }

    @Test
    void built_squarely_nothing_pulls_aside() {
        Loads none = with(BenchErrors.NONE);
        assertThat(none.fy).isZero();
        assertThat(none.mx).isCloseTo(0, within(1e-15));
        assertThat(none.mz).isCloseTo(0, within(1e-15));
    }

    @Test
    void tailplane_nose_up_lifts_the_tail() {
        assertThat(with(only(0, DEGREE)).my).isLessThan(with(BenchErrors.NONE).my);
        assertThat(with(only(0, DEGREE)).tailplaneForce).isLessThan(with(BenchErrors.NONE).tailplaneForce);
    }

    @Test
    void a_tilted_tailplane_leans_its_force() {
        // elevator down: lift upwards; right side down leans it to the right, and the tail goes right: nose left
        Loads lifting = loads(only(1, 3 * DEGREE), 0, 0.15);
        assertThat(lifting.tailplaneForce).isNegative();
        assertThat(lifting.fy).isPositive();
        assertThat(lifting.mz).isNegative();
        assertThat(lifting.fy).isCloseTo(-lifting.tailplaneForce * Math.tan(3 * DEGREE), within(2e-3));
    }

    @Test
    void a_skewed_fin_turns_the_nose_its_way_round() {
        Loads noseRight = with(only(4, DEGREE));
        assertThat(noseRight.finForce).as("wind from its left pushes it right").isPositive();
        assertThat(noseRight.mz).as("which turns the glider's nose left").isNegative();
    }

    @Test
    void a_fin_leaning_right_in_wind_from_the_right_lifts_its_tail() {
        // its force to the left leans: what pushes left on a surface with its top to the right points up
        Loads upright = loads(BenchErrors.NONE, 1, 0);
        Loads leaning = loads(only(3, 5 * DEGREE), 1, 0);
        assertThat(upright.finForce).isNegative();
        assertThat(leaning.fz - upright.fz).as("up").isNegative();
    }

    @Test
    void a_twisted_wing_rolls_away_from_the_half_with_more_incidence() {
        Loads twisted = with(only(5, DEGREE));
        assertThat(twisted.mx).as("right half lifts more: rolls left").isNegative();
    }

    @Test
    void a_skewed_boom_is_a_skewed_fin_beside_the_middle() {
        Loads boom = with(only(6, DEGREE));
        Loads fin = with(only(4, DEGREE));
        assertThat(boom.finForce).isCloseTo(fin.finForce, within(2e-3));
        assertThat(boom.mz).isNegative();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
    void mirror_images_mirror(int which) {
        BenchErrors errors = only(which, 2 * DEGREE);
        Loads one = loads(errors, 2, 0.1);
        Loads other = loads(errors.mirrored(), -2, 0.1);
        assertThat(other.fx).isCloseTo(one.fx, within(1e-12));
        assertThat(other.fy).isCloseTo(-one.fy, within(1e-12));
        assertThat(other.fz).isCloseTo(one.fz, within(1e-12));
        assertThat(other.mx).isCloseTo(-one.mx, within(1e-12));
        assertThat(other.my).isCloseTo(one.my, within(1e-12));
        assertThat(other.mz).isCloseTo(-one.mz, within(1e-12));
    }
}
