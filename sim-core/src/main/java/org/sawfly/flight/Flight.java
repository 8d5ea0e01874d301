package org.sawfly.flight;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Loss;
import org.sawfly.air.Standard;
import org.sawfly.glider.BoomSwing;
import org.sawfly.motion.Axes;
import org.sawfly.motion.FieldAir;
import org.sawfly.motion.Glide;
import org.sawfly.motion.IntegrationException;
import org.sawfly.motion.Integrator;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.StepWatcher;
import org.sawfly.motion.Stop;
import org.sawfly.motion.StopEvent;

/** One launch, from the hand to the settled glide: a loop over the phases. All that changes lives and dies with it. */
public final class Flight {
    /** No top may come later [s]. */
    private static final double LATEST_TOP = 8;
    /** The push-over begins no earlier than this after the preset [s]. */
    private static final double BEFORE_PUSH = 0.3;
    /** From the end of the push-over to where the settled height is taken [s]. */
    private static final double GLIDE_TIME = 5;
    /** Over the last of it the glide is looked at [s]. */
    private static final double LOOK_TIME = 1.5;

    /**
     * The boom swings for so long after release, where the model knows how; then the air on the tails has damped it away and
     * it follows its load [s].
     */
    private static final double BOOM_SWINGS = 0.15;
    /** The tip slides off the fingers within this; common practice, no source [s]. */
    private static final double SLIDES_OFF = 0.03;

    private static final double LONG_STALL = 2;
    private static final double SHORT_STALL = 0.1;

    private final FlightPlan plan;
    private final Craft craft;
    private final Pilot pilot;
    private final RigidBody body;
    private final Integrator integrator;
    private final Extremes extremes;
    private final Dangers dangers;
    private final FlightLog log;
    private final double presetElevator;
    private final List<StepWatcher> watchers = new ArrayList<>();
    private final double[] state = new double[StateLayout.SIZE];

    private Release release;
    private double startEnergy;
    private double time;
    private double pushTime = Double.NaN;
    private final double[] pushState = new double[StateLayout.SIZE];
    private double lookedAt;
    private boolean boomSwings;
    private boolean stalledAtTop;
    private Ended ended = Ended.SETTLED;

    private Flight(FlightPlan plan, FlightLog log, StepWatcher also) {
        this.plan = plan;
        this.craft = plan.craft();
        FieldAir field = plan.launch().weather().field();
        this.presetElevator = plan.presetElevator() - plan.launch().doubts().presetUp();
        this.pilot = new Pilot(craft, plan.launch(), presetElevator, plan.axes(), plan.steering());
        this.body = new RigidBody(
                craft.mass().mass(),
                craft.mass().inertia(),
                craft.model(),
                field.apparentDensity(),
                plan.axes(),
                field,
                pilot);
        this.integrator = plan.integrator().get();
        double hand = -plan.launch().thrower().hand().yawSign();
        this.extremes = new Extremes(body, craft.mass().mass(), hand);
        this.dangers = new Dangers(body);
        this.log = log;
        watchers.add(extremes);
        if (log != null) {
            log.begin(body, craft, hand);
            watchers.add(log);
        }
        if (also != null) {
            watchers.add(also);
        }
    }

    /** Flies. Never throws for what a glider may do: the outcome names it. */
    public static Outcome fly(FlightPlan plan) {
        return new Flight(plan, null, null).fly();
    }

    /** Flies and writes down the flight. */
    public static Outcome fly(FlightPlan plan, FlightLog log) {
        return new Flight(plan, log, null).fly();
    }

    /** Flies while somebody watches. */
    public static Outcome watch(FlightPlan plan, StepWatcher watcher) {
        return new Flight(plan, null, watcher).fly();
    }

    /** Flies and looks for the greatest load on the rear. */
    static Outcome fly(FlightPlan plan, LaunchLoads.Greatest greatest) {
        Flight flight = new Flight(plan, null, null);
        greatest.begin(flight.body);
        flight.watchers.add(greatest);
        return flight.fly();
    }

    private Outcome fly() {
        try {
            letGo();
            boolean settled = preset() && climb() && pushOver() && glide();
            if (settled && !extremes.hasTop()) {
                ended = Ended.NO_TOP;
            }
        } catch (IntegrationException e) {
            ended = Ended.BROKE_OFF;
        }
        return outcome();
    }

    private void letGo() {
        Launch launch = plan.launch();
        double wind = launch.weather().windAt(launch.releaseHeight());
        double airspeed = ReleaseState.airspeed(plan.releaseSpeed(), launch.releaseClimb(), wind);
        double[] servos = {
            presetElevator,
            Pilot.presetCamber(craft, launch),
            Pilot.presetAileron(craft, launch),
            Pilot.presetRudder(craft, launch)
        };
        boolean yawing = plan.axes() != Axes.PITCH;
        ReleaseSolver solver = new ReleaseSolver(craft, launch, launch.weather().ground());
        release = solver.solve(plan.releaseSpeed(), airspeed, plan.yawRate(), servos[0], servos[1], servos[3], yawing);
        ReleaseState.write(launch, release, wind, servos, state);
        body.settle(0, state);
        state[StateLayout.DOWNWASH_LAG] = body.settledDownwash(0, state);
        startEnergy = body.energy(0, state);
        Loads free = body.loadsAt(0, state);
        double up = craft.model().boomFrequency(BoomSwing.Plane.VERTICAL);
        double side = craft.model().boomFrequency(BoomSwing.Plane.SIDE);
        boomSwings = Math.min(up, side) < Double.POSITIVE_INFINITY;
        state[StateLayout.BOOM_UP] = letGo(up, solver.bentUp(), free.boomUp);
        state[StateLayout.BOOM_RIGHT] = letGo(side, yawing ? solver.bentRight() : 0, free.boomRight);
        body.letBoomSwing(boomSwings);
    }

    /** Slope from which the boom swings about its slope in free flight, once the tip has slid off [rad]. */
    private static double letGo(double frequency, double spinning, double free) {
        return free + (spinning - free) * BoomSwing.leftAfter(SLIDES_OFF, frequency);
    }

    private boolean preset() {
        return runTo(plan.launch().presetEnd());
    }

    private boolean climb() {
        LaunchDoubts doubts = plan.launch().doubts();
        double earliest = plan.launch().presetEnd() + BEFORE_PUSH;
        if (!runTo(earliest)) {
            return false;
        }
        PushOver push = plan.launch().pushOver();
        if (!Double.isNaN(push.time())) {
            return runTo(Math.max(earliest, push.time() + doubts.late()));
        }
        double slow = push.speedRatio() * craft.cruise().speed() + doubts.pushFaster();
        if (Kinematics.airspeed(body.motionAt(time, state)) <= slow) {
            return true;
        }
        StopEvent falls =
                Dangers.event(StopEvent.Crossing.FALLING, (t, s) -> Kinematics.airspeed(body.motionAt(t, s)) - slow);
        Stop stop = run(LATEST_TOP, falls);
        if (stop.event() == dangers.events().size()) {
            return true;
        }
        return stop.event() == Stop.AT_END ? fail(Ended.NO_TOP) : fail(Dangers.reason(stop.event()));
    }

    private boolean pushOver() {
        if (extremes.longestStall() > LONG_STALL) {
            return fail(Ended.STALLED);
        }
        pushTime = time;
        System.arraycopy(state, 0, pushState, 0, state.length);
        pilot.pushOver(time);
        extremes.forgetStalls();
        return runTo(pushTime + Pilot.PUSH_TIME);
    }

    private boolean glide() {
        double end = pushTime + Pilot.PUSH_TIME + GLIDE_TIME;
        double topEnd = extremes.hasTop() ? extremes.topTime() + 1 : end - LOOK_TIME;
        double firstLook = Math.min(Math.max(time, topEnd), end - LOOK_TIME);
        if (!runTo(firstLook)) {
            return false;
        }
        stalledAtTop = extremes.longestStall() > SHORT_STALL;
        if (!runTo(end - LOOK_TIME)) {
            return false;
        }
        lookedAt = energyHeight();
        return runTo(end) && (extremes.longestStall() <= LONG_STALL || fail(Ended.STALLED));
    }

    /** Goes on to a time; false if something ended the flight first. */
    private boolean runTo(double end) {
        if (end <= time) {
            return true;
        }
        Stop stop = run(end, null);
        return stop.event() == Stop.AT_END || fail(Dangers.reason(stop.event()));
    }

    private Stop run(double end, StopEvent also) {
        List<StopEvent> events = new ArrayList<>(dangers.events());
        if (also != null) {
            events.add(also);
        }
        if (boomSwings && end > BOOM_SWINGS) {
            Stop stop = advance(BOOM_SWINGS, events);
            if (stop.event() != Stop.AT_END) {
                return stop;
            }
            boomSwings = false;
            body.letBoomSwing(false);
        }
        return advance(end, events);
    }

    private Stop advance(double end, List<StopEvent> events) {
        body.settle(time, state);
        Stop stop = integrator.run(body, time, state, end, events, watchers);
        time = stop.time();
        return stop;
    }

    private boolean fail(Ended reason) {
        ended = reason;
        return false;
    }

    private double energyHeight() {
        double speed = Kinematics.airspeed(body.motionAt(time, state));
        return Kinematics.height(state) + speed * speed / (2 * Standard.GRAVITY);
    }

    private Outcome outcome() {
        Swing swing = plan.axes() == Axes.PITCH ? Swing.NONE : extremes.swing();
        Top top = Top.NONE;
        EnergyLedger ledger = null;
        if (extremes.hasTop()) {
            double[] at = extremes.topState();
            double speed = Kinematics.airspeed(body.motionAt(extremes.topTime(), at));
            top = new Top(Kinematics.height(at), extremes.topTime(), speed, course(at));
            ledger = ledger(at);
        }
        Settled settled = ended == Ended.SETTLED ? settled(top) : Settled.NONE;
        List<Moment> moments = log == null ? List.of() : log.moments(pushTime, top, ended == Ended.SETTLED);
        return new Outcome(ended, release, top, settled, swing, extremes.maxLoad(), stalledAtTop, ledger, moments);
    }

    private Course course(double[] top) {
        double[] from = extremes.topTime() < pushTime ? top : pushState;
        double slant = Math.atan2(
                from[StateLayout.EAST], Kinematics.height(from) - plan.launch().releaseHeight());
        return new Course(
                extremes.rolled(),
                extremes.rolledTime(),
                slant,
                Kinematics.heading(top, new double[9]),
                top[StateLayout.EAST]);
    }

    private Settled settled(Top top) {
        Glide trimmed = craft.cruise();
        double height = energyHeight()
                - trimmed.speed() * trimmed.speed() / (2 * Standard.GRAVITY)
                + trimmed.sink() * (time - top.time());
        double atTop =
                top.height() + (top.speed() * top.speed() - trimmed.speed() * trimmed.speed()) / (2 * Standard.GRAVITY);
        double straight = top.time() + height / trimmed.sink();
        double circling = top.time() + height / (trimmed.sink() * Settled.CIRCLING);
        return new Settled(height, atTop - height, looksSettled() || settlesLater(), straight, circling);
    }

    /** Looks once more after {@link #GLIDE_TIME} more; nothing but the tick depends on it. */
    private boolean settlesLater() {
        double end = time + GLIDE_TIME;
        body.settle(time, state);
        time = integrator
                .run(body, time, state, end - LOOK_TIME, dangers.events(), List.of())
                .time();
        lookedAt = energyHeight();
        Stop stop = integrator.run(body, time, state, end, dangers.events(), List.of());
        time = stop.time();
        return stop.event() == Stop.AT_END && looksSettled();
    }

    /** Energy height falls at the trimmed sink within 0.15 m/s, alpha within 3 and beta within 5 degrees. */
    private boolean looksSettled() {
        var motion = body.motionAt(time, state);
        double falls = (lookedAt - energyHeight()) / LOOK_TIME;
        return Math.abs(falls - craft.cruise().sink()) < 0.15
                && Math.abs(Kinematics.alpha(motion) - craft.cruise().alpha()) < 0.052
                && Math.abs(Kinematics.beta(motion)) < 0.087;
    }

    private EnergyLedger ledger(double[] at) {
        double handHeight = plan.launch().releaseHeight();
        double weight = craft.mass().mass() * Standard.GRAVITY;
        double start = startEnergy - weight * handHeight;
        double won = weight * (Kinematics.height(at) - handHeight);
        double left = body.energy(extremes.topTime(), at) - weight * Kinematics.height(at);
        Map<Loss, Double> spent = new EnumMap<>(Loss.class);
        for (Loss loss : Loss.values()) {
            spent.put(loss, at[StateLayout.LOSSES + loss.ordinal()]);
        }
        Map<Loss, Double> straight = log == null ? Map.of() : log.straight(extremes.topTime());
        double closure = (start - won - left - RigidBody.energyLost(at)) / start;
        return new EnergyLedger(
                start, won, left, spent, straight, at[StateLayout.ROLL_HOLD], at[StateLayout.WIND], closure);
    }
}
