package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.air.Air;
import org.sawfly.glider.Hand;
import org.sawfly.glider.Part;
import org.sawfly.math.Vec3;

/**
 * The spin before the release, checked by vectors in the plane of the circle: x from its axis through the hand, y the way the
 * hand goes, z up; a right-hander turns counter-clockwise seen from above.
 */
class ReleaseSolverTest {
    private static final double SPEED = 33;
    /** W'/W^2 of one and a half turns from rest. */
    private static final double SPIN_UP = 1 / (4 * Math.PI * 1.5);

    /** On a rigid boom, so that the air's force hangs on nothing but the motion. */
    private static final Craft CRAFT = Demo.craft(Demo.GLIDER, Corrections.NONE.withBoomStiffness(1e10));

    private static final Launch LAUNCH = Demo.launch(Hand.RIGHT, Demo.CALM);
    private static final Vec3 UP = new Vec3(0, 0, 1);

    private static Release release(Craft craft, Launch launch, boolean yawing) {
        Air air = launch.weather().ground();
        return new ReleaseSolver(craft, launch, air)
                .solve(SPEED, SPEED, 8, craft.cruise().elevator(), craft.cruiseCamber(), 0, yawing);
    }

    /** Place of the CG from the axis of the spin. */
    private static Vec3 cg(Spin spin) {
        double d = SpinGeometry.of(CRAFT).pegToCg();
        double reach = LAUNCH.thrower().reach();
        return new Vec3(reach + d * Math.cos(spin.trail()), -d * Math.sin(spin.trail()), 0);
    }

    /** The nose, its angle outward of the path of the CG. */
    private static Vec3 nose(Spin spin) {
        Vec3 outward = cg(spin).times(1 / cg(spin).norm());
        Vec3 path = UP.cross(outward);
        return path.times(Math.cos(spin.noseOutward())).plus(outward.times(Math.sin(spin.noseOutward())));
    }

    private static Loads air(Release straight, Spin spin) {
        Motion m = new Motion();
        Air air = LAUNCH.weather().ground();
        m.density = air.density();
        m.kinematicViscosity = air.kinematicViscosity();
        m.gz = 9.80665;
        m.elevator = CRAFT.cruise().elevator();
        m.camber = CRAFT.cruiseCamber();
        double alpha = straight.alpha();
        double beta = -spin.noseOutward();
        m.u = SPEED * Math.cos(alpha) * Math.cos(beta);
        m.v = SPEED * Math.sin(beta);
        m.w = SPEED * Math.sin(alpha) * Math.cos(beta);
        m.p = spin.rate() * Math.sin(alpha);
        m.r = -spin.rate() * Math.cos(alpha);
        AeroEvaluator evaluator = CRAFT.model().evaluator();
        m.downwashLag = evaluator.settledDownwash(m);
        Loads loads = new Loads();
        evaluator.evaluate(m, loads);
        return loads;
    }

    private static double aheadOfNose(Loads loads, double alpha) {
        return loads.fx * Math.cos(alpha) + loads.fz * Math.sin(alpha);
    }

    @Test
    void thePegIsInTheHand() {
        Spin spin = release(CRAFT, LAUNCH, true).spin();
        SpinGeometry geometry = SpinGeometry.of(CRAFT);
        Vec3 right = nose(spin).cross(UP);
        Vec3 fromPeg = nose(spin).times(-geometry.aft()).plus(right.times(geometry.inboard()));
        Vec3 fromHand = cg(spin).minus(new Vec3(LAUNCH.thrower().reach(), 0, 0));
        assertThat(fromPeg.minus(fromHand).norm()).isCloseTo(0, within(1e-12));
        assertThat(Math.toDegrees(spin.noseOutward())).isBetween(3.0, 9.0);
        assertThat(spin.rate()).isCloseTo((SPEED - 3) / (0.72 + geometry.pegToCg()), within(1e-12));
    }

    /** Moments of the air and of inertia about the peg, on the greatest of them; the air's roll moment tilts it a little. */
    @Test
    void momentsAboutThePegBalance() {
        Release straight = release(CRAFT, LAUNCH, false);
        Spin spin = release(CRAFT, LAUNCH, true).spin();
        Loads loads = air(straight, spin);
        Vec3 place = cg(spin);
        Vec3 arm = place.minus(new Vec3(LAUNCH.thrower().reach(), 0, 0));
        Vec3 right = nose(spin).cross(UP);
        double w2 = spin.rate() * spin.rate();
        double mass = CRAFT.mass().mass();
        Vec3 acceleration = place.times(-w2).plus(UP.cross(place).times(SPIN_UP * w2));
        Vec3 force = nose(spin).times(aheadOfNose(loads, straight.alpha())).plus(right.times(loads.fy));
        double turning = -loads.mz + arm.cross(force).z();
        double inertia = CRAFT.mass().inertia().izz() * SPIN_UP * w2
                + mass * arm.cross(acceleration).z();
        double scale = mass * LAUNCH.thrower().reach() * arm.norm() * w2;
        assertThat((turning - inertia) / scale).isCloseTo(0, within(1e-9));
        assertThat(Math.abs(turning) / scale).as("the air counts").isGreaterThan(0.01);
    }

    /** The fingers give what mass times acceleration asks beyond the air's force; radial and along as if straight behind. */
    @Test
    void theFingersHoldTheGliderOnItsCircle() {
        Release straight = release(CRAFT, LAUNCH, false);
        Spin spin = release(CRAFT, LAUNCH, true).spin();
        Loads loads = air(straight, spin);
        double w2 = spin.rate() * spin.rate();
        double mass = CRAFT.mass().mass();
        assertThat(spin.radius()).isCloseTo(cg(spin).norm(), within(0.02 * spin.radius()));
        assertThat(spin.pegRadial()).isCloseTo(mass * w2 * spin.radius() + loads.fy, within(1e-9));
        assertThat(loads.fy).as("the fin, swept round behind, is pushed inward").isLessThan(-1);
        assertThat(spin.finOutward()).isNegative();
        double along = mass * SPIN_UP * w2 * spin.radius() - aheadOfNose(loads, straight.alpha());
        assertThat(spin.pegAlong()).isCloseTo(along, within(1e-9));
        assertThat(spin.pegRadial())
                .as("job of a strong arm: common practice, no source")
                .isBetween(90.0, 190.0);
    }

    /** V = u + (V_ref - u) sqrt((M + m_ref + Izz_ref/R_ref^2)/(M + m + Izz/R^2)), by hand: M 0.75 kg, run-up 3 m/s. */
    @ParameterizedTest
    @CsvSource({"0.001, 33", "0.06, 33", "0.12, 33", "0.06, 4", "0.06, 2"})
    void armAndGliderShareTheirEnergy(double ballastMass, double speed) {
        Part ballast = Part.fixed(ballastMass, new Vec3(-0.069, 0, 0));
        Craft craft = Demo.craft(Demo.GLIDER.withPart("ballast", ballast), Corrections.NONE);
        double seen = 0.30;
        double radius = 0.72 + SpinGeometry.of(craft).pegToCg();
        double spun = craft.mass().mass() + craft.mass().inertia().izz() / (radius * radius);
        double run = Math.min(3, speed);
        double expected = run + (speed - run) * Math.sqrt((0.75 + seen) / (0.75 + spun));
        assertThat(new ThrowReference(speed, 8, seen).speedOf(craft, LAUNCH)).isCloseTo(expected, within(1e-12));
    }
}
