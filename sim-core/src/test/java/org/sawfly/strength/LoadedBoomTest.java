package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.sawfly.flight.RearLoads;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Part;
import org.sawfly.glider.Plover;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.Vec3;

class LoadedBoomTest {
    private static final Vec3 CG = new Vec3(-0.07, 0, 0);

    /** Three masses of 1, 4 and 7 g at 0.3, 0.6 and 0.7 m behind the leading edge on a boom and tails of no mass. */
    private static Glider threeMasses(double boomMass) {
        Glider g = Plover.glider();
        Tailplane t = g.tailplane();
        Fin f = g.fin();
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("a", Part.fixed(0.001, new Vec3(-0.3, 0, 0.012)));
        parts.put("b", Part.fixed(0.004, new Vec3(-0.6, 0, -0.008)));
        parts.put("c", Part.fixed(0.007, new Vec3(-0.7, 0, 0.032)));
        return g.withParts(parts)
                .withTails(
                        new Tailplane(0, t.planform(), t.x(), t.z(), t.decalage(), t.section(), t.elevatorChord()),
                        new Fin(0, f.above(), f.below(), f.x(), f.z(), f.section(), f.rudderChord()))
                .withBoom(new Boom(
                        boomMass, -0.118, -0.79, 0.012, 0.017, 0.0085, new BoomStiffness.OfMaterial(55e6), Map.of()));
    }

    private static RearLoads rear(Vec3 force, Vec3 rates, Vec3 turning, double tailplane, double fin) {
        return new RearLoads(force, rates, turning, tailplane, 0, fin, 0);
    }

    /**
     * By hand. Spin of 20 rad/s nose left on 1.5 m, gaining 50 rad/s2: along y every mass is accelerated by
     * -600 - 50 (x - x_cg); with x - x_cg = -0.23, -0.53, -0.63: -588.5, -573.5, -568.5 m/s2. At 0.118 m behind the leading
     * edge 1 g x 588.5 x 0.182 + 4 g x 573.5 x 0.482 + 7 g x 568.5 x 0.582 = 0.107107 + 1.105708 + 2.316069 N m.
     */
    @Test
    void loads_are_mass_times_acceleration() {
        LoadedBoom boom = new LoadedBoom(threeMasses(1e-12), CG);
        RearLoads spin = rear(new Vec3(0, -600, -9), new Vec3(0, 0, -20), new Vec3(0, 0, -50), 0, 0);
        BoomLoad root = boom.at(-0.118, spin);
        assertThat(root.right()).isCloseTo(3.528884, within(1e-6));
        assertThat(root.across()).isCloseTo(0.5885 + 2.294 + 3.9795, within(1e-6));
        // 12 g hang down at 9 m/s2; and the pull along the boom, 400 m/s2 x 0.53 and 0.63 m, acts 20 mm off its axis
        assertThat(root.lift()).isCloseTo(-0.012 * 9, within(1e-9));
        double byWeight = 9 * (0.001 * 0.182 + 0.004 * 0.482 + 0.007 * 0.582);
        double byPull = -0.02 * 0.004 * 400 * 0.53 + 0.02 * 0.007 * 400 * 0.63;
        assertThat(root.up()).isCloseTo(byPull - byWeight, within(1e-9));
        // between the second and the third mass only the third is left
        assertThat(boom.at(-0.65, spin).right()).isCloseTo(0.007 * 568.5 * 0.05, within(1e-6));
        assertThat(boom.at(-0.65, spin).twist()).isCloseTo(-0.02 * 0.007 * 568.5, within(1e-6));
        assertThat(boom.at(-0.72, spin).bending()).isCloseTo(0, within(1e-9));
    }

    @Test
    void signs_of_the_air_on_the_tails() {
        LoadedBoom boom = new LoadedBoom(threeMasses(1e-12), CG);
        Vec3 none = Vec3.ZERO;
        BoomLoad pushedRight = boom.at(-0.118, rear(none, none, none, 0, 2));
        assertThat(pushedRight.right()).isPositive();
        assertThat(pushedRight.across()).isCloseTo(2, within(1e-12));
        assertThat(pushedRight.up()).isZero();
        BoomLoad pushedDown = boom.at(-0.118, rear(none, none, none, 3, 0));
        Tailplane t = Plover.glider().tailplane();
        double arm = -0.118 - (t.x() - t.planform().quarterPointBack());
        assertThat(pushedDown.up()).isCloseTo(-3 * arm, within(1e-12));
        assertThat(pushedDown.lift()).isCloseTo(-3, within(1e-12));
        BoomLoad noseUpMoment = boom.at(-0.118, new RearLoads(none, none, none, 0, 0.1, 0, 0));
        assertThat(noseUpMoment.up()).isCloseTo(-0.1, within(1e-12));
        BoomLoad noseRightMoment = boom.at(-0.118, new RearLoads(none, none, none, 0, 0, 0, 0.1));
        assertThat(noseRightMoment.right()).isCloseTo(-0.1, within(1e-12));
    }

    @Test
    void the_booms_own_mass_counts_in_full() {
        Vec3 pull = new Vec3(0, -100, 0);
        LoadedBoom with = new LoadedBoom(threeMasses(0.0148), CG);
        LoadedBoom without = new LoadedBoom(threeMasses(1e-12), CG);
        RearLoads rear = rear(pull, Vec3.ZERO, Vec3.ZERO, 0, 0);
        // A trapezium 17 to 8.5 over 672 mm balances 34/76.5 of it behind its front
        double moment = 0.0148 * 100 * 0.672 * 34 / 76.5;
        assertThat(with.at(-0.118, rear).right() - without.at(-0.118, rear).right())
                .isCloseTo(moment, within(1e-9));
        assertThat(with.mass() - without.mass()).isCloseTo(0.0148, within(1e-11));
    }

    @Test
    void all_of_plover_behind_the_pod_is_on_the_boom() {
        Glider plover = Plover.glider();
        MassProperties whole = MassProperties.of(plover);
        LoadedBoom boom = new LoadedBoom(plover, whole.cg());
        // tails 6.4 and 6.9, boom 14.8, mount 1.1, glue 0.9; strings of 0.9 run from 70 mm ahead to the end 790 mm
        // behind
        double strings = 0.0009 * (0.790 - 0.118) / 0.860;
        assertThat(boom.mass()).isCloseTo(0.0301 + strings, within(1e-12));
    }

    @Test
    void mirror_images_mirror() {
        LoadedBoom boom = new LoadedBoom(Plover.glider(), CG);
        RearLoads one = new RearLoads(
                new Vec3(-60, -600, -9), new Vec3(-0.3, 0.1, -20), new Vec3(2, 3, -22), 3, 0.01, -6, 0.02);
        RearLoads other =
                new RearLoads(new Vec3(-60, 600, -9), new Vec3(0.3, 0.1, 20), new Vec3(-2, 3, 22), 3, 0.01, 6, -0.02);
        BoomLoad a = boom.at(-0.2, one);
        BoomLoad b = boom.at(-0.2, other);
        assertThat(b.right()).isCloseTo(-a.right(), within(1e-13));
        assertThat(b.up()).isCloseTo(a.up(), within(1e-13));
        assertThat(b.twist()).isCloseTo(-a.twist(), within(1e-13));
    }
}
