package org.sawfly.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.math.Vec3;
import org.sawfly.section.Section;
import org.sawfly.section.SectionGrid;
import org.sawfly.section.SectionTable;

class StripModelTest {
    private static final Models MODELS = new Models();
    private static final Section WING = table(-0.036);
    private static final Glider GLIDER = Plover.glider(WING, WING, table(0));

    private static SectionTable table(double zeroLift) {
        return SectionTable.of(new StallingSection(zeroLift), SectionGrid.usual(true));
    }

    /** Two passes leave little to those that would follow, where flow is attached. */
    @Test
    void two_passes_are_enough() {
        StripGroup group = MODELS.strips(GLIDER.wing(), 32);
        for (double degrees : new double[] {-3, 0, 4, 7}) {
            Loads two = wingAt(group, degrees, 2);
            Loads many = wingAt(group, degrees, 20);
            double lift = Math.hypot(many.fx, many.fz);
            assertThat(two.fz).as("lift at %s", degrees).isCloseTo(many.fz, within(0.004 * lift));
            assertThat(two.fx).as("drag at %s", degrees).isCloseTo(many.fx, within(0.001 * lift));
        }
    }

    private static Loads wingAt(StripGroup group, double degrees, int passes) {
        StripFlow flow = new StripFlow(group, Vec3.ZERO, 1, 1);
        Motion m = AeroModelContract.calm();
        m.u = 10 * Math.cos(Math.toRadians(degrees));
        m.w = 10 * Math.sin(Math.toRadians(degrees));
        Loads loads = new Loads();
        flow.move(m, 0);
        flow.start(m.kinematicViscosity);
        for (int i = 0; i < passes; i++) {
            flow.pass();
        }
        flow.finish();
        flow.addTo(loads, m, 0, flow.count, Loss.WING_PROFILE);
        return loads;
    }

    /** What the tails induce at the wing is left out: it is this small. */
    @Test
    void the_tails_hardly_touch_the_wing() {
        Strips wing = Strips.cosine(SurfaceOutlines.of(GLIDER.wing()), 32);
        Strips tailplane = Strips.cosine(SurfaceOutlines.of(GLIDER.tailplane()), 8);
        double[] slopes = new double[40];
        Arrays.fill(slopes, 2 * Math.PI);
        double core = 0.15 * wing.surface.meanChord();
        double[] ones = new double[40];
        Arrays.fill(ones, 1);
        double[] together = new VortexSystem(VortexSystem.Setting.PRODUCTION, core, slopes, List.of(wing, tailplane))
                .attached(ones);
        double[] alone = new VortexSystem(VortexSystem.Setting.PRODUCTION, 0, Arrays.copyOf(slopes, 32), List.of(wing))
                .attached(Arrays.copyOf(ones, 32));
        double with = 0;
        double without = 0;
        for (int i = 0; i < 32; i++) {
            with += together[i] * wing.widths[i];
            without += alone[i] * wing.widths[i];
        }
        assertThat(with / without - 1).isBetween(0.0, 0.003);
    }

    @Test
    void the_drifting_wake_is_what_the_vortices_make() {
        Strips wing = Strips.cosine(SurfaceOutlines.of(GLIDER.wing()), 32);
        Strips tailplane = Strips.cosine(SurfaceOutlines.of(GLIDER.tailplane()), 8);
        Strips fin = Strips.cosine(SurfaceOutlines.of(GLIDER.fin()), 8);
        double[] slopes = new double[16];
        Arrays.fill(slopes, 2 * Math.PI);
        double core = 0.15 * wing.surface.meanChord();
        DriftingWake wake = new DriftingWake(wing, List.of(tailplane, fin), slopes, core, new double[] {1, 1});
        double[] gamma = new double[32];
        for (int j = 0; j < 32; j++) {
            gamma[j] = Math.sin(Math.PI * (j + 0.5) / 32) * (1 + 0.01 * j);
        }
        double[] out = new double[wake.size()];
        for (double degrees : new double[] {-45, -20, -3, 0, 5, 14, 30, 65}) {
            double beta = Math.toRadians(degrees);
            wake.velocities(beta, gamma, out);
            Vec3 downstream = new Vec3(-Math.cos(beta), -Math.sin(beta), 0);
            double mean = 0;
            for (int i = 0; i < 16; i++) {
                Strips tail = i < 8 ? tailplane : fin;
                int k = i % 8;
                Vec3 point = tail.quarters[k].plus(VortexSystem.BACK.times(0.5 * tail.chords[k]));
                double sum = 0;
                for (int j = 0; j < 32; j++) {
                    double[] v = new double[3];
                    Horseshoe.addLegs(wing.edges[j], wing.edges[j + 1], downstream, core, point, v);
                    Horseshoe.addBound(wing.edges[j], wing.edges[j + 1], point, v);
                    sum += gamma[j] * new Vec3(v[0], v[1], v[2]).dot(tail.normals[k]);
                }
                mean += i < 8 ? out[i] - sum : 0;
                if (degrees % 5 == 0 && (degrees % 10 == 0 || degrees == -45 || degrees == 65)) {
                    assertThat(out[i]).as("strip %d at %s deg", i, degrees).isCloseTo(sum, within(1e-12));
                }
            }
            // between knots single legs passing a strip are smoothed over; the mean downwash is 0.75, of it 2 %
            assertThat(mean / 8).as("tailplane at %s deg", degrees).isCloseTo(0, within(0.015));
        }
    }

    @Test
    void the_wake_fades_out_behind_a_glider_that_falls_flat() {
        AeroModel model = StripModel.of(GLIDER, MassProperties.of(GLIDER), Corrections.NONE, MODELS);
        Motion m = AeroModelContract.calm();
        m.w = 8;
        assertThat(model.evaluator().settledDownwash(m)).isZero();
        m.u = 8;
        m.w = 0.4;
        assertThat(model.evaluator().settledDownwash(m)).isPositive();
    }

    /** More lift on the tailplane bends the boom up, which takes some of it away; the fast model's bending is the same. */
    @Test
    void a_soft_boom_takes_lift_from_the_tailplane() {
        MassProperties mass = MassProperties.of(GLIDER);
        AeroModel soft = StripModel.of(GLIDER, mass, Corrections.NONE, MODELS);
        AeroModel stiff = StripModel.of(GLIDER, mass, new Corrections(DragFactors.NONE, 1, 1, 1, 1e6, 1, 0), MODELS);
        AeroModel fast = TailVolumeModel.of(GLIDER, mass, Corrections.NONE, MODELS);
        Loads softUp = byElevator(soft, -0.05);
        Loads softDown = byElevator(soft, 0.05);
        Loads stiffUp = byElevator(stiff, -0.05);
        Loads stiffDown = byElevator(stiff, 0.05);
        Loads fastUp = byElevator(fast, -0.05);
        Loads fastDown = byElevator(fast, 0.05);
        double bent = softDown.boomUp - softUp.boomUp;
        assertThat(bent).isPositive().isCloseTo(fastDown.boomUp - fastUp.boomUp, withinPercentage(5));
        assertThat(softUp.boomUp).isCloseTo(fastUp.boomUp, withinPercentage(5));
        assertThat(stiffDown.boomUp).isCloseTo(0, within(1e-6));
        double taken = 1 - (softDown.my - softUp.my) / (stiffDown.my - stiffUp.my);
        assertThat(taken).isBetween(0.02, 0.3);
    }

    private static Loads byElevator(AeroModel model, double elevator) {
        Motion m = AeroModelContract.calm();
        m.u = 30;
        m.elevator = elevator;
        Loads loads = new Loads();
        model.evaluator().evaluate(m, loads);
        return loads;
    }

    /** A degree out of true does to both models the same: main force or moment of each error. */
    @Test
    void bench_errors_do_what_they_do_to_the_fast_model() {
        double degree = Math.toRadians(1);
        BenchErrors incidence = new BenchErrors(degree, 0, 0, 0, 0, 0, 0);
        BenchErrors tilt = new BenchErrors(0, 0, 0, degree, 0, 0, 0);
        BenchErrors skew = new BenchErrors(0, 0, 0, 0, degree, 0, 0);
        BenchErrors twist = new BenchErrors(0, 0, 0, 0, 0, degree, 0);
        BenchErrors boom = new BenchErrors(0, 0, 0, 0, 0, 0, degree);
        assertThat(byBench(true, incidence).my).isNegative().isCloseTo(byBench(false, incidence).my, within(0.015));
        assertThat(byBench(true, tilt).mz).isCloseTo(byBench(false, tilt).mz, withinPercentage(10));
        assertThat(byBench(true, skew).mz).isNegative().isCloseTo(byBench(false, skew).mz, withinPercentage(10));
        assertThat(byBench(true, twist).mx).isNegative().isCloseTo(byBench(false, twist).mx, withinPercentage(10));
        assertThat(byBench(true, boom).mx).isCloseTo(byBench(false, boom).mx, withinPercentage(20));
    }

    /** What one error adds in a sideslip; nothing at all when there is none. */
    private static Loads byBench(boolean strips, BenchErrors errors) {
        Loads with = sideslip(strips, errors);
        Loads without = sideslip(strips, BenchErrors.NONE);
        with.mx -= without.mx;
        with.my -= without.my;
        with.mz -= without.mz;
        return with;
    }

    private static Loads sideslip(boolean strips, BenchErrors errors) {
        Corrections c = new Corrections(DragFactors.NONE, 1, 1, 1, 1, 1, 0, errors);
        MassProperties mass = MassProperties.of(GLIDER);
        AeroModel model = (strips ? ModelChoice.STRIP : ModelChoice.TAIL_VOLUME).of(GLIDER, mass, c, MODELS);
        Motion m = AeroModelContract.calm();
        m.u = 15;
        m.v = 1;
        m.w = 0.3;
        AeroEvaluator evaluator = model.evaluator();
        m.downwashLag = evaluator.settledDownwash(m);
        Loads loads = new Loads();
        evaluator.evaluate(m, loads);
        return loads;
    }

    @Test
    void the_rear_is_loaded_as_in_the_fast_model() {
        Loads strips = sideslip(true, BenchErrors.NONE);
        Loads fast = sideslip(false, BenchErrors.NONE);
        assertThat(strips.tailplaneForce).isCloseTo(fast.tailplaneForce, within(0.05));
        assertThat(strips.tailplaneMoment).isCloseTo(fast.tailplaneMoment, within(0.0005));
        assertThat(strips.finForce).isNegative().isCloseTo(fast.finForce, withinPercentage(5));
        assertThat(strips.finMoment).isCloseTo(fast.finMoment, within(0.0003));
    }
}
