package org.sawfly.study.log;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.aero.DragFactors;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Launch;
import org.sawfly.flight.LaunchDoubts;
import org.sawfly.flight.Scenario;
import org.sawfly.flight.ThrowSolver;
import org.sawfly.flight.Thrower;
import org.sawfly.motion.Axes;
import org.sawfly.study.Result;
import org.sawfly.study.Uncertain;
import org.sawfly.study.Uncertainties;
import org.sawfly.study.Workbench;

/**
 * A glider's flight as a log would show it. The drag factor acts on the section drag of wing and tails as given by the
 * scenario. Held are the yaw rate left at release, the nose's place there, and what the pilot does: a wag costs as much as
 * more drag or less speed would, and is over before a log can be trusted. For one thread: keeps the last glider made.
 */
public final class FlightModel implements ThrowModel {
    /** What is held, in the order of {@link #held()}. */
    public static final List<Uncertain> HELD = List.of(
            Uncertain.RELEASE_RATE,
            Uncertain.NOSE_OUT,
            Uncertain.CLIMB,
            Uncertain.PRESET,
            Uncertain.PUSH_OVER,
            Uncertain.TIMING);

    private final Workbench bench;
    private final Scenario scenario;
    private final FlightPlan plan;
    private final List<Held> held;
    private Craft last;
    private double lastDrag = Double.NaN;

    /**
     * Of a glider as answered.
     *
     * @param bench that answered
     * @param scenario that was asked
     * @param result its answer: its yaw rate is what is held
     * @param uncertainties of what is held
     */
    public FlightModel(Workbench bench, Scenario scenario, Result result, Uncertainties uncertainties) {
        this.bench = bench;
        this.scenario = scenario;
        this.plan = result.plan();
        this.held = HELD.stream()
                .map(one -> new Held(
                        one.words(),
                        uncertainties.deviation(one) * (one == Uncertain.RELEASE_RATE ? plan.yawRate() : 1)))
                .toList();
    }

    @Override
    public List<Held> held() {
        return held;
    }

    @Override
    public DoubleUnaryOperator flight(double speed, double drag, double[] off) {
        HeightCurve curve = new HeightCurve();
        Flight.watch(plan(speed, drag, off), curve);
        return curve;
    }

    /** The flight of a guess. */
    public FlightPlan plan(double speed, double drag, double[] off) {
        LaunchDoubts now = plan.launch().doubts();
        Launch launch = plan.launch()
                .with(new LaunchDoubts(
                        now.noseOut() + off[1],
                        now.steeper() + off[2],
                        now.presetUp() + off[3],
                        now.pushFaster() + off[4],
                        now.late() + off[5],
                        now.bank()));
        Craft craft = craft(drag);
        double preset = plan.presetElevator()
                + craft.cruise().elevator()
                - plan.craft().cruise().elevator();
        return plan.withLaunch(launch)
                .withRelease(speed, Math.max(0, plan.yawRate() + off[0]))
                .withCraft(craft, preset);
    }

    /**
     * The speed at which the same glider reaches a height without any wag [m/s].
     *
     * @throws org.sawfly.flight.NoThrowException if no speed does
     */
    public double wagFreeSpeed(double height, double drag) {
        FlightPlan real = plan(plan.releaseSpeed(), drag, new double[held.size()]);
        Launch launch = real.launch();
        Thrower t = launch.thrower();
        Thrower sought = new Thrower(
                t.hand(), height, Double.NaN, Double.NaN, 0, t.reach(), t.runUp(), t.heightScatter(), t.armMass());
        Launch wagFree = launch.with(sought);
        return ThrowSolver.solve(new FlightPlan(
                        real.craft(), wagFree, Double.NaN, 0, real.presetElevator(), Axes.PITCH, real.integrator()))
                .speed();
    }

    /** Launch height of a guess, nothing being off [m]; NaN without a top. */
    public double height(double speed, double drag) {
        return Flight.fly(plan(speed, drag, new double[held.size()])).top().height();
    }

    private Craft craft(double drag) {
        if (drag != lastDrag) {
            DragFactors d = scenario.corrections().drag();
            DragFactors scaled = new DragFactors(drag * d.wing(), drag * d.tails(), d.bodies(), d.induced());
            last = bench.craft(
                    plan.craft().glider(), scenario, scenario.corrections().withDrag(scaled));
            lastDrag = drag;
        }
        return last;
    }
}
